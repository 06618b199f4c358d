// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_search.h"

#include <algorithm>

namespace tarebowl::ui {

QString folded(const QString& text) {
  QString result;
  result.reserve(text.size());
  for (const QChar c : text.normalized(QString::NormalizationForm_D))
    if (!c.isMark()) result += c.toCaseFolded();
  return result;
}

void FoodSearch::setFoods(const std::vector<FoodListing>& foods) {
  texts_.clear();
  texts_.reserve(static_cast<qsizetype>(foods.size()));
  for (const FoodListing& listing : foods) {
    QStringList parts;
    for (const std::string& part :
         {listing.food.name, listing.food.form, listing.food.group, listing.food.code})
      parts << QString::fromStdString(part);
    texts_ << folded(parts.join(QLatin1Char(' ')));
  }
}

std::vector<int> FoodSearch::find(const QString& text) const {
  const QString whole = folded(text.trimmed());
  const QStringList words = whole.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  std::vector<int> found;
  for (int i = 0; i < texts_.size(); ++i)
    if (std::all_of(words.begin(), words.end(),
                    [&](const QString& word) { return texts_[i].contains(word); }))
      found.push_back(i);
  if (!whole.isEmpty())
    std::stable_partition(found.begin(), found.end(), [&](int i) { return texts_[i].startsWith(whole); });
  return found;
}

}  // namespace tarebowl::ui
