// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/program.h"
#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;

/// Calcium costs 4 per 2000 mg of greens, of which there are 200 g (400 mg), and 20 per 400 mg of insects.
std::string cheapCalcium() {
  return fileWith("cheap-calcium.json", R"({
    "format": "tarebowl-problem/1", "animal": {"name": "Example", "count": 1}, "energy_method": "given",
    "foods": [
      {"id": "greens", "name": "Greens", "group": "leafy vegetable", "per_100_g": {"WATER": 90, "CA": 200},
       "max_g": 200, "cost_per_kg": 4},
      {"id": "insects", "name": "Insects", "group": "insect", "per_100_g": {"WATER": 60, "CA": 40},
       "cost_per_kg": 20}],
    "targets": [{"id": "ca", "nutrient": "CA", "min": 300, "unit": "mg", "basis": "day", "hard": true}],
    "reference": {"greens": 100, "insects": 250},
    "objective": {"kind": "lowest-cost"}, "whole_steps": false})")
      .string();
}

json parsed(const Outcome& outcome) {
  EXPECT_EQ(outcome.status, 0) << outcome.err;
  return json::parse(outcome.out);
}

TEST(ExploreCommand, TracesABoundFromOneValueToAnother) {
  const json trace =
      parsed(tarebowl({"explore", cheapCalcium(), "--bound", "ca", "--from", "200", "--to", "600"}));
  EXPECT_EQ(trace.at("format"), "tarebowl-trace/1");
  EXPECT_EQ(trace.at("of").at("rule"), "ca");
  EXPECT_EQ(trace.at("of").at("bound"), "min");
  EXPECT_EQ(trace.at("of").at("now"), 300);
  const json& points = trace.at("points");
  ASSERT_EQ(points.size(), 3U);
  EXPECT_NEAR(points[0].at("grams").at("greens"), 100.0, 1e-6);
  EXPECT_TRUE(points[1].at("breakpoint"));
  EXPECT_NEAR(points[1].at("at"), 400.0, 1e-5);        // 200 g of greens at 2 mg
  EXPECT_NEAR(points[2].at("objective"), 10.8, 1e-6);  // and 500 g of insects at 0.4 mg
}

TEST(ExploreCommand, TracesTheLimitOfAFood) {
  const json trace = parsed(tarebowl({"explore", cheapCalcium(), "--food", "greens"}));
  EXPECT_EQ(trace.at("of").at("bound"), "max");
  EXPECT_EQ(trace.at("points").back().at("at"), 400) << "twice what it is";
  EXPECT_NEAR(trace.at("points")[0].at("grams").at("insects"), 750.0, 1e-6);
}

// 100 g of greens and 250 g of insects is what there is now, and holds 300 mg: it costs 5.4; the cheapest
// 0.6.
TEST(ExploreCommand, TradesOneThingForAnother) {
  const json trace = parsed(tarebowl({"explore", cheapCalcium(), "--against", "closest"}));
  EXPECT_EQ(trace.at("of").at("against").at("kind"), "closest");
  EXPECT_NEAR(trace.at("points").front().at("at"), 0.0, 1e-6);
  EXPECT_NEAR(trace.at("points").front().at("objective"), 5.4, 1e-6);
  EXPECT_NEAR(trace.at("points").back().at("objective"), 0.6, 1e-6);
}

TEST(ExploreCommand, ATableNamesTheBreakpointsAlone) {
  const Outcome table =
      tarebowl({"explore", cheapCalcium(), "--bound", "ca", "--from", "200", "--to", "600", "--table"});
  EXPECT_THAT(table.out, HasSubstr("400"));
  EXPECT_THAT(table.out, HasSubstr("10.8"));
}

TEST(ExploreCommand, SaysWhatItCannotTrace) {
  const auto complaint = [](std::vector<std::string> more) {
    more.insert(more.begin(), {"explore", cheapCalcium()});
    const Outcome outcome = tarebowl(more);
    EXPECT_EQ(outcome.status, 2);
    return outcome.err;
  };
  EXPECT_THAT(complaint({}), HasSubstr("expected --bound ID, --food ID or --against OBJECTIVE"));
  EXPECT_THAT(complaint({"--bound", "zinc"}), HasSubstr("no target, ratio or share zinc"));
  EXPECT_THAT(complaint({"--food", "kale"}), HasSubstr("no food kale"));
  EXPECT_THAT(complaint({"--bound", "ca", "--side", "max"}), HasSubstr("ca has no maximum"));
  EXPECT_THAT(complaint({"--bound", "ca", "--from", "9", "--to", "2"}), HasSubstr("below --to"));
  EXPECT_THAT(complaint({"--bound", "ca", "--from", "nan"}), HasSubstr("numbers of 0 or more"));
  EXPECT_THAT(complaint({"--against", "lowest:UNOBTAINIUM"}), HasSubstr("expected closest, lowest-cost"));
  EXPECT_THAT(complaint({"--bound", "ca", "--food", "greens"}), HasSubstr("--bound"));
}

TEST(ExploreCommand, NamesAFoodWithoutAPriceWhereMoneyIsTraded) {
  const Outcome outcome = tarebowl({"explore", TAREBOWL_SOURCE_DIR "/sample-data/tenrec-hedgehog.json",
                                    "--against", "lowest-cost", "--table"});
  EXPECT_EQ(outcome.status, 1);
  EXPECT_THAT(outcome.err, HasSubstr("no price: crickets-adult"));
  EXPECT_EQ(outcome.out, "");
}

}  // namespace
}  // namespace tarebowl::app
