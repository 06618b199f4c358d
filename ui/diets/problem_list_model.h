// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/problem_files.h"

#include <QAbstractListModel>

#include <vector>

namespace tarebowl::ui {

/// The problem files that can be put on the desk.
class ProblemListModel : public QAbstractListModel {
  Q_OBJECT
 public:
  enum Role { SubtitleRole = Qt::UserRole + 1, FileRole, ReadableRole };

  using QAbstractListModel::QAbstractListModel;

  void setEntries(std::vector<ProblemEntry> entries);
  /// Row of a file, -1 where it is not listed.
  [[nodiscard]] int rowOf(const std::filesystem::path& file) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

 private:
  std::vector<ProblemEntry> entries_;
};

}  // namespace tarebowl::ui
