// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_list_entry.h"
#include "ui/diets/problem_files.h"

#include <QWidget>

#include <functional>
#include <thread>

class QLineEdit;
class QListView;
class QSortFilterProxyModel;

namespace tarebowl::ui {

class DietListModel;
class DietShelf;

/// The list at the left of the room: diets of the collection and problem files of a folder, with a field that
/// narrows it.
class DietList : public QWidget {
  Q_OBJECT
 public:
  explicit DietList(QWidget* parent = nullptr);

  void show(const DietShelf& shelf);
  /// Lists a folder in the background; what was listed stays until then.
  void listFolder(const std::filesystem::path& folder);
  /// What lies on the desk: the code of a diet or the path of a file.
  void setCurrent(DietListEntry::Kind kind, const QString& key);
  void focusFilter();
  [[nodiscard]] const DietListModel& model() const { return *model_; }

 signals:
  void chosen(tarebowl::ui::DietListEntry::Kind kind, const QString& key);
  /// Return was pressed on a text that is part of no title.
  void notListed(const QString& text);
  void listed();

 private:
  void take(const std::vector<ProblemEntry>& entries);
  void selectCurrent();
  void find();
  void choose(const QModelIndex& index);

  DietListModel* model_;
  QSortFilterProxyModel* filter_;
  QLineEdit* field_;
  QListView* view_;
  DietListEntry::Kind currentKind_ = DietListEntry::Kind::Heading;
  QString current_;
  std::jthread reader_;
};

}  // namespace tarebowl::ui
