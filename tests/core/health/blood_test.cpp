// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/blood.h"

#include <gtest/gtest.h>

namespace tarebowl::health {
namespace {

using enum BloodUnit;

double converted(Analyte analyte, double value, BloodUnit from, BloodUnit to) {
  return inUnit({analyte, value, from, {}, {}}, to).value();
}

// Molar masses: Ca 40.078, P 30.973762, Mg 24.305; 25-OH-D3 C27H44O2 = 27·12.011 + 44·1.008 + 2·15.999 =
// 400.647.
TEST(Blood, convertsByMolarMasses) {
  // 10 mg/dl = 100 mg/l = 100 / 40.078 mmol/l
  EXPECT_NEAR(converted(Analyte::TotalCalcium, 10.0, MilligramPerDecilitre, MillimolePerLitre), 2.49513449,
              1e-8);
  EXPECT_NEAR(converted(Analyte::IonisedCalcium, 1.25, MillimolePerLitre, MilligramPerDecilitre), 5.00975,
              1e-10);
  // 4 mg/dl = 40 / 30.973762
  EXPECT_NEAR(converted(Analyte::Phosphorus, 4.0, MilligramPerDecilitre, MillimolePerLitre), 1.29141562,
              1e-8);
  EXPECT_NEAR(converted(Analyte::Magnesium, 2.4305, MilligramPerDecilitre, MillimolePerLitre), 1.0, 1e-12);
  // 30 ng/ml = 30 µg/l = 30 / 400.647 µmol/l
  EXPECT_NEAR(converted(Analyte::VitaminD25, 30.0, NanogramPerMillilitre, NanomolePerLitre), 74.8788834,
              1e-7);
  EXPECT_NEAR(converted(Analyte::VitaminD25, 0.1, MillimolePerLitre, NanomolePerLitre), 1e5, 1e-9);
}

TEST(Blood, anEnzymeIsNotWeighedAndCalciumHasNoActivity) {
  EXPECT_EQ(inUnit({Analyte::AlkalinePhosphatase, 90, UnitPerLitre, {}, {}}, MillimolePerLitre),
            std::nullopt);
  EXPECT_EQ(problemWith({Analyte::AlkalinePhosphatase, 90, MilligramPerDecilitre, {}, {}}),
            BloodProblem::UnitOfAnotherKind);
  EXPECT_EQ(problemWith({Analyte::TotalCalcium, 2.4, UnitPerLitre, {}, {}}), BloodProblem::UnitOfAnotherKind);
  EXPECT_EQ(problemWith({Analyte::AlkalinePhosphatase, 90, UnitPerLitre, {}, {}}), std::nullopt);
}

TEST(Blood, calciumInTheOtherUnitIsAskedAbout) {
  const auto doubt = doubtAbout({Analyte::TotalCalcium, 9.8, MillimolePerLitre, {}, {}});
  ASSERT_TRUE(doubt);
  EXPECT_EQ(doubt->doubt, BloodDoubt::OtherUnit);
  EXPECT_EQ(doubt->likely, MilligramPerDecilitre);
  EXPECT_EQ(doubtAbout({Analyte::TotalCalcium, 2.4, MilligramPerDecilitre, {}, {}})->likely,
            MillimolePerLitre);
  EXPECT_FALSE(doubtAbout({Analyte::TotalCalcium, 2.4, MillimolePerLitre, {}, {}}));
  EXPECT_FALSE(doubtAbout({Analyte::TotalCalcium, 9.8, MilligramPerDecilitre, {}, {}}));
}

TEST(Blood, theLabsOwnRangeTellsTheUnitWhereTheValueAloneCannot) {
  // 4.5 mmol/l of P is rare and possible; with a range of 2.5 … 6.0 mg/dl in mmol/l, 0.81 … 1.94, it is 4.5
  // mg/dl.
  EXPECT_FALSE(doubtAbout({Analyte::Phosphorus, 4.5, MillimolePerLitre, {}, {}}));
  EXPECT_EQ(doubtAbout({Analyte::Phosphorus, 4.5, MillimolePerLitre, 0.81, 1.94})->doubt,
            BloodDoubt::OtherUnit);
  // Simply high: in the other unit it would be low.
  EXPECT_FALSE(doubtAbout({Analyte::TotalCalcium, 3.4, MillimolePerLitre, 2.2, 3.0}));
}

TEST(Blood, whatNoAnimalHasIsAskedAbout) {
  EXPECT_EQ(doubtAbout({Analyte::TotalCalcium, 900, MillimolePerLitre, {}, {}})->doubt,
            BloodDoubt::Implausible);
  EXPECT_EQ(problemWith({Analyte::TotalCalcium, -1, MillimolePerLitre, {}, {}}), BloodProblem::NotAnAmount);
  EXPECT_EQ(problemWith({Analyte::TotalCalcium, 2, MillimolePerLitre, 3.0, 2.0}),
            BloodProblem::RangeUpsideDown);
}

TEST(Blood, standsAgainstTheRangeOfItsLab) {
  EXPECT_EQ(standingOf({Analyte::TotalCalcium, 2.0, MillimolePerLitre, 2.2, 3.0}), BloodStanding::Below);
  EXPECT_EQ(standingOf({Analyte::TotalCalcium, 3.0, MillimolePerLitre, 2.2, 3.0}), BloodStanding::Within);
  EXPECT_EQ(standingOf({Analyte::AlkalinePhosphatase, 300, UnitPerLitre, {}, 250.0}), BloodStanding::Above);
  EXPECT_EQ(standingOf({Analyte::TotalCalcium, 3.0, MillimolePerLitre, {}, {}}), BloodStanding::NoRange);
}

TEST(Blood, readsTheUnitsOfReports) {
  EXPECT_EQ(parseBloodUnit("mg/dL"), MilligramPerDecilitre);
  EXPECT_EQ(parseBloodUnit("nmol/l"), NanomolePerLitre);
  EXPECT_EQ(parseBloodUnit("mg"), std::nullopt);
  EXPECT_EQ(symbolOf(UnitPerLitre), "U/l");
}

}  // namespace
}  // namespace tarebowl::health
