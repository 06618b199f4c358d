// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/collection_doubts.h"

#include <QAbstractListModel>
#include <QWidget>

class QLabel;
class QLineEdit;
class QListView;

namespace tarebowl::ui {

/// The doubts about all foods, or about those with the typed words in their name or in the doubt.
class DoubtListModel : public QAbstractListModel {
  Q_OBJECT
 public:
  enum Role { SentenceRole = Qt::UserRole, MarkRole, FoodRole };

  DoubtListModel(const CollectionDoubts& doubts, const FoodDesk& foods, QObject* parent = nullptr);
  void look(const QString& words);
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

 private:
  void take();
  [[nodiscard]] QString nameText(const Doubt& doubt) const;
  [[nodiscard]] QString sentenceText(const Doubt& doubt) const;

  const CollectionDoubts& doubts_;
  const FoodDesk& foods_;
  QString words_;
  std::vector<Doubt> shown_;
};

/// What a careful analyst would doubt in the collection, in the place of the list of foods: each line goes to
/// its food.
class DoubtList : public QWidget {
  Q_OBJECT
 public:
  DoubtList(CollectionDoubts& doubts, FoodDesk& foods, QWidget* parent = nullptr);
  [[nodiscard]] QListView& list() const { return *list_; }
  [[nodiscard]] DoubtListModel& model() const { return *model_; }
  [[nodiscard]] QLineEdit& field() const { return *field_; }

 signals:
  /// food: a FoodId as Qt can carry it.
  void chosen(qint64 food);
  void done();

 private:
  void build();
  void showCount();

  CollectionDoubts& doubts_;
  FoodDesk& foods_;
  DoubtListModel* model_;
  QLineEdit* field_;
  QListView* list_;
  QLabel* count_;
};

}  // namespace tarebowl::ui
