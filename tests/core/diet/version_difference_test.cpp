// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/version_difference.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using quantity::Grams;
using testing::ElementsAre;
using testing::IsEmpty;
using Kind = DifferenceKind;

DietVersion evening() {
  DietVersion version;
  version.profile = {"tenrec", 2};
  version.lines = {{.food = "crickets", .amount = Grams(6), .max = Grams(12)},
                   {.food = "egg", .amount = Grams(1), .preparation = "chopped"}};
  return version;
}

TEST(VersionDifferences, AVersionDoesNotDifferFromItselfWhateverBecameOfIt) {
  DietVersion approved = evening();
  approved.number = 2;
  approved.state = VersionState::Approved;
  EXPECT_THAT(differences(evening(), approved), IsEmpty());
}

TEST(VersionDifferences, ChangedGramsAFoodThatIsGoneAndOneThatIsNew) {
  DietVersion after = evening();
  after.lines[0].amount = Grams(4);
  after.lines[1] = {.food = "larvae", .amount = Grams(3)};
  EXPECT_THAT(
      differences(evening(), after),
      ElementsAre(VersionDifference{.kind = Kind::Amount, .subject = "crickets", .before = 6.0, .after = 4.0},
                  VersionDifference{.kind = Kind::LineRemoved, .subject = "egg", .before = 1.0},
                  VersionDifference{.kind = Kind::LineAdded, .subject = "larvae", .after = 3.0}));
}

TEST(VersionDifferences, ALimitThatIsLiftedAndAnotherWayToPrepare) {
  DietVersion after = evening();
  after.lines[0].max.reset();
  after.lines[1].preparation = "whole";
  EXPECT_THAT(
      differences(evening(), after),
      ElementsAre(
          VersionDifference{.kind = Kind::Max, .subject = "crickets", .before = 12.0},
          VersionDifference{
              .kind = Kind::Preparation, .subject = "egg", .textBefore = "chopped", .textAfter = "whole"}));
}

TEST(VersionDifferences, TheSameFoodInAnotherMealIsAnotherLine) {
  DietVersion after = evening();
  after.lines[0].meal = "morning";
  EXPECT_THAT(
      differences(evening(), after),
      ElementsAre(VersionDifference{.kind = Kind::LineRemoved, .subject = "crickets", .before = 6.0},
                  VersionDifference{
                      .kind = Kind::LineAdded, .subject = "crickets", .meal = "morning", .after = 6.0}));
}

TEST(VersionDifferences, BoundsOfItsOwnTheProfileAndWhatIsSought) {
  DietVersion after = evening();
  after.changedBounds = {{.rule = "ca-min", .min = 8.0, .reason = "growing young"}};
  after.profile.version = 3;
  after.objective = {.kind = Objective::Kind::Lowest, .nutrient = food::findByTagname("FE")};
  after.confidence = 0.9;
  EXPECT_THAT(
      differences(evening(), after),
      ElementsAre(
          VersionDifference{.kind = Kind::BoundMin, .subject = "ca-min", .after = 8.0},
          VersionDifference{.kind = Kind::ProfileOf, .textBefore = "tenrec 2", .textAfter = "tenrec 3"},
          VersionDifference{.kind = Kind::ObjectiveOf, .textBefore = "closest", .textAfter = "lowest FE"},
          VersionDifference{.kind = Kind::Confidence, .after = 0.9}));
}

TEST(VersionDifferences, WhatIsGivenUnweighedCounts) {
  DietVersion before = evening();
  before.allowances = {{.food = "browse", .low = Grams(5), .high = Grams(20), .purpose = Purpose::Browse}};
  DietVersion after = before;
  after.allowances[0].high = Grams(30);
  EXPECT_THAT(differences(before, after),
              ElementsAre(VersionDifference{
                  .kind = Kind::AllowanceHigh, .subject = "browse", .before = 20.0, .after = 30.0}));
}

TEST(VersionDifferences, WhatIsSetAsideAndWhatHoldsAgain) {
  DietVersion before = evening();
  before.lifted = {{.ban = "no-fruit", .food = "pear", .reason = "pills go in it"},
                   {.ban = "raw-egg-white", .reason = "boiled"}};
  DietVersion after = evening();
  after.lifted = {{.ban = "no-fruit", .food = "apple", .reason = "pills go in it"},
                  {.ban = "raw-egg-white", .reason = "boiled for 10 min"}};
  EXPECT_THAT(differences(before, after), ElementsAre(VersionDifference{.kind = Kind::BackInForce,
                                                                        .subject = "no-fruit",
                                                                        .food = "pear",
                                                                        .textBefore = "pills go in it"},
                                                      VersionDifference{.kind = Kind::LiftedReason,
                                                                        .subject = "raw-egg-white",
                                                                        .textBefore = "boiled",
                                                                        .textAfter = "boiled for 10 min"},
                                                      VersionDifference{.kind = Kind::Lifted,
                                                                        .subject = "no-fruit",
                                                                        .food = "apple",
                                                                        .textAfter = "pills go in it"}));
}

TEST(VersionDifferences, AnotherFirstDayAndALongerPhaseIn) {
  DietVersion after = evening();
  after.fedFrom = quantity::parseDate("2026-12-01");
  after.phaseInDays = 7;
  EXPECT_THAT(differences(evening(), after),
              ElementsAre(VersionDifference{.kind = Kind::FedFrom, .textAfter = "2026-12-01"},
                          VersionDifference{.kind = Kind::PhaseInDays, .before = 0.0, .after = 7.0}));
}

}  // namespace
}  // namespace tarebowl::diet
