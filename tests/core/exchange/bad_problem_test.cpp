// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_json.h"
#include "tests/core/exchange/sound_problem.h"
#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <ostream>

namespace tarebowl::exchange {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

/// One slip in an otherwise sound file, the key that the complaint must name and words that it must hold.
struct Slip {
  const char* name;
  const char* piece;
  const char* replacement;
  const char* keyPath;
  const char* expected;
};

std::ostream& operator<<(std::ostream& out, const Slip& slip) {
  return out << slip.name;
}

// clang-format off
const Slip kSlips[] = {
    // The file as JSON
    {"Truncated", "\"whole_steps\": false\n}", "", "", "line 34, column 3: unexpected end of input"},
    {"TruncatedInAText", "\"whole_steps\": false\n}", "\"whole_st", "", "missing closing quote"},
    {"TextAfterTheEnd", "\"whole_steps\": false\n}", "\"whole_steps\": false\n} }", "", "line 35, column 3"},
    {"CommaTooMany", "\"min_g_each\": 5 }]", "\"min_g_each\": 5 },]", "choices[1]", "valid JSON"},
    {"CommaMissing", "\"confidence\": 0.95,", "\"confidence\": 0.95", "", "line 34, column 15"},
    {"Comment", "\"confidence\": 0.95,", "\"confidence\": 0.95, // sure", "", "no comments, found one at line 33, column 23"},
    {"SingleQuotes", "\"form\": \"raw\"", "\"form\": 'raw'", "foods[0].form", "valid JSON"},
    {"ByteThatIsNotUtf8", "Kale, raw", "K\xE4se", "foods[0].name", "UTF-8"},
    {"LineBreakInAText", "Kale, raw", "Kale,\nraw", "foods[0].name", "line 9"},
    {"NumberNaN", "\"CA\": 254", "\"CA\": NaN", "foods[0].per_100_g.CA", "a finite number, found NaN or Infinity at line 12"},
    {"NumberInfinity", "\"CA\": 254", "\"CA\": Infinity", "foods[0].per_100_g.CA", "a finite number"},
    {"NumberMinusInfinity", "\"max_g\": 60", "\"max_g\": -Infinity", "foods[0].max_g", "a finite number"},
    {"NumberBeyondDoubles", "\"CA\": 254", "\"CA\": 1e999", "foods[0].per_100_g.CA", "a finite number, found 1e999"},
    {"NumberWithComma", "\"CA\": 254", "\"CA\": 254,0", "foods[0].per_100_g", "valid JSON"},
    {"NumberWithLeadingZero", "\"CA\": 254", "\"CA\": 0254", "foods[0].per_100_g", "valid JSON"},
    {"KeyTwice", "\"CA\": 254", "\"CA\": 254, \"CA\": 150", "foods[0].per_100_g.CA", "this key once, found it twice"},
    {"TopLevelKeyTwice", "\"confidence\": 0.95", "\"targets\": []", "targets", "this key once, found it twice"},

    // The heading
    {"OtherFormat", "tarebowl-problem/1", "tarebowl-result/1", "format", "\"tarebowl-problem/1\", found \"tarebowl-result/1\""},
    {"LaterFormat", "tarebowl-problem/1", "tarebowl-problem/2", "format", "found \"tarebowl-problem/2\""},
    {"FormatMissing", "\"format\": \"tarebowl-problem/1\",", "", "format", "found nothing"},
    {"FormatIsANumber", "\"tarebowl-problem/1\"", "1", "format", "a text in quotes, found 1"},
    {"TitleIsAList", "\"A bowl for tests\"", "[]", "title", "a text in quotes, found a list"},
    {"InventedIsAText", "\"invented\": true", "\"invented\": \"yes\"", "invented", "true or false, found \"yes\""},
    {"SlipOfATopLevelKey", "\"confidence\"", "\"confidance\"", "confidance", "did you mean confidence?"},
    {"AnimalIsAText", "{ \"name\": \"Tenrec trio\", \"count\": 3, \"body_mass_kg\": 0.14 }", "\"tenrec\"", "animal", "an object in braces, found \"tenrec\""},
    {"NoAnimals", "\"count\": 3", "\"count\": 0", "animal.count", "a whole number from 1"},
    {"HalfAnAnimal", "\"count\": 3", "\"count\": 2.5", "animal.count", "found 2.5"},
    {"BodyMassOfZero", "\"body_mass_kg\": 0.14", "\"body_mass_kg\": 0", "animal.body_mass_kg", "a number above 0, found 0"},
    {"BodyMassMissing", ", \"body_mass_kg\": 0.14", "", "animal.body_mass_kg", "target \"d3\" has the basis metabolic-mass"},
    {"BodyMassAsText", "\"body_mass_kg\": 0.14", "\"body_mass_kg\": \"140 g\"", "animal.body_mass_kg", "found \"140 g\""},
    {"BodyMassOfAShip", "\"body_mass_kg\": 0.14", "\"body_mass_kg\": 1e8", "animal.body_mass_kg", "at most 1e+06 kg"},
    {"UnknownEnergyMethod", "\"modified-atwater\"", "\"atwater-9\"", "energy_method", "given, atwater, modified-atwater, dog-2006, cat-2006 or poultry-amen"},
    {"EnergyMethodMissing", "\"energy_method\": \"modified-atwater\",", "", "energy_method", "counts energy"},

    // Foods
    {"IdOfAFoodTwice", "\"id\": \"apple-raw\"", "\"id\": \"kale-raw\"", "foods[2].id", "an id that no other food has, found \"kale-raw\""},
    {"IdOfAFoodMissing", "\"id\": \"apple-raw\", ", "", "foods[2].id", "found nothing"},
    {"IdOfAFoodEmpty", "\"id\": \"apple-raw\"", "\"id\": \"\"", "foods[2].id", "not empty"},
    {"CompositionMissing", "\"per_100_g\": { \"WATER\": 85.6, \"PROCNT\": 0.26, \"FAT\": 0.17, \"ASH\": 0.19, \"CHOCDF\": 13.8, \"CA\": 6 },", "", "foods[2].per_100_g", "found nothing"},
    {"SlipOfAFoodKey", "\"max_g\"", "\"max_gg\"", "foods[0].max_gg", "did you mean max_g?"},
    {"SwappedLettersInAKey", "\"scale_step_g\"", "\"scale_setp_g\"", "foods[0].scale_setp_g", "did you mean scale_step_g?"},
    {"UnknownTagname", "\"FIBC\": 1.2", "\"FIBCC\": 1.2", "foods[0].per_100_g.FIBCC", "found \"FIBCC\"; did you mean FIBC?"},
    {"TagnameInLowerCase", "\"WATER\": 85.6", "\"water\": 85.6", "foods[2].per_100_g.water", "did you mean WATER?"},
    {"OneNutrientUnderTwoNames", "\"VITE\": 1.03", "\"VITE\": 1.03, \"TOCPHA\": 1.03", "foods[1].per_100_g.VITE", "VITE once, found it under two names"},
    {"NegativeNutrient", "\"CA\": 254", "\"CA\": -3", "foods[0].per_100_g.CA", "a number of 0 or more, found -3"},
    {"NutrientAsText", "\"CA\": 254", "\"CA\": \"254 mg\"", "foods[0].per_100_g.CA", "a number of 0 or more, found \"254 mg\""},
    {"NutrientAsNull", "\"CA\": 254", "\"CA\": null", "foods[0].per_100_g.CA", "found null"},
    {"MoistureOver100", "\"WATER\": 89.5", "\"WATER\": 104", "foods[0].per_100_g.WATER", "at most 100 g in 100 g, found 104"},
    {"MoreCalciumThanFood", "\"CA\": 254", "\"CA\": 254000", "foods[0].per_100_g.CA", "at most 100000 mg in 100 g, found 254000"},
    {"MoreVitaminThanFood", "\"VITD\": 2.2", "\"VITD\": 2e8", "foods[1].per_100_g.VITD", "at most 100000000 ug in 100 g"},
    {"KilojoulesAsKilocalories", "\"P\": 55", "\"ENERC\": 1580", "foods[0].per_100_g.ENERC", "at most 1000 kcal in 100 g"},
    // 74.6 + 32.6 + 10.6 + 1.1 = 118.9
    {"ProximatesOver105", "\"PROCNT\": 12.6", "\"PROCNT\": 32.6", "foods[1].per_100_g", "at most 105 g in 100 g together, found 118.9"},
    // NFE = CHOCDF - FIBC = 2 - 13 = -11
    {"NfeBelowMinus10", "\"CHOCDF\": 13.8", "\"CHOCDF\": 2, \"FIBC\": 13", "foods[2].per_100_g", "at least -10 g in 100 g for the method modified-atwater"},
    {"NegativeScatter", "\"sd_per_100_g\": { \"CA\": 31 }", "\"sd_per_100_g\": { \"CA\": -1 }", "foods[0].sd_per_100_g.CA", "a number of 0 or more, found -1"},
    {"ScatterOfAnUnknownValue", "\"sd_per_100_g\": { \"CA\": 31 }", "\"sd_per_100_g\": { \"MG\": 3 }", "foods[0].sd_per_100_g.MG", "a nutrient that per_100_g states"},
    {"UnknownQualifier", "\"FIBC\": \"<=\"", "\"FIBC\": \"about\"", "foods[0].qualifiers.FIBC", "=, >=, <=, <LOQ, trace, <, > or n.d., found \"about\""},
    {"NoSamples", "\"n_samples\": { \"CA\": 4 }", "\"n_samples\": { \"CA\": 0 }", "foods[0].n_samples.CA", "a whole number from 1"},
    {"NegativeMass", "\"min_g\": 1", "\"min_g\": -1", "foods[0].min_g", "a number of 0 or more, found -1"},
    {"HugeMass", "\"max_g\": 60", "\"max_g\": 6e12", "foods[0].max_g", "at most 1e+09 g"},
    {"LeastAboveMost", "\"min_g\": 1", "\"min_g\": 61", "foods[0].max_g", "at least min_g, 61, found 60"},
    {"ScaleStepOfZero", "\"scale_step_g\": 0.5", "\"scale_step_g\": 0", "foods[0].scale_step_g", "a number above 0"},
    {"NegativeScaleStep", "\"scale_step_g\": 0.5", "\"scale_step_g\": -0.5", "foods[0].scale_step_g", "found -0.5"},
    {"NegativePrice", "\"cost_per_kg\": 3.2", "\"cost_per_kg\": -3.2", "foods[0].cost_per_kg", "a number of 0 or more"},
    {"EatenMoreThanOffered", "\"eaten_fraction\": 0.9", "\"eaten_fraction\": 1.1", "foods[0].eaten_fraction", "a number from 0 to 1, found 1.1"},
    {"EatenLessThanNothing", "\"eaten_fraction\": 0.9", "\"eaten_fraction\": -0.1", "foods[0].eaten_fraction", "a number from 0 to 1, found -0.1"},

    // Targets
    {"IdOfATargetTwice", "\"id\": \"d3\"", "\"id\": \"calcium\"", "targets[2].id", "no other target, ratio or share has"},
    {"RatioWithATargetsId", "\"id\": \"ca-p\"", "\"id\": \"calcium\"", "ratios[0].id", "found \"calcium\""},
    {"ShareWithATargetsId", "\"id\": \"fruit-share\"", "\"id\": \"d3\"", "shares[0].id", "found \"d3\""},
    {"TargetOnAnUnknownTagname", "\"nutrient\": \"VITD\"", "\"nutrient\": \"VITDD\"", "targets[2].nutrient", "did you mean VITD?"},
    {"TargetOnANutrientNoFoodKnows", "\"nutrient\": \"VITD\", \"max\": 4000, \"unit\": \"IU\"", "\"nutrient\": \"SE\", \"max\": 4, \"unit\": \"mg\"", "targets[2].nutrient", "at least one food knows, found SE"},
    {"EnergyNoFoodKnows", "\"modified-atwater\"", "\"poultry-amen\"", "targets[0].nutrient", "(by the method poultry-amen), found ENERC"},
    {"UnknownUnit", "\"unit\": \"g\"", "\"unit\": \"grams\"", "targets[1].unit", "g, mg, ug, kcal, kJ or IU, found \"grams\""},
    {"EnergyUnitForCalcium", "\"unit\": \"g\"", "\"unit\": \"kcal\"", "targets[1].unit", "a unit of CA: g, mg or ug, found \"kcal\""},
    {"ActivityUnitForCalcium", "\"unit\": \"g\"", "\"unit\": \"IU\"", "targets[1].unit", "a unit of CA: g, mg or ug, found \"IU\""},
    {"MassUnitForEnergy", "\"unit\": \"kcal\"", "\"unit\": \"g\"", "targets[0].unit", "a unit of ENERC: kcal or kJ"},
    {"UnknownBasis", "\"basis\": \"dry-matter\"", "\"basis\": \"dm\"", "targets[1].basis", "as-fed, dry-matter, energy, day, body-mass or metabolic-mass, found \"dm\""},
    {"BasisMissing", ", \"basis\": \"dry-matter\"", "", "targets[1].basis", "found nothing"},
    {"NeitherMinNorMax", "\"min\": 5, \"max\": 12, ", "", "targets[1]", "min or max, found neither"},
    {"TargetMinAboveMax", "\"min\": 5", "\"min\": 13", "targets[1].min", "at most max, 12, found 13"},
    {"NegativeMax", "\"max\": 4000", "\"max\": -4000", "targets[2].max", "a number of 0 or more"},
    {"HugeMax", "\"max\": 4000", "\"max\": 1e30", "targets[2].max", "at most 1e+12"},
    {"HardAsANumber", "\"hard\": true", "\"hard\": 1", "targets[0].hard", "true or false, found 1"},
    {"NegativeWeight", "\"weight\": 2", "\"weight\": -2", "targets[1].weight", "a number of 0 or more"},
    {"UnknownProvenance", "\"provenance\": \"invented\"", "\"provenance\": \"heard\"", "targets[1].provenance", "seen, memory, house-rule, invented or derived"},

    // Ratios, shares, choices
    {"RatioWithoutTo", ", \"to\": \"P\"", "", "ratios[0].to", "found nothing"},
    {"RatioToANutrientNoFoodKnows", "\"to\": \"P\"", "\"to\": \"MG\"", "ratios[0].to", "found MG"},
    {"RatioMinAboveMax", "\"min\": 1.2", "\"min\": 3", "ratios[0].min", "at most max, 2.1"},
    {"ShareOfAGroupWithoutFoods", "\"id\": \"fruit-share\", \"group\": \"fruit\"", "\"id\": \"fruit-share\", \"group\": \"fruits\"", "shares[0].group", "a group that at least one food has, found \"fruits\""},
    {"ShareOver1", "\"max\": 0.1", "\"max\": 10", "shares[0].max", "a number from 0 to 1, found 10"},
    {"ShareOfADay", "\"basis\": \"as-fed\"", "\"basis\": \"day\"", "shares[0].basis", "as-fed, dry-matter or energy, found \"day\""},
    {"ChoiceOfAGroupWithoutFoods", "[{ \"group\": \"leafy vegetable\"", "[{ \"group\": \"root\"", "choices[0].group", "a group that at least one food has"},
    {"ChoiceOfMoreFoodsThanThereAre", "\"at_least\": 1, \"at_most\": 1", "\"at_least\": 2", "choices[0].at_least", "at most 1, the number of foods in group \"leafy vegetable\""},
    {"ChoiceLeastAboveMost", "\"at_least\": 1", "\"at_least\": 2", "choices[0].at_most", "at least at_least, 2"},
    {"ChoiceOfHalfAFood", "\"at_least\": 1", "\"at_least\": 0.5", "choices[0].at_least", "a whole number"},
    {"ChoicesAreAnObject", "[{ \"group\": \"leafy vegetable\", \"at_least\": 1, \"at_most\": 1, \"min_g_each\": 5 }]", "{}", "choices", "a list, found an object"},

    // What is sought
    {"ReferenceToAnUnknownFood", "\"egg-boiled\": 7.5", "\"egg boiled\": 7.5", "reference[\"egg boiled\"]", "the id of a food, found \"egg boiled\""},
    {"NegativeReference", "\"egg-boiled\": 7.5", "\"egg-boiled\": -7.5", "reference.egg-boiled", "a number of 0 or more"},
    {"UnknownObjective", "\"lowest-cost\"", "\"cheapest\"", "objective.kind", "closest, lowest-cost, lowest, highest or fewest-foods, found \"cheapest\""},
    {"LowestOfNothing", "\"lowest-cost\"", "\"lowest\"", "objective.nutrient", "found nothing"},
    {"HighestOfAnUnknownTagname", "\"lowest-cost\"", "\"highest\", \"nutrient\": \"FEE\"", "objective.nutrient", "did you mean FE?"},
    {"LowestOfANutrientNoFoodKnows", "\"lowest-cost\"", "\"lowest\", \"nutrient\": \"FE\"", "objective.nutrient", "at least one food knows, found FE"},
    {"PriceMissing", ",\n      \"cost_per_kg\": 2 }", " }", "foods[2].cost_per_kg", "the objective is lowest-cost"},
    {"ConfidenceOfOneHalf", "\"confidence\": 0.95", "\"confidence\": 0.5", "confidence", "above 0.5 and below 1, found 0.5"},
    {"ConfidenceOfOne", "\"confidence\": 0.95", "\"confidence\": 1", "confidence", "above 0.5 and below 1, found 1"},
    {"ConfidenceInPercent", "\"confidence\": 0.95", "\"confidence\": 95", "confidence", "above 0.5 and below 1, found 95"},
    {"WholeStepsAsText", "\"whole_steps\": false", "\"whole_steps\": \"no\"", "whole_steps", "true or false"},
};
// clang-format on

FormatError complaintAbout(const std::string& text) {
  try {
    (void)parseProblem(text, "bowl.json");
  } catch (const FormatError& error) {
    return error;
  }
  return {"", "", "no complaint"};
}

class BadProblem : public ::testing::TestWithParam<Slip> {};

TEST_P(BadProblem, IsRefusedInOneLineThatNamesFileKeyAndExpectation) {
  const Slip& slip = GetParam();
  const FormatError error = complaintAbout(soundProblemWith(slip.piece, slip.replacement));
  EXPECT_EQ(error.file(), "bowl.json");
  EXPECT_EQ(error.keyPath(), slip.keyPath);
  EXPECT_THAT(error.expected(), HasSubstr(slip.expected));
  const std::string where = *slip.keyPath == '\0' ? "" : std::string(": ") + slip.keyPath;
  EXPECT_THAT(error.what(), StartsWith("bowl.json" + where + ": expected "));
  EXPECT_THAT(error.what(), Not(HasSubstr("\n")));
}

INSTANTIATE_TEST_SUITE_P(Slips, BadProblem, ::testing::ValuesIn(kSlips),
                         [](const auto& slip) { return std::string(slip.param.name); });

TEST(BadProblem, ThatIsEmptyIsRefused) {
  for (const char* text : {"", " \n\t ", "\xEF\xBB\xBF"}) {
    EXPECT_THAT(complaintAbout(text).what(),
                ::testing::StrEq("bowl.json: expected a problem in JSON, found an empty file"));
  }
}

TEST(BadProblem, ThatIsNoObjectIsRefused) {
  EXPECT_THAT(complaintAbout("[]").what(),
              ::testing::StrEq("bowl.json: expected an object in braces, found a list"));
  EXPECT_THAT(complaintAbout("7").what(),
              ::testing::StrEq("bowl.json: expected an object in braces, found 7"));
}

TEST(BadProblem, WithoutFoodsIsRefused) {
  const FormatError error = complaintAbout(R"({ "format": "tarebowl-problem/1", "foods": [] })");
  EXPECT_EQ(error.keyPath(), "foods");
  EXPECT_EQ(error.expected(), "at least one food, found none");
  EXPECT_EQ(complaintAbout(R"({ "format": "tarebowl-problem/1" })").keyPath(), "foods");
}

TEST(BadProblem, WithoutAnyWaterCannotHaveTargetsPerKgDryMatter) {
  const FormatError error = complaintAbout(R"({ "format": "tarebowl-problem/1",
    "foods": [{ "id": "powder", "per_100_g": { "CA": 30000 } }],
    "targets": [{ "id": "ca", "nutrient": "CA", "min": 1, "unit": "g", "basis": "dry-matter" }] })");
  EXPECT_EQ(error.keyPath(), "targets[0].basis");
  EXPECT_THAT(error.expected(), HasSubstr("none of them states WATER"));
}

