// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/larder_json.h"

#include "core/exchange/problem_json.h"
#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::exchange {
namespace {

using ::testing::HasSubstr;

std::string complaint(const std::string& text) {
  try {
    static_cast<void>(parseLarder(text, "l.json"));
  } catch (const FormatError& error) {
    return error.what();
  }
  return "read";
}

TEST(Larder, IsAListOfFoodsAsInAProblem) {
  const Larder larder = parseLarder(
      R"({"format": "tarebowl-larder/1", "invented": true,
          "foods": [{"id": "chalk", "group": "supplement", "per_100_g": {"WATER": 0, "CA": 40000},
                     "max_g": 2, "scale_step_g": 0.1, "cost_per_kg": 3}]})",
      "l.json");
  ASSERT_EQ(larder.foods.size(), 1U);
  EXPECT_TRUE(larder.invented);
  EXPECT_EQ(larder.foods[0].name, "chalk");
  EXPECT_EQ(larder.foods[0].group, "supplement");
  EXPECT_EQ(larder.foods[0].max, quantity::Grams(2));
}

TEST(Larder, IsRefusedInOneLineThatSaysWhereAndWhat) {
  EXPECT_THAT(complaint(R"({"format": "tarebowl-problem/1", "foods": []})"),
              HasSubstr("l.json: format: expected \"tarebowl-larder/1\""));
  EXPECT_THAT(complaint(R"({"format": "tarebowl-larder/1", "foods": []})"),
              HasSubstr("foods: expected at least one food"));
  EXPECT_THAT(complaint(R"({"format": "tarebowl-larder/1"})"), HasSubstr("foods"));
  EXPECT_THAT(complaint(R"({"format": "tarebowl-larder/1", "foods": [
      {"id": "a", "per_100_g": {}}, {"id": "a", "per_100_g": {}}]})"),
              HasSubstr("foods[1].id: expected each id once, found \"a\" again"));
  EXPECT_THAT(
      complaint(R"({"format": "tarebowl-larder/1", "foods": [{"id": "a", "per_100_g": {"CA": -1}}]})"),
      HasSubstr("foods[0].per_100_g.CA"));
  EXPECT_THAT(complaint("["), HasSubstr("l.json"));
}

TEST(Larder, OfTheSampleIsInventedAndEachFoodNamesASource) {
  const Larder larder = readLarder(TAREBOWL_SOURCE_DIR "/sample-data/larder/larder.json");
  EXPECT_TRUE(larder.invented);
  EXPECT_GT(larder.foods.size(), 20U);
  for (const diet::DietFood& food : larder.foods) {
    for (const food::NutrientId nutrient : food.composition.knownNutrients())
      EXPECT_FALSE(food.composition.find(nutrient)->source.empty()) << food.id;
  }
}

}  // namespace
}  // namespace tarebowl::exchange
