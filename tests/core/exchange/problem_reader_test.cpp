// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_json.h"
#include "tests/core/exchange/sound_problem.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

namespace tarebowl::exchange {
namespace {

using food::findByTagname;
using quantity::Grams;
using ::testing::Optional;

diet::BalanceProblem sound() {
  return parseProblem(kSoundProblem, "bowl.json");
}

const food::NutrientValue& valueOf(const diet::DietFood& food, const char* tagname) {
  const food::NutrientValue* value = food.composition.find(findByTagname(tagname).value());
  if (value == nullptr) throw std::logic_error(std::string("unknown value of ") + tagname);
  return *value;
}

TEST(ProblemReader, ReadsTheHeading) {
  const auto problem = sound();
  EXPECT_EQ(problem.title, "A bowl for tests");
  EXPECT_EQ(problem.notes, "made up");
  EXPECT_TRUE(problem.invented);
  EXPECT_EQ(problem.eater.name, "Tenrec trio");
  EXPECT_EQ(problem.eater.count, 3);
  EXPECT_THAT(problem.eater.bodyMass, Optional(quantity::Kilograms(0.14)));
  EXPECT_EQ(problem.energyMethod, food::EnergyMethod::ModifiedAtwater);
}

TEST(ProblemReader, ReadsAFoodWithItsLimits) {
  const diet::DietFood kale = sound().foods.at(0);
  EXPECT_EQ(kale.id, "kale-raw");
  EXPECT_EQ(kale.name, "Kale, raw");
  EXPECT_EQ(kale.group, "leafy vegetable");
  EXPECT_EQ(kale.form, "raw");
  EXPECT_EQ(kale.preparation, "shredded");
  EXPECT_FALSE(kale.invented);
  EXPECT_EQ(kale.min, Grams(1));
  EXPECT_THAT(kale.max, Optional(Grams(60)));
  EXPECT_EQ(kale.scaleStep, Grams(0.5));
  EXPECT_THAT(kale.costPerKg, Optional(3.2));
  EXPECT_EQ(kale.eatenFraction, 0.9);
}

TEST(ProblemReader, ReadsEachValueWithItsScatterQualifierCountAndSource) {
  const diet::DietFood kale = sound().foods.at(0);
  const food::NutrientValue& calcium = valueOf(kale, "CA");
  EXPECT_EQ(calcium.amount.value(), 254.0);
  EXPECT_THAT(calcium.sd, Optional(quantity::AsFedContent(31)));
  EXPECT_THAT(calcium.sampleCount, Optional(4));
  EXPECT_EQ(calcium.source, "another table");
  EXPECT_EQ(valueOf(kale, "FIBC").qualifier, food::Qualifier::AtMost);
  EXPECT_EQ(valueOf(kale, "P").source, "made up for the test");
  EXPECT_EQ(valueOf(kale, "P").sd, std::nullopt);
}

TEST(ProblemReader, KeepsUnknownApartFromZero) {
  const diet::DietFood kale = sound().foods.at(0);
  EXPECT_EQ(kale.composition.find(findByTagname("VITD").value()), nullptr);
  const auto zero = parseProblem(soundProblemWith("\"P\": 55", "\"P\": 0"), "bowl.json");
  EXPECT_EQ(valueOf(zero.foods.at(0), "P").amount.value(), 0.0);
}

TEST(ProblemReader, FillsInTheDefaultsOfAFood) {
  const diet::DietFood apple = sound().foods.at(2);
  EXPECT_EQ(apple.min, Grams(0));
  EXPECT_EQ(apple.max, std::nullopt);
  EXPECT_EQ(apple.scaleStep, Grams(1));
  EXPECT_EQ(apple.eatenFraction, 1.0);
}

TEST(ProblemReader, ReadsTargetsInTheirOwnUnitAndBasis) {
  const auto problem = sound();
  const animal::Target& calcium = problem.targets.at(1);
  EXPECT_EQ(calcium.nutrient, food::nutrients::calcium());
  EXPECT_THAT(calcium.min, Optional(5.0));
  EXPECT_THAT(calcium.max, Optional(12.0));
  EXPECT_EQ(calcium.unit, quantity::Unit::Gram);
  EXPECT_EQ(calcium.basis, quantity::Basis::DryMatter);
  EXPECT_FALSE(calcium.hard);
  EXPECT_EQ(calcium.weight, 2.0);
  EXPECT_EQ(calcium.origin,
            (animal::TargetOrigin{"house rule of the test", animal::Provenance::Invented, "cat"}));
  EXPECT_TRUE(problem.targets.at(0).hard);
  EXPECT_EQ(problem.targets.at(2).unit, quantity::Unit::InternationalUnit);
  EXPECT_EQ(problem.targets.at(2).min, std::nullopt);
}

TEST(ProblemReader, ReadsRatiosSharesAndChoices) {
  const auto problem = sound();
  EXPECT_EQ(problem.ratios.at(0).of, food::nutrients::calcium());
  EXPECT_EQ(problem.ratios.at(0).to, food::nutrients::phosphorus());
  EXPECT_EQ(problem.shares.at(0).group, "fruit");
  EXPECT_EQ(problem.shares.at(0).basis, quantity::Basis::AsFed);
  EXPECT_EQ(problem.choices.at(0), (diet::ChoiceRule{"leafy vegetable", 1, 1, Grams(5)}));
}

TEST(ProblemReader, ReadsWhatIsSought) {
  const auto problem = sound();
  EXPECT_THAT(problem.reference, Optional(diet::Diet{Grams(20), Grams(7.5), Grams(0)}));
  EXPECT_EQ(problem.objective.kind, diet::Objective::Kind::LowestCost);
  EXPECT_THAT(problem.confidence, Optional(0.95));
  EXPECT_FALSE(problem.wholeSteps);
}

TEST(ProblemReader, IsContentWithFoodsAlone) {
  const auto problem = parseProblem(
      R"({ "format": "tarebowl-problem/1", "foods": [{ "id": "hay", "per_100_g": {} }] })", "hay.json");
  EXPECT_EQ(problem.foods.at(0).name, "hay");
  EXPECT_EQ(problem.eater, diet::Eater{});
  EXPECT_EQ(problem.objective, diet::Objective{});
  EXPECT_TRUE(problem.wholeSteps);
  EXPECT_EQ(problem.reference, std::nullopt);
}

TEST(ProblemReader, AcceptsAByteOrderMarkAndWindowsLineEnds) {
  std::string text = "\xEF\xBB\xBF";
  for (const char c : kSoundProblem) text += c == '\n' ? std::string("\r\n") : std::string(1, c);
  EXPECT_EQ(parseProblem(text, "bowl.json"), sound());
}

TEST(ProblemReader, LetsUnknownKeysPassSoThatFilesCanBeExtended) {
  const auto problem =
      parseProblem(soundProblemWith("\"count\": 3", "\"count\": 3, \"studbook\": \"A-12\""), "bowl.json");
  EXPECT_EQ(problem, sound());
}

TEST(ProblemReader, KeepsASlightlyNegativeNfe) {
  // NFE = 13.8 - 23.7 = -9.9: in insects that is chitin counted twice, not a slip.
  EXPECT_NO_THROW((void)parseProblem(soundProblemWith("\"CHOCDF\": 13.8", "\"CHOCDF\": 13.8, \"FIBC\": 23.7"),
                                     "bowl.json"));
}

TEST(ProblemReader, AcceptsProximatesUpTo105) {
  // 74.6 + 18.7 + 10.6 + 1.1 = 105
  EXPECT_NO_THROW((void)parseProblem(soundProblemWith("\"PROCNT\": 12.6", "\"PROCNT\": 18.7"), "bowl.json"));
}

TEST(ProblemReader, ReadsAStreamAsItReadsText) {
  std::istringstream stream{std::string(kSoundProblem)};
  EXPECT_EQ(readProblem(stream, "standard input"), sound());
}

}  // namespace
}  // namespace tarebowl::exchange
