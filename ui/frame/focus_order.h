// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <initializer_list>

namespace tarebowl::ui {

/// Tab and Shift+Tab from where the focus is in the window, through its parts in this order and within each
/// in that of Qt's chain. Qt itself would go last to what is built last, and jump from before a room to the
/// control that the room hands its focus to, past those above it. A part may be missing (null). False where
/// there is nowhere to go.
bool moveFocus(QWidget& window, std::initializer_list<const QWidget*> parts, bool next);

}  // namespace tarebowl::ui
