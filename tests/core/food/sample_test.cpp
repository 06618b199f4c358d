// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/sample.h"

#include <gtest/gtest.h>

namespace tarebowl::food {
namespace {

using quantity::Basis;
using quantity::Unit;

SampleValue read(const char* tagname, const StatedValue& stated) {
  return std::get<SampleValue>(toSampleValue(findByTagname(tagname).value(), stated));
}

StatementError refused(const char* tagname, const StatedValue& stated) {
  return std::get<StatementError>(toSampleValue(findByTagname(tagname).value(), stated));
}

// 5.3 g/kg DM = 0.53 g = 530 mg in 100 g DM.
TEST(SampleValue, FiveGramsOfCalciumPerKiloOfDryMatterStayOnDryMatter) {
  const SampleValue value =
      read("CA", {.amount = 5.3, .sd = 0.2, .unit = Unit::Gram, .per = 1000.0, .basis = Basis::DryMatter});
  EXPECT_EQ(basisOf(value.amount), Basis::DryMatter);
  EXPECT_DOUBLE_EQ(amountOf(value.amount), 530.0);
  EXPECT_DOUBLE_EQ(value.sd.value(), 20.0);
  EXPECT_EQ(value.reported, (Reported{5.3, Unit::Gram, 1000.0}));
}

TEST(SampleValue, WhatIsReportedAsItIsStoredKeepsItsDigitsAndNoSecondNumber) {
  const SampleValue value = read("CA", {.amount = 254.1, .unit = Unit::Milligram, .per = 100.0});
  EXPECT_EQ(amountOf(value.amount), 254.1);
  EXPECT_FALSE(value.reported);
}

// 9 g per 1000 kcal ME.
TEST(SampleValue, AValuePerEnergyStaysPerEnergy) {
  const SampleValue value =
      read("PROCNT", {.amount = 9.0, .unit = Unit::Gram, .per = 100.0, .basis = Basis::Energy});
  EXPECT_EQ(basisOf(value.amount), Basis::Energy);
  EXPECT_DOUBLE_EQ(amountOf(value.amount), 90.0);
}

TEST(SampleValue, WhatIsNoStatementOfThisNutrientIsRefused) {
  EXPECT_EQ(refused("CA", {.amount = -1.0}), StatementError::NotAnAmount);
  EXPECT_EQ(refused("CA", {.amount = 1.0, .per = 0.0}), StatementError::NotAnAmount);
  EXPECT_EQ(refused("CA", {.amount = 1.0, .unit = Unit::Kilocalorie}), StatementError::WrongUnit);
  EXPECT_EQ(refused("CA", {.amount = 1.0, .basis = Basis::BodyMass}), StatementError::WrongBasis);
}

TEST(SampleOrigin, IsReadByTheWordItIsWrittenWith) {
  for (const SampleOrigin origin :
       {SampleOrigin::OwnLab, SampleOrigin::Publication, SampleOrigin::Label, SampleOrigin::Estimate})
    EXPECT_EQ(parseSampleOrigin(symbolOf(origin)), origin);
  EXPECT_FALSE(parseSampleOrigin("hearsay"));
}

}  // namespace
}  // namespace tarebowl::food
