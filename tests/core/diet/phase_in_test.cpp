// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/phase_in.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <stdexcept>

namespace tarebowl::diet {
namespace {

using quantity::Grams;
using testing::ElementsAre;

Grams wholeGram(const std::string& /*food*/) {
  return Grams(1);
}

// A quarter of the way from 10 g to 2 g is 8 g, half 6 g, three quarters 4 g; from 0 g to 3 g:
// 0.75, 1.5, 2.25 g, on a scale of 1 g 1, 2 and 2 g.
TEST(PhaseIn, TheNewDietComesInByEqualSharesOnTheScale) {
  const std::vector<FoodGrams> from{{"crickets", Grams(10)}};
  const std::vector<FoodGrams> to{{"crickets", Grams(2)}, {"larvae", Grams(3)}};
  const auto plan = phaseIn(from, to, 4, wholeGram);
  ASSERT_EQ(plan.size(), 4U);
  EXPECT_THAT(plan[0], ElementsAre(FoodGrams{"crickets", Grams(8)}, FoodGrams{"larvae", Grams(1)}));
  EXPECT_THAT(plan[1], ElementsAre(FoodGrams{"crickets", Grams(6)}, FoodGrams{"larvae", Grams(2)}));
  EXPECT_THAT(plan[2], ElementsAre(FoodGrams{"crickets", Grams(4)}, FoodGrams{"larvae", Grams(2)}));
  EXPECT_THAT(plan[3], ElementsAre(FoodGrams{"crickets", Grams(2)}, FoodGrams{"larvae", Grams(3)}));
}

TEST(PhaseIn, InOneDayItIsTheNewDiet) {
  const std::vector<FoodGrams> to{{"larvae", Grams(2.5)}};
  EXPECT_THAT(phaseIn({}, to, 1, wholeGram).front(), ElementsAre(FoodGrams{"larvae", Grams(2.5)}))
      << "its own grams, on the scale or not";
}

TEST(PhaseIn, AFoodThatStandsInTwoMealsIsOneFood) {
  const std::vector<FoodGrams> from{{"kale", Grams(5)}, {"kale", Grams(3)}};
  EXPECT_THAT(phaseIn(from, {}, 2, wholeGram).front(), ElementsAre(FoodGrams{"kale", Grams(4)}));
}

TEST(PhaseIn, TakesAtLeastADay) {
  EXPECT_THROW(static_cast<void>(phaseIn({}, {}, 0, wholeGram)), std::invalid_argument);
}

RC_GTEST_PROP(PhaseIn, NoFoodTurnsBackOnItsWayAndTheLastDayIsTheNewDiet, ()) {
  const int days = *rc::gen::inRange(1, 29);
  const Grams from(*rc::gen::inRange(0, 500));
  const Grams to(*rc::gen::inRange(0, 500));
  const Grams step(*rc::gen::inRange(1, 40) * 0.25);
  const auto plan = phaseIn(std::vector<FoodGrams>{{"food", from}}, std::vector<FoodGrams>{{"food", to}},
                            days, [&](const std::string&) { return step; });
  const bool arrived = plan.back().front().amount == to;
  RC_ASSERT(arrived);
  for (std::size_t day = 1; day + 1 < plan.size(); ++day) {
    const double before = plan[day - 1].front().amount.value();
    const double after = plan[day].front().amount.value();
    const bool onItsWay = from <= to ? before <= after : before >= after;
    RC_ASSERT(onItsWay);
    const double steps = after / step.value();
    RC_ASSERT(std::abs(steps - std::round(steps)) < 1e-9);
  }
}

}  // namespace
}  // namespace tarebowl::diet
