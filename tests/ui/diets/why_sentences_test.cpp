// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/why_sentences.h"

#include "tests/ui/diets/example_diet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

std::vector<std::string> plain(const std::vector<WhySentence>& sentences) {
  std::vector<std::string> lines;
  for (const WhySentence& sentence : sentences) {
    QString line =
        wordOf(sentence.mark) + QStringLiteral(": ") + sentence.lead + QLatin1Char(' ') + sentence.rest;
    line.replace(QChar(0x00A0), QLatin1Char(' ')).remove(QChar(0x2060));
    lines.push_back(line.toStdString());
  }
  return lines;
}

/// As the bowl is now: Ca 4.6 of at least 10 g/kg DM.
class WhyTest : public ::testing::Test {
 protected:
  [[nodiscard]] std::vector<std::string> why(
      const std::optional<diet::DietSolution>& solution = std::nullopt) const {
    return plain(whySentences(draft, diet::balance(draft.problem, draft.grams), solution));
  }
  DietDraft draft = draftOf(exampleProblem());
};

// (10 - 4.6) / 10 = 54 %.
TEST_F(WhyTest, SaysWhatIsShortByHowMuchAndThatTheTargetIsRecalled) {
  EXPECT_EQ(why().front(),
            "short: Calcium is short by 54 %: 4.60 instead of at least 10 g/kg DM (from memory: verify).");
}

// 30 mg instead of 10 mg of phosphorus per kg: 5 g DM of 20 g leaves and 10 g insects hold 8 g/kg; with 2
// g/kg allowed, 300 % over.
TEST_F(WhyTest, SaysWhatIsOver) {
  draft.problem.targets[kPhosphorus].min.reset();
  draft.problem.targets[kPhosphorus].max = 2.0;
  EXPECT_THAT(why(), Contains("over: Phosphorus is over by 300 %: 8.00 instead of at most 2 g/kg DM."));
}

TEST_F(WhyTest, SaysThatNothingIsAllowedWhereTheMaximumIsNought) {
  draft.problem.shares[0].max = 0.0;
  draft.problem.shares[0].hard = true;
  EXPECT_THAT(why(),
              Contains(AllOf(HasSubstr("Insect is over: none is allowed."), HasSubstr("A hard rule."))));
}

TEST_F(WhyTest, NamesWhatCannotHoldTogether) {
  diet::DietSolution solution;
  solution.status = diet::DietStatus::Compromise;
  solution.conflict = {"ca", "p", "choice:insect"};
  EXPECT_THAT(why(solution), Contains("short: With these foods and limits, no bowl holds all of these "
                                      "together: Calcium (at least 10 g/kg "
                                      "DM), Phosphorus (5–9 g/kg DM) and the choice among insect."));
}

TEST_F(WhyTest, MentionsTheLocksWhereThereAreSome) {
  diet::DietSolution solution;
  solution.status = diet::DietStatus::Impossible;
  solution.conflict = {"energy"};
  draft.locked[kInsects] = true;
  const auto lines = why(solution);
  EXPECT_THAT(lines,
              Contains(HasSubstr("With these foods, limits and locks, no bowl holds Metabolizable energy")));
  EXPECT_THAT(lines, Contains(HasSubstr("The grams shown are the last ones and do not keep the rules.")));
}

// Short of 200 mg/kg with 80 known; insects are 3 of 5 g of dry matter.
TEST_F(WhyTest, SaysWhichFoodsWereNeverMeasuredWhereThatMatters) {
  draft.problem.targets[kVitaminE].min = 200.0;
  EXPECT_THAT(why(),
              Contains(AllOf(HasSubstr("unknown: At least what is shown: Vitamin E, alpha-tocopherol."),
                             HasSubstr("No value for Insects, 60 % of the dry matter."))));
}

TEST_F(WhyTest, KeepsQuietAboutUnmeasuredFoodsWhereTheTargetHoldsAnyway) {
  EXPECT_THAT(why(), Not(Contains(HasSubstr("At least what is shown"))));
}

