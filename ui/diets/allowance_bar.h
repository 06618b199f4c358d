// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"

#include <QWidget>

class QComboBox;
class QLineEdit;

namespace tarebowl::ui {

class FoodNames;
class FoodPicker;

/// Below the foods: something that is given unweighed, between two amounts a day. The balance carries the
/// middle, and the range as uncertainty.
class AllowanceBar : public QWidget {
  Q_OBJECT
 public:
  explicit AllowanceBar(const FoodNames& names, QWidget* parent = nullptr);

 signals:
  /// `allowance.food` is a code of the collection.
  void wanted(const tarebowl::diet::Allowance& allowance);
  void refused(const QString& why);

 private:
  void take(const QString& code);

  FoodPicker* picker_;
  QLineEdit* low_;
  QLineEdit* high_;
  QComboBox* purpose_;
};

/// A range of grams, from low to high and more than nothing; nothing where the fields hold none.
struct GramRange {
  quantity::Grams low{};
  quantity::Grams high{};
};
[[nodiscard]] std::optional<GramRange> rangeIn(const QLineEdit& low, const QLineEdit& high);

}  // namespace tarebowl::ui
