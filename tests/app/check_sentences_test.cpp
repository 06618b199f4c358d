// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/check_sentences.h"

#include <gtest/gtest.h>

#include <vector>

namespace tarebowl::app {
namespace {

using food::CheckCode;

const std::vector<exchange::CheckedName> kNames{{"kale", "Kale", "raw"}, {"kale-2", "Kale", ""}};

TEST(CheckSentence, NamesTheFoodTheDoubtItsNumbersAndWhatToDo) {
  const food::FoodFinding slip{.food = 0,
                               .finding = {.code = CheckCode::UnitSlip,
                                           .nutrients = {food::nutrients::calcium()},
                                           .found = 250.0,
                                           .against = 0.25},
                               .robustZ = 7.5};
  EXPECT_EQ(
      sentenceOf(slip, kNames),
      "Kale, raw (kale): Calcium is about a thousand times off its group: 250 mg beside 0.25 mg. Robust z "
      "7.5. Look for a slip of the unit.");
}

TEST(CheckSentence, NamesTheFoodThatIsTheSameByItsCode) {
  const food::FoodFinding same{.food = 1, .finding = {.code = CheckCode::SameName}, .other = 0};
  EXPECT_EQ(sentenceOf(same, kNames),
            "Kale (kale-2): kale has the same name and form. Keep one of them, or tell them apart.");
}

TEST(CheckSentence, NamesThePartsAndTheirWhole) {
  const food::FoodFinding parts{
      .finding = {.code = CheckCode::PartsOverWhole,
                  .nutrients = {food::findByTagname("CHOCDF").value(), food::findByTagname("SUGAR").value(),
                                food::findByTagname("STARCH").value()},
                  .found = 12.0,
                  .against = 10.0}};
  const std::string sentence = sentenceOf(parts, kNames);
  EXPECT_NE(
      sentence.find(food::describe(food::findByTagname("SUGAR").value()).name + " + " +
                    food::describe(food::findByTagname("STARCH").value()).name + " (12 g) are more than"),
      std::string::npos)
      << sentence;
}

}  // namespace
}  // namespace tarebowl::app
