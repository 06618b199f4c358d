// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_check.h"

#include "core/diet/scale_step.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

using Broken = std::optional<std::string>;

constexpr double kRounding = 1e-6;

class RotationCheck {
 public:
  RotationCheck(const RotationProblem& problem, const RotationPlan& plan)
      : base_(problem.base), rules_(problem.rules), plan_(plan) {}

  Broken broken() const {
    if (plan_.days.size() != static_cast<std::size_t>(rules_.days)) return "days";
    for (int day = 0; day < rules_.days; ++day) {
      if (plan_.days[std::size_t(day)].size() != base_.foods.size()) return fmt::format("day {}", day + 1);
      if (isOver(day)) continue;
      if (auto why = brokenOn(day)) return why;
    }
    for (std::size_t food = 0; food < base_.foods.size(); ++food)
      if (auto why = brokenFrequency(food)) return why;
    if (auto why = brokenStock()) return why;
    return brokenZone();
  }

 private:
  [[nodiscard]] double grams(int day, std::size_t food) const {
    return plan_.days[std::size_t(day)][food].value();
  }
  [[nodiscard]] bool isFed(int day, std::size_t food) const { return grams(day, food) > 0.0; }
  [[nodiscard]] bool isOver(int day) const {
    return std::ranges::find(rules_.fed, day, &FedDay::day) != rules_.fed.end();
  }
  [[nodiscard]] const LockedCell* lockOn(int day, std::size_t food) const {
    const LockedCell* found = nullptr;
    for (const LockedCell& locked : rules_.locked)
      if (locked.day == day && locked.food == base_.foods[food].id) found = &locked;
    return found;
  }
  [[nodiscard]] bool isOff(int day, std::size_t food) const {
    return std::ranges::any_of(rules_.off, [&](const DaysOff& off) {
      return off.of.has(base_.foods[food]) && std::ranges::find(off.days, day) != off.days.end();
    });
  }
  [[nodiscard]] bool isFasting(int day) const {
    for (std::size_t food = 0; food < base_.foods.size(); ++food) {
      const LockedCell* lock = lockOn(day, food);
      const bool isNone = base_.foods[food].max && base_.foods[food].max->value() <= 0.0;
      if (lock ? lock->grams.value() > 0.0 : !isNone && !isOff(day, food)) return false;
    }
    return true;
  }

  [[nodiscard]] Broken brokenOn(int day) const {
    for (std::size_t food = 0; food < base_.foods.size(); ++food)
      if (auto why = brokenCell(day, food)) return why;
    if (isFasting(day)) return std::nullopt;
    for (const ChoiceRule& rule : base_.choices)
      if (auto why = brokenCount(day, {.id = rule.group,
                                       .of = {.group = rule.group},
                                       .atLeast = rule.atLeast,
                                       .atMost = rule.atMost,
                                       .minEach = rule.minEach,
                                       .days = {}}))
        return why;
    for (const DayStructure& rule : rules_.structure)
      if (auto why = brokenCount(day, rule)) return why;
    return brokenKitchen(day);
  }

  [[nodiscard]] Broken brokenCell(int day, std::size_t food) const {
    const DietFood& of = base_.foods[food];
    const double amount = grams(day, food);
    const auto because = [&](std::string_view what) {
      return fmt::format("{}: {} day {}: {} g", what, of.id, day + 1, amount);
    };
    if (const LockedCell* lock = lockOn(day, food))
      return std::abs(lock->grams.value() - amount) > kRounding ? Broken(because("locked")) : std::nullopt;
    double least = of.min.value();
    std::optional<quantity::Grams> most = of.max;
    bool isDaily = least > 0.0;
    for (const Portion& portion : rules_.portions) {
      if (!portion.of.has(of) || (of.max && of.max->value() <= 0.0)) continue;
      least = portion.min.value();
      if (portion.max) most = portion.max;
      isDaily = false;
    }
    if (amount <= 0.0) return isDaily && !isOff(day, food) ? Broken(because("least")) : std::nullopt;
    if (isOff(day, food)) return because("off");
    if (amount < least - kRounding) return because("least");
    if (most && amount > most->value() + kRounding) return because("most");
    if (base_.wholeSteps &&
        std::abs(nearestOnScale(plan_.days[std::size_t(day)][food], of.scaleStep).value() - amount) >
            kRounding)
      return because("scale");
    return std::nullopt;
  }

