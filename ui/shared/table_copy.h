// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QAbstractItemModel;
class QAbstractItemView;

namespace tarebowl::ui {

/// The whole table as tab-separated text with its headers, as a spreadsheet takes it; of a tree, its top
/// rows. Tabs and line ends inside a cell become spaces.
[[nodiscard]] QString tabSeparated(const QAbstractItemModel& model);

/// Ctrl+C on a table copies all of it.
void addCopyAction(QAbstractItemView& view);

}  // namespace tarebowl::ui
