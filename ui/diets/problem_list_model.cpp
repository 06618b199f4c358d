// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/problem_list_model.h"

#include <utility>

namespace tarebowl::ui {

void ProblemListModel::setEntries(std::vector<ProblemEntry> entries) {
  beginResetModel();
  entries_ = std::move(entries);
  endResetModel();
}

int ProblemListModel::rowOf(const std::filesystem::path& file) const {
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    std::error_code error;
    if (entries_[i].file == file || std::filesystem::equivalent(entries_[i].file, file, error))
      return static_cast<int>(i);
  }
  return -1;
}

int ProblemListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(entries_.size());
}

QVariant ProblemListModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const ProblemEntry& entry = entries_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Qt::DisplayRole:
      return entry.title;
    case SubtitleRole:
      return entry.subtitle;
    case FileRole:
      return toText(entry.file);
    case ReadableRole:
      return entry.readable;
    case Qt::ToolTipRole:
      return entry.title + QLatin1Char('\n') + entry.subtitle + QLatin1Char('\n') + toText(entry.file);
    case Qt::AccessibleTextRole:
      return entry.title + QStringLiteral(", ") + entry.subtitle;
    default:
      return {};
  }
}

}  // namespace tarebowl::ui
