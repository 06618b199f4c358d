// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/problem_list_model.h"

#include <QWidget>

#include <functional>
#include <thread>

class QLineEdit;
class QListView;
class QSortFilterProxyModel;

namespace tarebowl::ui {

/// The list at the left of the room: problem files of a folder, with a field that narrows it.
class ProblemList : public QWidget {
  Q_OBJECT
 public:
  explicit ProblemList(QWidget* parent = nullptr);

  /// Lists a folder in the background; what was listed stays until then.
  void listFolder(const std::filesystem::path& folder);
  void setCurrent(const std::filesystem::path& file);
  void focusFilter();
  [[nodiscard]] const ProblemListModel& model() const { return *model_; }

 signals:
  void chosen(const QString& file);
  /// Return was pressed on a text that is part of no title.
  void notListed(const QString& text);
  void listed();

 private:
  void take(std::vector<ProblemEntry> entries);
  void selectCurrent();
  void find();
  void choose(const QModelIndex& index);

  ProblemListModel* model_;
  QSortFilterProxyModel* filter_;
  QLineEdit* field_;
  QListView* view_;
  std::filesystem::path current_;
  std::jthread reader_;
};

}  // namespace tarebowl::ui
