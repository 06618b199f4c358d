// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_list_entry.h"
#include "ui/diets/diet_shelf.h"
#include "ui/diets/problem_files.h"

#include <QAbstractListModel>

#include <vector>

namespace tarebowl::ui {

/// Diets of the collection and groups that have none, then the problem files of a folder.
class DietListModel : public QAbstractListModel {
  Q_OBJECT
 public:
  enum Role { SubtitleRole = Qt::UserRole + 1, KeyRole, KindRole, ReadableRole };

  using QAbstractListModel::QAbstractListModel;

  void setShelf(const DietShelf& shelf);
  void setFiles(const std::vector<ProblemEntry>& files);
  /// Row of a diet or of a file, -1 where it is not listed.
  [[nodiscard]] int rowOf(DietListEntry::Kind kind, const QString& key) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

 private:
  void rebuild();

  std::vector<DietListEntry> shelved_;
  std::vector<DietListEntry> files_;
  std::vector<DietListEntry> entries_;
};

/// "version 3, draft · version 2, approved".
[[nodiscard]] QString versionsText(const std::vector<store::VersionLine>& versions);

}  // namespace tarebowl::ui
