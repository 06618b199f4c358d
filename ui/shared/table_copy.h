// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QAbstractItemModel;
class QAbstractItemView;

namespace tarebowl::ui {

/// A cell of what a spreadsheet is given: tabs and line ends inside it become spaces, and a text that it
/// would take for a formula is guarded (core/exchange/formula_guard.h); an amount with its unit is none.
[[nodiscard]] QString copiedCell(QString text);

/// The whole table as tab-separated text with its headers, as a spreadsheet takes it; of a tree, its top
/// rows.
[[nodiscard]] QString tabSeparated(const QAbstractItemModel& model);

/// Ctrl+C on a table copies all of it.
void addCopyAction(QAbstractItemView& view);

}  // namespace tarebowl::ui
