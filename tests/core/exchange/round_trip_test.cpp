// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_json.h"
#include "tests/core/exchange/sound_problem.h"
#include "tests/source_dir.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>

namespace tarebowl::exchange {
namespace {

using diet::BalanceProblem;
using quantity::Grams;

constexpr std::array<std::string_view, 4> kGroups{"leafy vegetable", "insect", "fruit", "Rübe \"rot\"\n"};

/// Any double from 0 to most, the odd ones with seventeen digits included.
rc::Gen<double> upTo(double most) {
  return rc::gen::map(rc::gen::arbitrary<std::uint64_t>(), [most](std::uint64_t bits) {
    return most * (static_cast<double>(bits) / 18446744073709551616.0);
  });
}

template <class T>
rc::Gen<std::optional<T>> maybe(rc::Gen<T> gen) {
  return rc::gen::oneOf(rc::gen::just(std::optional<T>()), rc::gen::map(std::move(gen), [](T value) {
                          return std::optional<T>(std::move(value));
                        }));
}

rc::Gen<std::string> anyText() {
  return rc::gen::element<std::string>("", "raw", "Grünkohl, roh", "\"quoted\" \\ back\tslash", "日本",
                                       "a line\nand another");
}

food::NutrientValue anyValue() {
  food::NutrientValue value{.amount = quantity::AsFedContent(*upTo(20))};
  if (const auto sd = *maybe(upTo(5))) value.sd = quantity::AsFedContent(*sd);
  value.sampleCount = *maybe(rc::gen::inRange(1, 500));
  value.qualifier = static_cast<food::Qualifier>(*rc::gen::inRange(0, 8));
  value.source = *anyText();
  return value;
}

/// Water is always known, so that targets on dry matter can be judged.
food::Composition anyComposition() {
  food::Composition composition;
  composition.set(food::nutrients::water(), anyValue());
  for (const auto nutrient :
       {food::nutrients::protein(), food::nutrients::calcium(), food::nutrients::phosphorus()}) {
    composition.set(nutrient, anyValue());
  }
  for (const char* tagname : {"SE", "VITD", "ENERC", "FIBC"}) {
    if (*rc::gen::arbitrary<bool>()) composition.set(food::findByTagname(tagname).value(), anyValue());
  }
  return composition;
}

diet::DietFood anyFood(std::size_t index) {
  diet::DietFood food;
  food.id = "food " + std::to_string(index) + *anyText();
  food.name = "n" + *anyText();
  food.form = *anyText();
  food.preparation = *anyText();
  food.group = kGroups[index % kGroups.size()];
  food.composition = anyComposition();
  food.min = Grams(*upTo(10));
  if (const auto extra = *maybe(upTo(100))) food.max = food.min + Grams(*extra);
  food.scaleStep = Grams(0.001 + *upTo(20));
  food.costPerKg = *upTo(50);
  food.eatenFraction = *upTo(1);
  food.invented = *rc::gen::arbitrary<bool>();
  return food;
}

template <class Rule>
void anyBounds(Rule& rule, double most) {
  const double a = *upTo(most);
  const double b = *upTo(most);
  const int which = *rc::gen::inRange(0, 3);
  if (which != 1) rule.min = std::min(a, b);
  if (which != 0) rule.max = std::max(a, b);
  rule.hard = *rc::gen::arbitrary<bool>();
  rule.weight = *upTo(5);
}

animal::TargetOrigin anyOrigin() {
  return {*anyText(), static_cast<animal::Provenance>(*rc::gen::inRange(0, 5)), *anyText()};
}

BalanceProblem anyProblem() {
  BalanceProblem problem;
  problem.title = *anyText();
  problem.notes = *anyText();
  problem.invented = *rc::gen::arbitrary<bool>();
  problem.eater = {*anyText(), *rc::gen::inRange(1, 50), quantity::Kilograms(0.001 + *upTo(5000))};
  problem.energyMethod = food::EnergyMethod::Given;
  const auto foods = *rc::gen::inRange<std::size_t>(1, 6);
  for (std::size_t i = 0; i < foods; ++i) problem.foods.push_back(anyFood(i));
  animal::Target target{
      .id = "t" + *anyText(),
      .nutrient = food::nutrients::calcium(),
      .min = {},
      .max = {},
      .unit = static_cast<quantity::Unit>(*rc::gen::inRange(0, 3)),
      .basis = *rc::gen::element(quantity::Basis::AsFed, quantity::Basis::DryMatter, quantity::Basis::Day,
                                 quantity::Basis::BodyMass, quantity::Basis::MetabolicMass),
      .origin = anyOrigin()};
  anyBounds(target, 1e6);
  problem.targets.push_back(target);
  animal::RatioTarget ratio{.id = "r",
                            .of = food::nutrients::calcium(),
                            .to = food::nutrients::phosphorus(),
                            .min = {},
                            .max = {},
                            .origin = anyOrigin()};
  anyBounds(ratio, 10);
  problem.ratios.push_back(ratio);
  diet::ShareRule share{.id = "s",
                        .group = problem.foods[0].group,
                        .min = {},
                        .max = {},
                        .basis = quantity::Basis::DryMatter,
                        .origin = anyOrigin()};
  anyBounds(share, 1);
  problem.shares.push_back(share);
  problem.choices.push_back({problem.foods[0].group, 1, *maybe(rc::gen::inRange(1, 4)), Grams(*upTo(9))});
  if (*rc::gen::arbitrary<bool>()) {
    problem.reference.emplace();
    for (std::size_t i = 0; i < foods; ++i) problem.reference->push_back(Grams(*upTo(100)));
  }
  problem.objective.kind = static_cast<diet::Objective::Kind>(*rc::gen::inRange(0, 4));
  if (problem.objective.kind >= diet::Objective::Kind::Lowest)
    problem.objective.nutrient = food::nutrients::phosphorus();
  problem.confidence = *maybe(rc::gen::map(upTo(0.4), [](double p) { return 0.55 + p; }));
  problem.wholeSteps = *rc::gen::arbitrary<bool>();
  return problem;
}

RC_GTEST_PROP(RoundTrip, AProblemWrittenAndReadBackIsTheSameProblem, ()) {
  const BalanceProblem problem = anyProblem();
  RC_ASSERT(parseProblem(writeProblem(problem), "written") == problem);
}

TEST(RoundTrip, TheSoundProblemComesBackTheSame) {
  const BalanceProblem problem = parseProblem(kSoundProblem, "bowl.json");
  EXPECT_EQ(parseProblem(writeProblem(problem), "written"), problem);
}

TEST(RoundTrip, EverySampleIsReadAndComesBackTheSame) {
  int samples = 0;
  for (const auto& entry : std::filesystem::directory_iterator(TAREBOWL_SOURCE_DIR "/sample-data")) {
    if (entry.path().extension() != ".json") continue;
    const BalanceProblem problem = readProblem(entry.path());
    EXPECT_EQ(parseProblem(writeProblem(problem), "written"), problem) << entry.path();
    EXPECT_TRUE(problem.invented) << entry.path();
    ++samples;
  }
  EXPECT_GE(samples, 3);
}

TEST(RoundTrip, WritingIsStable) {
  const std::string once = writeProblem(parseProblem(kSoundProblem, "bowl.json"));
  EXPECT_EQ(writeProblem(parseProblem(once, "written")), once);
}

}  // namespace
}  // namespace tarebowl::exchange
