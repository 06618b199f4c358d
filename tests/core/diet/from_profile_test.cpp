// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/from_profile.h"

#include "core/diet/solve.h"
#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;  // the bowls
using animal::ProfileTarget;
using quantity::Basis;
using quantity::Kilocalories;
using quantity::Unit;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::UnorderedElementsAre;

ProfileTarget calcium(Zone zone, Basis basis) {
  return {.target = target("CA", zone, Unit::Milligram, basis)};
}

ProblemOfProfile problemOf(const animal::TargetProfile& profile, const EaterFacts& facts = {}) {
  const auto resolved = animal::resolve(profile, [](const auto&) { return std::nullopt; });
  return profileProblem(std::get<animal::ResolvedProfile>(resolved), facts, greensAndInsects().foods,
                        food::EnergyMethod::Given);
}

TEST(ProblemOfAProfile, TakesItsRulesOver) {
  animal::TargetProfile profile;
  profile.code = "p";
  profile.targets = {calcium({.min = 5000}, Basis::DryMatter)};
  profile.ratios = {{.target = ratio("CA", "P", {.min = 1})}};
  profile.shares = {share("insect", {.max = 0.2}, Basis::DryMatter)};
  profile.choices = {{.group = "leafy vegetable", .atLeast = 1, .atMost = {}}};
  profile.exclusions = {{.id = "no-fruit", .group = "fruit", .food = {}, .reason = "none"}};
  EaterFacts facts;
  facts.eater.taxa = {"lemur"};
  facts.energyLow = Kilocalories(80);
  facts.energyHigh = Kilocalories(100);
  const auto [problem, notCounted] = problemOf(profile, facts);
  EXPECT_THAT(notCounted, IsEmpty());
  ASSERT_EQ(problem.targets.size(), 2U);
  EXPECT_EQ(problem.targets[0], profile.targets[0].target);
  EXPECT_EQ(problem.targets[1].id, "energy");
  EXPECT_EQ(problem.targets[1].min, 80.0);
  EXPECT_EQ(problem.targets[1].max, 100.0);
  EXPECT_EQ(problem.ratios.size() + problem.shares.size() + problem.choices.size(), 3U);
  EXPECT_EQ(problem.exclusions, profile.exclusions);
  EXPECT_EQ(problem.eater.taxa, facts.eater.taxa);
}

// 61.9 kcal within 5 %: 58.8 to 65.0 kcal.
TEST(ProblemOfAProfile, AnEnergyNeedOfOneNumberIsMetWithinATolerance) {
  EaterFacts facts;
  facts.energyLow = facts.energyHigh = Kilocalories(61.9);
  const auto targets = problemOf({}, facts).problem.targets;
  ASSERT_EQ(targets.size(), 1U);
  EXPECT_NEAR(targets[0].min.value(), 58.805, 1e-9);
  EXPECT_NEAR(targets[0].max.value(), 64.995, 1e-9);
  EXPECT_TRUE(targets[0].hard) << "no animal is starved so that it misses less of everything else";
}

TEST(ProblemOfAProfile, TheEnergyNeedOfAnAnimalThatFollowsTemperatureIsNoFeedingRate) {
  EaterFacts facts;
  facts.energyLow = Kilocalories(6.8);
  facts.energyHigh = Kilocalories(10.6);
  facts.energyFollowsTemperature = true;
  const auto [problem, notCounted] = problemOf({}, facts);
  EXPECT_THAT(problem.targets, IsEmpty());
  EXPECT_THAT(notCounted, ElementsAre(RuleNotCounted{"energy", NotCounted::EnergyIsNoFeedingRate}));
}

// 14 kcal per kg^0.75 of 0.38 kg: 14 * 0.48399 = 6.776 kcal a day, by which the reference bowl is scaled.
TEST(ProblemOfAProfile, AnEnergyTargetThatTheProfileStatesStandsForTheWorkedOutNeed) {
  animal::TargetProfile profile;
  profile.targets = {
      {.target = target("ENERC", {.min = 14, .max = 22}, Unit::Kilocalorie, Basis::MetabolicMass)}};
  profile.targets[0].target.id = "energy";
  EaterFacts facts;
  facts.eater.bodyMass = quantity::Kilograms(0.38);
  facts.energyLow = Kilocalories(80);
  facts.energyFollowsTemperature = true;
  const auto [problem, notCounted] = problemOf(profile, facts);
  ASSERT_EQ(problem.targets.size(), 1U);
  EXPECT_EQ(problem.targets[0].basis, Basis::Day);
  EXPECT_NEAR(problem.targets[0].min.value(), 6.776, 5e-4);
  EXPECT_THAT(notCounted, IsEmpty());
}

