// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/version_comparison.h"

#include "core/diet/balance.h"
#include "core/transfer/desk_sheet.h"
#include "ui/diets/diet_draft.h"
#include "ui/diets/diet_facts.h"
#include "ui/diets/difference_text.h"
#include "ui/diets/target_names.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/format.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

std::optional<Grams> amountOf(const ComparedVersion& of, const std::string& food) {
  for (std::size_t i = 0; i < of.problem.foods.size(); ++i)
    if (of.problem.foods[i].id == food) return of.grams.at(i);
  return std::nullopt;
}

double toThreeFigures(double number) {
  const double scale = std::pow(10.0, 2.0 - std::floor(std::log10(number)));
  return std::round(number * scale) / scale;
}

/// "+2", "−0.5", nothing where it is the same.
QString changeOf(double before, double after) {
  const double change = after - before;
  if (std::abs(change) <= 1e-9 * std::max(1.0, std::abs(before))) return {};
  return (change > 0 ? QStringLiteral("+") : QStringLiteral("−")) + stated(toThreeFigures(std::abs(change)));
}

QString text(const diet::TargetBalance* target) {
  if (target == nullptr) return QStringLiteral("–");
  const QString state = wordOf(markOf(target->state));
  if (!target->value) return QStringLiteral("?, ") + state;
  const QString value = measured(shownValue(refOf(*target), *target->value));
  return QStringLiteral("%1%2, %3").arg(target->atLeast ? QStringLiteral("≥ ") : QString(), value, state);
}

/// "Iodine, mg/1000 kcal".
QString nameWithUnit(const diet::BalanceProblem& problem, RungRef rung) {
  const QString unit = rungUnit(problem, rung);
  return unit.isEmpty() ? rungName(problem, rung) : rungName(problem, rung) + QStringLiteral(", ") + unit;
}

/// A food by the code that versions know it by; in a problem its id may carry its meal or purpose.
QString nameOfFood(const diet::BalanceProblem& problem, const std::string& code) {
  for (const diet::DietFood& food : problem.foods)
    if (food.id == code || food.id.starts_with(code + " (")) return QString::fromStdString(food.name);
  return {};
}

const diet::TargetBalance* ruleOf(const diet::Balance& balance, const std::string& id) {
  const auto found = std::ranges::find(balance.targets, id, &diet::TargetBalance::id);
  return found == balance.targets.end() ? nullptr : &*found;
}

QString text(const std::optional<KnownSum>& sum, int decimals) {
  if (!sum) return QStringLiteral("?");
  const QString amount = decimals > 0 ? decimal(sum->amount, decimals) : measured(sum->amount);
  return sum->atLeast ? QStringLiteral("≥ ") + amount : amount;
}

}  // namespace

ComparedVersion comparedVersion(const transfer::DeskDiet& desk) {
  diet::ProblemOfVersion made = transfer::asDecided(desk);
  return {desk.version.record.version, std::move(made.problem), std::move(made.amounts)};
}

ComparedVersion comparedVersion(const DietDraft& draft) {
  return {draft.frame ? versionOf(draft) : diet::DietVersion{}, draft.problem, draft.grams};
}

void VersionComparison::show(const ComparedVersion& before, const ComparedVersion& after) {
  beginResetModel();
  rows_.clear();
  numbers_[0] = before.version.number;
  numbers_[1] = after.version.number;
  addFoods(before, after);
  addSums(before, after);
  addRules(before, after);
  sentences_.clear();
  const auto nameOf = [&](const std::string& code) {
    for (const ComparedVersion* of : {&before, &after})
      if (const QString name = nameOfFood(of->problem, code); !name.isEmpty()) return name;
    return QString::fromStdString(code);
  };
  for (const diet::VersionDifference& difference : diet::differences(before.version, after.version))
    sentences_ << differenceText(difference, nameOf);
  endResetModel();
}

void VersionComparison::clear() {
  beginResetModel();
  rows_.clear();
  sentences_.clear();
  endResetModel();
}

void VersionComparison::addFoods(const ComparedVersion& before, const ComparedVersion& after) {
  std::vector<const diet::DietFood*> foods;
  for (const diet::DietFood& food : before.problem.foods) foods.push_back(&food);
  for (const diet::DietFood& food : after.problem.foods)
    if (!amountOf(before, food.id)) foods.push_back(&food);
  const auto shown = [](const std::optional<Grams>& mass, const diet::DietFood& food) {
    return mass ? tr("%1 g").arg(grams(*mass, food.scaleStep)) : QStringLiteral("–");
  };
  for (const diet::DietFood* food : foods) {
    const auto first = amountOf(before, food->id);
    const auto second = amountOf(after, food->id);
    rows_.push_back({{QString::fromStdString(food->name), shown(first, *food), shown(second, *food),
                      changeOf(first.value_or(Grams(0)).value(), second.value_or(Grams(0)).value())}});
  }
}

void VersionComparison::addSums(const ComparedVersion& before, const ComparedVersion& after) {
  const auto add = [this](const QString& what, const auto& first, const auto& second, int decimals) {
    if (!first && !second) return;
    rows_.push_back({{what, text(first, decimals), text(second, decimals),
                      first && second ? changeOf(first->amount, second->amount) : QString()}});
  };
  add(tr("Energy, kcal ME a day"), totalOf(before.problem, before.grams, food::nutrients::energy()),
      totalOf(after.problem, after.grams, food::nutrients::energy()), 0);
  add(tr("Cost a day"), costPerDay(before.problem, before.grams), costPerDay(after.problem, after.grams), 2);
}

void VersionComparison::addRules(const ComparedVersion& before, const ComparedVersion& after) {
  const diet::Balance first = diet::balance(before.problem, before.grams);
  const diet::Balance second = diet::balance(after.problem, after.grams);
  const auto add = [&](const diet::TargetBalance& target, const ComparedVersion& of) {
    const diet::TargetBalance* a = ruleOf(first, target.id);
    const diet::TargetBalance* b = ruleOf(second, target.id);
    const bool both = a != nullptr && b != nullptr && a->value && b->value;
    const QString change =
        both ? changeOf(shownValue(refOf(*a), *a->value), shownValue(refOf(*b), *b->value)) : QString();
    rows_.push_back({{nameWithUnit(of.problem, refOf(target)), text(a), text(b), change}});
  };
  for (const diet::TargetBalance& target : first.targets) add(target, before);
  for (const diet::TargetBalance& target : second.targets)
    if (ruleOf(first, target.id) == nullptr) add(target, after);
}

int VersionComparison::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int VersionComparison::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QVariant VersionComparison::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole)
    return static_cast<int>((section == What ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case Before:
      return tr("version %1").arg(numbers_[0]);
    case After:
      return tr("version %1").arg(numbers_[1]);
    case Change:
      return tr("change");
    default:
      return tr("per animal a day");
  }
}

QVariant VersionComparison::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  if (role == Qt::DisplayRole || role == Qt::ToolTipRole || role == Qt::AccessibleTextRole)
    return row.cells[index.column()];
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((index.column() == What ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  return {};
}

}  // namespace tarebowl::ui
