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
QString valueText(const diet::TargetBalance& target, RungRef rung, double factor = 1.0) {
  if (!target.value || target.state == diet::TargetState::Unknown) return QStringLiteral("?");
  const QString number = measured(factor * shownValue(rung, *target.value));
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

std::optional<double> shown(RungRef rung, std::optional<double> value, double factor) {
  return value ? std::optional(factor * shownValue(rung, *value)) : std::nullopt;
}

/// "5–12 g/kg DM" as it was stated, and what it comes to where it is read on another basis.
QString zoneText(const diet::BalanceProblem& problem, RungRef ref, const Rung& rung, bool isOwn) {
  const QString stated = boundsText(problem, ref);
  if (isOwn) return stated;
  const auto number = [](const std::optional<double>& bound) {
    return bound ? measured(*bound) : QStringLiteral("…");
  };
  return LadderModel::tr("%1, in this bowl %2 to %3 %4")
      .arg(stated, number(rung.min), number(rung.max), rung.unit);
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

Rung rungOf(const diet::BalanceProblem& problem, const diet::TargetBalance& target,
            const std::optional<RungScale>& scale) {
  const RungRef ref = refOf(target);
  const double factor = scale ? scale->factor : 1.0;
  Rung rung;
  const QString name = rungName(problem, ref);
  rung.name = shortened(name);
  rung.valueText = valueText(target, ref, factor);
  rung.unit = scale ? scale->unit : rungUnit(problem, ref);
  rung.mark = markOf(target.state);
  rung.hard = isHard(problem, ref);
  rung.remark = whichBound(problem, ref);
  rung.value = shown(ref, target.value, factor);
  rung.min = shown(ref, target.min, factor);
  rung.max = shown(ref, target.max, factor);
  rung.sd = factor * shownValue(ref, target.sd);
  rung.coverage = target.coverage;
  QStringList parts{LadderModel::tr("%1: %2").arg(name, wordOf(rung.mark)),
                    rung.unit.isEmpty() ? rung.valueText : rung.valueText + QLatin1Char(' ') + rung.unit,
                    LadderModel::tr("target %1").arg(zoneText(problem, ref, rung, factor == 1.0))};
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

void LadderModel::setView(const LadderView& view) {
  if (view == view_) return;
  view_ = view;
  refresh();
}

const diet::Balance& LadderModel::balance() const {
  return offered_ ? *offered_ : desk_.balance();
}

/// Only what the view asks for: this runs at every keystroke.
void LadderModel::workOut() {
  offered_.reset();
  if (view_.asOffered) offered_ = diet::balance(asOffered(desk_.problem()), desk_.draft().grams);
  bowl_ = {};
  if (view_.basis)
    bowl_ = amountsOf(view_.asOffered ? asOffered(desk_.problem()) : desk_.problem(), desk_.draft().grams);
}

std::vector<std::size_t> LadderModel::wantedOrder() const {
  if (view_.order == LadderOrder::Trouble) return ladderOrder(desk_.problem(), balance());
  std::vector<std::size_t> order(balance().targets.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  if (view_.order == LadderOrder::Table) return order;
  const auto name = [this](std::size_t i) { return rungName(desk_.problem(), refOf(balance().targets[i])); };
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return QString::localeAwareCompare(name(a), name(b)) < 0;
  });
  return order;
}

void LadderModel::reset() {
  beginResetModel();
  workOut();
  order_ = wantedOrder();
  endResetModel();
}

void LadderModel::refresh() {
  workOut();
  std::vector<std::size_t> order = wantedOrder();
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
  return balance().targets.at(order_.at(static_cast<std::size_t>(row)));
}

Rung LadderModel::rungAt(int row) const {
  const diet::TargetBalance& target = targetAt(row);
  return rungOf(desk_.problem(), target, scaleOf(desk_.problem(), refOf(target), bowl_, view_));
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
  if (role == kRungRole) return QVariant::fromValue(rungAt(index.row()));
  if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole) return rungAt(index.row()).description;
  if (role != Qt::DisplayRole) return {};
  const RungRef ref = refOf(target);
  switch (index.column()) {
    case RungName:
      return rungName(desk_.problem(), ref);
    case RungValue: {
      const Rung rung = rungAt(index.row());
      return rung.unit.isEmpty() ? rung.valueText : rung.valueText + QLatin1Char(' ') + rung.unit;
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
