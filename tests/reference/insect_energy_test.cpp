// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Feeder insects in Hand-Rearing Birds, 2nd ed., Table 41.1 (data of Finke 2002, Zoo Biology 21:269-285, and
// Finke 2013, Zoo Biology 32:27-36). The printed ME is 4 CP + 9 fat + 4 NFE with NFE = 100 - moisture - CP -
// fat - ash - ADF, and NFE goes below 0: chitin counts once as protein (its nitrogen) and once as fibre.
#include "core/food/checks.h"
#include "core/food/energy.h"
#include "tests/core/food/food_builder.h"
#include "tests/reference/reference_data.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <string_view>

namespace tarebowl::reference {
namespace {

using namespace food;

struct Insect {
  const char* name;
  std::array<double, 5> percent;  // moisture, CP, fat, ash, ADF as fed
  double extract;                 // NFE by hand
  double worked;                  // kcal/g by hand
  double printed;                 // kcal/g in the table
};

// Mealworm: 100 - 61.9 - 18.7 - 13.4 - 0.9 - 2.5 = 2.6; (4*18.7 + 9*13.4 + 4*2.6)/100 = 2.058.
constexpr std::array kInsects{
    Insect{"waxworm larvae", {58.5, 14.1, 24.9, 0.6, 3.4}, -1.5, 2.745, 2.75},
    Insect{"mealworm larvae", {61.9, 18.7, 13.4, 0.9, 2.5}, 2.6, 2.058, 2.05},
    Insect{"superworm larvae", {57.9, 19.7, 17.7, 1.0, 2.7}, 1.0, 2.421, 2.42},
    Insect{"silkworm larvae", {82.7, 9.3, 1.4, 1.1, 1.1}, 4.4, 0.674, 0.67},
    Insect{"tebo larvae", {60.2, 15.5, 29.4, 0.8, 1.4}, -7.3, 2.974, 2.98},
    Insect{"black soldier fly larvae", {61.2, 17.5, 14.0, 3.5, 3.0}, 0.8, 1.992, 1.99},
    Insect{"house cricket, adult", {69.2, 20.5, 6.8, 1.1, 3.2}, -0.8, 1.400, 1.40},
    Insect{"house cricket, nymph", {77.1, 15.4, 3.3, 1.1, 2.2}, 0.9, 0.949, 0.95},
    Insect{"Turkestan cockroach", {69.1, 19.0, 10.0, 1.2, 2.2}, -1.5, 1.600, 1.60},
    Insect{"earthworm", {83.6, 10.5, 1.6, 0.6, 0.1}, 3.6, 0.708, 0.71},
};

Composition compositionOf(const Insect& insect) {
  const auto& [water, protein, fat, ash, fibre] = insect.percent;
  return foodOf({{"WATER", water}, {"PROCNT", protein}, {"FAT", fat}, {"ASH", ash}, {"FIBC", fibre}});
}

/// 4 CP + 9 fat + 4 NFE, kcal per g, with the extract that the core works out.
double kcalPerGram(const Composition& composition) {
  const double nfe = nitrogenFreeExtract(composition).value();
  const double protein = composition.amountPer100g(nutrients::protein()).value();
  const double fat = composition.amountPer100g(nutrients::fat()).value();
  return (4.0 * protein + 9.0 * fat + 4.0 * nfe) / 100.0;
}

TEST(InsectEnergy, TenFeederInsectsHaveTheirPrintedEnergyWithNegativeExtractKept) {
  for (const auto& insect : kInsects) {
    const auto composition = compositionOf(insect);
    EXPECT_NEAR(nitrogenFreeExtract(composition).value(), insect.extract, 1e-9) << insect.name;
    EXPECT_NEAR(kcalPerGram(composition), insect.worked, 1e-9) << insect.name;
    EXPECT_NEAR(kcalPerGram(composition), insect.printed, 0.0101) << insect.name;  // printed to 0.01
  }
}

TEST(InsectEnergy, ANegativeExtractIsSaidButNotRefused) {
  for (const auto& insect : kInsects) {
    const auto estimate = estimateEnergy(EnergyMethod::ModifiedAtwater, compositionOf(insect));
    EXPECT_EQ(estimate.negativeCarbohydrate, insect.extract < 0.0) << insect.name;
    EXPECT_FALSE(estimate.implausibleCarbohydrate) << insect.name;
    const auto findings = checkComposition(compositionOf(insect));
    EXPECT_EQ(std::ranges::count(findings, CheckCode::NegativeCarbohydrate, &Finding::code),
              insect.extract < 0.0 ? 1 : 0)
        << insect.name;
  }
}

// Tebo larvae: 60.2 + 15.5 + 29.4 + 0.8 = 105.9 g in 100 g before any carbohydrate. The problem format draws
// its line at 105.
TEST(InsectEnergy, OfTheTenOnlyTeboLarvaeAreRefusedForTheirSum) {
  for (const auto& insect : kInsects) {
    const auto findings = checkComposition(compositionOf(insect));
    const auto refused = std::ranges::find(findings, Severity::Refused, &Finding::severity);
    const bool tebo = std::string_view(insect.name) == "tebo larvae";
    ASSERT_EQ(refused != findings.end(), tebo) << insect.name;
    if (!tebo) continue;
    EXPECT_EQ(refused->code, CheckCode::ProximatesOverWhole);
    EXPECT_NEAR(refused->found, 105.9, 1e-9);
  }
}

// Waxworm: 3.5*14.1 + 8.5*24.9 + 3.5*(-1.5) = 255.75; with the extract cut at 0 it would be 261.00.
TEST(InsectEnergy, ModifiedAtwaterOfWaxwormsCountsTheNegativeExtract) {
  const auto estimate = estimateEnergy(EnergyMethod::ModifiedAtwater, compositionOf(kInsects[0]));
  EXPECT_NEAR(estimate.per100g.value().value(), 255.75, 1e-9);
}

TEST(InsectEnergy, CuttingTheExtractAtZeroWouldMissTheEnergyByTwoToTenPercent) {
  for (const auto& insect : kInsects) {
    if (insect.extract >= 0.0) continue;
    const double clamped = kcalPerGram(compositionOf(insect)) - 4.0 * insect.extract / 100.0;
    EXPECT_GT(clamped / insect.worked, 1.02) << insect.name;
    EXPECT_LT(clamped / insect.worked, 1.10) << insect.name;
  }
}

/// Rows of the table that are known not to follow the formula: other sources, or no fibre stated.
bool followsTheFormula(const CsvRow& row) {
  const auto& name = row.at("item");
  return row.at("basis") == "as fed" && row.number("ADF_g_kg") && name != "fruit fly adult" &&
         name != "woodlouse";
}

TEST(InsectEnergy, TheWholeTableFollowsTheFormula) {
  const auto file = referenceFile("insects.csv");
  if (!file) GTEST_SKIP() << missingNote("insects.csv");
  int compared = 0;
  forEachRow(*file, [&](const CsvRow& row) {
    if (!followsTheFormula(row)) return;
    const auto percent = [&](const char* column) { return row.number(column).value() / 10.0; };
    const auto composition = foodOf({{"WATER", percent("moisture_g_kg")},
                                     {"PROCNT", percent("protein_g_kg")},
                                     {"FAT", percent("fat_g_kg")},
                                     {"ASH", percent("ash_g_kg")},
                                     {"FIBC", percent("ADF_g_kg")}});
    EXPECT_NEAR(kcalPerGram(composition) * 1000.0, row.number("ME_kcal_kg").value(), 5.0) << row.at("item");
    ++compared;
  });
  EXPECT_EQ(compared, 10);
}

}  // namespace
}  // namespace tarebowl::reference
