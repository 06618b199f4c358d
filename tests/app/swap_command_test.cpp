// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/own_collections.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;

constexpr const char* kDay = "2026-11-25";

/// The invented collection, made once for all tests of a process.
const std::string& brackenmere() {
  static const std::string kFile = sampleCollection("swaps.tarebowl");
  return kFile;
}

std::vector<std::string> lemursWithoutKale(std::vector<std::string> further) {
  std::vector<std::string> arguments{"swap",      brackenmere(), "--diet", "lemur-daily",
                                     "--without", "kale-raw",    "--day",  kDay};
  arguments.insert(arguments.end(), further.begin(), further.end());
  return arguments;
}

std::string complaint(const std::vector<std::string>& arguments) {
  const Outcome outcome = tarebowl(arguments);
  EXPECT_EQ(outcome.status, 2);
  EXPECT_EQ(outcome.out, "");
  return outcome.err;
}

/// 100 g greens (200 mg calcium, 40 kcal) of which 200 mg calcium are asked for; a larder of two foods.
std::filesystem::path problemFile() {
  return fileWith("bowl.json", R"({"format": "tarebowl-problem/1",
    "animal": {"name": "invented", "count": 2}, "energy_method": "given",
    "foods": [{"id": "greens", "name": "Greens", "group": "leafy",
               "per_100_g": {"WATER": 90, "CA": 200, "P": 50, "ENERC": 40}}],
    "targets": [{"id": "ca", "nutrient": "CA", "min": 200, "unit": "mg", "basis": "day"}],
    "reference": {"greens": 100}})");
}
std::filesystem::path larderFile() {
  return fileWith("larder.json", R"({"format": "tarebowl-larder/1", "foods": [
    {"id": "rich", "name": "Rich greens", "group": "leafy",
     "per_100_g": {"WATER": 80, "CA": 400, "P": 100, "ENERC": 80}},
    {"id": "water", "name": "Melon", "group": "fruit", "max_g": 100,
     "per_100_g": {"WATER": 92, "CA": 10, "P": 10, "ENERC": 30}}]})");
}

TEST(SwapCommand, KeepsWhatIsEatenWhereItIsAskedTo) {
  const auto swaps = [](std::vector<std::string> further) {
    std::vector<std::string> arguments{"swap",      brackenmere(),   "--diet", "fennec-evening",
                                       "--without", "courgette-raw", "--day",  kDay};
    arguments.insert(arguments.end(), further.begin(), further.end());
    const Outcome outcome = tarebowl(arguments);
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    return outcome.out;
  };
  const json offered = json::parse(swaps({"--most", "60"})).at("swaps");
  const json eaten = json::parse(swaps({"--most", "60", "--eaten"})).at("swaps");
  const auto countsInPart = [](const json& swap) {
    return swap.at("foods").at(0).at("eaten_fraction").get<double>() < 1.0;
  };
  EXPECT_TRUE(std::ranges::none_of(offered, countsInPart));
  EXPECT_TRUE(std::ranges::any_of(eaten, countsInPart)) << "a food that the foxes know, and leave in part";
  // The same bowl, of which the foxes leave a part: less energy is eaten of it than offered.
  EXPECT_LT(eaten.at(0).at("energy_kcal").at("before").get<double>(),
            offered.at(0).at("energy_kcal").at("before").get<double>());
  EXPECT_THAT(swaps({"--eaten", "--table"}), HasSubstr("targets are of what is eaten"));
  EXPECT_THAT(complaint({"swap", problemFile().string(), "--without", "greens", "--eaten"}),
              HasSubstr("--diet"));
}

TEST(SwapCommand, RanksTheFoodsOfTheCollectionInPlaceOfAMissingOne) {
  const Outcome outcome = tarebowl(lemursWithoutKale({}));
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json read = json::parse(outcome.out);
  EXPECT_EQ(read.at("format"), "tarebowl-swap/1");
  EXPECT_EQ(read.at("without")[0].at("food"), "kale-raw");
  ASSERT_FALSE(read.at("swaps").empty());
  const json& first = read.at("swaps")[0];
  EXPECT_GT(first.at("foods")[0].at("grams"), 0);
  EXPECT_TRUE(first.at("foods")[0].at("eaten_before").is_null());
  EXPECT_TRUE(first.contains("calcium_to_phosphorus"));
  // No cultivated fruit for these lemurs, and leafy vegetables for leafy vegetables.
  for (const json& refused : read.at("refused")) {
    if (refused.at("food") != "banana-raw") continue;
    EXPECT_EQ(refused.at("why"), "not-for-this-animal");
  }
}

