// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_model.h"

#include "core/diet/formulation.h"
#include "core/diet/measure.h"
#include "core/diet/rotation_impossible.h"
#include "core/diet/solve.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

constexpr double kNoDifference = 1e-9;
/// A food without a limit: of no food more a day than so many whole bowls of the reference.
constexpr double kMostBowls = 10.0;

std::size_t at(Index i) {
  return static_cast<std::size_t>(i);
}

class ModelBuilder {
 public:
  explicit ModelBuilder(const RotationProblem& problem) : base_(problem.base), rules_(problem.rules) {
    model_.days = rules_.days;
    model_.foods = static_cast<Index>(base_.foods.size());
    mostOfAny_ = kMostBowls * gramsOf(base_, referenceDiet(base_)).sum();
  }

  BuiltModel build() {
    writeCells();
    writeFrequency();
    writeCounts();
    writeZones();
    writeWishes();
    writeObjective();
    if (impossible_.empty()) impossible_ = impossibleByCounting(model_, base_.foods);
    return {std::move(model_), std::move(impossible_)};
  }

 private:
  [[nodiscard]] Index foodOf(const std::string& id) const {
    const auto found = std::ranges::find(base_.foods, id, &DietFood::id);
    if (found == base_.foods.end()) throw std::invalid_argument("unknown-food: " + id);
    return found - base_.foods.begin();
  }
  [[nodiscard]] Index dayOf(int day) const {
    if (day < 0 || day >= rules_.days) throw std::invalid_argument(fmt::format("unknown-day: {}", day + 1));
    return day;
  }
  [[nodiscard]] std::vector<Index> membersOf(const FoodSelection& selection) const {
    for (const std::string& id : selection.foods) static_cast<void>(foodOf(id));
    std::vector<Index> members;
    for (Index j = 0; j < model_.foods; ++j)
      if (selection.has(base_.foods[at(j)])) members.push_back(j);
    return members;
  }

  void writeCells() {
    model_.cells.assign(at(model_.days * model_.foods), {});
    model_.extra = solver::RowMatrix::Zero(model_.days, model_.foods);
    model_.isOver.assign(at(model_.days), 0);
    model_.step = Eigen::VectorXd::Zero(model_.foods);
    model_.mostGrams = Eigen::VectorXd::Constant(model_.foods, solver::kInfinity);
    for (Index j = 0; j < model_.foods; ++j) writeLimits(j);
    for (const DaysOff& off : rules_.off) takeAway(off);
    for (const Stock& stock : rules_.stock)
      if (stock.most) model_.mostGrams[foodOf(stock.food)] = stock.most->value();
    for (const LockedCell& locked : rules_.locked) lock(locked);
    for (const FedDay& fed : rules_.fed) writeFed(fed);
    model_.isOpen.assign(at(model_.days), 0);
    for (Index d = 0; d < model_.days; ++d)
      for (Index j = 0; j < model_.foods; ++j)
        if (!model_.isOver[at(d)] && model_.cell(d, j).mayBeFed()) model_.isOpen[at(d)] = 1;
  }

  void writeLimits(Index j) {
    const DietFood& food = base_.foods[at(j)];
    if (base_.wholeSteps) model_.step[j] = std::max(0.0, food.scaleStep.value());
    RotationCell cell{.least = food.min.value(),
                      .most = food.max ? food.max->value() : mostOfAny_,
                      .must = food.min.value() > 0.0,
                      .isFixed = false};
    for (const Portion& portion : rules_.portions) {
      if (!portion.of.has(food) || cell.most <= 0.0) continue;
      cell.least = portion.min.value();
      if (portion.max) cell.most = portion.max->value();
      cell.must = false;
    }
    const double step = model_.step[j];
    if (step > 0.0) {
      cell.least = std::max(step, std::ceil(cell.least / step - kNoDifference) * step);
      cell.most = std::floor(cell.most / step + kNoDifference) * step;
    }
    if (cell.most < cell.least) cell.most = 0.0;
    for (Index d = 0; d < model_.days; ++d) model_.cell(d, j) = cell;
  }

  void takeAway(const DaysOff& off) {
    const std::vector<Index> members = membersOf(off.of);
    for (const int day : off.days)
      for (const Index j : members) model_.cell(dayOf(day), j) = {};
  }

  /// A food of which nothing may be given stays out, whatever is locked.
  void lock(const LockedCell& locked) {
    const Index food = foodOf(locked.food);
    const std::optional<quantity::Grams>& most = base_.foods[at(food)].max;
    if (most && most->value() <= 0.0 && locked.grams.value() > 0.0 && impossible_.empty())
      impossible_ = fmt::format("locked: {} day {}: may not be given", locked.food, locked.day + 1);
    fix(dayOf(locked.day), food, locked.grams.value());
  }

