// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/nitrogen.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <stdexcept>

namespace tarebowl::food {
namespace {

// 18.7 % crude protein of mealworms is 2.992 % nitrogen. By 4.76 (Janssen 2017, whole larvae) that is 14.2419
// %, by 5.41 (Boulos 2020, mealworm) 16.1867 % protein.
TEST(Nitrogen, MealwormsOf18Point7PercentCrudeProteinHold14Point24OfTrueProtein) {
  EXPECT_NEAR(nitrogenOf(18.7, kCrudeProteinFactor), 2.992, 1e-9);
  EXPECT_NEAR(restateProtein(18.7, kCrudeProteinFactor, 4.76), 14.2419, 5e-5);
  EXPECT_NEAR(restateProtein(18.7, kCrudeProteinFactor, 5.41), 16.1867, 5e-5);
}

// Protein averages 16 % nitrogen: 100/16.
TEST(Nitrogen, CrudeProteinIsNitrogenTimes6Point25) {
  EXPECT_DOUBLE_EQ(proteinOf(16.0, kCrudeProteinFactor), 100.0);
}

// Boulos 2020: 6.25 overestimates insect protein by about 17 % against the mean factor 5.33.
TEST(Nitrogen, TheInsectFactorsDifferFromCrudeProteinByAboutASixth) {
  EXPECT_NEAR(restateProtein(100.0, 5.33, kCrudeProteinFactor), 117.0, 0.5);
}

TEST(Nitrogen, EveryPublishedFactorNamesItsSourceAndLiesWhereProteinsLie) {
  for (const auto& factor : publishedNitrogenFactors()) {
    EXPECT_FALSE(factor.source.empty()) << factor.material;
    EXPECT_GE(factor.factor, 4.5) << factor.material;
    EXPECT_LE(factor.factor, 6.5) << factor.material;
  }
}

TEST(Nitrogen, AFactorThatIsNoneIsRefused) {
  for (const double factor :
       {0.0, -6.25, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
    EXPECT_THROW(static_cast<void>(proteinOf(1.0, factor)), std::domain_error) << factor;
    EXPECT_THROW(static_cast<void>(nitrogenOf(1.0, factor)), std::domain_error) << factor;
  }
}

RC_GTEST_PROP(Nitrogen, RestatedThereAndBackIsTheIdentity, ()) {
  const double protein = *rc::gen::inRange(0, 100'001) / 1000.0;
  const double factor = *rc::gen::inRange(4000, 7000) / 1000.0;
  const double back =
      restateProtein(restateProtein(protein, kCrudeProteinFactor, factor), factor, kCrudeProteinFactor);
  RC_ASSERT(std::abs(back - protein) <= 1e-15 * 8 * protein);
}

}  // namespace
}  // namespace tarebowl::food
