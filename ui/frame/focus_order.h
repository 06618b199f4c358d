// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace tarebowl::ui {

/// Tab and Shift+Tab from where the focus is in the window. Qt would jump from before a room to the control
/// that the room hands its focus to, past those above it. False where there is nowhere to go.
bool moveFocus(QWidget& window, bool next);

}  // namespace tarebowl::ui