TEST(BadProblem, CutOffAnywhereIsRefused) {
  for (std::size_t length = 0; length < kSoundProblem.size(); ++length) {
    const FormatError error = complaintAbout(std::string(kSoundProblem.substr(0, length)));
    EXPECT_EQ(error.file(), "bowl.json") << "cut after " << length << " bytes";
    EXPECT_THAT(error.what(), Not(HasSubstr("\n")));
  }
}

TEST(BadProblem, CutOffInAValueNamesItsKey) {
  const auto place = kSoundProblem.find("254");
  EXPECT_EQ(complaintAbout(std::string(kSoundProblem.substr(0, place))).keyPath(), "foods[0].per_100_g.CA");
}

TEST(BadProblem, NestedTooDeeplyIsRefusedBeforeItIsBuilt) {
  const std::string deep(1'000'000, '[');
  EXPECT_THAT(complaintAbout(deep).expected(), StartsWith("at most 32 lists and objects inside each other"));
}

TEST(BadProblem, WithAZeroByteIsRefusedAndNotCutThere) {
  std::string text(kSoundProblem);
  text += std::string("\0 more", 6);
  EXPECT_THAT(complaintAbout(text).expected(), StartsWith("text, found a zero byte at line 35, column 2"));
}

TEST(BadProblem, LargerThan64MbIsRefused) {
  const std::string spaces(64U * 1024U * 1024U + 1U, ' ');
  EXPECT_THAT(complaintAbout(spaces).expected(), StartsWith("at most 64 MB"));
}

