// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/why_text.h"

#include "core/diet/explanation.h"
#include "core/diet/remedies.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::app {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::StartsWith;

/// 100 g greens: 200 mg Ca, 50 mg P, 40 kcal; 100 g insects: 40 mg Ca, 300 mg P, 200 kcal. The numbers are
/// made up.
diet::BalanceProblem bowl(const std::string& rules) {
  return exchange::parseProblem(R"({"format": "tarebowl-problem/1", "energy_method": "given", "foods": [
      {"id": "greens", "name": "Greens", "group": "leaf", "max_g": 200, "cost_per_kg": 4,
       "per_100_g": {"WATER": 90, "CA": 200, "P": 50, "ENERC": 40}},
      {"id": "insects", "name": "Insects", "group": "insect", "cost_per_kg": 20,
       "per_100_g": {"WATER": 60, "CA": 40, "P": 300, "ENERC": 200}}],
      "reference": {"greens": 200}, )" +
                                    rules + "}",
                                "test");
}

std::vector<diet::DietFood> larder() {
  diet::BalanceProblem foods = exchange::parseProblem(
      R"({"format": "tarebowl-problem/1", "foods": [
      {"id": "chalk", "name": "Limestone", "scale_step_g": 0.1, "per_100_g": {"WATER": 0, "CA": 38000, "P": 0}},
      {"id": "kale", "name": "Kale, raw", "group": "leaf", "per_100_g": {"WATER": 90, "CA": 700, "P": 50}}]})",
      "test");
  return foods.foods;
}

std::string why(const diet::BalanceProblem& problem, const std::vector<diet::DietFood>& larder = {},
                bool explained = true) {
  const diet::DietSolution solution = diet::solve(problem);
  const diet::Explanation explanation = diet::explain(problem, solution);
  const auto remedies = diet::findRemedies(problem, solution, larder);
  return whyText(problem, solution, {explained ? &explanation : nullptr, remedies, larder});
}

constexpr const char* kCalciumAgainstPhosphorus = R"("targets": [
    {"id": "ca", "nutrient": "CA", "min": 1000, "unit": "mg", "basis": "day"},
    {"id": "p", "nutrient": "P", "max": 150, "unit": "mg", "basis": "day"}])";

TEST(WhyText, SaysWhatIsMissedAndWhichRulesFight) {
  // 200 g greens and 16 g insects: 406.4 mg of 1000 mg calcium, and 148 of 150 mg phosphorus.
  EXPECT_THAT(why(bowl(kCalciumAgainstPhosphorus)),
              StartsWith("Calcium is short by 59 %: with these foods and limits the calcium minimum and the "
                         "phosphorus maximum cannot hold together.\n"));
}

TEST(WhyText, SaysByHowLittleOneOfThemWouldHaveToGiveWay) {
  const std::string text = why(bowl(kCalciumAgainstPhosphorus));
  EXPECT_THAT(text,
              HasSubstr("Every target would hold if the calcium minimum were 406.4 instead of 1000 mg per "
                        "animal and day.\n"));
  // 600 mg more calcium are 1500 g insects with 4500 mg phosphorus, beside the greens' 100 mg.
  EXPECT_THAT(text,
              HasSubstr("Every target would hold if the phosphorus maximum were 4600 instead of 150 mg"));
}

TEST(WhyText, NamesTheFoodsOnHandThatWouldCloseTheGap) {
  const std::string text = why(bowl(kCalciumAgainstPhosphorus), larder());
  EXPECT_THAT(text, HasSubstr("g Limestone would close it; so would "));
  EXPECT_THAT(text, HasSubstr("g Kale, raw in place of Greens"));
}

TEST(WhyText, SaysWhatRemainsAndPromisesNoMore) {
  auto few = larder();
  few.pop_back();
  few[0].max = quantity::Grams(1);
  const std::string text = why(bowl(kCalciumAgainstPhosphorus), few);
  // 1000 - 400 - 380 - 6.4 mg
  EXPECT_THAT(text, HasSubstr("1.0 g Limestone would leave a shortfall of 0.2136.\n"));
  EXPECT_THAT(text, Not(HasSubstr("1.0 g Limestone would close it")));
}

TEST(WhyText, BlamesTheScaleWhereOnlyTheScaleIsToBlame) {
  diet::BalanceProblem problem = bowl(
      R"("targets": [{"id": "ca", "nutrient": "CA", "min": 250, "max": 290, "unit": "mg", "basis": "day"}])");
  problem.foods[0].scaleStep = quantity::Grams(50);
  problem.foods[1].max = quantity::Grams(0);
  EXPECT_THAT(why(problem), HasSubstr("the calcium range cannot hold. Only the scale's steps are to blame: "
                                      "amounts between them would do.\n"));
}

TEST(WhyText, DoesNotCallAConflictSmallestThatWasNotShownToBe) {
  const diet::BalanceProblem problem = bowl(kCalciumAgainstPhosphorus);
  diet::DietSolution solution = diet::solve(problem);
  solution.conflictIsSmallest = false;
  EXPECT_THAT(whyText(problem, solution, {}), HasSubstr("Not all of them need be part of it: time ran out"));
}

TEST(WhyText, SaysWhatAUnitOfABoundCosts) {
  const std::string text = why(bowl(R"("whole_steps": false, "objective": {"kind": "lowest-cost"},
      "targets": [{"id": "ca", "nutrient": "CA", "min": 300, "unit": "mg", "basis": "day"}])"));
  EXPECT_EQ(text,
            "Raising the calcium minimum by 1 mg per animal and day costs 0.002 more per animal and day "
            "(Greens +0.5 g), up to 400.\n");
}

TEST(WhyText, IsEmptyWhereAllIsWellAndNothingPushes) {
  EXPECT_THAT(
      why(bowl(R"("targets": [{"id": "ca", "nutrient": "CA", "min": 300, "unit": "mg", "basis": "day"}])")),
      IsEmpty());
}

}  // namespace
}  // namespace tarebowl::app
