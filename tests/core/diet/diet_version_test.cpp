// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/diet_version.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using quantity::Grams;
using testing::ElementsAre;
using testing::IsEmpty;
using enum VersionState;

TEST(DietVersionLife, AVersionIsApprovedOnlyAfterItWasSubmitted) {
  EXPECT_TRUE(mayGo(Draft, Submitted));
  EXPECT_TRUE(mayGo(Submitted, Approved));
  EXPECT_FALSE(mayGo(Draft, Approved));
}

TEST(DietVersionLife, ASubmittedVersionIsSentBackAndAnApprovedOneOnlyRetires) {
  EXPECT_TRUE(mayGo(Submitted, Draft));
  EXPECT_TRUE(mayGo(Approved, Retired));
  EXPECT_FALSE(mayGo(Approved, Draft)) << "what is fed never changes";
  for (const VersionState next : {Draft, Submitted, Approved, Retired}) EXPECT_FALSE(mayGo(Retired, next));
}

TEST(DietVersionProblems, AFoodMayStandInTwoMealsButNotTwiceInOne) {
  DietVersion version;
  version.lines = {{.food = "kale", .amount = Grams(5), .meal = "morning"},
                   {.food = "kale", .amount = Grams(3), .meal = "evening"}};
  EXPECT_THAT(problemsWith(version), IsEmpty());
  version.lines.push_back({.food = "kale", .amount = Grams(1), .meal = "evening"});
  EXPECT_THAT(problemsWith(version), ElementsAre(VersionFinding{VersionProblem::FoodTwiceInAMeal, "kale"}));
}

TEST(DietVersionProblems, EachLimitThatCannotBeIsNamedWithItsFood) {
  DietVersion version;
  version.lines = {{.food = "egg", .min = Grams(5), .max = Grams(4)}, {.food = "worm", .amount = Grams(-1)}};
  version.allowances = {{.food = "browse", .low = Grams(20), .high = Grams(10)}};
  EXPECT_THAT(problemsWith(version),
              ElementsAre(VersionFinding{VersionProblem::MinAboveMax, "egg"},
                          VersionFinding{VersionProblem::AmountNegative, "worm"},
                          VersionFinding{VersionProblem::AllowanceTurnedRound, "browse"}));
}

}  // namespace
}  // namespace tarebowl::diet
