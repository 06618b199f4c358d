// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/zoo_herd.h"

#include "core/food/nutrient.h"
#include "core/store/animal_verbs.h"
#include "core/store/health_verbs.h"
#include "core/store/mass_verbs.h"
#include "core/store/profile_verbs.h"
#include "core/store/together.h"
#include "tests/bench/bench_files.h"
#include "tests/bench/fed_zoo.h"

#include <fmt/format.h>

#include <random>
#include <vector>

namespace tarebowl::bench {

namespace {

constexpr int kSpecies = 60;
constexpr int kDaysBetweenMasses = 30;
constexpr int kDaysBetweenScores = 365;
constexpr int kDaysBetweenSigns = 20;

std::string speciesCode(int number) {
  return fmt::format("species-{:02}", number % kSpecies);
}

std::string animalCode(int group, int animal) {
  return fmt::format("{}-{}", groupCode(group), animal);
}

animal::ProfileTarget perDryMatter(const char* id, food::NutrientId nutrient, double min, double max) {
  return {.target = {.id = id,
                     .nutrient = nutrient,
                     .min = min,
                     .max = max,
                     .unit = quantity::Unit::Gram,
                     .basis = quantity::Basis::DryMatter,
                     .origin = {"made up", animal::Provenance::Invented, ""}}};
}

animal::TargetProfile targetsOf(int species) {
  namespace n = food::nutrients;
  animal::TargetProfile profile{.code = "targets-" + speciesCode(species),
                                .name = "Targets of " + speciesCode(species),
                                .invented = true};
  profile.targets = {perDryMatter("protein", n::protein(), 80.0, 400.0),
                     perDryMatter("ca", n::calcium(), 3.0, 12.0),
                     perDryMatter("p", n::phosphorus(), 2.0, 9.0)};
  profile.ratios = {{.target = {.id = "ca-p",
                                .of = n::calcium(),
                                .to = n::phosphorus(),
                                .min = 1.0,
                                .max = 2.0,
                                .origin = {"made up", animal::Provenance::Invented, ""}}}};
  return profile;
}

void addKind(store::Collection& collection, int number) {
  store::addSpecies(collection,
                    {.code = speciesCode(number),
                     .name = "Made up " + speciesCode(number),
                     .taxa = {"mammal"},
                     .invented = true},
                    kBench);
  const store::Written added = store::addProfile(collection, targetsOf(number), kBench);
  store::putInForce(collection, store::ProfileId{added.id}, 1, dayAt(0), "made up", kBench);
}

void addAnimal(store::Collection& collection, int group, int number) {
  const std::string code = animalCode(group, number);
  store::addIndividual(collection,
                       {.code = code,
                        .species = speciesOfGroup(group),
                        .sex = number % 2 == 0 ? animal::Sex::Female : animal::Sex::Male,
                        .born = dayAt(-700 - number),
                        .arrived = dayAt(-30),
                        .invented = true},
                       kBench);
  store::addMembership(collection, {.group = groupCode(group), .individual = code, .from = dayAt(0)}, kBench);
}

/// About what it was, and a little more each year.
std::vector<store::MassRecord> massesOf(const std::string& code, std::mt19937& random) {
  std::vector<store::MassRecord> masses;
  const double first = std::uniform_real_distribution<double>(0.2, 40.0)(random);
  std::normal_distribution<double> scatter(1.0, 0.02);
  for (int day = 0; day < days(); day += kDaysBetweenMasses) {
    store::MassRecord record{.individual = code};
    record.reading = {.on = dayAt(day),
                      .mass = quantity::Kilograms(first * (1.0 + 2e-5 * day) * scatter(random))};
    masses.push_back(std::move(record));
  }
  return masses;
}

void addScores(store::Collection& collection, const std::string& code, std::mt19937& random) {
  const animal::ScoreScale& scale = animal::conditionScales().front();
  for (int day = 0; day < days(); day += kDaysBetweenScores)
    store::addCondition(collection,
                        {.individual = code,
                         .reading = {.on = dayAt(day),
                                     .scale = std::string(scale.id),
                                     .score = scale.ideal + (random() % 2 == 0 ? 0.0 : scale.step)}},
                        kBench);
}

/// A score of faeces, and now and then a sign.
std::vector<health::Observation> signsOf(int group, std::mt19937& random) {
  const health::FaecalScale& scale = health::faecalScales().front();
  std::vector<health::Observation> seen;
  for (int day = group % kDaysBetweenSigns; day < days(); day += kDaysBetweenSigns) {
    health::Observation one{.group = groupCode(group), .on = dayAt(day), .time = "08:30", .who = "Keeper"};
    one.kind = random() % 8 == 0 ? health::SignKind::Limping : health::SignKind::Faeces;
    const bool isSoft = random() % 6 == 0;
    if (one.kind == health::SignKind::Faeces)
      one.faeces = health::scoreOn(scale, isSoft ? scale.highest - 1.0 : scale.ideal);
    seen.push_back(std::move(one));
  }
  return seen;
}

}  // namespace

std::string speciesOfGroup(int group) {
  return speciesCode(group);
}

std::string profileOfGroup(int group) {
  return "targets-" + speciesCode(group);
}

int animalsOfGroup(int group) {
  return 1 + group % 9;
}

void addKinds(store::Collection& collection) {
  for (int number = 0; number < kSpecies; ++number) addKind(collection, number);
}

void addHerd(store::Collection& collection) {
  std::mt19937 random(20260103);
  for (int group = 0; group < groups(); ++group)
    store::together(collection, [&] {
      for (int number = 1; number <= animalsOfGroup(group); ++number) {
        addAnimal(collection, group, number);
        store::addMasses(collection, massesOf(animalCode(group, number), random), kBench);
        addScores(collection, animalCode(group, number), random);
      }
      store::addObservations(collection, signsOf(group, random), kBench);
    });
}

}  // namespace tarebowl::bench
