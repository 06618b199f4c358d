// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/target_profile.h"
#include "tests/core/animal/profiles.h"

#include <gmock/gmock.h>

namespace tarebowl::animal {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

TargetProfile primate() {
  TargetProfile profile = profileOf("primate");
  profile.targets = {perKg("calcium", "CA", 8000.0, {}), perKg("iron", "FE", 100.0, {}),
                     perKg("copper", "CU", 20.0, {})};
  profile.shares = {{.id = "fruit-share", .group = "fruit", .min = {}, .max = 0.3, .origin = {}}};
  profile.choices = {{.group = "browse", .atLeast = 1, .atMost = {}}};
  return profile;
}

TargetProfile lemur() {
  TargetProfile profile = profileOf("lemur");
  profile.parent = ProfileReference{"primate", 1};
  profile.targets = {perKg("iron", "FE", {}, 80.0), perKg("zinc", "ZN", 60.0, {})};
  profile.exclusions = {{.id = "no-fruit", .group = "cultivated fruit", .reason = "far sweeter than wild"}};
  profile.dropped = {{"fruit-share", "no cultivated fruit at all"}};
  return profile;
}

ResolvedProfile resolved(const TargetProfile& profile, const ProfileLookup& lookup) {
  return std::get<ResolvedProfile>(resolve(profile, lookup));
}

std::vector<std::string> targetIds(const ResolvedProfile& profile) {
  std::vector<std::string> ids;
  for (const auto& entry : profile.targets) ids.push_back(entry.rule.target.id);
  return ids;
}

TEST(Profile, WithoutAParentIsInForceAsItIsStated) {
  const ResolvedProfile profile = resolved(primate(), Shelf{}.lookup());
  EXPECT_THAT(profile.ancestors, IsEmpty());
  EXPECT_THAT(targetIds(profile), ElementsAre("calcium", "iron", "copper"));
  EXPECT_EQ(profile.targets[0].descent, (RuleDescent{{"primate", 1}, {}}));
}

TEST(Profile, TakesOverOverridesAddsAndDrops) {
  const Shelf shelf{primate()};
  const ResolvedProfile profile = resolved(lemur(), shelf.lookup());
  EXPECT_THAT(profile.ancestors, ElementsAre(ProfileReference{"primate", 1}));
  EXPECT_THAT(targetIds(profile), ElementsAre("calcium", "iron", "copper", "zinc"));
  EXPECT_EQ(profile.targets[1].rule.target.max, 80.0);
  EXPECT_EQ(profile.targets[1].rule.target.min, std::nullopt) << "the parent's minimum is gone with its rule";
  EXPECT_EQ(profile.targets[1].descent, (RuleDescent{{"lemur", 1}, {{"primate", 1}}}));
  EXPECT_EQ(profile.targets[3].descent, (RuleDescent{{"lemur", 1}, {}}));
  EXPECT_THAT(profile.shares, IsEmpty());
  ASSERT_EQ(profile.dropped.size(), 1U);
  EXPECT_EQ(profile.dropped[0].rule.reason, "no cultivated fruit at all");
  EXPECT_EQ(profile.dropped[0].descent, (RuleDescent{{"lemur", 1}, {{"primate", 1}}}));
  EXPECT_EQ(profile.choices.size(), 1U);
  EXPECT_EQ(profile.exclusions.at(0).rule.group, "cultivated fruit");
}

TEST(Profile, OfGrandparentsTheNearestStatementHoldsAndTheLineIsKept) {
  TargetProfile house = profileOf("house-lemur");
  house.parent = ProfileReference{"lemur", 1};
  house.targets = {perKg("iron", "FE", {}, 60.0)};
  const Shelf shelf{primate(), lemur()};
  const ResolvedProfile profile = resolved(house, shelf.lookup());
  EXPECT_THAT(profile.ancestors, ElementsAre(ProfileReference{"lemur", 1}, ProfileReference{"primate", 1}));
  EXPECT_EQ(profile.targets[1].rule.target.max, 60.0);
  EXPECT_EQ(profile.targets[1].descent, (RuleDescent{{"house-lemur", 1}, {{"lemur", 1}, {"primate", 1}}}));
  EXPECT_EQ(profile.dropped.size(), 1U) << "what the parent dropped stays dropped";
}

TEST(Profile, WhatAParentDroppedMayBeStatedAgain) {
  TargetProfile house = profileOf("house-lemur");
  house.parent = ProfileReference{"lemur", 1};
  house.shares = {{.id = "fruit-share", .group = "fruit", .min = {}, .max = 0.05, .origin = {}}};
  const Shelf shelf{primate(), lemur()};
  const ResolvedProfile profile = resolved(house, shelf.lookup());
  ASSERT_EQ(profile.shares.size(), 1U);
  EXPECT_EQ(profile.shares[0].descent, (RuleDescent{{"house-lemur", 1}, {{"lemur", 1}, {"primate", 1}}}));
  EXPECT_THAT(profile.dropped, IsEmpty());
}

TEST(Profile, AnIdHoldsOneRuleWhateverItsKind) {
  TargetProfile child = profileOf("child");
  child.parent = ProfileReference{"primate", 1};
  child.exclusions = {{.id = "fruit-share", .group = "fruit", .reason = "none at all"}};
  child.dropped = {{"choice:browse", "no browse in winter"}};
  const Shelf shelf{primate()};
  const ResolvedProfile profile = resolved(child, shelf.lookup());
  EXPECT_THAT(profile.shares, IsEmpty());
  EXPECT_THAT(profile.choices, IsEmpty());
  EXPECT_EQ(profile.exclusions.at(0).descent, (RuleDescent{{"child", 1}, {{"primate", 1}}}));
}

TEST(Profile, ChoicesAreTakenOverByTheirGroup) {
  TargetProfile child = profileOf("child");
  child.parent = ProfileReference{"primate", 1};
  child.choices = {{.group = "browse", .atLeast = 3, .atMost = {}}};
  const Shelf shelf{primate()};
  const ResolvedProfile profile = resolved(child, shelf.lookup());
  ASSERT_EQ(profile.choices.size(), 1U);
  EXPECT_EQ(profile.choices[0].rule.atLeast, 3);
}

TEST(Profile, AParentOfAnotherVersionIsAnotherProfile) {
  TargetProfile newer = primate();
  newer.version = 2;
  newer.targets = {perKg("calcium", "CA", 5500.0, {})};
  TargetProfile child = lemur();
  child.parent->version = 2;
  const Shelf shelf{primate(), newer};
  EXPECT_THAT(targetIds(resolved(child, shelf.lookup())), ElementsAre("calcium", "iron", "zinc"));
}

TEST(Profile, AMissingParentIsNamedWithItsChild) {
  const auto outcome = resolve(lemur(), Shelf{}.lookup());
  const auto* missing = std::get_if<MissingParent>(&outcome);
  ASSERT_NE(missing, nullptr);
  EXPECT_EQ(missing->child, (ProfileReference{"lemur", 1}));
  EXPECT_EQ(missing->parent, (ProfileReference{"primate", 1}));
}

TEST(Profile, ParentsInACircleAreNamedAsAChain) {
  TargetProfile root = primate();
  root.parent = ProfileReference{"lemur", 1};
  TargetProfile child = profileOf("child");
  child.parent = ProfileReference{"primate", 1};
  const Shelf shelf{root, lemur()};
  const auto outcome = resolve(child, shelf.lookup());
  const auto* circle = std::get_if<CircularParents>(&outcome);
  ASSERT_NE(circle, nullptr);
  EXPECT_THAT(circle->chain, ElementsAre(ProfileReference{"primate", 1}, ProfileReference{"lemur", 1},
                                         ProfileReference{"primate", 1}));
}

TEST(Profile, ItsOwnParentIsTheShortestCircle) {
  TargetProfile own = primate();
  own.parent = ProfileReference{"primate", 1};
  const auto outcome = resolve(own, Shelf{}.lookup());
  ASSERT_TRUE(std::holds_alternative<CircularParents>(outcome));
  EXPECT_EQ(std::get<CircularParents>(outcome).chain.size(), 2U);
}

ProfileTarget safeSelenium(double max) {
  ProfileTarget limit = perKg("selenium", "SE", 0.3, max);
  limit.safeUpperLimit = true;
  return limit;
}

/// A child of a profile with a safe upper limit of 2 mg/kg for selenium, that states this.
ResolvedProfile childOfLimit(const std::vector<ProfileTarget>& targets,
                             const std::vector<DroppedRule>& dropped = {}) {
  TargetProfile parent = profileOf("parent");
  parent.targets = {safeSelenium(2.0)};
  TargetProfile child = profileOf("child");
  child.parent = ProfileReference{"parent", 1};
  child.targets = targets;
  child.dropped = dropped;
  const Shelf shelf{parent};
  return resolved(child, shelf.lookup());
}

TEST(SafeUpperLimit, IsNotLostByStatingAnotherMinimum) {
  const ResolvedProfile profile = childOfLimit({perKg("selenium", "SE", 0.5, {})});
  const ProfileTarget& selenium = profile.targets.at(0).rule;
  EXPECT_EQ(selenium.target.min, 0.5);
  EXPECT_EQ(selenium.target.max, 2.0);
  EXPECT_TRUE(selenium.safeUpperLimit);
  EXPECT_TRUE(maxIsHard(selenium));
}

TEST(SafeUpperLimit, IsDroppedOnlyWithAReason) {
  EXPECT_EQ(childOfLimit({}, {{"selenium", ""}}).targets.size(), 1U);
  EXPECT_THAT(childOfLimit({}, {{"selenium", "no data for this species; the vet agrees"}}).targets,
              IsEmpty());
}

TEST(SafeUpperLimit, IsHardUnlessItIsLifted) {
  ProfileTarget limit = safeSelenium(2.0);
  EXPECT_TRUE(maxIsHard(limit));
  limit.lifted = LiftedLimit{"Vet A", "2026-11-01", "deficiency treated"};
  EXPECT_FALSE(maxIsHard(limit));
  EXPECT_FALSE(maxIsHard(perKg("zinc", "ZN", 60.0, 200.0)));
  EXPECT_TRUE(maxIsHard(childOfLimit({safeSelenium(3.0)}).targets.at(0).rule));
}

std::vector<ProfileProblem> problemsOf(const TargetProfile& profile) {
  std::vector<ProfileProblem> problems;
  for (const ProfileFault& fault : problemsWith(profile)) problems.push_back(fault.problem);
  return problems;
}

TEST(ProfileChecks, OfSoundOnesNothingIsWrong) {
  EXPECT_THAT(problemsWith(primate()), IsEmpty());
  EXPECT_THAT(problemsWith(lemur()), IsEmpty());
}

TEST(ProfileChecks, NameTheRuleThatIsWrong) {
  TargetProfile profile = lemur();
  profile.targets[0].target.min = 90.0;
  EXPECT_THAT(problemsWith(profile), ElementsAre(ProfileFault{ProfileProblem::MinAboveMax, "iron"}));
}

TEST(ProfileChecks, FindWhatNoFileMayHold) {
  using enum ProfileProblem;
  const auto changed = [](auto change) {
    TargetProfile profile = lemur();
    change(profile);
    return problemsOf(profile);
  };
  EXPECT_THAT(changed([](auto& p) { p.code.clear(); }), ElementsAre(NoCode));
  EXPECT_THAT(changed([](auto& p) { p.version = 0; }), ElementsAre(VersionBelowOne));
  EXPECT_THAT(changed([](auto& p) { p.parent = ProfileReference{"lemur", 1}; }), ElementsAre(OwnParent));
  EXPECT_THAT(changed([](auto& p) { p.targets[0].target.id.clear(); }), ElementsAre(NoId));
  EXPECT_THAT(changed([](auto& p) { p.exclusions[0].id = "iron"; }), ElementsAre(SameIdTwice));
  EXPECT_THAT(changed([](auto& p) { p.targets[0].target.max.reset(); }), ElementsAre(NeitherBound));
  EXPECT_THAT(changed([](auto& p) { p.targets[0].target.max = -1.0; }), ElementsAre(BoundNotAnAmount));
  EXPECT_THAT(changed([](auto& p) { p.targets[0].preferred = 90.0; }), ElementsAre(PreferredOutsideBounds));
  EXPECT_THAT(changed([](auto& p) { p.targets[0].target.unit = quantity::Unit::Kilojoule; }),
              ElementsAre(UnitOfAnotherKind));
  EXPECT_THAT(changed([](auto& p) { p.targets[1].safeUpperLimit = true; }),
              ElementsAre(UpperLimitWithoutMax));
  EXPECT_THAT(changed([](auto& p) { p.targets[0].lifted = LiftedLimit{}; }),
              ElementsAre(LiftedWithoutReason));
  EXPECT_THAT(changed([](auto& p) { p.dropped[0].reason.clear(); }), ElementsAre(DroppedWithoutReason));
  EXPECT_THAT(changed([](auto& p) { p.exclusions[0].food = "banana"; }), ElementsAre(ExclusionOfNothing));
}

TEST(ProfileVersions, TheNextIsToBeEditedAndNoStarter) {
  TargetProfile starter = primate();
  starter.starter = true;
  const TargetProfile next = nextVersionOf(starter);
  EXPECT_EQ(next.version, 2);
  EXPECT_FALSE(next.starter);
  EXPECT_EQ(next.targets, starter.targets);
}

}  // namespace
}  // namespace tarebowl::animal
