// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/animal_commands.h"

#include "app/energy_report.h"
#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/animal/animal_words.h"
#include "core/exchange/wording.h"
#include "core/store/animal_reading.h"
#include "core/store/profile_reading.h"
#include "core/store/reading.h"
#include "core/store/section_reading.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <map>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using Json = nlohmann::ordered_json;
using Align = TextTable::Align;

constexpr const char* kUnknown = "?";

struct AnimalsWords {
  std::string file{};
  GroupAndDay of{};
  bool table = false;
};

std::string inGrams(const std::optional<quantity::Kilograms>& mass) {
  return mass ? fmt::format("{:.0f}", quantity::toGrams(*mass).value()) : kUnknown;
}

std::string versionOf(const store::KnownGroup& known) {
  if (known.group.record.profile.empty()) return "none chosen";
  if (!known.version) return known.group.record.profile + ", none in force";
  return fmt::format("{} {}", known.version->record.profile.code, known.version->record.profile.version);
}

Json groupJson(const store::KnownGroup& known) {
  const animal::Group& group = known.group.record;
  Json json{{"code", group.code},
            {"name", group.name},
            {"species", group.species},
            {"scientific_name", known.species.scientificName},
            {"section", group.section}};
  json["animals"] = known.headcount ? Json(*known.headcount) : Json(nullptr);
  json["members"] = known.members;
  json["body_mass_kg"] = known.bodyMass ? Json(known.bodyMass->value()) : Json(nullptr);
  if (known.version) {
    json["profile"] = {{"code", known.version->record.profile.code},
                       {"version", known.version->record.profile.version}};
  } else {
    json["profile"] = nullptr;
  }
  if (group.invented) json["invented"] = true;
  return json;
}

Json memberJson(const store::Collection& collection, const std::string& code, quantity::Date day) {
  store::askAhead(
      collection, [&] { return store::massesOfIndividual(collection, code); },
      [&] { return store::conditionsOfIndividual(collection, code); });
  const animal::Individual individual = store::findIndividual(collection, code).value().record;
  Json json{{"code", code},
            {"sex", animal::symbolOf(individual.sex)},
            {"life_stage", animal::symbolOf(animal::stageOn(individual, day))}};
  if (individual.born) json["born"] = quantity::isoDate(*individual.born);
  json["body_mass_kg"] = nullptr;
  if (const auto mass = animal::massOn(store::readingsOf(store::massesOfIndividual(collection, code)), day)) {
    json["body_mass_kg"] = mass->mass.value();
    json["weighed_on"] = quantity::isoDate(mass->on);
  }
  const auto conditions = store::conditionsOfIndividual(collection, code);
  if (!conditions.empty()) {
    const animal::ConditionReading& last = conditions.back().record.reading;
    json["condition"] = {{"scale", last.scale}, {"score", last.score}, {"on", quantity::isoDate(last.on)}};
  }
  return json;
}

Json oneGroupJson(const store::Collection& collection, const store::KnownGroup& known, quantity::Date day) {
  Json json = groupJson(known);
  json["members"] = Json::array();
  for (const std::string& code : known.members) json["members"].push_back(memberJson(collection, code, day));
  json["energy"] = nullptr;
  if (known.energy) json["energy"] = energyJson(known.energyPlan->record.plan, *known.energy);
  return json;
}

std::string oneGroupText(const store::Collection& collection, const store::KnownGroup& known,
                         quantity::Date day) {
  const animal::Group& group = known.group.record;
  std::string text =
      fmt::format("{} ({}, {}), {}{}\n", group.name, known.species.name, known.species.scientificName,
                  group.section, group.invented ? ", invented" : "");
  text += fmt::format("fed by {}; {} animals; {} g each\n\n", versionOf(known),
                      known.headcount ? std::to_string(*known.headcount) : kUnknown, inGrams(known.bodyMass));
  if (!known.members.empty()) {
    TextTable table({{"animal"}, {"sex"}, {"stage"}, {"g", Align::Right}, {"weighed"}, {"condition"}});
    for (const std::string& code : known.members) {
      const Json member = memberJson(collection, code, day);
      const Json& mass = member.at("body_mass_kg");
      const bool isScored = member.contains("condition");
      table.addRow({code, member.at("sex"), member.at("life_stage"),
                    mass.is_null() ? kUnknown : inGrams(quantity::Kilograms(mass.get<double>())),
                    mass.is_null() ? kUnknown : member.at("weighed_on").get<std::string>(),
                    isScored ? fmt::format("{} ({})", member["condition"]["score"].get<double>(),
                                           member["condition"]["scale"].get<std::string>())
                             : kUnknown});
    }
    text += table.text() + '\n';
  }
  if (known.energy) return text + energyText(known.energyPlan->record.plan, *known.energy);
  return text + (known.energyPlan ? "Energy need ?: no body mass is known\n"
                                  : "Energy need ?: the group has no energy plan on this day\n");
}

