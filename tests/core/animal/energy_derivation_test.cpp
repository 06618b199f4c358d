// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/energy_derivation.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <stdexcept>

namespace tarebowl::animal {
namespace {

using enum EnergyCaution;
using quantity::Kilograms;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using Kind = EnergyFactor::Kind;

EnergyPlan plan() {
  EnergyPlan plan;
  plan.group = "placental mammals";
  plan.coefficient = 70.0;
  plan.exponent = 0.5;  // so that the root can be taken by hand
  return plan;
}

EnergyFactor times(Kind kind, double low, double high) {
  EnergyFactor factor;
  factor.kind = kind;
  factor.low = low;
  factor.high = high;
  return factor;
}

TEST(EnergyDerivation, EachStepCanBeCheckedByHand) {
  EnergyPlan lactating = plan();
  lactating.factors = {times(Kind::Maintenance, 1.5, 2.0), times(Kind::LifeStage, 1.5, 2.0)};
  const EnergyDerivation derivation = deriveEnergy(lactating, Kilograms(4.0), 3);
  std::vector<std::tuple<EnergyStep::Kind, double, double, double>> lines;
  for (const EnergyStep& step : derivation.steps) lines.emplace_back(step.kind, step.by, step.low, step.high);
  using Step = EnergyStep::Kind;
  EXPECT_THAT(lines, ElementsAre(std::tuple(Step::BodyMass, 1.0, 4.0, 4.0),       // kg
                                 std::tuple(Step::MetabolicMass, 0.5, 2.0, 2.0),  // 4^0.5
                                 std::tuple(Step::Level, 70.0, 140.0, 140.0),     // 70 * 2
                                 std::tuple(Step::Factor, 1.5, 210.0, 280.0),     // times 1.5 … 2
                                 std::tuple(Step::Factor, 1.5, 315.0, 560.0),     // times 1.5 … 2
                                 std::tuple(Step::PerAnimal, 1.0, 315.0, 560.0),  //
                                 std::tuple(Step::Headcount, 3.0, 3.0, 3.0),      //
                                 std::tuple(Step::Group, 3.0, 945.0, 1680.0)));   // of three
  EXPECT_DOUBLE_EQ(derivation.low.value(), 315.0);
  EXPECT_DOUBLE_EQ(derivation.high.value(), 560.0);
  EXPECT_THAT(derivation.cautions, IsEmpty());
}

TEST(EnergyDerivation, WithoutAHeadcountEndsAtTheAnimal) {
  EXPECT_EQ(deriveEnergy(plan(), Kilograms(4.0)).steps.back().kind, EnergyStep::Kind::PerAnimal);
}

TEST(EnergyDerivation, OfAReptileIsNeverPresentedAsAFeedingRate) {
  std::size_t reptiles = 0;
  for (const Allometry& allometry : publishedAllometries()) {
    if (allometry.group != "reptiles") continue;
    ++reptiles;
    EXPECT_THAT(deriveEnergy(planFrom(allometry), Kilograms(0.4)).cautions,
                ::testing::Contains(NotAFeedingRate));
  }
  EXPECT_GE(reptiles, 3U);
  EnergyPlan dragon = plan();
  dragon.group = "Lizards of the house";
  EXPECT_THAT(deriveEnergy(dragon, Kilograms(0.4)).cautions, ElementsAre(NotAFeedingRate));
  dragon.group = "dragons";
  dragon.followsTemperature = true;
  EXPECT_THAT(deriveEnergy(dragon, Kilograms(0.4)).cautions, ElementsAre(NotAFeedingRate));
}

TEST(EnergyDerivation, SaysThatAnAnimalLivingFreeSpendsMore) {
  EnergyPlan free = plan();
  free.level = EnergyLevel::FreeLiving;
  EXPECT_THAT(deriveEnergy(free, Kilograms(1.0)).cautions, ElementsAre(FreeLivingLevel));
}

TEST(EnergyDerivation, SaysWhereTheSourceEnds) {
  EnergyPlan limited = plan();
  limited.lightest = Kilograms(2.0);
  limited.heaviest = Kilograms(45.0);
  EXPECT_THAT(deriveEnergy(limited, Kilograms(2.0)).cautions, IsEmpty());
  EXPECT_THAT(deriveEnergy(limited, Kilograms(1.9)).cautions, ElementsAre(OutsideValidity));
  EXPECT_THAT(deriveEnergy(limited, Kilograms(46.0)).cautions, ElementsAre(OutsideValidity));
}

TEST(EnergyDerivation, SaysWhatWasRecalledOnly) {
  EnergyPlan recalled = plan();
  recalled.origin.provenance = Provenance::FromMemory;
  EXPECT_THAT(deriveEnergy(recalled, Kilograms(1.0)).cautions, ElementsAre(SourceFromMemory));
  recalled.origin.provenance = Provenance::Seen;
  recalled.factors = {times(Kind::Season, 1.1, 1.1)};
  recalled.factors[0].origin.provenance = Provenance::FromMemory;
  EXPECT_THAT(deriveEnergy(recalled, Kilograms(1.0)).cautions, ElementsAre(SourceFromMemory));
}

std::vector<EnergyCaution> cautionsWith(EnergyLevel level, const std::vector<EnergyFactor>& factors) {
  EnergyPlan counted = plan();
  counted.level = level;
  counted.factors = factors;
  return deriveEnergy(counted, Kilograms(1.0)).cautions;
}

TEST(EnergyDerivation, NoticesWhatIsCountedTwice) {
  const EnergyFactor maintenance = times(Kind::Maintenance, 1.5, 2.0);
  const EnergyFactor activity = times(Kind::Activity, 1.2, 1.2);
  EnergyFactor kitten = times(Kind::LifeStage, 2.5, 2.5);
  kitten.of = EnergyLevel::Resting;
  const EnergyLevel resting = EnergyLevel::Resting;
  EXPECT_THAT(cautionsWith(resting, {maintenance, activity}), IsEmpty());
  EXPECT_THAT(cautionsWith(resting, {kitten}), IsEmpty());
  EXPECT_THAT(cautionsWith(resting, {activity, activity}), ElementsAre(FactorsDoubleCount));
  EXPECT_THAT(cautionsWith(resting, {maintenance, kitten}), ElementsAre(FactorsDoubleCount));
  EXPECT_THAT(cautionsWith(EnergyLevel::Maintenance, {maintenance}), ElementsAre(FactorsDoubleCount));
  EXPECT_THAT(cautionsWith(EnergyLevel::Maintenance, {activity}), IsEmpty());
  EXPECT_THAT(cautionsWith(EnergyLevel::FreeLiving, {activity}),
              ElementsAre(FreeLivingLevel, FactorsDoubleCount));
  const EnergyFactor house = times(Kind::House, 0.9, 0.9);
  EXPECT_THAT(cautionsWith(resting, {house, house}), IsEmpty()) << "the house knows what it does";
}

TEST(EnergyDerivation, RefusesWhatIsNoMassNoFactorAndNoGroup) {
  for (const double mass :
       {0.0, -1.0, std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()})
    EXPECT_THROW((void)deriveEnergy(plan(), Kilograms(mass)), std::domain_error) << mass;
  EXPECT_THROW((void)deriveEnergy(plan(), Kilograms(1.0), 0), std::domain_error);
  const auto refused = [](auto change) {
    EnergyPlan wrong = plan();
    wrong.factors = {times(Kind::Season, 1.0, 1.1)};
    change(wrong);
    EXPECT_THROW((void)deriveEnergy(wrong, Kilograms(1.0)), std::domain_error);
  };
  refused([](EnergyPlan& p) { p.coefficient = 0.0; });
  refused([](EnergyPlan& p) { p.exponent = 1.51; });
  refused([](EnergyPlan& p) { p.factors[0].low = 0.0; });
  refused([](EnergyPlan& p) { p.factors[0].high = 0.9; });
}

TEST(EnergyFactor, APublishedMultiplierKeepsWhatItMultipliesAndWhence) {
  const EnergyMultiplier kitten{"cats", "kitten", EnergyLevel::Resting, 2.5, 2.5, "notes", Provenance::Seen};
  const EnergyFactor factor = factorFrom(kitten, Kind::LifeStage);
  EXPECT_EQ(factor.words, "kitten");
  EXPECT_EQ(factor.of, EnergyLevel::Resting);
  EXPECT_EQ(factor.origin, (TargetOrigin{"notes", Provenance::Seen, "cats"}));
}

RC_GTEST_PROP(EnergyDerivation, APlanGivesWhatItsPublishedChoiceGives, ()) {
  const auto all = publishedAllometries();
  const Allometry& allometry = all[*rc::gen::inRange<std::size_t>(0, all.size())];
  const Kilograms mass(*rc::gen::inRange(1, 1'000'000) / 1000.0);
  const double direct = dailyEnergy(allometry, mass).value();
  RC_ASSERT(std::abs(deriveEnergy(planFrom(allometry), mass).low.value() / direct - 1.0) < 1e-12);
}

TEST(EnergyNeed, APublishedConstantTimesAFactorOfTheHouseIsNoPublishedNumber) {
  EnergyPlan plan;
  plan.origin = {"a handbook", Provenance::Seen, {}};
  EXPECT_EQ(originOf(plan).provenance, Provenance::Seen);
  plan.factors = {
      {.words = "maintenance", .low = 1.0, .high = 1.3, .origin = {"the house", Provenance::HouseRule, {}}}};
  EXPECT_EQ(originOf(plan).provenance, Provenance::HouseRule);
  EXPECT_EQ(originOf(plan).source, "a handbook; maintenance: the house");
  plan.origin.provenance = Provenance::Invented;
  EXPECT_EQ(originOf(plan).provenance, Provenance::Invented);
}

}  // namespace
}  // namespace tarebowl::animal