  void fix(Index day, Index food, double grams) {
    model_.cell(day, food) = {.least = grams, .most = grams, .must = grams > 0.0, .isFixed = true};
  }

  /// What was eaten counts as the grams offered of which so much is eaten.
  void writeFed(const FedDay& fed) {
    const Index d = dayOf(fed.day);
    if (fed.fed.size() != base_.foods.size() || (fed.eaten && fed.eaten->size() != base_.foods.size()))
      throw std::invalid_argument(fmt::format("fed-day: {}", fed.day + 1));
    model_.isOver[at(d)] = 1;
    for (Index j = 0; j < model_.foods; ++j) {
      const double grams = fed.fed[at(j)].value();
      fix(d, j, grams);
      const double fraction = base_.foods[at(j)].eatenFraction;
      if (fed.eaten && fraction > 0.0) model_.extra(d, j) = (*fed.eaten)[at(j)].value() / fraction - grams;
    }
  }

  void writeFrequency() {
    model_.longestRun.assign(at(model_.foods), rules_.days);
    model_.leastDays.assign(at(model_.foods), 0);
    model_.mostDays.assign(at(model_.foods), rules_.days);
    for (const FoodFrequency& rule : rules_.frequency) {
      for (const Index j : membersOf(rule.of)) {
        if (rule.longestRun) model_.longestRun[at(j)] = *rule.longestRun;
        if (rule.leastDays) model_.leastDays[at(j)] = *rule.leastDays;
        if (rule.mostDays) model_.mostDays[at(j)] = *rule.mostDays;
      }
    }
  }

  void writeCounts() {
    model_.dayCounts.assign(at(model_.days), {});
    for (const ChoiceRule& choice : base_.choices)
      addCount({.id = choice.group,
                .of = {.group = choice.group},
                .atLeast = choice.atLeast,
                .atMost = choice.atMost,
                .minEach = choice.minEach,
                .days = {}});
    for (const DayStructure& structure : rules_.structure) addCount(structure);
    addKitchen();
  }

  void addCount(const DayStructure& rule) {
    const std::vector<Index> members = membersOf(rule.of);
    for (Index d = 0; d < model_.days; ++d) {
      const bool isMeant =
          !rule.days || std::ranges::find(*rule.days, static_cast<int>(d)) != rule.days->end();
      if (!isMeant || !model_.isOpen[at(d)]) continue;
      int available = 0;
      for (const Index j : members) {
        RotationCell& cell = model_.cell(d, j);
        if (!cell.isFixed && cell.mayBeFed()) raiseLeast(cell, rule.minEach.value(), model_.step[j]);
        available += cell.mayBeFed() ? 1 : 0;
      }
      if (available < rule.atLeast && impossible_.empty())
        impossible_ = fmt::format("structure: {} day {}: {} of {}", rule.id, d + 1, available, rule.atLeast);
      const int most = std::min(rule.atMost.value_or(available), available);
      model_.dayCounts[at(d)].push_back({rule.id, members, rule.atLeast, most});
    }
  }

  static void raiseLeast(RotationCell& cell, double least, double step) {
    if (step > 0.0) least = std::ceil(least / step - kNoDifference) * step;
    cell.least = std::max(cell.least, least);
    if (cell.most < cell.least) cell = {};  // of no day at all: no least may stand for it
  }

  void addKitchen() {
    if (!rules_.kitchen.mostFoods) return;
    for (Index d = 0; d < model_.days; ++d) {
      if (!model_.isOpen[at(d)]) continue;
      DayCount count{"kitchen", {}, 0, *rules_.kitchen.mostFoods};
      for (Index j = 0; j < model_.foods; ++j)
        if (!isAtHand(d, base_.foods[at(j)].id)) count.members.push_back(j);
      model_.dayCounts[at(d)].push_back(std::move(count));
    }
  }

  [[nodiscard]] bool isAtHand(Index day, const std::string& food) const {
    return std::ranges::any_of(rules_.kitchen.atHand, [&](const KitchenRule::AtHand& atHand) {
      return atHand.day == day && std::ranges::find(atHand.foods, food) != atHand.foods.end();
    });
  }

  [[nodiscard]] ZoneRows rowsOf(const Zones& zones) const {
    const BalanceProblem zoned = zonedProblem(base_, zones);
    const Formulation formulation = formulate(zoned, measuresOf(zoned), referenceDiet(zoned));
    return {formulation.program.rows, formulation.program.rowLower, formulation.program.rowUpper,
            formulation.program.price};
  }

