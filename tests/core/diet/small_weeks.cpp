// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/diet/small_weeks.h"

#include "core/diet/rotation_check.h"
#include "core/diet/solve.h"
#include "tests/core/diet/bowls.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet::testing {
namespace {

using quantity::Basis;
using quantity::Grams;
using quantity::Unit;

double weekShare(const RotationProblem& problem) {
  return 1.0 / problem.rules.days;
}

bool isOver(const RotationProblem& problem, int day) {
  return std::ranges::find(problem.rules.fed, day, &FedDay::day) != problem.rules.fed.end();
}

/// Eaten where that is known, as the grams of which so much is eaten.
Diet counted(const RotationProblem& problem, int day, const Diet& grams) {
  const auto fed = std::ranges::find(problem.rules.fed, day, &FedDay::day);
  if (fed == problem.rules.fed.end() || !fed->eaten) return grams;
  Diet diet;
  for (std::size_t j = 0; j < grams.size(); ++j)
    diet.emplace_back((*fed->eaten)[j].value() / problem.base.foods[j].eatenFraction);
  return diet;
}

bool isBetter(const LiteralWeek& a, const LiteralWeek& b) {
  constexpr double kSame = 1e-10;
  for (const auto value :
       {&LiteralWeek::period, &LiteralWeek::daily, &LiteralWeek::wishes, &LiteralWeek::objective}) {
    if (a.*value < b.*value - kSame) return true;
    if (a.*value > b.*value + kSame) return false;
  }
  return false;
}

class EveryPlan {
 public:
  explicit EveryPlan(const RotationProblem& problem) : problem_(problem) {
    plan_.days.assign(std::size_t(problem.rules.days), Diet(problem.base.foods.size(), Grams(0)));
    for (const FedDay& fed : problem.rules.fed) plan_.days[std::size_t(fed.day)] = fed.fed;
  }

  BestWeek best() {
    goOn(0, 0);
    return best_;
  }

 private:
  void goOn(int day, std::size_t food) {
    if (day == problem_.rules.days) return judge();
    if (food == problem_.base.foods.size()) {
      if (mayStand(day)) goOn(day + 1, 0);
      return;
    }
    if (isOver(problem_, day)) return goOn(day + 1, 0);
    const DietFood& of = problem_.base.foods[food];
    for (double grams = 0.0; grams <= of.max->value() + 1e-9; grams += of.scaleStep.value()) {
      plan_.days[std::size_t(day)][food] = Grams(grams);
      goOn(day, food + 1);
    }
    plan_.days[std::size_t(day)][food] = Grams(0);
  }

  /// Whether the day has as many foods as the structure wants, or none: other plans need not be gone through.
  [[nodiscard]] bool mayStand(int day) const {
    const Diet& grams = plan_.days[std::size_t(day)];
    if (isOver(problem_, day) || std::ranges::all_of(grams, [](Grams each) { return each.value() == 0.0; }))
      return true;
    return std::ranges::all_of(problem_.rules.structure, [&](const DayStructure& rule) {
      int used = 0;
      for (std::size_t j = 0; j < grams.size(); ++j)
        used += rule.of.has(problem_.base.foods[j]) && grams[j].value() > 0.0 ? 1 : 0;
      return used >= rule.atLeast && used <= rule.atMost.value_or(used);
    });
  }

  void judge() {
    Diet mean(problem_.base.foods.size(), Grams(0));
    plan_.dayBalances.clear();
    const BalanceProblem daily = zonedProblem(problem_.base, problem_.rules.daily);
    for (int day = 0; day < problem_.rules.days; ++day) {
      const Diet grams = counted(problem_, day, plan_.days[std::size_t(day)]);
      for (std::size_t j = 0; j < mean.size(); ++j) mean[j] += grams[j] * weekShare(problem_);
      plan_.dayBalances.push_back(balance(daily, grams));
    }
    plan_.periodBalance = balance(zonedProblem(problem_.base, problem_.rules.period), mean);
    if (brokenRotationRule(problem_, plan_)) return;
    ++best_.plans;
    const LiteralWeek value = readLiterally(problem_, plan_.days);
    if (best_.exists && !isBetter(value, best_.value)) return;
    best_.exists = true;
    best_.value = value;
  }

  const RotationProblem& problem_;
  RotationPlan plan_;
  BestWeek best_;
};

}  // namespace

