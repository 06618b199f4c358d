// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/animal_words.h"

#include <gtest/gtest.h>

#include <set>
#include <string_view>

namespace tarebowl::animal {
namespace {

template <class Enum>
class AnimalWords : public ::testing::Test {};

using Enumerations = ::testing::Types<Provenance, Sex, LifeStage, IndividualProblem, FeedingType, MassMethod,
                                      MassDoubt, ConditionProblem, ProfileProblem, CautionSeverity,
                                      EnergyLevel, EnergyFactor::Kind, EnergyCaution, EnergyStep::Kind>;
TYPED_TEST_SUITE(AnimalWords, Enumerations);

TYPED_TEST(AnimalWords, EveryWordIsReadBackAsWhatItWasWrittenFor) {
  const auto& words = Words<TypeParam>::kWords;
  EXPECT_EQ(std::set(words.begin(), words.end()).size(), words.size()) << "two have one word";
  for (std::size_t i = 0; i < words.size(); ++i) {
    EXPECT_EQ(symbolOf(static_cast<TypeParam>(i)), words.at(i));
    EXPECT_EQ(parseWord<TypeParam>(words.at(i)), static_cast<TypeParam>(i));
  }
  EXPECT_EQ(parseWord<TypeParam>("no such word"), std::nullopt);
}

TEST(AnimalWords, TheLastEnumeratorHasAWord) {
  EXPECT_EQ(symbolOf(Provenance::Derived), "derived");
  EXPECT_EQ(symbolOf(Sex::Male), "male");
  EXPECT_EQ(symbolOf(LifeStage::Senior), "senior");
  EXPECT_EQ(symbolOf(IndividualProblem::DiedWithoutDay), "died-without-day");
  EXPECT_EQ(symbolOf(FeedingType::Granivore), "granivore");
  EXPECT_EQ(symbolOf(MassMethod::Estimated), "estimated");
  EXPECT_EQ(symbolOf(MassDoubt::InTheFuture), "in-the-future");
  EXPECT_EQ(symbolOf(ConditionProblem::BetweenSteps), "between-steps");
  EXPECT_EQ(symbolOf(ProfileProblem::ExclusionOfNothing), "exclusion-of-nothing");
  EXPECT_EQ(symbolOf(CautionSeverity::Consider), "consider");
  EXPECT_EQ(symbolOf(EnergyLevel::FreeLiving), "free-living");
  EXPECT_EQ(symbolOf(EnergyFactor::Kind::House), "house");
  EXPECT_EQ(symbolOf(EnergyCaution::FactorsDoubleCount), "factors-double-count");
  EXPECT_EQ(symbolOf(EnergyStep::Kind::Group), "group");
}

}  // namespace
}  // namespace tarebowl::animal
