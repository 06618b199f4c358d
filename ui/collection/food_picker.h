// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/food_names.h"

#include <QLineEdit>

#include <functional>

class QStandardItemModel;

namespace tarebowl::ui {

/// The field in which a food is added by typing part of its name.
class FoodPicker : public QLineEdit {
  Q_OBJECT
 public:
  /// The best `most` foods for a text.
  using Find = std::function<std::vector<food::FoodLine>(const QString& text, std::size_t most)>;
  explicit FoodPicker(Find find, QWidget* parent = nullptr);
  explicit FoodPicker(const FoodNames& names, QWidget* parent = nullptr);

 signals:
  /// The code of a food that was chosen.
  void picked(const QString& code);
  /// Return was pressed on a text that is part of no food's name.
  void notFound(const QString& text);

 private:
  void look(const QString& text);
  void take(const QModelIndex& index);
  void takeFirst();

  Find find_;
  QStandardItemModel* found_;
  bool taken_ = false;  // the text in the field has done its work
};

}  // namespace tarebowl::ui
