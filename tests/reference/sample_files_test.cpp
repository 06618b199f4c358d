// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What every file of the invented sample owes its reader: that it is invented, and where each number comes
// from.
#include "tests/reference/sample_files.h"

#include "core/exchange/problem_json.h"
#include "core/food/composition.h"
#include "core/food/nutrient.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <set>
#include <stdexcept>
#include <string>

namespace tarebowl::reference {
namespace {

using nlohmann::json;

using testing::HasSubstr;

std::string textOf(const json& object, const char* key) {
  return object.value(key, std::string());
}

class SampleFile : public testing::TestWithParam<std::string> {
 protected:
  const json file = readSampleJson(GetParam());
};

TEST_P(SampleFile, SaysThatItIsInventedAndWhatItIs) {
  EXPECT_TRUE(file.at("invented").get<bool>());
  EXPECT_FALSE(textOf(file, "title").empty());
  EXPECT_FALSE(textOf(file, "notes").empty());
}

TEST_P(SampleFile, NamesTheSourceOfEveryFood) {
  for (const json& food : file.at("foods")) {
    SCOPED_TRACE(textOf(food, "id"));
    EXPECT_FALSE(textOf(food, "source").empty());
    EXPECT_FALSE(textOf(food, "form").empty());
    EXPECT_FALSE(textOf(food, "preparation").empty());
  }
}

TEST_P(SampleFile, MarksAnInventedProductInItsNameItsSourceAndItsMark) {
  for (const json& food : file.at("foods")) {
    SCOPED_TRACE(textOf(food, "id"));
    const bool invented = food.value("invented", false);
    EXPECT_EQ(invented, textOf(food, "name").find("invented") != std::string::npos);
    const bool published = textOf(food, "source").find("NDB ") != std::string::npos ||
                           textOf(food, "source").find("(read)") != std::string::npos;
    EXPECT_EQ(invented, !published);
  }
}

TEST_P(SampleFile, NeverPassesARecalledMineralOfAnInsectOffAsRead) {
  for (const json& food : file.at("foods")) {
    if (textOf(food, "source").find("Zoo Biology") == std::string::npos) continue;
    SCOPED_TRACE(textOf(food, "id"));
    for (const char* mineral : {"CA", "P", "MG", "NA", "K", "FE", "ZN", "CU", "MN", "SE"}) {
      if (!food.at("per_100_g").contains(mineral)) continue;
      EXPECT_THAT(food.at("sources").value(mineral, std::string()), HasSubstr("from memory"));
    }
  }
}

TEST_P(SampleFile, NamesTheOriginOfEveryTarget) {
  for (const char* list : {"targets", "ratios"}) {
    for (const json& target : file.value(list, json::array())) {
      SCOPED_TRACE(textOf(target, "id"));
      EXPECT_FALSE(textOf(target, "source").empty());
      const std::string provenance = textOf(target, "provenance");
      EXPECT_THAT(provenance, testing::AnyOf("seen", "memory", "house-rule"));
      // A house rule speaks for the animal itself; a publication speaks for the species it measured.
      EXPECT_EQ(textOf(target, "model_species").empty(), provenance == "house-rule");
    }
  }
}

TEST_P(SampleFile, HoldsSafeUpperLimitsAsHardRules) {
  for (const json& target : file.at("targets")) {
    const std::string id = textOf(target, "id");
    const bool safeLimit = id == "vitamin-d-limit" || id == "vitamin-a-limit" || id == "selenium-limit";
    EXPECT_TRUE(!safeLimit || target.value("hard", false)) << id;
  }
}

TEST_P(SampleFile, IsReadAndItsProximatesClose) {
  const auto problem = exchange::readProblem(samplePath(GetParam()));
  EXPECT_TRUE(problem.invented);
  const auto known = [](const food::Composition& composition, food::NutrientId nutrient) {
    return composition.amountPer100g(nutrient).value_or(0.0);
  };
  namespace n = food::nutrients;
  for (const auto& food : problem.foods) {
    const auto& c = food.composition;
    if (!c.amountPer100g(n::carbohydrateByDifference()))
      continue;  // insects: carbohydrate by difference closes by itself
    const double sum = known(c, n::water()) + known(c, n::protein()) + known(c, n::fat()) +
                       known(c, n::ash()) + known(c, n::carbohydrateByDifference());
    // SR28's own scatter: 98.7 % of its foods close within 1 g of 100.
    EXPECT_NEAR(sum, 100.0, 1.0) << food.id;
  }
}

TEST_P(SampleFile, HasABowlOfAUsefulSize) {
  EXPECT_GE(file.at("foods").size(), 8u);
  EXPECT_LE(file.at("foods").size(), 14u);
  EXPECT_GE(file.at("targets").size(), 10u);
  EXPECT_LE(file.at("targets").size(), 19u);
}

INSTANTIATE_TEST_SUITE_P(Brackenmere, SampleFile, testing::ValuesIn(sampleNames()),
                         [](const auto& file) { return testNameOf(file.param); });

TEST(Sample, HoldsTheAnimalsOfTheInventedCollection) {
  const auto names = sampleNames();
  const std::set<std::string> files(names.begin(), names.end());
  for (const char* name : {"tenrec-hedgehog.json", "tenrec-streaked.json", "lemur-no-fruit.json",
                           "dragon-calcium.json", "fox-fennec.json", "squirrel-monkeys.json"}) {
    EXPECT_TRUE(files.contains(name)) << name;
  }
}

json foodOf(const std::string& sample, const std::string& id) {
  const json file = readSampleJson(sample);
  for (const json& food : file.at("foods")) {
    if (textOf(food, "id") == id) return food;
  }
  throw std::out_of_range(sample + " has no " + id);
}

/// Molar masses Ca 40.078, C 12.011, O 15.999 (IUPAC): 40.078 / 100.086 = 0.400436.
TEST(Sample, LimestoneCarriesTheCalciumOfPureCarbonate) {
  const json limestone = foodOf("dragon-calcium.json", "limestone");
  EXPECT_NEAR(limestone.at("per_100_g").at("CA").get<double>(), 40043.6, 0.05);
}

/// Small Animal Clinical Nutrition, 5th ed., Table 71-5: mouse 1.7 kcal/g, Ca 5.0 and P 3.6 mg/kcal, so that
/// 100 g hold 170 kcal, 850 mg Ca and 612 mg P.
TEST(Sample, AWholeMouseHoldsWhatItsTableSays) {
  const json mouse = foodOf("fox-fennec.json", "mouse-adult");
  const json& values = mouse.at("per_100_g");
  EXPECT_DOUBLE_EQ(values.at("ENERC").get<double>(), 170.0);
  EXPECT_DOUBLE_EQ(values.at("CA").get<double>(), 850.0);
  EXPECT_DOUBLE_EQ(values.at("P").get<double>(), 612.0);
  EXPECT_DOUBLE_EQ(mouse.at("scale_step_g").get<double>(), 27.0);  // one mouse
}

}  // namespace
}  // namespace tarebowl::reference
