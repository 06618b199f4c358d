// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QWidget;

namespace tarebowl::ui {

/// What a control is called: its accessible name, or what it says itself.
[[nodiscard]] QString nameOf(const QWidget& control);

/// What F1 says of a control, as rich text: what it is called, what it is (its What's This or its tip, in a
/// table the column and the cell that the hand is on), and what holds for the part of the window that it
/// stands in, such as where the numbers there come from. The part is never told for itself alone: empty
/// where nobody wrote anything of the control or its part.
[[nodiscard]] QString explanationOf(const QWidget& control);

/// Shows it beside the control.
void explain(QWidget& control);

}  // namespace tarebowl::ui
