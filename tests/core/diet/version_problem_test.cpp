// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/version_problem.h"

#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;  // the bowls
using quantity::Basis;
using quantity::Grams;
using quantity::Unit;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

std::string codeOf(std::size_t food) {
  return greensAndInsects().foods.at(food).id;
}
std::string groupOf(std::size_t food) {
  return greensAndInsects().foods.at(food).group;
}

animal::ResolvedProfile calciumProfile() {
  animal::TargetProfile profile;
  profile.code = "p";
  profile.targets = {
      {.target = target("CA", {.min = 5000, .max = 12000}, Unit::Milligram, Basis::DryMatter)}};
  profile.ratios = {{.target = ratio("CA", "P", {.min = 1})}};
  profile.choices = {{.group = groupOf(0), .atLeast = 1, .atMost = {}}};
  return std::get<animal::ResolvedProfile>(
      animal::resolve(profile, [](const auto&) { return std::nullopt; }));
}

std::string calciumRule() {
  return calciumProfile().targets.front().rule.target.id;
}

/// Everything that a version can say.
DietVersion fullVersion() {
  DietVersion version;
  version.number = 3;
  version.state = VersionState::Draft;
  version.profile = {"p", 1};
  version.lines = {{.food = codeOf(0),
                    .amount = Grams(20),
                    .min = Grams(5),
                    .max = Grams(60),
                    .locked = true,
                    .meal = "morning",
                    .preparation = "torn"},
                   {.food = codeOf(1), .amount = Grams(7), .purpose = Purpose::Enrichment},
                   {.food = codeOf(0), .amount = Grams(4), .meal = "evening"}};
  version.allowances = {{.food = codeOf(1), .low = Grams(0), .high = Grams(3), .note = "on the rounds"}};
  version.changedBounds = {{.rule = calciumRule(), .min = 6000, .max = 12000, .reason = "growing"}};
  version.shares = {share(groupOf(1), {.max = 0.4}, Basis::DryMatter)};
  version.choices = {{.group = groupOf(1), .atLeast = 1, .atMost = 2, .minEach = Grams(2)}};
  version.objective = {.kind = Objective::Kind::LowestCost, .nutrient = {}};
  version.confidence = 0.9;
  version.energyMethod = food::EnergyMethod::Given;
  version.wholeSteps = false;
  version.note = "after the first lab report";
  return version;
}

ProblemOfVersion opened(const DietVersion& version) {
  VersionContext context{.title = "Evening bowl", .invented = true, .profile = calciumProfile()};
  for (const DietFood& food : greensAndInsects().foods) context.foods.emplace(food.id, food);
  return versionProblem(version, context);
}

DietVersion writtenBack(const DietVersion& version) {
  const ProblemOfVersion made = opened(version);
  return versionOf(made.problem, *made.problem.reference, made.locked, made.places, made, version);
}

TEST(ProblemOfAVersion, GivesWhatTheVersionGives) {
  const ProblemOfVersion made = opened(fullVersion());
  ASSERT_EQ(made.problem.foods.size(), 4U);
  EXPECT_THAT(*made.problem.reference, ElementsAre(Grams(20), Grams(7), Grams(4), Grams(1.5)))
      << "an allowance of 0 to 3 g counts as 1.5 g";
  EXPECT_THAT(made.locked, ElementsAre(true, false, false, false));
  EXPECT_EQ(made.problem.foods[0].max, Grams(60));
  EXPECT_EQ(made.problem.foods[0].preparation, "torn");
  EXPECT_EQ(made.problem.foods[2].id, codeOf(0) + " (evening)") << "one food in two meals is told apart";
  EXPECT_EQ(made.places[1].purpose, Purpose::Enrichment);
  EXPECT_EQ(made.problem.confidence, 0.9);
  EXPECT_EQ(made.problem.title, "Evening bowl");
  EXPECT_TRUE(made.problem.invented);
}

TEST(ProblemOfAVersion, IsJudgedByTheProfileButForTheBoundsThatTheDietSetsItself) {
  const ProblemOfVersion made = opened(fullVersion());
  EXPECT_EQ(made.problem.targets.front().min, 6000);
  EXPECT_EQ(made.profileBounds.front().min, 5000) << "what the profile says is kept beside it";
  EXPECT_EQ(made.problem.ratios.size(), 1U);
  EXPECT_EQ(made.problem.choices.size(), 2U);
  EXPECT_EQ(made.profileChoices, 1U);
  EXPECT_EQ(made.problem.shares.size(), 1U);
}

