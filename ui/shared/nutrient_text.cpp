// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/nutrient_text.h"

namespace tarebowl::ui {

QString nutrientName(food::NutrientId nutrient) {
  return QString::fromStdString(food::describe(nutrient).name);
}

QString nutrientWithin(food::NutrientId nutrient) {
  QString name = nutrientName(nutrient);
  const bool word = name.size() > 1 && name[1].isLower();
  if (word) name[0] = name[0].toLower();
  return name;
}

}  // namespace tarebowl::ui
