// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"
#include "core/store/verbs.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace tarebowl::app {
namespace {

using testing::HasSubstr;

/// A collection of an invented kale with 250 mg calcium and 84 g water in 100 g, and an egg of 50 g.
std::string larder() {
  const auto file = fileWith("larder.tarebowl", "");
  std::filesystem::remove(file);
  const store::Author author{"Keeper A", "2026-11-25T07:30:00Z"};
  store::Collection collection = store::Collection::create(file, author);
  store::FoodRecord kale;
  kale.food = {.code = "kale-raw", .name = "Kale", .form = "raw", .group = "leafy vegetable"};
  kale.food.pricePerKg = 3.0;
  const store::FoodId id{store::addFood(collection, kale, author).id};
  food::Sample sample{.source = "invented report"};
  for (const auto& [tagname, amount] : {std::pair{"CA", 250.0}, std::pair{"WATER", 84.0}}) {
    food::SampleValue value{.nutrient = food::findByTagname(tagname).value()};
    value.amount = quantity::AsFedContent(amount);
    sample.values.push_back(value);
  }
  store::addSample(collection, id, sample, author);
  store::FoodRecord egg;
  egg.food = {.code = "egg", .name = "Egg, boiled", .form = "boiled", .group = "egg"};
  store::addFood(collection, egg, author);
  return file.string();
}

constexpr const char* kProblem = R"({ "format": "tarebowl-problem/1", "energy_method": "given",
  "foods": [{ "id": "greens", "from": "kale-raw", "max_g": 500 }],
  "targets": [{ "id": "ca", "nutrient": "CA", "min": 500, "max": 500, "unit": "mg", "basis": "day" }] })";

TEST(CollectionCommands, FoodsFindsByWordsInAnyOrder) {
  const Outcome outcome = tarebowl({"foods", larder(), "--find", "raw kal", "--json"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const auto json = nlohmann::json::parse(outcome.out);
  EXPECT_EQ(json.at("format"), "tarebowl-foods/1");
  EXPECT_EQ(json.at("foods_in_collection"), 2);
  ASSERT_EQ(json.at("foods").size(), 1U);
  EXPECT_EQ(json.at("foods")[0].at("code"), "kale-raw");
}

TEST(CollectionCommands, FoodsPrintsATableForPeople) {
  const Outcome outcome = tarebowl({"foods", larder(), "--table"});
  EXPECT_EQ(outcome.status, 0);
  EXPECT_THAT(outcome.out, HasSubstr("Egg, boiled"));
  EXPECT_THAT(outcome.out, HasSubstr("2 of 2 foods"));
}

// 250 mg in 100 g: 500 mg are in 200 g.
TEST(CollectionCommands, SolveTakesAFoodOfTheProblemFromTheCollection) {
  const auto problem = fileWith("problem.json", kProblem);
  const Outcome outcome = tarebowl({"solve", "--collection", larder(), problem.string()});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_EQ(nlohmann::json::parse(outcome.out).at("grams").at("greens"), 200);
}

TEST(CollectionCommands, AFoodThatIsNowhereIsNamedWithItsPlace) {
  const auto problem = fileWith("problem.json", kProblem);
  const Outcome without = tarebowl({"solve", problem.string()});
  EXPECT_EQ(without.status, 2);
  EXPECT_THAT(without.err, HasSubstr("foods[0].from: expected per_100_g beside it, or a collection"));
  std::string other = kProblem;
  other.replace(other.find("kale-raw"), 8, "kale-old");
  const Outcome unknown =
      tarebowl({"solve", "--collection", larder(), fileWith("other.json", other).string()});
  EXPECT_EQ(unknown.status, 2);
  EXPECT_THAT(unknown.err, HasSubstr("the code of a food in the collection, found \"kale-old\""));
}

TEST(CollectionCommands, NewMakesACollectionAndNeverOverAFile) {
  const auto file = fileWith("new.tarebowl", "");
  std::filesystem::remove(file);
  EXPECT_EQ(tarebowl({"new", file.string()}).status, 0);
  EXPECT_EQ(tarebowl({"foods", file.string(), "--json"}).status, 0);
  const Outcome again = tarebowl({"new", file.string()});
  EXPECT_EQ(again.status, 2);
  EXPECT_THAT(again.err, HasSubstr("is there already"));
}

TEST(CollectionCommands, AFileThatIsNoCollectionIsSaidInOneLine) {
  const Outcome outcome = tarebowl({"foods", fileWith("text.tarebowl", "no collection").string()});
  EXPECT_EQ(outcome.status, 2);
  EXPECT_EQ(std::count(outcome.err.begin(), outcome.err.end(), '\n'), 1);
  EXPECT_THAT(outcome.err, HasSubstr("is no collection of Tarebowl"));
}

}  // namespace
}  // namespace tarebowl::app