  [[nodiscard]] Broken brokenCount(int day, const DayStructure& rule) const {
    if (rule.days && std::ranges::find(*rule.days, day) == rule.days->end()) return std::nullopt;
    int used = 0;
    for (std::size_t food = 0; food < base_.foods.size(); ++food) {
      if (!rule.of.has(base_.foods[food]) || !isFed(day, food)) continue;
      ++used;
      if (!lockOn(day, food) && grams(day, food) < rule.minEach.value() - kRounding)
        return fmt::format("portion: {} day {}", base_.foods[food].id, day + 1);
    }
    if (used >= rule.atLeast && (!rule.atMost || used <= *rule.atMost)) return std::nullopt;
    return fmt::format("structure: {} day {}: {}", rule.id, day + 1, used);
  }

  [[nodiscard]] Broken brokenKitchen(int day) const {
    if (!rules_.kitchen.mostFoods) return std::nullopt;
    int different = 0;
    for (std::size_t food = 0; food < base_.foods.size(); ++food) {
      const bool atHand = std::ranges::any_of(rules_.kitchen.atHand, [&](const KitchenRule::AtHand& hand) {
        return hand.day == day && std::ranges::find(hand.foods, base_.foods[food].id) != hand.foods.end();
      });
      different += isFed(day, food) && !atHand ? 1 : 0;
    }
    if (different <= *rules_.kitchen.mostFoods) return std::nullopt;
    return fmt::format("kitchen: day {}: {}", day + 1, different);
  }

  [[nodiscard]] Broken brokenFrequency(std::size_t food) const {
    FoodFrequency rule;
    for (const FoodFrequency& each : rules_.frequency) {
      if (!each.of.has(base_.foods[food])) continue;
      if (each.longestRun) rule.longestRun = each.longestRun;
      if (each.leastDays) rule.leastDays = each.leastDays;
      if (each.mostDays) rule.mostDays = each.mostDays;
    }
    int fed = 0;
    int planned = 0;
    int run = 0;
    bool runIsPlanned = false;
    for (int day = 0; day < rules_.days; ++day) {
      if (!isFed(day, food)) {
        run = 0;
        runIsPlanned = false;
        continue;
      }
      ++fed;
      ++run;
      planned += isOver(day) ? 0 : 1;
      runIsPlanned = runIsPlanned || !isOver(day);
      if (rule.longestRun && run > *rule.longestRun && runIsPlanned)
        return fmt::format("run: {} day {}", base_.foods[food].id, day + 1);
    }
    const bool tooRare = rule.leastDays && fed < *rule.leastDays;
    const bool tooOften = rule.mostDays && fed > *rule.mostDays && planned > 0;
    if (!tooRare && !tooOften) return std::nullopt;
    return fmt::format("often: {}: {} days", base_.foods[food].id, fed);
  }

  [[nodiscard]] Broken brokenStock() const {
    for (const Stock& stock : rules_.stock) {
      if (!stock.most) continue;
      const auto food = static_cast<std::size_t>(std::ranges::find(base_.foods, stock.food, &DietFood::id) -
                                                 base_.foods.begin());
      double sum = 0.0;
      double planned = 0.0;
      for (int day = 0; day < rules_.days; ++day) {
        sum += grams(day, food);
        planned += isOver(day) ? 0.0 : grams(day, food);
      }
      if (planned > 0.0 && sum > stock.most->value() + kRounding)
        return fmt::format("stock: {}: {} g", stock.food, sum);
    }
    return std::nullopt;
  }

  /// Hard targets, ratios and shares of the period and of the days that are planned.
  [[nodiscard]] Broken brokenZone() const {
    const BalanceProblem period = zonedProblem(base_, rules_.period);
    if (auto id = missedHardRule(period, plan_.periodBalance)) return "period: " + *id;
    const BalanceProblem daily = zonedProblem(base_, rules_.daily);
    for (int day = 0; day < rules_.days; ++day) {
      if (isOver(day) || isFasting(day)) continue;
      if (auto id = missedHardRule(daily, plan_.dayBalances[std::size_t(day)]))
        return fmt::format("day {}: {}", day + 1, *id);
    }
    return std::nullopt;
  }
  static Broken missedHardRule(const BalanceProblem& zoned, const Balance& balance) {
    for (const TargetBalance& line : balance.targets) {
      const bool hard = line.kind == TargetKind::Nutrient ? zoned.targets[line.index].hard
                        : line.kind == TargetKind::Ratio  ? zoned.ratios[line.index].hard
                                                          : zoned.shares[line.index].hard;
      if (hard && line.shortfall > kRounding) return line.id;
    }
    return std::nullopt;
  }

  const BalanceProblem& base_;
  const RotationRules& rules_;
  const RotationPlan& plan_;
};

}  // namespace

std::optional<std::string> brokenRotationRule(const RotationProblem& problem, const RotationPlan& plan) {
  return RotationCheck(problem, plan).broken();
}

}  // namespace tarebowl::diet