TEST(SwapCommand, SaysWhatEachDoesInALineForAKeeper) {
  const Outcome outcome = tarebowl(lemursWithoutKale({"--table"}));
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("Not there: Kale (raw)"));
  EXPECT_THAT(outcome.out, HasSubstr("still in zone"));
  EXPECT_THAT(outcome.out, HasSubstr("against a structure rule"));
  EXPECT_THAT(outcome.out, HasSubstr("INVENTED SAMPLE"));
}

TEST(SwapCommand, OfAFoodForItselfGivesItsOwnGrams) {
  const json read = json::parse(tarebowl(lemursWithoutKale({"--among", "kale-raw"})).out);
  ASSERT_EQ(read.at("swaps").size(), 1U);
  EXPECT_EQ(read.at("swaps")[0].at("foods")[0].at("grams"), read.at("without")[0].at("grams"));
  EXPECT_EQ(read.at("swaps")[0].at("approval").at("by"), "keeper");
}

TEST(SwapCommand, TakesAProblemFileWithALarder) {
  const Outcome outcome =
      tarebowl({"swap", problemFile().string(), "--without", "greens", "--larder", larderFile().string()});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json read = json::parse(outcome.out);
  EXPECT_EQ(read.at("swaps")[0].at("foods")[0].at("food"), "rich");
  EXPECT_EQ(read.at("swaps")[0].at("foods")[0].at("grams"), 50);  // twice as rich
  // 10 g dry matter of 20 %: 50 g; 40 kcal at 0.8 kcal/g: 50 g.
  EXPECT_EQ(read.at("swaps")[0].at("foods")[0].at("grams_of_equal_dry_matter"), 50);
  EXPECT_EQ(read.at("swaps")[0].at("foods")[0].at("grams_of_equal_energy"), 50);
  EXPECT_EQ(read.at("swaps")[1].at("approval").at("no_longer_met"), json::array({"ca"}));
}

TEST(SwapCommand, LetsOtherLinesMoveByAStatedPercentage) {
  const json read = json::parse(tarebowl(lemursWithoutKale({"--move", "10"})).out);
  EXPECT_DOUBLE_EQ(read.at("others_may_move"), 0.1);
  ASSERT_FALSE(read.at("swaps").empty());
}

TEST(SwapCommand, EndsWithStatusThreeWhereNothingWillDo) {
  const Outcome outcome = tarebowl(lemursWithoutKale({"--among", "banana-raw", "--table"}));
  EXPECT_EQ(outcome.status, 3);
  EXPECT_THAT(outcome.out, HasSubstr("Nothing on hand will do."));
  EXPECT_THAT(outcome.out, HasSubstr("Banana"));
}

TEST(SwapCommand, TellsInOneLineWhatIsWrong) {
  EXPECT_THAT(complaint({"swap", brackenmere(), "--diet", "lemur-daily", "--without", "pear", "--day", kDay}),
              HasSubstr("--without: lemur-daily has no pear"));
  EXPECT_THAT(complaint(lemursWithoutKale({"--among", "moon-dust"})), HasSubstr("no food moon-dust on hand"));
  EXPECT_THAT(complaint(lemursWithoutKale({"--move", "120"})), HasSubstr("--move"));
  EXPECT_THAT(complaint({"swap", problemFile().string(), "--without", "greens"}), HasSubstr("--larder"));
  EXPECT_THAT(
      complaint({"swap", problemFile().string(), "--without", "kale", "--larder", larderFile().string()}),
      HasSubstr("there is no food kale"));
  EXPECT_THAT(complaint({"swap", brackenmere(), "--diet", "lemur-daily"}), HasSubstr("--without"));
}

}  // namespace
}  // namespace tarebowl::app