  void writeZones() {
    model_.period = rowsOf(rules_.period);
    model_.daily = rowsOf(rules_.daily);
  }

  void writeWishes() {
    for (const VarietyWish& wish : rules_.variety) {
      model_.variety.push_back(wish);
      model_.varietyMembers.push_back(membersOf(wish.of));
    }
    for (const Stock& stock : rules_.stock)
      if (stock.useUp && stock.useUp->value() > 0.0)
        model_.useUp.push_back({foodOf(stock.food), stock.useUp->value(), dayOf(stock.by)});
  }

  void writeObjective() {
    const Diet reference = referenceDiet(base_);
    const Formulation formulation = formulate(base_, measuresOf(base_), reference);
    model_.isDistance = base_.objective.kind == Objective::Kind::Closest;
    model_.isNegated = base_.objective.kind == Objective::Kind::Highest;
    model_.centre = gramsOf(base_, reference);
    model_.distance = distanceUnits(model_.centre);
    model_.cost = formulation.program.cost;
  }

  const BalanceProblem& base_;
  const RotationRules& rules_;
  RotationModel model_;
  double mostOfAny_ = 0.0;
  std::string impossible_;
};

}  // namespace

bool FoodSelection::has(const DietFood& food) const {
  if (isAll()) return true;
  if (!group.empty() && food.group == group) return true;
  return std::ranges::find(foods, food.id) != foods.end();
}

ZoneRows::Missed ZoneRows::missed(const Eigen::VectorXd& activity) const {
  Missed sum;
  for (Index i = 0; i < activity.size(); ++i) {
    const double by = std::max({0.0, lower[i] - activity[i], activity[i] - upper[i]});
    if (by <= 0.0) continue;
    if (price[i] < solver::kInfinity)
      sum.soft += price[i] * by;
    else
      sum.hard += by;
  }
  return sum;
}

bool PlanValue::isBetterThan(const PlanValue& other) const {
  constexpr double kSame = 1e-10;
  const double PlanValue::*const inOrder[] = {&PlanValue::broken, &PlanValue::period, &PlanValue::daily,
                                              &PlanValue::wishes, &PlanValue::objective};
  for (const auto value : inOrder) {
    const double slack = kSame * std::max(1.0, std::abs(other.*value));
    if (this->*value < other.*value - slack) return true;
    if (this->*value > other.*value + slack) return false;
  }
  return false;
}

Eigen::VectorXd meanDay(const RotationModel& model, const solver::RowMatrix& grams) {
  return (grams + model.extra).colwise().sum().transpose() / static_cast<double>(model.days);
}

double wishesMissed(const RotationModel& model, const solver::RowMatrix& grams) {
  double missed = 0.0;
  for (std::size_t v = 0; v < model.variety.size(); ++v) {
    int different = 0;
    for (const Index j : model.varietyMembers[v]) different += (grams.col(j).array() > 0.0).any() ? 1 : 0;
    missed += model.variety[v].weight * std::max(0, model.variety[v].wanted - different);
  }
  for (const RotationModel::UseUp& stock : model.useUp) {
    const double used = grams.col(stock.food).head(stock.by + 1).sum();
    missed += std::max(0.0, stock.grams - used) / stock.grams;
  }
  return missed;
}

double objectiveOf(const RotationModel& model, const solver::RowMatrix& grams) {
  const Eigen::VectorXd mean = grams.colwise().sum().transpose() / static_cast<double>(model.days);
  if (!model.isDistance) return model.cost.dot(mean);
  return ((mean - model.centre).array().abs() / model.distance.array()).sum();
}

PlanValue valueOf(const RotationModel& model, const solver::RowMatrix& grams) {
  const ZoneRows::Missed over = model.period.missed(model.period.rows * meanDay(model, grams));
  PlanValue value{.broken = over.hard, .period = over.soft};
  for (Index d = 0; d < model.days; ++d) {
    if (!model.isOpen[at(d)]) continue;
    const ZoneRows::Missed day = model.daily.missed(model.daily.rows * grams.row(d).transpose());
    value.broken += day.hard;
    value.daily += day.soft / static_cast<double>(model.days);
  }
  value.wishes = wishesMissed(model, grams);
  value.objective = objectiveOf(model, grams);
  return value;
}

BuiltModel buildModel(const RotationProblem& problem) {
  return ModelBuilder(problem).build();
}

}  // namespace tarebowl::diet
