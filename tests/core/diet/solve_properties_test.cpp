// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/objective.h"
#include "core/diet/solve.h"
#include "core/exchange/problem_json.h"
#include "tests/core/diet/literal_reading.h"
#include "tests/core/diet/random_problem.h"

#include <fmt/core.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

using namespace testing;
using quantity::Grams;

constexpr int kMostSteps = 7;
constexpr double kBudget = 1.001e-9;      // what the second stage may spend, and a last digit
constexpr double kChanceAccuracy = 1e-8;  // a bound that holds with a chance is met by tangents

/// A few foods with at most seven steps each: few enough to try every bowl.
BalanceProblem drawSmallProblem() {
  BalanceProblem problem = drawSensibleProblem();
  problem.foods.resize(std::min<std::size_t>(problem.foods.size(), 4));
  if (problem.reference) problem.reference->resize(problem.foods.size());
  for (DietFood& food : problem.foods) {
    food.scaleStep = Grams(*rc::gen::element(0.5, 1.0, 5.0, 20.0));
    food.max = food.scaleStep * *rc::gen::inRange(1, kMostSteps + 1);
  }
  return problem;
}

struct Best {
  bool exists = false;
  double shortfall = 0.0;
  double objective = 0.0;
};

bool holdsHardRules(const BalanceProblem& problem, const Balance& judged) {
  std::size_t line = 0;
  const auto holds = [&](const auto& rules) {
    return std::ranges::all_of(
        rules, [&](const auto& rule) { return judged.targets[line++].shortfall <= 1e-9 || !rule.hard; });
  };
  return holds(problem.targets) && holds(problem.ratios) && holds(problem.shares);
}

/// What to look at when a property fails.
std::string described(const BalanceProblem& problem, const DietSolution& answer) {
  std::string grams;
  for (const Grams& amount : answer.grams) grams += fmt::format(" {}", amount.value());
  return fmt::format("{} {} grams{} shortfall {} objective {} gap {}\n{}", symbolOf(answer.status),
                     answer.reason, grams, answer.shortfall, answer.objective, answer.provenGap,
                     exchange::writeProblem(problem));
}

template <class Visit>
void forEachBowl(const BalanceProblem& problem, Visit visit) {
  Diet diet(problem.foods.size(), Grams(0));
  std::vector<int> steps(diet.size(), 0);
  for (;;) {
    visit(diet);
    std::size_t j = 0;
    for (; j < diet.size(); ++j) {
      const DietFood& food = problem.foods[j];
      steps[j] = food.scaleStep * (steps[j] + 1.0) <= *food.max ? steps[j] + 1 : 0;
      diet[j] = food.scaleStep * static_cast<double>(steps[j]);
      if (steps[j] > 0) break;
    }
    if (j == diet.size()) return;
  }
}

/// Every bowl tried: the least shortfall first, then the least objective among those near enough to it.
Best bestByTrial(const BalanceProblem& problem) {
  const Diet reference = literalReference(problem);
  struct Tried {
    double shortfall;
    double objective;
  };
  std::vector<Tried> tried;
  Best best{false, INFINITY, INFINITY};
  forEachBowl(problem, [&](const Diet& diet) {
    const Balance judged = literalBalance(problem, diet);
    if (!holdsHardRules(problem, judged)) return;
    tried.push_back({judged.shortfall, objectiveOf(problem, reference, diet)});
    best.shortfall = std::min(best.shortfall, judged.shortfall);
  });
  for (const Tried& bowl : tried) {
    if (bowl.shortfall > best.shortfall * (1 + 1e-6) + 1e-9) continue;
    best.exists = true;
    best.objective = std::min(best.objective, bowl.objective);
  }
  return best;
}

RC_GTEST_PROP(SolveProperty, findsTheBowlThatTryingEveryBowlFinds, ()) {
  const BalanceProblem problem = drawSmallProblem();
  const DietSolution answer = solve(problem);
  const Best best = bestByTrial(problem);
  if (!best.exists) {
    RC_ASSERT(answer.status == DietStatus::Impossible);
    return;
  }
  RC_LOG(described(problem, answer));
  RC_ASSERT(answer.status == (best.shortfall <= 1e-9 ? DietStatus::Balanced : DietStatus::Compromise));
  RC_ASSERT(answer.shortfall <= best.shortfall * (1 + 1e-6) + kBudget);
  RC_ASSERT(answer.objective <= best.objective * (1 + 1e-9) + 1e-9);
}

RC_GTEST_PROP(SolveProperty, isNeverBeatenByARandomDiet, ()) {
  BalanceProblem problem = drawSensibleProblem();
  problem.wholeSteps = false;
  for (DietFood& food : problem.foods) food.max = Grams(200);
  const Diet other = drawDiet(problem);
  const Balance judged = literalBalance(problem, other);
  const DietSolution answer = solve(problem);
  RC_LOG(described(problem, answer));
  if (!holdsHardRules(problem, judged)) {
    RC_ASSERT(answer.status != DietStatus::Failed);
    return;
  }
  RC_ASSERT(answer.status == DietStatus::Balanced || answer.status == DietStatus::Compromise);
  RC_ASSERT(answer.shortfall <=
            judged.shortfall * (1 + 1e-6) + (problem.confidence ? kChanceAccuracy : kBudget));
  if (judged.shortfall <= answer.shortfall) {
    RC_ASSERT(answer.objective <= objectiveOf(problem, literalReference(problem), other) * (1 + 1e-6) + 1e-9);
  }
}

/// The problem with only the named rules, all of them hard.
BalanceProblem onlyHard(BalanceProblem problem, const std::vector<std::string>& ids) {
  const auto keep = [&](auto& rules) {
    std::erase_if(rules, [&](const auto& rule) { return std::ranges::find(ids, rule.id) == ids.end(); });
    for (auto& rule : rules) rule.hard = true;
  };
  keep(problem.targets);
  keep(problem.ratios);
  keep(problem.shares);
  return problem;
}

RC_GTEST_PROP(SolveProperty, namesAConflictOfWhichNoRuleCanBeSpared, ()) {
  BalanceProblem problem = drawSensibleProblem();
  problem.confidence.reset();
  problem.wholeSteps = false;
  problem.reference = referenceDiet(problem);  // the same for the parts, which may lack the energy target
  const DietSolution answer = solve(problem);
  const bool misses = answer.status == DietStatus::Compromise || answer.status == DietStatus::Impossible;
  RC_LOG(described(problem, answer));
  if (answer.shortfall > 1e-6 || answer.status == DietStatus::Impossible) RC_ASSERT(!answer.conflict.empty());
  if (!misses || answer.conflict.empty()) {
    RC_ASSERT(misses || answer.conflict.empty());
    return;
  }
  for (const std::string& id : answer.conflict) RC_LOG(id);
  RC_ASSERT(solve(onlyHard(problem, answer.conflict)).status == DietStatus::Impossible);
  for (const std::string& spared : answer.conflict) {
    std::vector<std::string> others = answer.conflict;
    std::erase(others, spared);
    RC_ASSERT(solve(onlyHard(problem, others)).status != DietStatus::Impossible);
  }
}

}  // namespace
}  // namespace tarebowl::diet