RotationProblem threeLeaves(int days) {
  const auto leaf = [](std::string id, double calcium, double cost) {
    DietFood food = makeFood(std::move(id), "leaf", {{"WATER", 90.0}, {"CA", calcium}, {"P", 100.0}});
    food.max = Grams(20);
    food.scaleStep = Grams(10);
    food.costPerKg = cost;
    return food;
  };
  RotationProblem problem;
  problem.base.foods = {leaf("a", 100, 1), leaf("b", 200, 2), leaf("c", 300, 4)};
  DietFood powder = makeFood("powder", "mineral", {{"WATER", 0.0}, {"CA", 10'000.0}, {"P", 0.0}});
  powder.max = Grams(1);
  powder.costPerKg = 10;
  problem.base.foods.push_back(powder);
  problem.base.objective.kind = Objective::Kind::LowestCost;
  problem.rules.days = days;
  problem.rules.structure.push_back(
      {.id = "leaf", .of = {.group = "leaf"}, .atLeast = 1, .atMost = 1, .minEach = Grams(10), .days = {}});
  return problem;
}

RotationProblem drawnWeek(std::mt19937_64& random) {
  const auto below = [&](std::uint64_t count) { return static_cast<int>(random() % count); };
  RotationProblem problem = threeLeaves(2 + below(2));
  problem.base.targets = {target("CA", {.min = 20.0 + below(60), .max = 90.0}, Unit::Milligram, Basis::Day),
                          target("P", {.max = 8.0 + below(12)}, Unit::Milligram, Basis::Day)};
  if (below(3) == 0) problem.base.objective.kind = Objective::Kind::Closest;
  problem.rules.daily.widen = 0.1 * below(8);
  if (below(2) == 0)
    problem.rules.frequency.push_back(
        {.of = {.group = "leaf"}, .longestRun = 1, .leastDays = {}, .mostDays = {}});
  if (below(3) == 0)
    problem.rules.frequency.push_back(
        {.of = {.foods = {"a"}}, .longestRun = {}, .leastDays = 1, .mostDays = {}});
  if (below(3) == 0) problem.rules.variety.push_back({.of = {}, .wanted = 2 + below(3)});
  if (below(3) == 0) problem.rules.off.push_back({.of = {.foods = {"b"}}, .days = {below(2)}});
  if (below(4) == 0) problem.rules.stock.push_back({.food = "c", .most = {}, .useUp = Grams(30), .by = 1});
  if (below(4) == 0) problem.rules.kitchen.mostFoods = 1;
  if (below(4) == 0) problem.rules.fed.push_back({.day = 0, .fed = grams({0, 10, 0, 1}), .eaten = {}});
  if (below(4) == 0) problem.base.targets[1].hard = true;
  return problem;
}

LiteralWeek readLiterally(const RotationProblem& problem, const std::vector<Diet>& days) {
  const RotationRules& rules = problem.rules;
  const std::size_t foods = problem.base.foods.size();
  LiteralWeek value;
  Diet eaten(foods, Grams(0));
  Diet offered(foods, Grams(0));
  const BalanceProblem daily = zonedProblem(problem.base, rules.daily);
  for (int day = 0; day < rules.days; ++day) {
    const Diet& grams = days[std::size_t(day)];
    const Diet counts = counted(problem, day, grams);
    const bool isFasting = std::ranges::all_of(grams, [](Grams each) { return each.value() == 0.0; });
    for (std::size_t j = 0; j < foods; ++j) {
      eaten[j] += counts[j] * weekShare(problem);
      offered[j] += grams[j] * weekShare(problem);
    }
    if (!isOver(problem, day) && !isFasting)
      value.daily += balance(daily, grams).shortfall * weekShare(problem);
  }
  value.period = balance(zonedProblem(problem.base, rules.period), eaten).shortfall;
  for (const VarietyWish& wish : rules.variety) {
    int different = 0;
    for (std::size_t j = 0; j < foods; ++j)
      if (wish.of.has(problem.base.foods[j]) && offered[j].value() > 0.0) ++different;
    value.wishes += wish.weight * std::max(0, wish.wanted - different);
  }
  for (const Stock& stock : rules.stock) {
    if (!stock.useUp) continue;
    double used = 0.0;
    for (std::size_t j = 0; j < foods; ++j)
      for (int day = 0; day <= stock.by; ++day)
        if (problem.base.foods[j].id == stock.food) used += days[std::size_t(day)][j].value();
    value.wishes += std::max(0.0, 1.0 - used / stock.useUp->value());
  }
  const Diet reference = referenceDiet(problem.base);
  double all = 0.0;
  for (const Grams& grams : reference) all += grams.value();
  for (std::size_t j = 0; j < foods; ++j) {
    if (problem.base.objective.kind == Objective::Kind::LowestCost)
      value.objective += offered[j].value() / 1000.0 * problem.base.foods[j].costPerKg.value_or(0.0);
    else
      value.objective +=
          std::abs(offered[j].value() - reference[j].value()) / std::max(reference[j].value(), 0.05 * all);
  }
  return value;
}

BestWeek bestOfAll(const RotationProblem& problem) {
  return EveryPlan(problem).best();
}

}  // namespace tarebowl::diet::testing
