// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/stated_value.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <limits>

namespace tarebowl::food {
namespace {

using quantity::Basis;
using quantity::DryMatterShare;
using quantity::Kilocalories;
using quantity::Unit;

const BasisFacts kPellet{DryMatterShare::fromWaterPer100g(8.0), Kilocalories(362.0)};

NutrientId id(const char* tagname) {
  return findByTagname(tagname).value();
}

double amountOf(const std::variant<NutrientValue, StatementError>& result) {
  return std::get<NutrientValue>(result).amount.value();
}

struct Statement {
  const char* what;
  const char* tagname;
  StatedValue stated;
  double per100gAsFed;  // worked by hand
};

// A pellet of 8 % moisture and 362 kcal ME per 100 g.
const std::array kStatements{
    Statement{"26 % as fed", "PROCNT", {.amount = 26.0}, 26.0},
    Statement{"260 g/kg as fed", "PROCNT", {.amount = 260.0, .per = 1000.0}, 26.0},
    Statement{"10 g Ca/kg DM", "CA", {.amount = 10.0, .per = 1000.0, .basis = Basis::DryMatter}, 920.0},
    Statement{"1 % Ca in DM", "CA", {.amount = 1.0, .basis = Basis::DryMatter}, 920.0},
    Statement{"80 mg Zn/kg", "ZN", {.amount = 80.0, .unit = Unit::Milligram, .per = 1000.0}, 8.0},
    Statement{"0.3 mg Se/kg", "SE", {.amount = 0.3, .unit = Unit::Milligram, .per = 1000.0}, 30.0},
    Statement{
        "2500 IU D/kg", "VITD", {.amount = 2500.0, .unit = Unit::InternationalUnit, .per = 1000.0}, 6.25},
    Statement{"8000 IU A/kg",
              "VITA_RAE",
              {.amount = 8000.0, .unit = Unit::InternationalUnit, .per = 1000.0},
              240.0},
    Statement{"50 g protein per 1000 kcal",
              "PROCNT",
              {.amount = 50.0, .per = 1000.0, .basis = Basis::Energy},
              18.1},
    Statement{"15.14608 MJ/kg", "ENERC", {.amount = 15146.08, .unit = Unit::Kilojoule, .per = 1000.0}, 362.0},
};

TEST(StatedValues, OfEveryBasisAndUnitAreReadAsFed) {
  for (const auto& [what, tagname, stated, expected] : kStatements)
    EXPECT_NEAR(amountOf(toAsFed(id(tagname), stated, kPellet)), expected, 1e-9 * expected) << what;
}

TEST(StatedValues, ScatterIsReadLikeTheAmountAndTheRestIsKept) {
  const auto result = toAsFed(id("CA"),
                              {.amount = 10.0,
                               .sd = 1.0,
                               .per = 1000.0,
                               .basis = Basis::DryMatter,
                               .sampleCount = 5,
                               .qualifier = Qualifier::AtMost,
                               .source = "lab"},
                              kPellet);
  const auto& value = std::get<NutrientValue>(result);
  EXPECT_NEAR(value.sd.value().value(), 92.0, 1e-9);
  EXPECT_EQ(value.sampleCount, 5);
  EXPECT_EQ(value.qualifier, Qualifier::AtMost);
  EXPECT_EQ(value.source, "lab");
}

TEST(StatedValues, WhatCannotBeReadSaysWhy) {
  constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
  const auto error = [](const char* tagname, const StatedValue& stated, const BasisFacts& facts) {
    return std::get<StatementError>(toAsFed(id(tagname), stated, facts));
  };
  EXPECT_EQ(error("CA", {.amount = -1.0}, kPellet), StatementError::NotAnAmount);
  EXPECT_EQ(error("CA", {.amount = kNan}, kPellet), StatementError::NotAnAmount);
  EXPECT_EQ(error("CA", {.amount = 1.0, .sd = -1.0}, kPellet), StatementError::NotAnAmount);
  EXPECT_EQ(error("CA", {.amount = 1.0, .per = 0.0}, kPellet), StatementError::NotAnAmount);
  EXPECT_EQ(error("CA", {.amount = 1.0, .unit = Unit::InternationalUnit}, kPellet),
            StatementError::WrongUnit);
  EXPECT_EQ(error("ENERC", {.amount = 1.0, .unit = Unit::Gram}, kPellet), StatementError::WrongUnit);
  EXPECT_EQ(error("CA", {.amount = 1.0, .basis = Basis::BodyMass}, kPellet), StatementError::WrongBasis);
  EXPECT_EQ(error("CA", {.amount = 1.0, .basis = Basis::DryMatter}, {}), StatementError::DryMatterUnknown);
  EXPECT_EQ(error("CA", {.amount = 1.0, .basis = Basis::Energy}, {}), StatementError::EnergyUnknown);
  EXPECT_EQ(error("CA", {.amount = 1.0, .basis = Basis::Energy}, {{}, Kilocalories(-2.0)}),
            StatementError::EnergyUnknown);
}

TEST(StatedValues, AnAmountIsShownOnABasisOnlyWhereTheFactForItIsKnown) {
  const quantity::AsFedContent protein(26.0);
  EXPECT_DOUBLE_EQ(amountOn(Basis::AsFed, protein, {}).value(), 26.0);
  EXPECT_NEAR(amountOn(Basis::DryMatter, protein, kPellet).value(), 28.260870, 5e-7);  // 26 / 0.92
  EXPECT_NEAR(amountOn(Basis::Energy, protein, kPellet).value(), 71.8232, 5e-5);       // 26 / 362 * 1000
  EXPECT_FALSE(amountOn(Basis::DryMatter, protein, {}));
  EXPECT_FALSE(amountOn(Basis::Energy, protein, {}));
  EXPECT_FALSE(amountOn(Basis::Day, protein, kPellet));
}

RC_GTEST_PROP(StatedValues, ReadFromABasisAndShownOnItAreTheSame, ()) {
  const auto basis = *rc::gen::element(Basis::AsFed, Basis::DryMatter, Basis::Energy);
  const double amount = *rc::gen::inRange(0, 100'001) / 1000.0;
  const BasisFacts facts{DryMatterShare::fromWaterPer100g(*rc::gen::inRange(0, 9999) / 100.0),
                         Kilocalories(*rc::gen::inRange(1, 9000) / 10.0)};
  const double per = basis == Basis::Energy ? 1000.0 : 100.0;
  const auto read =
      std::get<NutrientValue>(toAsFed(id("PROCNT"), {.amount = amount, .per = per, .basis = basis}, facts));
  RC_ASSERT(std::abs(amountOn(basis, read.amount, facts).value() - amount) <= 1e-14 * amount);
}

}  // namespace
}  // namespace tarebowl::food
