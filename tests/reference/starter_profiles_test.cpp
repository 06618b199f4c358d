// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The starter profiles beside the table of published targets from which they were made, and beside pairs that
// a publication states on two bases.
#include "core/animal/starter_profiles.h"

#include "core/animal/target_conversion.h"
#include "core/exchange/profile_json.h"
#include "core/food/vitamin_units.h"
#include "tests/reference/reference_data.h"
#include "tests/reference/sample_files.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace tarebowl::reference {
namespace {

using namespace animal;
using quantity::Basis;
using quantity::Unit;

constexpr std::string_view kTable = "targets.csv";

/// Rows of all starter profiles by what is printed.
std::multimap<std::string, std::pair<const StarterProfile*, const PrintedRow*>> printedRows() {
  std::multimap<std::string, std::pair<const StarterProfile*, const PrintedRow*>> rows;
  for (const StarterProfile& starter : starterProfiles())
    for (const PrintedRow& row : starter.rows)
      rows.emplace(row.nutrient + '|' + row.min + '|' + row.max + '|' + row.unit + '|' + row.basis + '|' +
                       row.origin.source + '|' + row.origin.modelSpecies + '|' + starter.profile.lifeStage,
                   std::pair(&starter, &row));
  return rows;
}

std::string keyOf(const CsvRow& row) {
  return row.at("nutrient") + '|' + row.at("min") + '|' + row.at("max") + '|' + row.at("unit") + '|' +
         row.at("basis") + '|' + row.at("source") + '|' + row.at("species_proxy") + '|' +
         row.at("life_stage");
}

/// What one unit of the table is in the unit of a target, by the meaning of the word.
struct PrintedUnit {
  std::string_view word;
  double grams;  // per kg, per 1000 kcal or per day; of IU and kJ: one of them
};
constexpr std::array kUnits{
    PrintedUnit{"%", 10.0},
    PrintedUnit{"g/kg", 1.0},
    PrintedUnit{"mg/kg", 1e-3},
    PrintedUnit{"IU/kg", 1.0},
    PrintedUnit{"g", 1.0},
    PrintedUnit{"mg", 1e-3},
    PrintedUnit{"ug", 1e-6},
    PrintedUnit{"kJ", 1.0},
    PrintedUnit{"g/1000 kcal ME", 1.0},
    PrintedUnit{"mg/1000 kcal ME", 1e-3},
    PrintedUnit{"IU/1000 kcal ME", 1.0},
    PrintedUnit{"mg retinol/kg", 1e-3},
    PrintedUnit{"ug retinol/g", 1e-3},
    PrintedUnit{"ug RE", 1e-6},
    PrintedUnit{"mg RRR-a-tocopherol/kg", 1e-3},
    PrintedUnit{"mg/kg BW/day", 1e-3},
    PrintedUnit{"g N", 6.25},
};

double gramsOf(const std::string& unit) {
  const auto* const found = std::ranges::find(kUnits, unit, &PrintedUnit::word);
  if (found == kUnits.end()) throw std::logic_error("no such unit: " + unit);
  return found->grams;
}

/// A target's amount as the table would print it.
double asPrinted(const Target& target, double bound, const std::string& unit) {
  if (target.unit == Unit::InternationalUnit && !unit.starts_with("IU")) return bound;  // mg of an acetate
  const double own = quantity::conversionFactor(target.unit, Unit::Gram).value_or(1.0);
  return bound * own / gramsOf(unit);
}

std::optional<Basis> basisOf(const std::string& words) {
  if (words.starts_with("DM") || words.starts_with("diet basis")) return Basis::DryMatter;
  if (words.starts_with("as fed") || words == "pellet basis") return Basis::AsFed;
  if (words == "per 1000 kcal") return Basis::Energy;
  if (words == "per kg^0.75 per day") return Basis::MetabolicMass;
  if (words == "per kg body weight per day") return Basis::BodyMass;
  return std::nullopt;
}

const ProfileTarget& targetOf(const StarterProfile& starter, const std::string& id) {
  const auto& targets = starter.profile.targets;
  const auto place =
      std::ranges::find_if(targets, [&](const ProfileTarget& target) { return target.target.id == id; });
  if (place == targets.end()) throw std::logic_error("no target " + id);
  return *place;
}

void expectPrinted(const std::optional<double>& bound, const std::optional<double>& printed) {
  ASSERT_EQ(bound.has_value(), printed.has_value());
  if (bound) {
    EXPECT_NEAR(*bound, *printed, 1e-12 * *printed);
  }
}

/// The bounds of all rules of a row, put together again.
void expectRow(const StarterProfile& starter, const PrintedRow& printed, const CsvRow& row) {
  if (row.at("unit") == "ratio") {
    const auto ratio = std::ranges::find_if(starter.profile.ratios, [&](const ProfileRatio& each) {
      return each.target.id == printed.rules.at(0);
    });
    ASSERT_NE(ratio, starter.profile.ratios.end());
    expectPrinted(ratio->target.min, row.number("min"));
    expectPrinted(ratio->target.max, row.number("max"));
    return;
  }
  std::optional<double> min;
  std::optional<double> max;
  for (const std::string& id : printed.rules) {
    const Target& target = targetOf(starter, id).target;
    EXPECT_EQ(target.basis, basisOf(row.at("basis")));
    EXPECT_TRUE(food::toOwnUnitFactor(target.nutrient, target.unit)) << id;
    if (target.min) min = asPrinted(target, *target.min, row.at("unit"));
    if (target.max) max = asPrinted(target, *target.max, row.at("unit"));
  }
  expectPrinted(min, row.number("min"));
  expectPrinted(max, row.number("max"));
}

Provenance provenanceOf(const std::string& words) {
  if (words.starts_with("seen")) return Provenance::Seen;
  if (words.starts_with("memory")) return Provenance::FromMemory;
  return Provenance::Derived;
}

TEST(StarterProfiles, EveryRowOfTheTableLoadsAndConvertsBackToThePrintedNumber) {
  const auto table = referenceFile(kTable);
  if (!table) GTEST_SKIP() << missingNote(kTable);
  auto rows = printedRows();
  std::size_t count = 0;
  std::size_t remarks = 0;
  forEachRow(*table, [&](const CsvRow& row) {
    SCOPED_TRACE(row.at("profile") + ' ' + row.at("nutrient") + ' ' + row.at("life_stage"));
    ++count;
    const auto place = rows.find(keyOf(row));
    ASSERT_NE(place, rows.end());
    const auto [starter, printed] = place->second;
    rows.erase(place);
    EXPECT_EQ(printed->origin.provenance, provenanceOf(row.at("seen_or_memory")));
    EXPECT_EQ(printed->note, row.at("note"));
    if (printed->rules.empty()) {
      ++remarks;
      EXPECT_FALSE(printed->remark.empty());
      EXPECT_NE(starter->profile.note.find(row.at("nutrient")), std::string::npos);
      return;
    }
    expectRow(*starter, *printed, row);
  });
  EXPECT_EQ(count, 622U);
  EXPECT_EQ(remarks, 17U) << "rows that state no amount a diet can be held to";
  EXPECT_TRUE(rows.empty()) << "rows that no table has";
}

TEST(StarterProfiles, WhatIsFromMemorySaysSoAndEveryRuleHasASource) {
  std::size_t recalled = 0;
  for (const StarterProfile& starter : starterProfiles()) {
    EXPECT_TRUE(starter.profile.starter);
    EXPECT_TRUE(problemsWith(starter.profile).empty()) << starter.profile.code;
    for (const ProfileTarget& rule : starter.profile.targets) {
      EXPECT_FALSE(rule.target.origin.source.empty()) << rule.target.id;
      EXPECT_FALSE(rule.target.origin.modelSpecies.empty()) << rule.target.id;
      EXPECT_NE(rule.target.origin.provenance, Provenance::Unstated) << rule.target.id;
      if (rule.target.origin.provenance == Provenance::FromMemory) ++recalled;
    }
  }
  EXPECT_GT(recalled, 200U);
}

TEST(StarterProfiles, SafeUpperLimitsAreFlaggedAndHard) {
  const StarterProfile* dog = findStarterProfile("dog-adult-aafco2014");
  ASSERT_NE(dog, nullptr);
  for (const char* id : {"selenium", "iodine", "vitamin-d", "vitamin-a-max"}) {
    EXPECT_TRUE(targetOf(*dog, id).safeUpperLimit) << id;
    EXPECT_TRUE(maxIsHard(targetOf(*dog, id))) << id;
  }
  EXPECT_FALSE(targetOf(*dog, "calcium").safeUpperLimit);
  EXPECT_EQ(food::describe(targetOf(*dog, "vitamin-a-max").target.nutrient).tagname, "RETOL")
      << "carotene does not poison";
}

/// The profiles' common targets, on the energy basis at a density, beside each other.
void expectPair(const char* onDryMatter, const char* perEnergy, std::size_t atLeast, double tolerance) {
  const StarterProfile* first = findStarterProfile(onDryMatter);
  const StarterProfile* second = findStarterProfile(perEnergy);
  ASSERT_TRUE(first != nullptr && second != nullptr);
  TargetScale scale;
  scale.kcalPerKgDryMatter = first->profile.kcalPerGramDryMatter.value() * 1000.0;
  std::size_t pairs = 0;
  for (const ProfileTarget& rule : first->profile.targets) {
    const auto& others = second->profile.targets;
    const auto other = std::ranges::find_if(
        others, [&](const ProfileTarget& each) { return each.target.id == rule.target.id; });
    if (other == others.end()) continue;
    const auto converted = onBasis(rule.target, Basis::Energy, scale);
    ASSERT_TRUE(converted);
    const double unit = food::toOwnUnitFactor(rule.target.nutrient, rule.target.unit).value() /
                        food::toOwnUnitFactor(other->target.nutrient, other->target.unit).value();
    for (const auto bound : {&Target::min, &Target::max}) {
      if (!(*converted.*bound) || !(other->target.*bound)) continue;
      ++pairs;
      EXPECT_NEAR(*((*converted).*bound) * unit / *(other->target.*bound), 1.0, tolerance) << rule.target.id;
    }
  }
  EXPECT_GE(pairs, atLeast);
}

// The AAFCO tables of 2014 state 18 % of DM at 4.0 kcal/g as 45 g per 1000 kcal; printed digits are rounded.
TEST(StarterProfiles, TheDogTablesOf2014AgreeOnBothBases) {
  expectPair("dog-adult-aafco2014", "dog-adult-aafco2014-kcal", 38, 0.02);
  const Target& protein = targetOf(*findStarterProfile("dog-adult-aafco2014-kcal"), "protein").target;
  EXPECT_DOUBLE_EQ(protein.min.value(), 45.0);
}

// NRC 2006 states per 1000 kcal and, at 4.0 kcal/g, on dry matter (from memory).
TEST(StarterProfiles, TheTablesOf2006AgreeOnBothBases) {
  expectPair("dog-adult-nrc2006-dm", "dog-adult-nrc2006", 4, 0.01);
  expectPair("cat-adult-nrc2006-dm", "cat-adult-nrc2006", 3, 0.01);
}

TEST(SampleProfile, TheLemurTakesThePrimateTableOverWithLittleIronAndNoFruit) {
  const TargetProfile lemur =
      exchange::readProfile(samplePath("herd/profiles/brackenmere-ruffed-lemur.json"));
  EXPECT_TRUE(lemur.invented);
  EXPECT_TRUE(problemsWith(lemur).empty());
  const auto outcome = resolve(lemur, shippedProfiles());
  const auto* resolved = std::get_if<ResolvedProfile>(&outcome);
  ASSERT_NE(resolved, nullptr);
  const auto iron = std::ranges::find_if(resolved->targets,
                                         [](const auto& entry) { return entry.rule.target.id == "iron"; });
  ASSERT_NE(iron, resolved->targets.end());
  EXPECT_EQ(iron->rule.target.min, std::nullopt);
  EXPECT_EQ(iron->rule.target.max, 100.0);
  EXPECT_EQ(iron->descent.inPlaceOf, (std::vector{ProfileReference{"primate-nrc2003", 1}}));
  EXPECT_EQ(resolved->exclusions.at(0).rule.group, "fruit");
  EXPECT_GT(resolved->targets.size(), 25U);
}

}  // namespace
}  // namespace tarebowl::reference
