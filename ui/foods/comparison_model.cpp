// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/comparison_model.h"

#include "ui/foods/composition_model.h"

#include <algorithm>
#include <set>
#include <utility>

namespace tarebowl::ui {

void ComparisonModel::show(std::vector<Compared> foods) {
  beginResetModel();
  foods_ = std::move(foods);
  facts_.clear();
  std::set<food::NutrientId> shown(alwaysShown().begin(), alwaysShown().end());
  for (const Compared& compared : foods_) {
    facts_.push_back(factsOf(compared.composition));
    for (const food::NutrientId nutrient : compared.composition.knownNutrients()) shown.insert(nutrient);
  }
  nutrients_.assign(shown.begin(), shown.end());
  std::stable_sort(nutrients_.begin(), nutrients_.end(), isShownBefore);
  endResetModel();
}

void ComparisonModel::setEnergy(EnergyUnit energy) {
  beginResetModel();
  energy_ = energy;
  endResetModel();
}

void ComparisonModel::setBasis(CompositionBasis basis) {
  basis_ = basis;
  if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
  emit headerDataChanged(Qt::Horizontal, 0, 0);
}

QModelIndex ComparisonModel::indexOf(food::NutrientId nutrient, int food) const {
  const auto found = std::find(nutrients_.begin(), nutrients_.end(), nutrient);
  if (found == nutrients_.end()) return {};
  return index(static_cast<int>(found - nutrients_.begin()), food + 1);
}

int ComparisonModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(nutrients_.size());
}

int ComparisonModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(foods_.size()) + 1;
}

std::optional<double> ComparisonModel::amount(food::NutrientId nutrient, std::size_t food) const {
  const food::NutrientValue* value = foods_[food].composition.find(nutrient);
  if (value == nullptr) return std::nullopt;
  return shownAmount(nutrient, basis_, value->amount, facts_[food], energy_);
}

bool ComparisonModel::isHighest(food::NutrientId nutrient, std::size_t food) const {
  const auto mine = amount(nutrient, food);
  if (!mine || *mine <= 0.0) return false;
  for (std::size_t other = 0; other < foods_.size(); ++other)
    if (other != food && amount(nutrient, other).value_or(0.0) >= *mine) return false;
  return true;
}

QVariant ComparisonModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const food::NutrientId nutrient = nutrients_[static_cast<std::size_t>(index.row())];
  const bool name = index.column() == 0;
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((name ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  if (name) return role == Qt::DisplayRole ? nutrientName(nutrient) : QVariant();
  const auto food = static_cast<std::size_t>(index.column() - 1);
  const food::NutrientValue* value = foods_[food].composition.find(nutrient);
  if (role == UnknownRole) return !amount(nutrient, food).has_value();
  if (role == HighestRole) return isHighest(nutrient, food);
  if (role == Qt::ToolTipRole && value != nullptr) return QString::fromStdString(value->source);
  if (role != Qt::DisplayRole) return {};
  if (value == nullptr) return QStringLiteral("?");
  return valueText(nutrient, amount(nutrient, food), value->qualifier, energy_);
}

QVariant ComparisonModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((section == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
  if (section == 0) return textOf(basis_, energy_);
  return foods_[static_cast<std::size_t>(section - 1)].name;
}

}  // namespace tarebowl::ui
