// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/diet_sheet.h"

#include "core/animal/animal_words.h"
#include "core/exchange/sheet_reader.h"
#include "core/exchange/sheet_words.h"
#include "core/exchange/wording.h"
#include "tests/core/exchange/foreign_page.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

namespace tarebowl::exchange {
namespace {

using quantity::AsFedContent;
using quantity::Grams;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

food::NutrientId id(const char* tagname) {
  return food::findByTagname(tagname).value();
}

diet::DietFood foodOf(const std::string& name, double water) {
  diet::DietFood food;
  food.id = name;
  food.name = name;
  food.form = "raw";
  food.composition.set(id("WATER"), {.amount = AsFedContent(water)});
  return food;
}

/// 20 g kale: 2 g dry matter, 40 mg Ca, 6 kcal, a price of 5 per kg; 5 g crickets: 2 g dry matter, and
/// nothing else is known of them; between 1 and 3 g of treats, 10 % dry matter.
diet::ProblemOfVersion made() {
  diet::ProblemOfVersion made;
  made.problem.title = "Tenrecs <trio>, evening, version 2";
  made.problem.invented = true;
  made.problem.eater = {.name = "Tenrecs", .count = 3, .bodyMass = quantity::Kilograms(0.14)};
  made.problem.energyMethod = food::EnergyMethod::Given;
  diet::DietFood kale = foodOf("kale", 90);
  kale.preparation = "torn & washed";
  kale.costPerKg = 5;
  kale.composition.set(id("CA"), {.amount = AsFedContent(200)});
  kale.composition.set(id("ENERC"), {.amount = AsFedContent(30)});
  diet::DietFood treat = foodOf("pear", 90);
  treat.id = "pear (treat)";
  made.problem.foods = {foodOf("crickets", 60), kale, treat, foodOf("egg", 75)};
  made.problem.targets = {{.id = "calcium",
                           .nutrient = id("CA"),
                           .min = 5,
                           .max = {},
                           .unit = quantity::Unit::Gram,
                           .basis = quantity::Basis::DryMatter,
                           .hard = true,
                           .origin = {"a handbook", animal::Provenance::Seen, "dog"}}};
  made.amounts = {Grams(5), Grams(20), Grams(2), Grams(0)};
  made.places = {{.food = "crickets", .meal = "evening"},
                 {.food = "kale", .meal = "morning"},
                 {.food = "pear",
                  .purpose = diet::Purpose::Treat,
                  .allowance = diet::Allowance{.food = "pear", .low = Grams(1), .high = Grams(3)}},
                 {.food = "egg"}};
  made.locked = {false, false, false, false};
  made.notCounted = {{"iodine", diet::NotCounted::NoFoodKnowsNutrient},
                     {"browse", diet::NotCounted::NoFoodOfGroup},
                     {"selenium", diet::NotCounted::NoFoodKnowsNutrient}};
  return made;
}

diet::DietVersion approved() {
  diet::DietVersion version{.number = 2, .state = diet::VersionState::Approved};
  version.fedFrom = quantity::parseDate("2026-09-15");
  version.phaseInDays = 5;
  version.changedBounds = {{.rule = "calcium", .min = 5, .max = {}, .reason = "grown up"}};
  version.steps = {{diet::VersionState::Submitted, "Keeper A", "2026-09-08T09:00:00Z", ""},
                   {diet::VersionState::Approved, "Vet", "2026-09-11T14:30:00Z", "tried for a week"}};
  return version;
}

DietSheet sheet(const PageTongue& tongue = {}) {
  return sheetOf({.diet = {.invented = true}, .species = "Echinops telfairi", .section = "Small Mammals"},
                 approved(), made(), tongue);
}

std::string bodyOf(const std::string& html) {
  const std::size_t begin = html.find("<body>");
  return html.substr(begin);
}

// 5 + 20 + 2 = 27 g. 20 g of 30 kcal in 100 g are 6 kcal, of 5 per kg 0.1. 40 mg in 2 + 2 + 0.2 = 4.2 g of
// dry matter are 9.524 g/kg; known of 2 g of 4.2 g, 48 %.
TEST(DietSheet, APageSaysWhatIsFedHowItStandsAndWhoDecided) {
  EXPECT_EQ(bodyOf(sheetAsHtml(sheet())), R"html(<body>
<h1>Tenrecs &lt;trio&gt;, evening, version 2</h1>
<p class="invented">INVENTED SAMPLE: animals, masses, products and decisions on this sheet are made up. Not for feeding.</p>
<p>Echinops telfairi, 3 animals of 0.14 kg, Small Mammals</p>
<p>Approved by Vet on 2026-09-11: tried for a week. Fed from 2026-09-15, phased in over 5 days.</p>
<h2>What is fed, as fed, each day</h2>
<table>
<tr><th>Meal</th><th>Food</th><th class="number">g per animal</th><th class="number">g for 3</th><th>Preparation</th><th>Given as</th></tr>
<tr><td>evening</td><td>crickets (raw)</td><td class="number">5</td><td class="number">15</td><td></td><td>bowl</td></tr>
<tr><td>morning</td><td>kale (raw)</td><td class="number">20</td><td class="number">60</td><td>torn &amp; washed</td><td>bowl</td></tr>
<tr><td></td><td>pear (raw)</td><td class="number">1 … 3</td><td class="number">3 … 9</td><td></td><td>treat</td></tr>
<tr><td></td><td>In all</td><td class="number">27</td><td class="number">81</td><td>≥ 6 kcal ME (given) per animal and day; cost 0.1 per animal, 0.3 for 3 (without 2 foods that have no price)</td><td></td></tr>
</table>
<h2>How it stands against its targets</h2>
<table>
<tr><th>Target</th><th class="number">Value</th><th class="number">Zone</th><th>Unit</th><th>State</th><th class="number">Known</th><th class="number">Source</th></tr>
<tr><td>Calcium (calcium), hard</td><td class="number">≥ 9.524</td><td class="number">≥ 5</td><td>g per kg DM</td><td>● met</td><td class="number">48 %</td><td class="number">1</td></tr>
</table>
<p>Set otherwise than the targets say: calcium ≥ 5 (grown up).</p>
<p>? Not judged: iodine, selenium (of no food is it known); browse (no food is of its group).</p>
<p class="small">1: a handbook, seen; for dog</p>
<p class="small">Known: the share of the eaten dry matter whose value is known. What is unknown could only add to a value with ≥; one with ≈ it could move either way.</p>
<p class="small">Tarebowl supports, and does not replace, a qualified nutritionist and a licensed vet; local rules on feeding,
hygiene, live prey and medicines come first. Published requirements of a model species are a starting point.
</p>
</body>
</html>
)html");
}

TEST(DietSheet, WhatIsNotApprovedSaysThatItIsNotForFeeding) {
  EXPECT_EQ(stateSentence({}), "Draft. Not for feeding.");
  diet::DietVersion version = approved();
  version.steps.pop_back();
  version.state = diet::VersionState::Submitted;
  EXPECT_EQ(stateSentence(version), "Submitted by Keeper A on 2026-09-08. Not for feeding.");
  EXPECT_THAT(stateSentence(approved()), Not(HasSubstr("Not for feeding")));
}

TEST(DietSheet, NothingOnAPageIsSaidInEnglishAlone) {
  std::set<std::string> asked;
  const PageTongue tongue = foreignTongue(asked);
  const std::string html = sheetAsHtml(sheet(tongue), tongue);
  // Names, reasons and notes as somebody wrote them; the name of a method; units.
  EXPECT_THAT(
      wordsNotAskedFor(html, {"Tenrecs", "trio",   "evening",  "version", "Echinops", "telfairi", "Small",
                              "Mammals", "Vet",    "tried",    "for",     "week",     "crickets", "raw",
                              "morning", "kale",   "torn",     "washed",  "pear",     "given",    "calcium",
                              "grown",   "iodine", "selenium", "browse",  "handbook", "dog"}),
      IsEmpty());
  EXPECT_THAT(unknownToLanguages(asked), IsEmpty());
  EXPECT_THAT(html, HasSubstr("0,14 xx"));
  EXPECT_THAT(html, HasSubstr("≥ 9,524"));
}

TEST(DietSheet, EveryStateBasisAndReasonIsKnownToTheLanguages) {
  std::set<std::string> words;
  for (const auto state : {diet::TargetState::Met, diet::TargetState::AtMin, diet::TargetState::Short,
                           diet::TargetState::Over, diet::TargetState::Unknown})
    words.emplace(stateText(state));
  for (const auto basis : {quantity::Basis::AsFed, quantity::Basis::DryMatter, quantity::Basis::Energy,
                           quantity::Basis::Day, quantity::Basis::BodyMass, quantity::Basis::MetabolicMass})
    words.emplace(basisText(basis));
  for (const auto why : {diet::NotCounted::NoFoodKnowsNutrient, diet::NotCounted::NoFoodOfGroup,
                         diet::NotCounted::BodyMassUnknown, diet::NotCounted::EnergyIsNoFeedingRate,
                         diet::NotCounted::DryMatterUnknown})
    words.emplace(reasonText(why));
  for (const std::string_view word : animal::Words<animal::CautionSeverity>::kWords) words.emplace(word);
  for (const std::string_view word : animal::Words<animal::Provenance>::kWords)
    if (!word.empty()) words.emplace(word);
  EXPECT_THAT(unknownToLanguages(words), IsEmpty());
}

TEST(DietSheet, ASpreadsheetHoldsNumbersAsNumbers) {
  const auto file =
      std::filesystem::temp_directory_path() / ("tarebowl-sheet-" + std::to_string(getpid()) + ".xlsx");
  writeSheetXlsx(sheet(), file);
  std::vector<std::vector<std::string>> rows;
  {
    const auto reader = openSheet(file);
    for (TableRow row; reader->next(row);) {
      std::vector<std::string>& cells = rows.emplace_back();
      for (std::size_t c = 0; c < row.size(); ++c) cells.emplace_back(row[c]);
    }
  }
  std::filesystem::remove(file);
  const auto rowOf = [&](const std::string& first, std::size_t column) {
    for (const auto& row : rows)
      if (row.size() > column && row[column] == first) return row;
    return std::vector<std::string>{};
  };
  EXPECT_EQ(rows.at(0).at(0), "Tenrecs <trio>, evening, version 2");
  EXPECT_THAT(rows.at(1).at(0), HasSubstr("INVENTED SAMPLE"));
  EXPECT_EQ(rowOf("Meal", 0).at(3), "g for 3 and day");
  const auto kale = rowOf("kale (raw)", 1);
  EXPECT_EQ(kale.at(2), "20");
  EXPECT_EQ(kale.at(3), "60");
  EXPECT_EQ(kale.at(6), "0.1");
  EXPECT_EQ(rowOf("pear (raw)", 1).at(5), "3");
  const auto calcium = rowOf("calcium", 0);
  EXPECT_NEAR(std::stod(calcium.at(2)), 40.0 / 4.2, 1e-9);
  EXPECT_EQ(calcium.at(3), "5");
  EXPECT_EQ(calcium.at(9), "a handbook, seen; for dog");
}

}  // namespace
}  // namespace tarebowl::exchange
