// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/larder.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace tarebowl::ui {

/// Finds foods by parts of their names while a hand types: every word that is typed must be somewhere in the
/// name, form, group or code. Capitals and accents do not matter.
class FoodSearch {
 public:
  void setFoods(const std::vector<FoodListing>& foods);

  /// Places in the list of foods: names that start with what was typed first, else in the list's order. All
  /// of them where nothing was typed.
  [[nodiscard]] std::vector<int> find(const QString& text) const;

 private:
  QStringList texts_;  // name first, folded
};

/// Without capitals and accents, as FoodSearch compares.
[[nodiscard]] QString folded(const QString& text);

}  // namespace tarebowl::ui
