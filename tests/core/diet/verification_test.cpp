// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/verification.h"

#include "core/diet/conflict.h"
#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;
using quantity::Basis;
using quantity::Grams;
using quantity::Unit;
using ::testing::ElementsAre;
using ::testing::Optional;
using ::testing::StartsWith;

/// 2 to 120 g greens in whole grams; one insect of at least 5 g; 200 mg Ca must be reached.
BalanceProblem strict() {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].min = Grams(2);
  problem.foods[0].max = Grams(120);
  problem.choices = {{.group = "insect", .atLeast = 1, .atMost = 1, .minEach = Grams(5)}};
  problem.targets = {target("CA", {.min = 200}, Unit::Milligram, Basis::Day)};
  problem.targets[0].hard = true;
  return problem;
}

std::optional<std::string> brokenBy(const BalanceProblem& problem, const Diet& diet) {
  DietSolution answer;
  answer.grams = diet;
  answer.balance = balance(problem, diet);
  return brokenRule(problem, answer);
}

TEST(Verification, PassesABowlThatKeepsEveryRule) {
  EXPECT_EQ(brokenBy(strict(), grams({100, 5})), std::nullopt);
}

TEST(Verification, SeesALimitThatIsPassed) {
  EXPECT_THAT(brokenBy(strict(), grams({121, 5})), Optional(StartsWith("limit: greens")));
  EXPECT_THAT(brokenBy(strict(), grams({1, 5})), Optional(StartsWith("limit: greens")));
  EXPECT_THAT(brokenBy(strict(), grams({100, -1})), Optional(StartsWith("limit: insects")));
}

TEST(Verification, SeesAnAmountThatTheScaleCannotShow) {
  EXPECT_THAT(brokenBy(strict(), grams({100.5, 5})), Optional(StartsWith("scale-step: greens")));
  BalanceProblem anyAmount = strict();
  anyAmount.wholeSteps = false;
  EXPECT_EQ(brokenBy(anyAmount, grams({100.5, 5})), std::nullopt);
}

TEST(Verification, SeesAChoiceThatIsNotKept) {
  EXPECT_THAT(brokenBy(strict(), grams({100, 4})), Optional(StartsWith("choice: insects")));  // less than 5 g
  EXPECT_THAT(brokenBy(strict(), grams({110, 0})), Optional(StartsWith("choice: 0 of insect")));
}

TEST(Verification, SeesAHardRuleThatIsMissed) {
  EXPECT_THAT(brokenBy(strict(), grams({90, 5})), Optional(StartsWith("hard: CA")));  // 182 mg
  BalanceProblem wished = strict();
  wished.targets[0].hard = false;
  EXPECT_EQ(brokenBy(wished, grams({90, 5})), std::nullopt);
}

TEST(Verification, HoldsTwoWorkingsOfANumberToNineDigits) {
  EXPECT_TRUE(agree(1e6, 1e6 + 1e-4));
  EXPECT_FALSE(agree(1e6, 1e6 + 1e-2));
  EXPECT_TRUE(agree(0.0, 1e-10));
  EXPECT_FALSE(agree(0.0, 1e-8));
}

TEST(ConflictRules, TakeBothBoundsOfATargetAsOneInTheOrderOfTheProblem) {
  BalanceProblem problem = strict();
  problem.targets.push_back(target("P", {.min = 1, .max = 2}, Unit::Gram, Basis::Day));  // rows 1 and 2
  const auto measures = measuresOf(problem);
  const Formulation formulation = formulate(problem, measures, referenceDiet(problem));
  const std::vector<DietRule> rules = rulesOf(formulation, measures, false);
  ASSERT_EQ(rules.size(), 3U);
  EXPECT_EQ(rules[0].id, "CA");
  EXPECT_EQ(rules[1].id, "P");
  EXPECT_THAT(rules[1].rule.rows, ElementsAre(1, 2));
  EXPECT_EQ(rules[2].id, "choice:insect");
  EXPECT_EQ(rulesOf(formulation, measures, true).size(), 2U);  // P is a wish
}

}  // namespace
}  // namespace tarebowl::diet
