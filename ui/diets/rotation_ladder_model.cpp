// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_ladder_model.h"

#include "ui/diets/ladder_model.h"
#include "ui/diets/target_names.h"

namespace tarebowl::ui {

void RotationLadderModel::show(const RotationView* view, std::optional<int> day) {
  beginResetModel();
  rungs_.clear();
  zones_.clear();
  if (view != nullptr) {
    const diet::RotationRules& rules = view->problem().rules;
    const diet::BalanceProblem zoned =
        diet::zonedProblem(view->problem().base, day ? rules.daily : rules.period);
    const diet::Balance& balance =
        day ? view->standing.days.at(static_cast<std::size_t>(*day)) : view->standing.period;
    for (const std::size_t target : ladderOrder(zoned, balance)) {
      rungs_.push_back(rungOf(zoned, balance.targets[target]));
      zones_ << boundsText(zoned, refOf(balance.targets[target]));
    }
  }
  endResetModel();
}

int RotationLadderModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rungs_.size());
}

int RotationLadderModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : RungColumnCount;
}

QVariant RotationLadderModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const Rung& rung = rungs_.at(static_cast<std::size_t>(index.row()));
  if (role == kRungRole) return QVariant::fromValue(rung);
  if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole) return rung.description;
  if (role != Qt::DisplayRole) return {};
  switch (index.column()) {
    case RungName:
      return rung.name;
    case RungValue:
      return rung.unit.isEmpty() ? rung.valueText : rung.valueText + QLatin1Char(' ') + rung.unit;
    case RungTrack:
      return zones_.value(index.row());
    case RungState:
      return wordOf(rung.mark);
    default:
      return {};
  }
}

}  // namespace tarebowl::ui
