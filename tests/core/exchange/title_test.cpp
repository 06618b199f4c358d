// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/title_meaning.h"
#include "core/exchange/unit_text.h"

#include <gtest/gtest.h>

namespace tarebowl::exchange {
namespace {

using quantity::Basis;
using quantity::Unit;

TEST(UnitText, ReadsWhatTablesWrite) {
  const struct {
    const char* text;
    UnitText unit;
  } cases[] = {
      {"mg", {Unit::Milligram}},
      {"µg", {Unit::Microgram}},
      {"\u03bcg", {Unit::Microgram}},
      {"mcg", {Unit::Microgram}},
      {"KJ", {Unit::Kilojoule}},
      {"MJ", {Unit::Kilojoule, 1000.0}},
      {"mg/100g", {Unit::Milligram, 1.0, 100.0}},
      {"mg per 100 g", {Unit::Milligram, 1.0, 100.0}},
      {"g/kg", {Unit::Gram, 1.0, 1000.0}},
      {"g kg-1", {Unit::Gram, 1.0, 1000.0}},
      {"mg_kg", {Unit::Milligram, 1.0, 1000.0}},
      {"g/kg DM", {Unit::Gram, 1.0, 1000.0, Basis::DryMatter}},
      {"g/kg as fed", {Unit::Gram, 1.0, 1000.0, Basis::AsFed}},
      {"%", {Unit::Gram, 1.0, 100.0}},
      {"% DM", {Unit::Gram, 1.0, 100.0, Basis::DryMatter}},
      {"% of dry matter", {Unit::Gram, 1.0, 100.0, Basis::DryMatter}},
      {"ppm", {Unit::Milligram, 1.0, 1000.0}},
      {"MJ/kg DM", {Unit::Kilojoule, 1000.0, 1000.0, Basis::DryMatter}},
      {"g/1000 kcal", {Unit::Gram, 1.0, 1000.0, Basis::Energy}},
      {"g/Mcal", {Unit::Gram, 1.0, 1000.0, Basis::Energy}},
      {"IU/kg", {Unit::InternationalUnit, 1.0, 1000.0}},
  };
  for (const auto& it : cases) {
    EXPECT_EQ(parseUnitText(it.text), it.unit) << it.text;
    EXPECT_EQ(parseUnitText(unitText(it.unit)), it.unit) << it.text << " written " << unitText(it.unit);
  }
}

TEST(UnitText, UnderstandsNoPartOfWhatItDoesNotWhollyUnderstand) {
  for (const char* text :
       {"", "g/16 g N", "mol", "mg/", "/kg", "mg/100", "g of", "mg/kg/day", "g/IU", "% of energy"})
    EXPECT_EQ(parseUnitText(text), std::nullopt) << text;
}

TEST(Title, FallsIntoNutrientAndUnit) {
  const auto calcium = food::nutrients::calcium();
  const UnitText milligrams{Unit::Milligram};
  const UnitText perKilogram{Unit::Milligram, 1.0, 1000.0};
  for (const char* title : {"Calcium (mg)", "CA mg", "Ca [mg]", "Calcium, mg", "ca_mg", "Calcium, Ca (mg)"}) {
    const TitleMeaning meaning = meaningOf(title);
    EXPECT_EQ(meaning.nutrient, calcium) << title;
    EXPECT_EQ(meaning.unit, milligrams) << title;
    EXPECT_EQ(meaning.ofNutrient, ColumnRole::Value) << title;
  }
  EXPECT_EQ(meaningOf("Ca_mg_kg").unit, perKilogram);
  EXPECT_EQ(meaningOf("Protein, % DM").nutrient, food::nutrients::protein());
  EXPECT_EQ(meaningOf("ENERC_KCAL").unit, UnitText{Unit::Kilocalorie});
  EXPECT_EQ(meaningOf("Vitamin E").ofNutrient, ColumnRole::Value);
}

TEST(Title, SaysWhatBelongsToANutrient) {
  const auto calcium = food::nutrients::calcium();
  for (const char* title :
       {"Calcium SD", "CA_sd", "Ca (SD)", "Calcium std dev", "ca_e", "Calcium, standard deviation"}) {
    EXPECT_EQ(meaningOf(title).nutrient, calcium) << title;
    EXPECT_EQ(meaningOf(title).ofNutrient, ColumnRole::Sd) << title;
  }
  EXPECT_EQ(meaningOf("Calcium n").ofNutrient, ColumnRole::Count);
  EXPECT_EQ(meaningOf("Calcium (mg) source").ofNutrient, ColumnRole::Source);
}

TEST(Title, SaysWhatIsNoNutrient) {
  EXPECT_EQ(meaningOf("Food Name; name").word, ColumnRole::Food);
  EXPECT_EQ(meaningOf("Food group").word, ColumnRole::Group);
  EXPECT_EQ(meaningOf("NDB_No").word, ColumnRole::Code);
  EXPECT_EQ(meaningOf("Std. Dev.").word, ColumnRole::Sd);
  EXPECT_EQ(meaningOf("Value (mg/kg)").word, ColumnRole::Value);
  // A standard error in a long table, selenium in a wide one.
  EXPECT_EQ(meaningOf("SE").word, ColumnRole::StandardError);
  EXPECT_EQ(meaningOf("SE").nutrient, food::findByTagname("SE"));
  const TitleMeaning colour = meaningOf("Colour of the lid");
  EXPECT_FALSE(colour.word || colour.nutrient);
}

}  // namespace
}  // namespace tarebowl::exchange
