// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/problem.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

/// A rotation: another bowl every day within a structure, balanced over the period.
namespace tarebowl::diet {

/// Foods that a rule speaks of: a group, or foods by id; neither: all.
struct FoodSelection {
  std::string group{};
  std::vector<std::string> foods{};
  [[nodiscard]] bool isAll() const { return group.empty() && foods.empty(); }
  [[nodiscard]] bool has(const DietFood& food) const;
  bool operator==(const FoodSelection&) const = default;
};

/// Days count from 0, the first of the period.
using DayList = std::vector<int>;

/// "Two cooked vegetables, 5 g or more of each", every day or on some days. Always hard; a choice of the
/// balance problem holds every day beside these. A day on which nothing is fed is free of it.
struct DayStructure {
  std::string id;
  FoodSelection of;
  int atLeast = 0;
  std::optional<int> atMost;
  quantity::Grams minEach{0};
  std::optional<DayList> days;  ///< nothing: every day
  bool operator==(const DayStructure&) const = default;
};

/// How much wider than the target a zone is: min (1 - widen) to max (1 + widen). Nothing: no such zone.
struct ZoneWidth {
  std::string target;  ///< id of a target, ratio or share
  std::optional<double> widen;
  bool operator==(const ZoneWidth&) const = default;
};
struct Zones {
  double widen = 0.0;
  std::vector<ZoneWidth> of;  ///< where it differs
  bool operator==(const Zones&) const = default;
};

/// Each of these foods at most so many days running, on so many days of the period.
struct FoodFrequency {
  FoodSelection of;
  std::optional<int> longestRun;
  std::optional<int> leastDays;
  std::optional<int> mostDays;
  bool operator==(const FoodFrequency&) const = default;
};

/// So many different of these foods over the period; soft: what lacks counts weight for each food.
struct VarietyWish {
  FoodSelection of;
  int wanted = 0;
  double weight = 1.0;
  bool operator==(const VarietyWish&) const = default;
};

/// Not fed on these days: a delivery that does not come, a season that is over; all foods: a fasting day.
struct DaysOff {
  FoodSelection of;
  DayList days;
  bool operator==(const DaysOff&) const = default;
};

/// What there is of a food, per animal. useUp is soft: what is left of it after day `by` counts as a share.
struct Stock {
  std::string food;
  std::optional<quantity::Grams> most;
  std::optional<quantity::Grams> useUp;
  int by = 0;  ///< the last day on which it is used up
  bool operator==(const Stock&) const = default;
};

/// The grams of these foods on a day on which they are fed, instead of the problem's limits.
struct Portion {
  FoodSelection of;
  quantity::Grams min{0};
  std::optional<quantity::Grams> max;
  bool operator==(const Portion&) const = default;
};

/// Few different foods a day: those that the section's kitchen handles for others that day do not count.
struct KitchenRule {
  std::optional<int> mostFoods;
  struct AtHand {
    int day = 0;
    std::vector<std::string> foods;
    bool operator==(const AtHand&) const = default;
  };
  std::vector<AtHand> atHand;
  bool operator==(const KitchenRule&) const = default;
};

/// Between what is bought and what is offered: `edible` of it is left once it is trimmed, of which `waste`
/// is lost.
struct PurchaseLoss {
  FoodSelection of;
  double edible = 1.0;  ///< 0 < edible <= 1
  double waste = 0.0;   ///< 0 <= waste < 1
  bool operator==(const PurchaseLoss&) const = default;
};

struct LockedCell {
  int day = 0;
  std::string food;
  quantity::Grams grams{0};  ///< per animal; 0: not fed
  bool operator==(const LockedCell&) const = default;
};

/// A day that is over. Balance counts what was eaten where that is known, kitchen and counts what was fed.
struct FedDay {
  int day = 0;
  Diet fed;                   ///< in the order of the problem's foods
  std::optional<Diet> eaten;  ///< grams that were taken
  bool operator==(const FedDay&) const = default;
};

struct RotationRules {
  int days = 7;
  std::vector<DayStructure> structure;
  Zones daily{0.5, {}};
  Zones period{0.0, {}};
  std::vector<FoodFrequency> frequency;  ///< a later one goes before an earlier one
  std::vector<VarietyWish> variety;
  std::vector<DaysOff> off;
  std::vector<Stock> stock;
  std::vector<Portion> portions;  ///< a later one goes before an earlier one
  KitchenRule kitchen;
  std::vector<PurchaseLoss> purchase;  ///< a later one goes before an earlier one
  std::vector<LockedCell> locked;
  std::vector<FedDay> fed;
  bool operator==(const RotationRules&) const = default;
};

struct RotationProblem {
  BalanceProblem base;  ///< a confidence is not used: the period's zones are judged at the mean
  RotationRules rules;
  bool operator==(const RotationProblem&) const = default;
};

struct RotationOptions {
  std::chrono::milliseconds deadline{5'000};
  std::int64_t nodes = 200'000;  ///< of all searches together; where these or the rounds end it, not the
                                 ///< time, the answer depends on the seed alone, whichever thread was faster
  int rounds = 60;               ///< so many plans in a row that better nothing end the search
  std::uint64_t seed = 1;
  double enoughGap = 0.0;  ///< a relative gap at which the search ends
  /// The days of a plan from before, from which no more is changed than rules, zones and wishes ask for.
  /// Where neither the foods of the rules that are broken nor single days and pairs keep the rules, or they
  /// leave more short than need be (wishes aside), every day is planned anew, as where this is empty.
  std::vector<Diet> start{};
  std::stop_token stop{};
};

/// What a plan reaches in one of the questions, asked in this order, and what no plan can better that is as
/// good in the questions before.
struct Reached {
  double value = 0.0;
  double bound = 0.0;
  /// Relative to the value; 0 where it is proven best.
  [[nodiscard]] double gap() const;
  bool operator==(const Reached&) const = default;
};

enum class RotationStatus { Balanced, Compromise, Impossible, Stopped, Failed };
[[nodiscard]] std::string_view symbolOf(RotationStatus status);

struct RotationPlan {
  RotationStatus status = RotationStatus::Failed;
  std::string reason{};  ///< a code word and facts: which rule cannot hold, why there is no plan
  std::vector<Diet> days{};
  Reached period{};  ///< shortfall of the mean day against the period's zones
  Reached daily{};   ///< shortfall of the days against the daily zones, per day of the period
  Reached wishes{};  ///< foods that lack to the wanted variety, shares of stock that are left
  /// Closest: sum over foods of |mean day - reference| / d, d as in the problem format; lowest cost: per
  /// animal and day; lowest and highest: the nutrient per animal and day.
  Reached objective{};
  Balance periodBalance{};  ///< of the mean day, against the period's zones
  std::vector<Balance> dayBalances{};
  std::int64_t nodes = 0;
  std::chrono::microseconds firstPlan{0};  ///< until there was a plan that keeps every hard rule
  std::chrono::microseconds time{0};
};

/// The balance problem with its bounds widened; a rule without a zone is left without bounds that bind.
[[nodiscard]] BalanceProblem zonedProblem(const BalanceProblem& base, const Zones& zones);

/// A plan for the days that are not over: least shortfall over the period, then least on the days, then
/// variety, then the objective. Pure: no I/O, safe on any thread.
[[nodiscard]] RotationPlan rotate(const RotationProblem& problem, const RotationOptions& options = {});

}  // namespace tarebowl::diet
