// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace tarebowl::ui {

/// Every control in sight has a name that a screen reader can say: its accessible name or its own text. Fails
/// the running test for each that has none.
void expectNamedControls(const QWidget& within);

}  // namespace tarebowl::ui
