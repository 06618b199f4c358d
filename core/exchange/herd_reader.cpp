// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/animal_words.h"
#include "core/exchange/field_reader.h"
#include "core/exchange/herd_file.h"
#include "core/exchange/json_document.h"
#include "core/exchange/json_reader.h"
#include "core/exchange/origin_json.h"
#include "core/exchange/text_file.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

namespace {

constexpr int kMostAnimals = 1'000'000;

double aboveZero(const JsonReader& reader) {
  return reader.number({.leastIncluded = false, .inWords = "a number above 0"});
}

animal::Species readSpecies(const JsonReader& reader) {
  return {.code = reader.member("code").nonEmptyText(),
          .name = reader.member("name").nonEmptyText(),
          .scientificName = textOf(reader, "scientific_name"),
          .feedingType = wordOf<animal::FeedingType>(reader.member("feeding_type")),
          .taxa = listOf(reader, "taxa", [](const JsonReader& taxon) { return taxon.nonEmptyText(); }),
          .note = textOf(reader, "note")};
}

animal::StageEntry readStage(const JsonReader& reader) {
  return {dateOf(reader.member("from")), wordOf<animal::LifeStage>(reader.member("stage"))};
}

animal::Individual readIndividual(const JsonReader& reader) {
  animal::Individual individual{.code = reader.member("code").nonEmptyText(),
                                .species = reader.member("species").nonEmptyText()};
  if (const auto sex = reader.find("sex")) individual.sex = wordOf<animal::Sex>(*sex);
  individual.born = dateOf(reader, "born");
  individual.birthEstimated = flagOf(reader, "birth_estimated");
  individual.arrived = dateOf(reader, "arrived");
  individual.left = dateOf(reader, "left");
  individual.died = flagOf(reader, "died");
  individual.stages = listOf(reader, "stages", readStage);
  individual.note = textOf(reader, "note");
  return individual;
}

animal::GroupCount readCount(const JsonReader& reader) {
  return {dateOf(reader.member("from")), reader.member("animals").wholeNumber(0, kMostAnimals)};
}

animal::Group readGroup(const JsonReader& reader) {
  return {.code = reader.member("code").nonEmptyText(),
          .name = reader.member("name").nonEmptyText(),
          .species = reader.member("species").nonEmptyText(),
          .section = textOf(reader, "section"),
          .counts = listOf(reader, "counts", readCount),
          .profile = textOf(reader, "profile"),
          .note = textOf(reader, "note")};
}

animal::Membership readMembership(const JsonReader& reader) {
  return {reader.member("group").nonEmptyText(), reader.member("individual").nonEmptyText(),
          dateOf(reader.member("from")), dateOf(reader, "until")};
}

animal::EnergyFactor readFactor(const JsonReader& reader) {
  animal::EnergyFactor factor{.kind = wordOf<animal::EnergyFactor::Kind>(reader.member("kind")),
                              .words = textOf(reader, "words"),
                              .low = aboveZero(reader.member("low")),
                              .high = aboveZero(reader.member("high"))};
  factor.origin = readOrigin(reader);
  return factor;
}

HerdPlan readPlan(const JsonReader& reader) {
  HerdPlan plan{.group = reader.member("group").nonEmptyText(), .from = dateOf(reader.member("from"))};
  plan.plan.group = textOf(reader, "animals");
  plan.plan.level = wordOf<animal::EnergyLevel>(reader.member("level"));
  plan.plan.coefficient = aboveZero(reader.member("kcal_at_1_kg"));
  plan.plan.exponent = aboveZero(reader.member("exponent"));
  plan.plan.validity = textOf(reader, "validity");
  plan.plan.followsTemperature = flagOf(reader, "follows_temperature");
  plan.plan.origin = readOrigin(reader);
  plan.plan.factors = listOf(reader, "factors", readFactor);
  return plan;
}

HerdProfile readHerdProfile(const JsonReader& reader) {
  return {reader.member("code").nonEmptyText(), dateOf(reader, "in_force_from")};
}

}  // namespace

HerdFile readHerd(const std::filesystem::path& file) {
  const std::string name = file.string();
  const nlohmann::json document = parseDocument(readText(file), name);
  const JsonReader root(document, name);
  const JsonReader format = root.member("format");
  if (format.text() != kHerdFormat) format.refuse(inQuotes(kHerdFormat));
  HerdFile herd{.invented = flagOf(root, "invented"),
                .species = listOf(root, "species", readSpecies),
                .individuals = listOf(root, "individuals", readIndividual),
                .groups = listOf(root, "groups", readGroup),
                .memberships = listOf(root, "memberships", readMembership),
                .plans = listOf(root, "energy_plans", readPlan),
                .profiles = listOf(root, "profiles", readHerdProfile)};
  for (auto& species : herd.species) species.invented = herd.invented;
  for (auto& individual : herd.individuals) individual.invented = herd.invented;
  for (auto& group : herd.groups) group.invented = herd.invented;
  return herd;
}

}  // namespace tarebowl::exchange
