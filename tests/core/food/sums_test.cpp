// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/sums.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// The foods are invented.
namespace tarebowl::food {
namespace {

using quantity::AsFedContent;

NutrientId id(const char* tagname) {
  return findByTagname(tagname).value();
}

SampleValue stating(const char* tagname, double amount, std::optional<double> sd = {}) {
  SampleValue made{.nutrient = id(tagname), .amount = AsFedContent(amount)};
  made.sd = sd;
  return made;
}

/// What is known of a food whose own laboratory reports these.
Derivation known(std::vector<SampleValue> values) {
  const std::vector<Sample> samples{{.source = "report 1", .values = std::move(values)}};
  Derivation derivation = derive(samples);
  addSums(derivation);
  return derivation;
}

TEST(Sums, OfAminoAcidsAreWorkedOutWhereATableStatesTheParts) {
  const Derivation food =
      known({stating("MET", 0.51), stating("CYS", 0.13), stating("PHE", 0.68), stating("TYR", 1.02)});
  const DerivedValue* sulphur = food.find(id("AAS"));
  ASSERT_NE(sulphur, nullptr);
  EXPECT_EQ(sulphur->by, DerivedBy::SumOfParts);
  EXPECT_DOUBLE_EQ(sulphur->value.amount.value(), 0.51 + 0.13);
  EXPECT_EQ(sulphur->value.qualifier, Qualifier::Equal);
  EXPECT_EQ(sulphur->value.source, "worked out from MET, CYS");
  EXPECT_DOUBLE_EQ(food.composition().amountPer100g(id("XPHETYR")).value(), 0.68 + 1.02);
}

TEST(Sums, AreNotKnownWhereAPartIsNot) {
  const Derivation food = known({stating("MET", 0.51)});
  EXPECT_FALSE(food.composition().amountPer100g(id("AAS")));
  const DerivedValue* least = food.find(id("AAS"));
  ASSERT_NE(least, nullptr);
  EXPECT_EQ(least->value.qualifier, Qualifier::AtLeast);
  EXPECT_DOUBLE_EQ(least->value.amount.value(), 0.51);
  EXPECT_EQ(least->value.source, "worked out from MET; CYS unknown");
  EXPECT_EQ(known({stating("PROCNT", 20)}).find(id("AAS")), nullptr);
}

TEST(Sums, ThatWereMeasuredAreNotWorkedOut) {
  const Derivation food = known({stating("MET", 0.51), stating("CYS", 0.13), stating("AAS", 0.7)});
  EXPECT_EQ(food.find(id("AAS"))->by, DerivedBy::PooledOwnLab);
  EXPECT_EQ(food.composition().amountPer100g(id("AAS")), 0.7);
}

TEST(Sums, ThatALabelGuaranteesAreWorkedOutFromMeasuredParts) {
  Sample label{.origin = SampleOrigin::Label, .source = "label", .values = {stating("AAS", 0.5)}};
  label.values.front().qualifier = Qualifier::AtLeast;
  const Sample lab{.source = "report 1", .values = {stating("MET", 0.51), stating("CYS", 0.13)}};
  Derivation food = derive(std::vector<Sample>{label, lab});
  addSums(food);
  EXPECT_DOUBLE_EQ(food.composition().amountPer100g(id("AAS")).value(), 0.64);
  Derivation alone = derive(std::vector<Sample>{label, {.source = "r", .values = {stating("MET", 0.51)}}});
  addSums(alone);
  EXPECT_EQ(alone.find(id("AAS"))->by, DerivedBy::BoundOnly) << "the label's bound is somebody's word";
}

TEST(Sums, OfFattyAcidsNeedTheirMainPartsAndTakeTheMinorOnesWhereKnown) {
  const std::vector<SampleValue> main{stating("F18D3N3", 1.2), stating("F20D5N3", 0.3),
                                      stating("F22D5N3", 0.1), stating("F22D6N3", 0.4)};
  EXPECT_DOUBLE_EQ(known(main).composition().amountPer100g(id("FAPUN3")).value(), 1.2 + 0.3 + 0.1 + 0.4);
  EXPECT_DOUBLE_EQ(known(main).composition().amountPer100g(id("XEPADHA")).value(), 0.3 + 0.4);
  std::vector<SampleValue> more = main;
  more.push_back(stating("F20D3N3", 0.05));
  EXPECT_DOUBLE_EQ(known(more).composition().amountPer100g(id("FAPUN3")).value(),
                   1.2 + 0.3 + 0.1 + 0.4 + 0.05);
  EXPECT_DOUBLE_EQ(known({stating("F18D2N6", 2.0), stating("F20D4N6", 0.1), stating("F18D3CN6", 0.02)})
                       .composition()
                       .amountPer100g(id("FAPUN6"))
                       .value(),
                   2.0 + 0.1 + 0.02);
}

TEST(Sums, OfPhosphorusLeaveOutWhatPhytateHolds) {
  // 6 P in C6H18O24P6: 6*30.973762 / (6*12.011 + 18*1.008 + 24*15.999 + 6*30.973762) = 185.842572/660.028572
  const double share = 185.842572 / 660.028572;
  const Derivation bran = known({stating("P", 1000), stating("PHYTAC", 2500)});
  EXPECT_NEAR(bran.composition().amountPer100g(id("XPNPHY")).value(), 1000 - 2500 * share, 1e-9);
  EXPECT_EQ(known({stating("P", 1000)}).find(id("XPNPHY")), nullptr)
      << "phosphorus alone is the most that it can be, not the least";
  EXPECT_EQ(known({stating("P", 100), stating("PHYTAC", 2500)}).find(id("XPNPHY")), nullptr)
      << "less than nothing is no amount";
}

TEST(Sums, ScatterAsIfTheirPartsRoseAndFellTogether) {
  const Derivation food = known({stating("MET", 0.51, 0.05), stating("CYS", 0.13, 0.02)});
  EXPECT_DOUBLE_EQ(food.composition().sdPer100g(id("AAS")).value(), 0.05 + 0.02);
  EXPECT_FALSE(known({stating("MET", 0.51, 0.05), stating("CYS", 0.13)}).composition().sdPer100g(id("AAS")));
}

TEST(Sums, StandApartFromWhatSomebodyStated) {
  const Derivation food = known({stating("MET", 0.51), stating("CYS", 0.13)});
  EXPECT_EQ(food.stated().find(id("AAS")), nullptr);
  EXPECT_NE(food.stated().find(id("MET")), nullptr);
}

TEST(Sums, AreInTheUnitOfTheirParts) {
  for (const NutrientSum& sum : nutrientSums())
    for (const SumPart& part : sum.parts)
      EXPECT_EQ(describe(part.nutrient).unit, describe(sum.sum).unit) << describe(part.nutrient).tagname;
}

}  // namespace
}  // namespace tarebowl::food
