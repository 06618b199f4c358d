// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/ladder_model.h"

#include "ui/diets/diet_desk.h"
#include "ui/diets/target_names.h"
#include "ui/shared/format.h"

#include <QStringList>

#include <algorithm>
#include <numeric>
#include <tuple>

namespace tarebowl::ui {
namespace {

int troubleRank(Mark mark) {
  switch (mark) {
    case Mark::Lacking:
    case Mark::Over:
      return 0;
    case Mark::AtLimit:
      return 1;
    case Mark::Met:
      return 2;
    case Mark::Unknown:
      break;
  }
  return 3;
}

/// What nobody measured can only add to an amount; of a ratio or a share it may be the one side or the other.
QString valueText(const diet::TargetBalance& target, RungRef rung) {
  if (!target.value || target.state == diet::TargetState::Unknown) return QStringLiteral("?");
  const QString number = measured(shownValue(rung, *target.value));
  if (!target.atLeast) return number;
  return (rung.kind == diet::TargetKind::Nutrient ? QStringLiteral("≥ ") : QStringLiteral("≈ ")) + number;
}

/// "Vitamin A" of "Vitamin A, retinol activity equivalents": a rung is narrow, its tool tip says all.
QString shortened(const QString& name) {
  constexpr int kRoom = 22;
  const auto comma = name.indexOf(QLatin1Char(','));
  return name.size() > kRoom && comma > 0 ? name.left(comma) : name;
}

/// Unmeasured amounts can only help a minimum and only harm a maximum; where they may do either, no chance is
/// named.
QString chanceRemark(const diet::TargetBalance& target) {
  if (!target.chance || target.sd <= 0.0) return {};
  const QString chance = percent(*target.chance);
  if (!target.atLeast) return LadderModel::tr("holds with a chance of %1").arg(chance);
  if (target.kind != diet::TargetKind::Nutrient || (target.min && target.max)) return {};
  return (target.min ? LadderModel::tr("holds with a chance of at least %1")
                     : LadderModel::tr("holds with a chance of at most %1"))
      .arg(chance);
}

/// Where two rungs have one name, which bound each is about.
QString whichBound(const diet::BalanceProblem& problem, RungRef ref) {
  const auto& targets = problem.targets;
  if (ref.kind != diet::TargetKind::Nutrient) return {};
  const animal::Target& target = targets.at(ref.index);
  const auto namesakes = std::count_if(targets.begin(), targets.end(),
                                       [&](const auto& other) { return other.nutrient == target.nutrient; });
  if (namesakes < 2 || (target.min && target.max)) return {};
  return target.min ? LadderModel::tr("min") : LadderModel::tr("max");
}

std::optional<double> shown(RungRef rung, std::optional<double> value) {
  return value ? std::optional(shownValue(rung, *value)) : std::nullopt;
}

}  // namespace

std::vector<std::size_t> ladderOrder(const diet::BalanceProblem& problem, const diet::Balance& balance) {
  std::vector<std::size_t> order(balance.targets.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto key = [&](std::size_t i) {
    const diet::TargetBalance& target = balance.targets[i];
    const int rank = troubleRank(markOf(target.state));
    const bool soft = rank == 0 && !isHard(problem, refOf(target));
    return std::tuple(rank, soft, rank == 0 ? -target.shortfall : 0.0);
  };
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
  return order;
}

Rung rungOf(const diet::BalanceProblem& problem, const diet::TargetBalance& target) {
  const RungRef ref = refOf(target);
  Rung rung;
  const QString name = rungName(problem, ref);
  rung.name = shortened(name);
  rung.valueText = valueText(target, ref);
  rung.unit = rungUnit(problem, ref);
  rung.mark = markOf(target.state);
  rung.hard = isHard(problem, ref);
  rung.remark = whichBound(problem, ref);
  rung.value = shown(ref, target.value);
  rung.min = shown(ref, target.min);
  rung.max = shown(ref, target.max);
  rung.sd = shownValue(ref, target.sd);
  rung.coverage = target.coverage;
  QStringList parts{LadderModel::tr("%1: %2").arg(name, wordOf(rung.mark)),
                    rung.unit.isEmpty() ? rung.valueText : rung.valueText + QLatin1Char(' ') + rung.unit,
                    LadderModel::tr("target %1").arg(boundsText(problem, ref))};
  parts << rungRemarks(problem, target);
  rung.description = parts.join(QStringLiteral(" · "));
  return rung;
}

QStringList rungRemarks(const diet::BalanceProblem& problem, const diet::TargetBalance& target) {
  const RungRef ref = refOf(target);
  QStringList remarks;
  if (target.sd > 0.0) remarks << LadderModel::tr("± %1 (1 SD)").arg(measured(shownValue(ref, target.sd)));
  if (const QString chance = chanceRemark(target); !chance.isEmpty()) remarks << chance;
  if (target.coverage < 1.0)
    remarks << LadderModel::tr("known for %1 of the dry matter").arg(percent(target.coverage));
  if (isHard(problem, ref)) remarks << LadderModel::tr("hard rule");
  return remarks;
}

LadderModel::LadderModel(DietDesk& desk, QObject* parent) : QAbstractTableModel(parent), desk_(desk) {
  connect(&desk, &DietDesk::opened, this, &LadderModel::reset);
  connect(&desk, &DietDesk::restructured, this, &LadderModel::reset);
  connect(&desk, &DietDesk::balanceChanged, this, &LadderModel::refresh);
  reset();
}

void LadderModel::reset() {
  beginResetModel();
  order_ = ladderOrder(desk_.problem(), desk_.balance());
  endResetModel();
}

void LadderModel::refresh() {
  std::vector<std::size_t> order = ladderOrder(desk_.problem(), desk_.balance());
  if (order.size() != order_.size()) return reset();
  if (order != order_) {
    emit layoutAboutToBeChanged();
    const QModelIndexList before = persistentIndexList();
    QModelIndexList after;
    for (const QModelIndex& old : before) {
      const auto place = std::find(order.begin(), order.end(), order_[static_cast<std::size_t>(old.row())]);
      after << index(static_cast<int>(place - order.begin()), old.column());
    }
    order_ = std::move(order);
    changePersistentIndexList(before, after);
    emit layoutChanged();
  }
  if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, RungColumnCount - 1));
}

int LadderModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(order_.size());
}

int LadderModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : RungColumnCount;
}

const diet::TargetBalance& LadderModel::targetAt(int row) const {
  return desk_.balance().targets.at(order_.at(static_cast<std::size_t>(row)));
}

RungRef LadderModel::refAt(int row) const {
  return refOf(targetAt(row));
}

int LadderModel::rowOf(RungRef rung) const {
  for (int row = 0; row < rowCount(); ++row)
    if (refAt(row) == rung) return row;
  return -1;
}

QVariant LadderModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case RungName:
      return tr("target");
    case RungValue:
      return tr("value");
    case RungTrack:
      return tr("zone");
    case RungState:
      return tr("state");
    default:
      return {};
  }
}

QVariant LadderModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const diet::TargetBalance& target = targetAt(index.row());
  if (role == kRungRole) return QVariant::fromValue(rungOf(desk_.problem(), target));
  if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole)
    return rungOf(desk_.problem(), target).description;
  if (role != Qt::DisplayRole) return {};
  const RungRef ref = refOf(target);
  switch (index.column()) {
    case RungName:
      return rungName(desk_.problem(), ref);
    case RungValue: {
      const QString unit = rungUnit(desk_.problem(), ref);
      return unit.isEmpty() ? valueText(target, ref) : valueText(target, ref) + QLatin1Char(' ') + unit;
    }
    case RungTrack:
      return boundsText(desk_.problem(), ref);
    case RungState:
      return wordOf(markOf(target.state));
    default:
      return {};
  }
}

}  // namespace tarebowl::ui
