// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/health_sentences.h"

#include "core/food/nutrient.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::exchange {
namespace {

using testing::HasSubstr;
using testing::Not;

health::CalciumZone calciumLimit() {
  health::CalciumZone zone{.id = "calcium-limit",
                           .nutrient = food::nutrients::calcium(),
                           .unit = quantity::Unit::Gram,
                           .basis = quantity::Basis::DryMatter};
  zone.eaten.max = 25.0;
  return zone;
}

health::CalciumZone ratioZone() {
  return {.id = "ca-p", .nutrient = food::nutrients::calcium(), .per = food::nutrients::phosphorus()};
}

CalciumPage crossing() {
  CalciumPage page;
  page.subject.animals = 2;
  page.review.completeDays = 7;
  page.review.zones = {calciumLimit(), ratioZone()};
  page.review.advice.emplace();
  page.review.advice->food = "limestone";
  page.review.advice->dose = {.answer = health::DoseAnswer::CrossesALimit, .exact = 3.2, .grams = 3.5};
  page.review.advice->dose.crossed = {"calcium-limit"};
  return page;
}

TEST(ATargetOfTheCalciumReview, IsCalledByItsNutrientAndUnitNotByItsId) {
  EXPECT_EQ(zoneTitle(calciumLimit()), "Calcium, g per kg DM");
  EXPECT_EQ(zoneTitle(ratioZone()), "Calcium : Phosphorus");
  EXPECT_EQ(zoneUnit(ratioZone()), "");
}

TEST(TheSentenceOfADose, NamesTheMaximumThatItWouldBreak) {
  const std::string sentence = doseSentence(crossing());
  EXPECT_THAT(sentence, HasSubstr("crosses a maximum: Calcium, g per kg DM (at most 25)."));
  EXPECT_THAT(sentence, Not(HasSubstr("calcium-limit")));
}

TEST(TheSentenceOfADose, NamesWhatItWouldBreakIfAllOfItReachedTheMouth) {
  CalciumPage page = crossing();
  page.review.advice->dose.answer = health::DoseAnswer::Found;
  page.review.advice->dose.crossed.clear();
  page.review.advice->dose.crossedIfAllEaten = {"calcium-limit"};
  EXPECT_THAT(doseSentence(page),
              HasSubstr("over their maximum would be: Calcium, g per kg DM (at most 25)."));
}

}  // namespace
}  // namespace tarebowl::exchange