/// What the list tells of every group; not its targets nor its energy need.
std::vector<store::KnownGroup> readGroups(const store::Collection& collection, quantity::Date day) {
  std::map<std::string, std::optional<store::StoredProfile>> profiles;
  store::askAhead(
      collection, [&] { return store::groupsHousedOn(collection, day); },
      [&] { return store::bodyMassesOn(collection, {}, day); });
  auto housed = store::groupsHousedOn(collection, day);
  const auto masses = store::bodyMassesOn(collection, housed, day);
  for (const store::HousedGroup& group : housed) profiles[group.group.record.profile];
  const auto inForce = [&](const std::string& code) { return store::profileInForce(collection, code, day); };
  for (const auto& entry : profiles) store::askAhead(collection, [&] { return inForce(entry.first); });
  for (auto& [code, profile] : profiles)
    if (!code.empty()) profile = inForce(code);
  std::vector<store::KnownGroup> groups;
  for (store::HousedGroup& group : housed) {
    const std::string& code = group.group.record.code;
    store::KnownGroup& known = groups.emplace_back(store::KnownGroup{.group = std::move(group.group)});
    known.species = std::move(group.species);
    known.members = std::move(group.members);
    known.headcount = group.headcount;
    if (const auto mass = masses.find(code); mass != masses.end()) known.bodyMass = mass->second;
    known.version = profiles.at(known.group.record.profile);
  }
  return groups;
}

int listGroups(const store::Collection& collection, quantity::Date day, bool asTable, std::ostream& out) {
  Json json{{"format", "tarebowl-animals/1"}, {"day", quantity::isoDate(day)}, {"groups", Json::array()}};
  TextTable table({{"group"},
                   {"name"},
                   {"species"},
                   {"section"},
                   {"n", Align::Right},
                   {"g each", Align::Right},
                   {"fed by"}});
  const auto groups = store::readTogether(
      collection, [day](const store::Collection& whole) { return readGroups(whole, day); });
  for (const store::KnownGroup& known : groups) {
    const animal::Group& group = known.group.record;
    json["groups"].push_back(groupJson(known));
    table.addRow({group.code, group.name, known.species.name, group.section,
                  known.headcount ? std::to_string(*known.headcount) : kUnknown, inGrams(known.bodyMass),
                  versionOf(known)});
  }
  out << (asTable ? table.text() + fmt::format("\n{} groups on {}\n", groups.size(), quantity::isoDate(day))
                  : toText(json));
  return kDone;
}

int listAnimals(const AnimalsWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.file);
  const quantity::Date day = dayOf(words.of.day);
  if (words.of.group.empty()) return listGroups(collection, day, words.table, streams.out);
  const store::KnownGroup known = groupOf(collection, words.of.group, day);
  if (words.table) {
    streams.out << store::readTogether(collection, [&](const store::Collection& whole) {
      return oneGroupText(whole, known, day);
    }) << '\n' << exchange::kCaution;
    return kDone;
  }
  Json json{{"format", "tarebowl-animals/1"}, {"day", quantity::isoDate(day)}};
  json["groups"] = Json::array({store::readTogether(
      collection, [&](const store::Collection& whole) { return oneGroupJson(whole, known, day); })});
  streams.out << toText(json);
  return kDone;
}

}  // namespace

void defineAnimals(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<AnimalsWords>();
  CLI::App& command = *app.add_subcommand(
      "animals", "List the groups of a collection, or one with its animals, masses and energy need");
  addCollectionFile(command, words->file);
  addGroupAndDay(command, words->of);
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return listAnimals(*words, streams); });
}

}  // namespace tarebowl::app
