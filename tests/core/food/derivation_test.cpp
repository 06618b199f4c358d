// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/derivation.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::food {
namespace {

using quantity::AsFedContent;
using quantity::DryMatterContent;
using testing::ElementsAre;
using testing::IsEmpty;
using Why = LeftOutBecause;

NutrientId id(const char* tagname) {
  return findByTagname(tagname).value();
}

SampleValue value(const char* tagname, double amount, Qualifier qualifier = Qualifier::Equal) {
  SampleValue made{.nutrient = id(tagname)};
  made.amount = AsFedContent(amount);
  made.qualifier = qualifier;
  return made;
}

SampleValue meanOf(const char* tagname, double amount, int count, double sd) {
  SampleValue made = value(tagname, amount);
  made.count = count;
  made.sd = sd;
  return made;
}

SampleValue onDryMatter(const char* tagname, double amount) {
  SampleValue made = value(tagname, 0.0);
  made.amount = DryMatterContent(amount);
  return made;
}

Sample sample(SampleOrigin origin, const char* date, std::vector<SampleValue> values) {
  Sample made{.origin = origin, .source = symbolOf(origin).data(), .values = std::move(values)};
  made.date = quantity::parseDate(date);
  return made;
}

DerivedValue calcium(const std::vector<Sample>& samples, const std::vector<Override>& overrides = {}) {
  const Derivation derivation = derive(samples, overrides);
  const DerivedValue* found = derivation.find(id("CA"));
  EXPECT_NE(found, nullptr);
  return found == nullptr ? DerivedValue{} : *found;
}

TEST(Derivation, OwnLabGoesBeforeANewerPublication) {
  const DerivedValue ca = calcium({sample(SampleOrigin::Publication, "2025-01-01", {value("CA", 150)}),
                                   sample(SampleOrigin::OwnLab, "2020-06-01", {value("CA", 254)})});
  EXPECT_EQ(ca.value.amount, AsFedContent(254));
  EXPECT_EQ(ca.origin, SampleOrigin::OwnLab);
  EXPECT_THAT(ca.used, ElementsAre(1U));
  EXPECT_THAT(ca.leftOut, ElementsAre(LeftOut{0, Why::LessTrusted}));
}

// The two of 2024 and 2021 lie within five years: (3*10 + 2*13)/5 = 11.2; 2018 does not.
TEST(Derivation, OwnResultsOfTheLastFiveYearsArePooled) {
  const DerivedValue ca = calcium({sample(SampleOrigin::OwnLab, "2018-12-31", {meanOf("CA", 99, 4, 1)}),
                                   sample(SampleOrigin::OwnLab, "2021-03-01", {meanOf("CA", 10, 3, 1)}),
                                   sample(SampleOrigin::OwnLab, "2024-03-01", {meanOf("CA", 13, 2, 2)})});
  EXPECT_EQ(ca.by, DerivedBy::PooledOwnLab);
  EXPECT_DOUBLE_EQ(ca.value.amount.value(), 11.2);
  EXPECT_EQ(ca.value.sampleCount, 5);
  EXPECT_THAT(ca.used, ElementsAre(1U, 2U));
  EXPECT_THAT(ca.leftOut, ElementsAre(LeftOut{0, Why::Older}));
}

TEST(Derivation, ExactlyFiveYearsIsStillPooledADayMoreIsNot) {
  const DerivedValue ca = calcium({sample(SampleOrigin::OwnLab, "2019-02-28", {value("CA", 1)}),
                                   sample(SampleOrigin::OwnLab, "2019-03-01", {value("CA", 10)}),
                                   sample(SampleOrigin::OwnLab, "2024-03-01", {value("CA", 20)})});
  EXPECT_DOUBLE_EQ(ca.value.amount.value(), 15.0);
  EXPECT_THAT(ca.leftOut, ElementsAre(LeftOut{0, Why::Older}));
}

TEST(Derivation, OfPublicationsTheNewestAloneIsTaken) {
  const DerivedValue ca = calcium({sample(SampleOrigin::Publication, "2018-04-01", {value("CA", 254)}),
                                   sample(SampleOrigin::Publication, "2015-09-01", {value("CA", 150)}),
                                   sample(SampleOrigin::Publication, "", {value("CA", 72)})});
  EXPECT_EQ(ca.value.amount, AsFedContent(254));
  EXPECT_EQ(ca.by, DerivedBy::NewestResult);
  EXPECT_THAT(ca.leftOut, ElementsAre(LeftOut{1, Why::Older}, LeftOut{2, Why::Undated}));
}

TEST(Derivation, AGuaranteedMinimumIsNeverAMean) {
  const auto label = sample(SampleOrigin::Label, "2026-01-01", {value("CA", 800, Qualifier::AtLeast)});
  const DerivedValue beside =
      calcium({label, sample(SampleOrigin::Estimate, "2001-01-01", {value("CA", 1100)})});
  EXPECT_EQ(beside.value.amount, AsFedContent(1100));
  EXPECT_THAT(beside.leftOut, ElementsAre(LeftOut{0, Why::Guarantee}));

  const DerivedValue alone = calcium({label});
  EXPECT_EQ(alone.by, DerivedBy::BoundOnly);
  EXPECT_EQ(alone.value.qualifier, Qualifier::AtLeast);
  EXPECT_EQ(derive(std::vector{label}).composition().find(id("CA")), nullptr);
}

TEST(Derivation, BelowQuantificationIsUnknownWithABound) {
  const auto below =
      sample(SampleOrigin::OwnLab, "2026-01-01", {value("CA", 5, Qualifier::BelowQuantification)});
  const DerivedValue alone =
      calcium({below, sample(SampleOrigin::Publication, "2026-01-01", {value("CA", 40)})});
  EXPECT_EQ(alone.by, DerivedBy::BoundOnly);  // an own result that is low is not replaced by a table's
  EXPECT_EQ(alone.value.amount, AsFedContent(5));
  EXPECT_EQ(alone.value.qualifier, Qualifier::BelowQuantification);

  const DerivedValue beside = calcium({below, sample(SampleOrigin::OwnLab, "2025-01-01", {value("CA", 8)})});
  EXPECT_EQ(beside.value.amount, AsFedContent(8));
  EXPECT_THAT(beside.leftOut, ElementsAre(LeftOut{0, Why::NotMeasured}));
}

TEST(Derivation, ATraceIsCountedAsWhatIsStatedWithIt) {
  const auto trace = sample(SampleOrigin::OwnLab, "2026-01-01", {value("CA", 0, Qualifier::Trace)});
  const Composition composition = derive(std::vector{trace}).composition();
  ASSERT_NE(composition.find(id("CA")), nullptr);
  EXPECT_EQ(composition.find(id("CA"))->qualifier, Qualifier::Trace);
}

TEST(Derivation, AnExcludedSampleMakesNothing) {
  auto wrong = sample(SampleOrigin::OwnLab, "2026-01-01", {value("CA", 9999)});
  wrong.excluded = "sample was mixed up";
  const DerivedValue ca =
      calcium({wrong, sample(SampleOrigin::Publication, "2000-01-01", {value("CA", 150)})});
  EXPECT_EQ(ca.value.amount, AsFedContent(150));
  EXPECT_THAT(ca.leftOut, ElementsAre(LeftOut{0, Why::Excluded}));
}

TEST(Derivation, AnOverrideGoesBeforeEverythingWithItsReason) {
  const std::vector<Override> overrides{
      {id("CA"), AsFedContent(300), AsFedContent(10), "new supplier, first batch"}};
  const DerivedValue ca =
      calcium({sample(SampleOrigin::OwnLab, "2026-01-01", {value("CA", 254)})}, overrides);
  EXPECT_EQ(ca.by, DerivedBy::Override);
  EXPECT_EQ(ca.value.amount, AsFedContent(300));
  EXPECT_EQ(ca.reason, "new supplier, first batch");
  EXPECT_THAT(ca.used, IsEmpty());
}

// 20 % dry matter: 1270 mg in 100 g DM are 254 mg in 100 g as fed.
TEST(Derivation, DryMatterIsReadWithTheSamplesOwnWater) {
  const DerivedValue ca =
      calcium({sample(SampleOrigin::OwnLab, "2026-01-01", {value("WATER", 80), onDryMatter("CA", 1270)}),
               sample(SampleOrigin::Publication, "2026-01-01", {value("WATER", 90)})});
  EXPECT_DOUBLE_EQ(ca.value.amount.value(), 254.0);
}

// Without water of its own: the food's, 90 %, so 127 mg.
TEST(Derivation, DryMatterIsReadWithTheFoodsWaterWhereTheSampleHasNone) {
  const DerivedValue ca = calcium({sample(SampleOrigin::OwnLab, "2026-01-01", {onDryMatter("CA", 1270)}),
                                   sample(SampleOrigin::Publication, "2026-01-01", {value("WATER", 90)})});
  EXPECT_NEAR(ca.value.amount.value(), 127.0, 1e-9);
}

TEST(Derivation, AValueOnDryMatterOfUnknownSizeMakesNothing) {
  const std::vector samples{sample(SampleOrigin::OwnLab, "2026-01-01", {onDryMatter("CA", 1270)})};
  EXPECT_EQ(derive(samples).find(id("CA")), nullptr);
}

TEST(Derivation, OfNothingIsNothing) {
  EXPECT_THAT(derive({}).values, IsEmpty());
}

}  // namespace
}  // namespace tarebowl::food