TEST_F(WhyTest, SaysWhatNobodyCanJudge) {
  EXPECT_THAT(why(), Contains(AllOf(HasSubstr("unknown: Nobody can judge Vitamin D"),
                                    HasSubstr("Unknown is not zero."))));
}

TEST_F(WhyTest, SaysThatALockedFoodLiesBeyondItsOwnLimits) {
  draft.locked[kLimestone] = true;
  draft.grams[kLimestone] = Grams(1.5);
  EXPECT_THAT(why(),
              Contains("at limit: Limestone powder is held at 1.5 g. That is above its maximum of 1.0 g."));
}

TEST_F(WhyTest, SaysThatAllIsWellFirst) {
  draft.problem.targets.erase(draft.problem.targets.begin() + kVitaminE, draft.problem.targets.end());
  draft.problem.targets.erase(draft.problem.targets.begin() + kCalcium);
  draft.problem.ratios.clear();
  diet::DietSolution solution;
  solution.status = diet::DietStatus::Balanced;
  EXPECT_EQ(why(solution).front(),
            "met: Every target holds. No bowl that meets the targets lies closer to the diet as it is now.");
}

TEST_F(WhyTest, NeverSaysEveryTargetHoldsWhereOneCannotBeJudged) {
  draft.problem.targets.erase(draft.problem.targets.begin() + kCalcium);
  draft.problem.ratios.clear();
  EXPECT_EQ(why().front(), "met: Every target that can be judged holds. ");
}

TEST_F(WhyTest, SaysWhatIsAtItsLimit) {
  draft.problem.targets[kPhosphorus].max = 8.0;
  EXPECT_THAT(why(), Contains("at limit: No room left: Phosphorus at its maximum."));
}

TEST_F(WhyTest, DoesNotCallABanThatIsKeptALackOfRoom) {
  draft.problem.shares[0].max = 0.0;
  draft.grams[kInsects] = Grams(0);
  EXPECT_THAT(why(), Not(Contains(HasSubstr("Insect at its maximum"))));
}

TEST_F(WhyTest, SaysWhatWasSoughtInTheTradesWords) {
  draft.problem.targets.erase(draft.problem.targets.begin() + kVitaminE, draft.problem.targets.end());
  draft.problem.targets.erase(draft.problem.targets.begin() + kCalcium);
  draft.problem.ratios.clear();
  diet::DietSolution solution;
  solution.status = diet::DietStatus::Balanced;
  solution.objective = 40.0;
  draft.problem.objective = {diet::Objective::Kind::Lowest, food::nutrients::phosphorus()};
  EXPECT_THAT(why(solution).front(),
              HasSubstr("No bowl that meets the targets holds less phosphorus: 40.0 mg per animal a day."));
}

TEST_F(WhyTest, SpeaksPlainlyOfASolverThatGaveNoAnswer) {
  diet::DietSolution solution;
  solution.status = diet::DietStatus::Unbounded;
  EXPECT_THAT(why(solution), Contains(HasSubstr("Nothing limits what is sought.")));
  solution.status = diet::DietStatus::Stopped;
  EXPECT_THAT(why(solution), Contains(HasSubstr("No answer in time.")));
  solution.status = diet::DietStatus::Failed;
  EXPECT_THAT(why(solution), Contains(HasSubstr("did not pass its own check")));
}

TEST_F(WhyTest, SaysWhichPriceIsMissingWhereTheLowestCostIsSought) {
  draft.problem.objective.kind = diet::Objective::Kind::LowestCost;
  draft.problem.foods[kLeaves].costPerKg = 3.0;
  draft.problem.foods[kLimestone].costPerKg = 1.0;
  const diet::DietSolution solution = diet::solve(draft.problem);
  ASSERT_EQ(solution.status, diet::DietStatus::Failed);
  EXPECT_THAT(why(solution), Contains(HasSubstr("The cheapest bowl cannot be sought: no price for Insects. "
                                                "Unknown is not free of charge.")));
}

}  // namespace
}  // namespace tarebowl::ui
