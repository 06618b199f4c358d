// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The ranking beside two readings that share none of its search: all grams of a grid tried with balance(),
// and each candidate solved by itself as an elastic program.
#include "core/diet/balance.h"
#include "core/diet/supply.h"
#include "core/diet/swap.h"
#include "core/diet/swap_best_first.h"
#include "core/diet/swap_frame.h"
#include "core/diet/swap_program.h"
#include "tests/core/diet/bowls.h"
#include "tests/core/diet/random_problem.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace tarebowl::diet {
namespace {

using namespace testing;
using quantity::Grams;

constexpr int kMostGrams = 60;
constexpr double kRounding = 1e-9;

/// A bowl in whole grams, one of its foods missing, and one to six other foods to take its place.
SwapRequest drawRequest() {
  SwapRequest request;
  request.problem = drawSensibleProblem();
  for (const Grams& amount : drawDiet(request.problem))
    request.approved.emplace_back(std::ceil(amount.value() / 4.0));
  const auto isUsed = [&](std::size_t food) { return request.approved[food] > Grams(0); };
  std::size_t missing = *rc::gen::inRange<std::size_t>(0, request.problem.foods.size());
  if (!isUsed(missing)) request.approved[missing] = Grams(10);
  request.missing = {missing};
  request.candidates = drawProblem().foods;
  for (DietFood& food : request.candidates) {
    food.id = "stock " + food.id;
    food.max = Grams(kMostGrams);
  }
  return request;
}

/// Each bound as a rule of its own, so that the balance says of each by how much it is missed.
BalanceProblem oneBoundARule(const BalanceProblem& problem) {
  const auto split = [](auto rules) {
    auto parted = rules;
    parted.clear();
    for (const auto& rule : rules)
      for (const bool isMin : {true, false}) {
        auto half = rule;
        (isMin ? half.max : half.min).reset();
        if (half.min || half.max) parted.push_back(half);
      }
    return parted;
  };
  BalanceProblem parted = problem;
  parted.targets = split(problem.targets);
  parted.ratios = split(problem.ratios);
  parted.shares = split(problem.shares);
  return parted;
}

/// The approved energy within 5 % of itself as a target of weight 1.
BalanceProblem withEnergyKept(const SwapRequest& request) {
  BalanceProblem problem = request.problem;
  double energy = 0.0;
  for (const Contribution& part : contributions(problem, request.approved, food::nutrients::energy()))
    energy += part.amount.value_or(0.0);
  if (energy > 0.0)
    problem.targets.push_back(target("ENERC", {.min = 0.95 * energy, .max = 1.05 * energy},
                                     quantity::Unit::Kilocalorie, quantity::Basis::Day));
  return problem;
}

/// Hard misses, shortfall and difference of a bowl, literally as Swap says.
class Literal {
 public:
  explicit Literal(const SwapRequest& request, std::size_t candidate)
      : request_(request), problem_(oneBoundARule(withEnergyKept(request))) {
    problem_.foods.push_back(request.candidates[candidate]);
    approved_ = request.approved;
    approved_.emplace_back(0.0);
    problem_.reference = approved_;
    before_ = balance(problem_, approved_);
    const SwapFrame frame(request);
    kept_ = frame.kept();
  }

  [[nodiscard]] SwapStanding at(double grams) const {
    Diet bowl = approved_;
    for (const std::size_t food : request_.missing) bowl[food] = Grams(0);
    bowl.back() = Grams(grams);
    SwapStanding standing;
    const Balance after = balance(problem_, bowl);
    std::size_t line = 0;
    const auto add = [&](const auto& rules) {
      for (const auto& rule : rules) {
        const double worse = std::max(0.0, after.targets[line].shortfall - before_.targets[line].shortfall);
        if (rule.hard)
          standing.hard += worse;
        else
          standing.shortfall += rule.weight * worse;
        ++line;
      }
    };
    add(problem_.targets);
    add(problem_.ratios);
    add(problem_.shares);
    double weights = 0.0;
    for (const KeptNutrient& nutrient : kept_) {
      const Eigen::VectorXd perGram = nutrientSupply(problem_, nutrient.nutrient).perGram;
      const double now = perGram.dot(gramsOf(problem_, bowl));
      const double then = perGram.dot(gramsOf(problem_, approved_));
      standing.difference += nutrient.weight * std::abs(now - then) / nutrient.unit;
      weights += nutrient.weight;
    }
    standing.difference /= weights;
    return standing;
  }