TEST(ProblemOfAProfile, ASafeUpperLimitIsHardBesideASoftMinimum) {
  animal::TargetProfile profile;
  profile.targets = {calcium({.min = 5000, .max = 18000}, Basis::DryMatter)};
  profile.targets[0].safeUpperLimit = true;
  const auto targets = problemOf(profile).problem.targets;
  ASSERT_EQ(targets.size(), 2U);
  EXPECT_EQ(targets[0].id, "CA");
  EXPECT_FALSE(targets[0].hard);
  EXPECT_EQ(targets[0].max, std::nullopt);
  EXPECT_EQ(targets[1].id, upperLimitId("CA"));
  EXPECT_TRUE(targets[1].hard);
  EXPECT_EQ(targets[1].min, std::nullopt);
  EXPECT_EQ(targets[1].max, 18000.0);
}

TEST(ProblemOfAProfile, ALiftedLimitIsSoft) {
  animal::TargetProfile profile;
  profile.targets = {calcium({.max = 18000}, Basis::DryMatter)};
  profile.targets[0].safeUpperLimit = true;
  EXPECT_TRUE(problemOf(profile).problem.targets.at(0).hard);
  profile.targets[0].lifted = animal::LiftedLimit{"Vet A", "2026-11-25", "egg laying"};
  EXPECT_FALSE(problemOf(profile).problem.targets.at(0).hard);
}

TEST(ProblemOfAProfile, AsFedOfADryFeedIsReadOnDryMatter) {
  animal::TargetProfile profile;
  profile.targets = {calcium({.min = 4500}, Basis::AsFed)};
  EXPECT_THAT(problemOf(profile).notCounted, ElementsAre(RuleNotCounted{"CA", NotCounted::DryMatterUnknown}));
  profile.dryMatterFraction = 0.9;
  const auto targets = problemOf(profile).problem.targets;
  EXPECT_EQ(targets.at(0).basis, Basis::DryMatter);
  EXPECT_DOUBLE_EQ(targets.at(0).min.value(), 5000.0);
}

TEST(ProblemOfAProfile, WhatNothingInTheBowlCanBeJudgedByIsNamed) {
  animal::TargetProfile profile;
  profile.targets = {{.target = target("TAU", {.min = 1}, Unit::Gram, Basis::DryMatter)},
                     calcium({.min = 5}, Basis::BodyMass)};
  profile.ratios = {{.target = ratio("FAPUN6", "FAPUN3", {.max = 30})}};
  profile.choices = {{.group = "browse", .atLeast = 1, .atMost = {}}};
  const auto [problem, notCounted] = problemOf(profile);
  EXPECT_TRUE(problem.targets.empty() && problem.ratios.empty() && problem.choices.empty());
  EXPECT_EQ(notCounted.size(), 4U);
  EXPECT_EQ(notCounted[0], (RuleNotCounted{"TAU", NotCounted::NoFoodKnowsNutrient}));
  EXPECT_EQ(notCounted[1], (RuleNotCounted{"CA", NotCounted::BodyMassUnknown}));
  EXPECT_EQ(notCounted[3], (RuleNotCounted{"choice:browse", NotCounted::NoFoodOfGroup}));
}

TEST(ProblemOfAProfile, OneThatContradictsItselfIsExplainedByTheConflict) {
  animal::TargetProfile parent;
  parent.code = "parent";
  parent.targets = {calcium({.min = 15000}, Basis::DryMatter)};  // only greens have so much
  parent.targets[0].target.hard = true;
  animal::TargetProfile child;
  child.code = "child";
  child.parent = animal::ProfileReference{"parent", 1};
  child.exclusions = {{.id = "no-greens", .group = "leafy vegetable", .food = {}, .reason = "house rule"}};
  child.ratios = {{.target = ratio("CA", "P", {.min = 0.1})}};
  const auto resolved = animal::resolve(child, [&](const auto&) { return std::optional(parent); });
  EaterFacts facts;
  facts.energyLow = Kilocalories(80);
  auto problem = profileProblem(std::get<animal::ResolvedProfile>(resolved), facts, greensAndInsects().foods,
                                food::EnergyMethod::Given)
                     .problem;
  for (animal::Target& rule : problem.targets) rule.hard = true;
  const DietSolution answer = solve(problem);
  EXPECT_EQ(answer.status, DietStatus::Impossible);
  EXPECT_THAT(answer.conflict, UnorderedElementsAre("CA", "energy", "no-greens"));
}

}  // namespace
}  // namespace tarebowl::diet
