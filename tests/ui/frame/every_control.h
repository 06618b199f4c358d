// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>
#include <QWidget>

/// What every control of a window owes those who do not use a mouse or do not see it. Each fails the running
/// test for every control in sight that owes it still.
namespace tarebowl::ui {

/// A name, and that it can be reached, for a screen reader; and of what shows words, that the name holds them
/// (WCAG 2.1, 2.5.3).
void expectNames(const QWidget& window);
/// What stands in a field or a cell is read out as it is shown.
void expectValues(const QWidget& window);
/// F1 says its own words or those of the card or pane that it stands in.
void expectExplanations(const QWidget& window);
/// Tab goes from control to control, from where the focus is and round to it; within a row of buttons of
/// which one is chosen, the arrows do. What Tab reaches is in sight: what was scrolled away has come back.
void expectReachedByKeys(QWidget& window);

/// No text is cut, and nothing sticks out of what it stands in but where one can scroll to it: in a window of
/// this size. A text that ends with an ellipsis, and says all of it by its tip, is not cut.
void expectNothingCut(QWidget& window, QSize size);

/// The smallest screen that we count with, and 1920×1080 at twice its size.
inline constexpr QSize kSmallScreen{1366, 768};
inline constexpr QSize kTwiceAsLarge{960, 540};

}  // namespace tarebowl::ui