 private:
  const SwapRequest& request_;
  BalanceProblem problem_;
  Diet approved_;
  Balance before_;
  std::vector<KeptNutrient> kept_;
};

const Swap* swapWith(const SwapRanking& ranking, std::size_t candidate) {
  const auto found = std::ranges::find_if(
      ranking.singles, [&](const Swap& swap) { return swap.parts.front().candidate == candidate; });
  return found == ranking.singles.end() ? nullptr : &*found;
}

RC_GTEST_PROP(SwapProperties, TheBestGramsAreThoseOfAllGramsOfTheGrid, ()) {
  const SwapRequest request = drawRequest();
  const SwapRanking ranking = rankSwaps(request, {.pairs = SwapOptions::Pairs::Never, .threads = 1});
  const double most = SwapFrame(request).mostGrams();
  for (std::size_t candidate = 0; candidate < request.candidates.size(); ++candidate) {
    if (!request.candidates[candidate].composition.amountPer100g(food::nutrients::water())) continue;
    const Literal literal(request, candidate);
    std::vector<SwapStanding> allowed;
    for (int grams = 1; grams <= kMostGrams && grams <= std::max(1.0, most); ++grams)
      if (const SwapStanding standing = literal.at(grams); standing.hard <= kRounding)
        allowed.push_back(standing);
    const Swap* swap = swapWith(ranking, candidate);
    RC_ASSERT((swap != nullptr) == !allowed.empty());
    if (swap == nullptr) continue;
    const SwapStanding chosen = literal.at(swap->parts.front().grams.value());
    RC_ASSERT(chosen.hard <= 2 * kRounding);
    RC_ASSERT(std::abs(chosen.shortfall - swap->shortfall) <= kRounding * std::max(1.0, chosen.shortfall));
    RC_ASSERT(std::abs(chosen.difference - swap->difference) <= kRounding * std::max(1.0, chosen.difference));
    const double least = std::ranges::min(allowed, {}, &SwapStanding::shortfall).shortfall;
    RC_ASSERT(chosen.shortfall <= shortfallAllowed(least) + kRounding * std::max(1.0, least));
    for (const SwapStanding& other : allowed)
      if (other.shortfall <= least + kRounding / 2)
        RC_ASSERT(chosen.difference <= other.difference + kRounding * std::max(1.0, other.difference));
  }
}

RC_GTEST_PROP(SwapProperties, TheRankingIsThatOfEachCandidateSolvedByItself, ()) {
  SwapRequest request = drawRequest();
  request.problem.confidence.reset();  // tangents meet such a bound to 1e-8 only
  const SwapRanking ranking = rankSwaps(request, {.pairs = SwapOptions::Pairs::Never});
  const SwapFrame frame(request);
  const SwapColumns columns(frame);
  const SwapPrograms programs(frame, columns);
  std::vector<Swap> alone;
  for (std::size_t candidate = 0; candidate < request.candidates.size(); ++candidate) {
    if (!request.candidates[candidate].composition.amountPer100g(food::nutrients::water())) continue;
    const SwapRange range = rangeOf(frame, columns, candidate);
    if (auto swap = programs.nearest({&candidate, 1}, {&range, 1}, {})) alone.push_back(*swap);
  }
  std::ranges::stable_sort(
      alone, [](const Swap& a, const Swap& b) { return isNearer(standingOf(a), standingOf(b)); });
  RC_ASSERT(alone.size() == ranking.singles.size());
  for (std::size_t i = 0; i < alone.size(); ++i) {
    RC_ASSERT(std::abs(alone[i].shortfall - ranking.singles[i].shortfall) <= 1e-7);
    RC_ASSERT(std::abs(alone[i].difference - ranking.singles[i].difference) <=
              1e-6 * std::max(1.0, alone[i].difference));
  }
}

RC_GTEST_PROP(SwapProperties, LettingOthersMoveNeverMakesItWorseAndRanksAsEachAlone, ()) {
  SwapRequest request = drawRequest();
  request.problem.confidence.reset();
  const SwapOptions single{.pairs = SwapOptions::Pairs::Never, .most = 3};
  const SwapRanking held = rankSwaps(request, single);
  request.move = 0.2;
  const SwapRanking moved = rankSwaps(request, single);
  std::vector<Swap> alone;
  for (const DietFood& candidate : request.candidates) {
    SwapRequest one = request;
    one.candidates = {candidate};
    for (const Swap& swap : rankSwaps(one, single).singles) alone.push_back(swap);
  }
  std::ranges::stable_sort(
      alone, [](const Swap& a, const Swap& b) { return isNearer(standingOf(a), standingOf(b)); });
  RC_ASSERT(moved.singles.size() == std::min<std::size_t>(3, alone.size()));
  for (std::size_t i = 0; i < moved.singles.size(); ++i) {
    RC_ASSERT(std::abs(alone[i].shortfall - moved.singles[i].shortfall) <= 1e-7);
    if (i < held.singles.size()) RC_ASSERT(moved.singles[i].shortfall <= held.singles[i].shortfall + 1e-7);
  }
}

RC_GTEST_PROP(SwapProperties, TheThreadsDoNotMatter, ()) {
  SwapRequest request = drawRequest();
  const SwapRanking one = rankSwaps(request, {.threads = 1});
  const SwapRanking three = rankSwaps(request, {.threads = 3});
  RC_ASSERT(one.singles == three.singles);
  RC_ASSERT(one.pairs == three.pairs);
  RC_ASSERT(one.refused == three.refused);
}

RC_GTEST_PROP(SwapProperties, AFoodForItselfChangesNothing, ()) {
  SwapRequest request = drawRequest();
  const std::size_t missing = request.missing.front();
  request.candidates = {request.problem.foods[missing]};
  const SwapRanking ranking = rankSwaps(request, {.pairs = SwapOptions::Pairs::Never});
  RC_ASSERT(ranking.singles.size() == 1U);
  RC_ASSERT(ranking.singles.front().shortfall <= kRounding);
  RC_ASSERT(ranking.singles.front().difference <= kRounding);
}

/// Both foods on all grams of a small grid.
RC_GTEST_PROP(SwapProperties, APairIsTheBestOfAllPairsOfGrams, ()) {
  constexpr int kFew = 12;
  SwapRequest request = drawRequest();
  request.problem.confidence.reset();
  std::erase_if(request.candidates, [](const DietFood& food) {
    return !food.composition.amountPer100g(food::nutrients::water());
  });
  RC_PRE(request.candidates.size() >= 2U);
  request.candidates.resize(2);
  for (DietFood& food : request.candidates) food.max = Grams(kFew);
  const SwapRanking ranking = rankSwaps(request, {.pairs = SwapOptions::Pairs::Always});
  const SwapFrame frame(request);
  const SwapColumns columns(frame);
  const Eigen::VectorXd rest = frame.rest();
  const int most = std::min(kFew, static_cast<int>(std::max(1.0, frame.mostGrams())));
  std::optional<Swap> best;
  for (int a = 1; a <= most; ++a)
    for (int b = 1; b <= most; ++b) {
      Swap swap;
      swap.parts = {{0, Grams(a)}, {1, Grams(b)}};
      swap = judgedSwap(frame, columns, swap);
      double hard = 0.0;
      const auto& program = frame.formulation().program;
      for (Eigen::Index row = 0; row < program.rowCount(); ++row) {
        if (program.price[row] < solver::kInfinity) continue;
        const double activity =
            program.rows.row(row).dot(rest) + a * columns.rows(0)[row] + b * columns.rows(1)[row];
        hard = std::max({hard, program.rowLower[row] - activity, activity - program.rowUpper[row]});
      }
      if (hard <= kRounding && (!best || isNearer(standingOf(swap), standingOf(*best)))) best = swap;
    }
  RC_ASSERT(best.has_value() == !ranking.pairs.empty());
  if (!best) return;
  RC_ASSERT(std::abs(best->shortfall - ranking.pairs[0].shortfall) <= 1e-7);
  RC_ASSERT(ranking.pairs[0].difference <= best->difference + 1e-6 * std::max(1.0, best->difference));
}

}  // namespace
}  // namespace tarebowl::diet