TEST(ProblemOfAVersion, BecomesTheSameVersionAgain) {
  EXPECT_EQ(writtenBack(fullVersion()), fullVersion());
}

TEST(ProblemOfAVersion, OneWithoutGramsHasNoDietToStayCloseTo) {
  DietVersion version;
  version.lines = {{.food = codeOf(0)}};
  EXPECT_EQ(opened(version).problem.reference, std::nullopt);
}

TEST(ProblemOfAVersion, NamesFoodsThatNobodyKnowsAndKeepsTheirLines) {
  DietVersion version = fullVersion();
  version.lines.push_back({.food = "withdrawn", .amount = Grams(2)});
  version.allowances.push_back({.food = "unknown-treat", .low = Grams(1), .high = Grams(2)});
  const ProblemOfVersion made = opened(version);
  EXPECT_THAT(made.missingFoods, ElementsAre("withdrawn", "unknown-treat"));
  EXPECT_EQ(writtenBack(version), version) << "nothing is lost by opening a diet";
}

TEST(ProblemOfAVersion, NamesBoundsOfRulesThatTheProfileNoLongerStates) {
  DietVersion version = fullVersion();
  version.changedBounds.push_back({.rule = "copper", .min = 1, .max = {}, .reason = "old"});
  const ProblemOfVersion made = opened(version);
  EXPECT_THAT(made.boundsOfNoRule, ElementsAre("copper"));
  const auto back = writtenBack(version);
  EXPECT_THAT(back.changedBounds, ::testing::UnorderedElementsAreArray(version.changedBounds));
}

TEST(ProblemOfAVersion, KeepsRulesOfGroupsThatNoFoodIsOfYet) {
  DietVersion version = fullVersion();
  version.shares.push_back(share("fruit", {.max = 0.1}, Basis::DryMatter));
  version.choices.push_back({.group = "browse", .atLeast = 1, .atMost = {}});
  const ProblemOfVersion made = opened(version);
  EXPECT_EQ(made.notCounted.size(), 2U);
  EXPECT_EQ(writtenBack(version), version);
}

TEST(ProblemOfAVersion, AHardRuleIsLoosenedOnlyForAReason) {
  VersionContext context{.profile = calciumProfile()};
  for (const DietFood& food : greensAndInsects().foods) context.foods.emplace(food.id, food);
  context.profile.targets.front().rule.target.hard = true;  // 5000 to 12000 mg/kg DM
  DietVersion version = fullVersion();
  version.changedBounds = {{.rule = calciumRule(), .min = 5000, .max = 15000, .reason = {}}};
  const ProblemOfVersion silent = versionProblem(version, context);
  EXPECT_EQ(silent.problem.targets.front().max, 12000) << "nobody said why";
  EXPECT_THAT(silent.boundsWithoutReason, ElementsAre(calciumRule()));
  EXPECT_EQ(versionOf(silent.problem, silent.amounts, silent.locked, silent.places, silent, version),
            version);
  version.changedBounds.front().reason = "laying";
  const animal::Target loosened = versionProblem(version, context).problem.targets.front();
  EXPECT_EQ(loosened.max, 15000);
  EXPECT_EQ(loosened.origin, ownBoundOrigin("laying")) << "the table that the rule came from does not say so";
  version.changedBounds = {{.rule = calciumRule(), .min = 6000, .max = 11000, .reason = {}}};
  EXPECT_EQ(versionProblem(version, context).problem.targets.front().max, 11000) << "stricter needs none";
}

TEST(ProblemOfAVersion, WritesDownABoundThatWasSetOnTheDeskAndDropsOneThatWasPutBack) {
  const DietVersion version = fullVersion();
  ProblemOfVersion made = opened(version);
  made.problem.targets.front().min = 5000;  // as in the profile
  made.problem.ratios.front().max = 2;
  const DietVersion changed =
      versionOf(made.problem, *made.problem.reference, made.locked, made.places, made, version);
  EXPECT_THAT(
      changed.changedBounds,
      ElementsAre(ChangedBound{.rule = made.problem.ratios.front().id, .min = 1, .max = 2, .reason = {}}));
}

}  // namespace
}  // namespace tarebowl::diet
