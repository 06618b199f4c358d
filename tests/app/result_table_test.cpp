// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/result_table.h"

#include "app/text_table.h"
#include "core/diet/balance.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/wording.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::app {
namespace {

using quantity::Grams;
using ::testing::ContainsRegex;
using ::testing::HasSubstr;
using ::testing::Not;

/// Vitamin D is known of the egg alone; nobody measured iron. The numbers are made up.
diet::BalanceProblem eggAndGreens() {
  return exchange::parseProblem(R"({ "format": "tarebowl-problem/1", "title": "Test bowl",
    "animal": { "name": "Test animals", "count": 3, "body_mass_kg": 0.5 },
    "foods": [
      { "id": "egg", "name": "Egg", "form": "boiled", "group": "egg", "scale_step_g": 0.1,
        "per_100_g": { "WATER": 75, "CA": 50, "P": 200, "VITD": 2, "FE": 1 } },
      { "id": "greens", "name": "Greens", "group": "leaf", "invented": true, "per_100_g": { "WATER": 90, "CA": 200 } },
      { "id": "hay", "name": "Hay", "group": "dry", "per_100_g": { "WATER": 10 } }],
    "targets": [
      { "id": "ca", "nutrient": "CA", "min": 0.1, "max": 0.2, "unit": "g", "basis": "day" },
      { "id": "d", "nutrient": "VITD", "min": 1, "unit": "ug", "basis": "dry-matter", "hard": true, "model_species": "cat" },
      { "id": "fe", "nutrient": "FE", "max": 9, "unit": "mg", "basis": "metabolic-mass", "provenance": "memory" }],
    "ratios": [{ "id": "ca-p", "of": "CA", "to": "P", "min": 1 }],
    "shares": [{ "id": "leaf", "group": "leaf", "max": 0.5, "basis": "as-fed" }] })",
                                "test");
}

diet::DietSolution judged(const diet::BalanceProblem& problem, const diet::Diet& diet) {
  diet::DietSolution solution;
  solution.status = diet::DietStatus::Compromise;
  solution.grams = diet;
  solution.balance = diet::balance(problem, diet);
  solution.shortfall = solution.balance.shortfall;
  return solution;
}

std::string bowl(const diet::Diet& diet) {
  const auto problem = eggAndGreens();
  return solutionTable(problem, judged(problem, diet));
}

TEST(ResultTable, SaysWhatForWhomAndHow) {
  const std::string text = bowl({Grams(40), Grams(10), Grams(0)});
  EXPECT_THAT(
      text,
      HasSubstr(
          "Test bowl\nTest animals: 3 animals of 0.5 kg body mass; energy by the method modified-atwater\n"));
  EXPECT_THAT(text, Not(HasSubstr("INVENTED SAMPLE")));
}

TEST(ResultTable, ShowsGramsWithTheDigitsOfTheScaleForOneAndForAll) {
  const std::string text = bowl({Grams(40), Grams(10), Grams(0)});
  EXPECT_THAT(text, ContainsRegex("Egg \\(boiled\\) +egg +40\\.0 +120\\.0\n"));
  EXPECT_THAT(text, ContainsRegex("Greens \\[invented\\] +leaf +10 +30\n"));
  EXPECT_THAT(text, HasSubstr("Not used: Hay.\n"));
}

TEST(ResultTable, MarksWhatRestsOnUnknownValues) {
  const std::string text = bowl({Grams(40), Grams(10), Grams(0)});
  // 0.8 ug in 11 g DM = 72.73 ug per kg; the egg's 10 g of the 11 g dry matter are known.
  EXPECT_THAT(text, ContainsRegex("d \\(hard\\) +Vitamin D +≥ 72\\.73 +≥ 1 +ug per kg DM +● met +91 %"));
}