TEST(BadProblem, WithMoreFoodsThanAnyDietIsRefused) {
  std::string foods;
  for (std::size_t i = 0; i <= kMostEntries; ++i) {
    foods += (i == 0 ? "" : ",") + (R"({ "id": "f)" + std::to_string(i)) + R"(", "per_100_g": {} })";
  }
  const FormatError error = complaintAbout(R"({ "format": "tarebowl-problem/1", "foods": [)" + foods + "] }");
  EXPECT_EQ(error.keyPath(), "foods");
  EXPECT_THAT(error.expected(), StartsWith("at most 2000 entries"));
}

TEST(BadProblem, IsNamedOnOneLineWhateverItsKeysHold) {
  const FormatError error = complaintAbout(soundProblemWith("\"FIBC\": 1.2", R"("A\nB \"C": 1.2)"));
  EXPECT_EQ(error.keyPath(), R"(foods[0].per_100_g["A\nB \"C"])");
  EXPECT_THAT(error.what(), Not(HasSubstr("\n")));
  const FormatError odd("two\nlines.json", "", "something");
  EXPECT_STREQ(odd.what(), "two lines.json: expected something");
}

TEST(BadProblem, ShowsOnlyTheBeginningOfALongText) {
  const std::string longText(100'000, 'x');
  const FormatError error = complaintAbout(soundProblemWith("\"dry-matter\"", '"' + longText + '"'));
  EXPECT_LT(std::string(error.what()).size(), 300U);
}

TEST(BadProblem, ThatIsNoFileIsRefused) {
  const auto complaint = [](const std::filesystem::path& file) -> std::string {
    try {
      (void)readProblem(file);
    } catch (const FormatError& error) {
      return error.what();
    }
    return "no complaint";
  };
  EXPECT_EQ(complaint("no-such.json"), "no-such.json: expected a readable file, found none of this name");
  EXPECT_EQ(complaint(TAREBOWL_SOURCE_DIR),
            TAREBOWL_SOURCE_DIR ": expected a readable file, found a directory");
}

}  // namespace
}  // namespace tarebowl::exchange
