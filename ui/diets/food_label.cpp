// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/food_label.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace tarebowl::ui {

FoodLabel foodLabel(const diet::DietFood& food) {
  QString name = QString::fromStdString(food.name);
  const QString form = QString::fromStdString(food.form);
  QStringList remarks;
  QString bracket;
  const auto open = name.indexOf(QLatin1String(" ("));
  if (open > 0 && name.endsWith(QLatin1Char(')'))) {
    bracket = name.mid(open + 1);
    name = name.left(open);
  }
  const QString ending = QStringLiteral(", ") + form;
  if (!form.isEmpty() && name.size() > ending.size() && name.endsWith(ending, Qt::CaseInsensitive)) {
    name.chop(ending.size());
    remarks << form;
  } else if (!form.isEmpty() && !name.endsWith(form, Qt::CaseInsensitive)) {
    remarks << form;
  }
  if (!bracket.isEmpty())
    remarks << (food.invented ? QCoreApplication::translate("Food", "(invented)") : bracket);
  return {name, remarks.join(QLatin1Char(' '))};
}

QString distinctName(const diet::BalanceProblem& problem, std::size_t food) {
  const FoodLabel label = foodLabel(problem.foods.at(food));
  const auto namesakes = std::count_if(problem.foods.begin(), problem.foods.end(), [&](const auto& other) {
    return foodLabel(other).name == label.name;
  });
  return namesakes > 1 ? label.name + QStringLiteral(", ") + label.remark : label.name;
}

}  // namespace tarebowl::ui