TEST(ResultTable, NamesNoChanceThatUnknownValuesCouldSpoil) {
  const std::string text = bowl({Grams(40), Grams(10), Grams(0)});
  // The greens' phosphorus is unknown: 40 mg Ca to at least 80 mg P, and nobody can say how likely 1:1 is.
  // Short by 40 mg of the 200/3 mg P that the reference diet (equal grams, 100 g in all) holds.
  EXPECT_THAT(text,
              ContainsRegex("ca-p +Calcium : Phosphorus +≈ 0\\.5 +≥ 1 +CA:P +▼ short +60 % +91 % +\\?\n"));
  // Iron of the greens could only add to a maximum that holds so far.
  EXPECT_THAT(text,
              ContainsRegex("fe +Iron +≥ 0\\.6727 +≤ 9 +mg per kg\\^0\\.75 body mass +● met +91 % +\\?\n"));
}

TEST(ResultTable, ShowsAQuestionMarkWhereNothingIsKnown) {
  EXPECT_THAT(bowl({Grams(0), Grams(10), Grams(0)}),
              ContainsRegex("fe +Iron +\\? +≤ 9 +mg per kg\\^0\\.75 body mass +\\? unknown +0 %"));
}

TEST(ResultTable, SaysByHowMuchATargetIsMissed) {
  // 40 mg of at least 100 mg: short by 60 %.
  EXPECT_THAT(bowl({Grams(40), Grams(10), Grams(0)}),
              ContainsRegex("ca +Calcium +0\\.04 +0\\.1 … 0\\.2 +g per animal and day +▼ short +60 %"));
}

TEST(ResultTable, ShowsSharesInPercentAndRatiosByTagname) {
  const std::string text = bowl({Grams(40), Grams(10), Grams(0)});
  EXPECT_THAT(text, ContainsRegex("leaf +Group: leaf +20 +≤ 50 +% of as fed +● met"));
  EXPECT_THAT(text, ContainsRegex("ca-p +Calcium : Phosphorus .* CA:P"));
}

TEST(ResultTable, NamesConflictModelSpeciesAndMemory) {
  const auto problem = eggAndGreens();
  diet::DietSolution solution = judged(problem, {Grams(40), Grams(10), Grams(0)});
  solution.conflict = {"ca", "leaf"};
  solution.provenGap = 0.03;
  const std::string text = solutionTable(problem, solution);
  EXPECT_THAT(text, HasSubstr("with these foods and limits the calcium range and the maximum share of leaf "
                              "cannot hold together.\n"));
  EXPECT_THAT(text, HasSubstr("off by up to 3 %"));
  EXPECT_THAT(text, HasSubstr("Model species that stand in: cat.\n"));
  EXPECT_THAT(text, HasSubstr("from memory, to be checked at the source: 1.\n"));
}

TEST(ResultTable, EndsWithTheCaution) {
  EXPECT_THAT(bowl({Grams(1), Grams(1), Grams(1)}), ::testing::EndsWith(std::string(exchange::kCaution)));
}

TEST(ResultTable, SaysWhyThereIsNoAnswer) {
  diet::DietSolution nothing;
  nothing.status = diet::DietStatus::Impossible;
  nothing.conflict = {"d"};
  EXPECT_THAT(solutionTable(eggAndGreens(), nothing),
              HasSubstr("Impossible: the hard rules contradict each other."));
  nothing.status = diet::DietStatus::Stopped;
  nothing.reason = "deadline";
  EXPECT_THAT(solutionTable(eggAndGreens(), nothing), HasSubstr("No answer in the time given (deadline)"));
}

TEST(TextTable, AlignsByCharactersAndKeepsEachRowOnItsLine) {
  TextTable table({{"Food", TextTable::Align::Left}, {"g", TextTable::Align::Right}});
  table.addRow({"Rübe\nrot", "5"});
  table.addRule();
  table.addRow({"Sum", "105"});
  EXPECT_EQ(table.text(),
            "Food        g\n"
            "─────────────\n"
            "Rübe rot    5\n"
            "─────────────\n"
            "Sum       105\n");
  EXPECT_THROW(table.addRow({"one cell"}), std::logic_error);
}

}  // namespace
}  // namespace tarebowl::app
