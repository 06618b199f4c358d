// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/nutrient_text.h"

#include <QCoreApplication>

namespace tarebowl::ui {

QString nutrientName(food::NutrientId nutrient) {
  return QCoreApplication::translate("Nutrients", food::describe(nutrient).name.c_str());
}

QString nutrientWithin(food::NutrientId nutrient) {
  QString name = nutrientName(nutrient);
  const bool word = name.size() > 1 && name[1].isLower();
  // German writes nouns with a capital wherever they stand.
  const bool small = QCoreApplication::translate(
                         "Nutrients", "small",
                         "Translate as “small” where a noun begins with a small letter within a sentence") ==
                     QLatin1String("small");
  if (word && small) name[0] = name[0].toLower();
  return name;
}

}  // namespace tarebowl::ui
