// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_lines.h"

#include "tests/core/diet/bowls.h"

#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using quantity::Grams;

TEST(RotationLines, APlannedDayKeepsMealsAndPreparationsOfTheVersion) {
  DietVersion version;
  version.lines = {{.food = "kale", .amount = Grams(20), .meal = "morning", .preparation = "shredded"},
                   {.food = "carrot", .amount = Grams(10), .purpose = Purpose::Enrichment}};
  const std::vector<PlaceInVersion> places{{.food = "kale", .meal = "morning"},
                                           {.food = "carrot", .purpose = Purpose::Enrichment},
                                           {.food = "raisin", .allowance = Allowance{.food = "raisin"}}};
  const auto lines = linesOfPlannedDay(version, places, testing::grams({35, 0, 2}));
  ASSERT_EQ(lines.size(), 1U);  // no carrot that day; raisins are given unweighed as ever
  EXPECT_EQ(lines[0].food, "kale");
  EXPECT_EQ(lines[0].amount, Grams(35));
  EXPECT_EQ(lines[0].meal, "morning");
  EXPECT_EQ(lines[0].preparation, "shredded");
}

TEST(RotationLines, ADayOfAnotherProblemIsRefused) {
  EXPECT_THROW(static_cast<void>(linesOfPlannedDay({}, {}, testing::grams({1}))), std::invalid_argument);
}

}  // namespace
}  // namespace tarebowl::diet
