// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/kept_rotation_commands.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/json_text.h"
#include "app/kept_rotation.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/rotation_status.h"
#include "app/rotation_table.h"
#include "app/text_table.h"
#include "core/exchange/kept_rotation_json.h"
#include "core/store/diet_reading.h"
#include "core/store/reading.h"
#include "core/transfer/rotation_desk.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <limits>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using Json = nlohmann::ordered_json;
using quantity::isoDate;
using store::Collection;
using transfer::RotationOnDesk;

struct RotationsWords {
  std::string collection{};
  std::string diet{};  ///< its code; empty: all
  std::optional<long long> rotation{};
  bool asKept = false;
  bool table = false;
};

std::vector<store::StoredRotation> rotationsOf(const Collection& collection, const std::string& diet) {
  std::vector<store::StoredRotation> rotations;
  bool isThere = diet.empty();
  const auto diets = store::listDiets(collection);
  if (diet.empty())
    for (const store::StoredDiet& each : diets)
      store::askAhead(collection, [&] { return store::rotationsOfDiet(collection, each.record.code); });
  for (const store::StoredDiet& each : diets) {
    if (!diet.empty() && each.record.code != diet) continue;
    isThere = true;
    std::ranges::move(store::rotationsOfDiet(collection, each.record.code), std::back_inserter(rotations));
  }
  if (!isThere)
    throw UsageError(fmt::format("--diet: there is no diet {} in {} (see tarebowl diets)", diet,
                                 collection.file().string()));
  return rotations;
}

int listRotations(const RotationsWords& words, const Collection& collection, const Streams& streams) {
  Json json{{"format", "tarebowl-rotations/1"}, {"rotations", Json::array()}};
  TextTable table({{"rotation"}, {"diet"}, {"version"}, {"from"}, {"until"}, {"made by"}, {"holds"}});
  const auto rotations = store::readTogether(
      collection, [&](const Collection& whole) { return rotationsOf(whole, words.diet); });
  for (const store::StoredRotation& stored : rotations) {
    const diet::KeptRotation& rotation = stored.record;
    const auto number = static_cast<long long>(stored.id);
    json["rotations"].push_back({{"rotation", number},
                                 {"diet", rotation.diet},
                                 {"version", rotation.version},
                                 {"from", isoDate(rotation.from)},
                                 {"until", isoDate(rotation.until)},
                                 {"planned_from", isoDate(rotation.plannedFrom)},
                                 {"made_by", rotation.who},
                                 {"made_at", rotation.at},
                                 {"balanced", rotation.isBalanced()}});
    table.addRow({std::to_string(number), rotation.diet, std::to_string(rotation.version),
                  isoDate(rotation.from), isoDate(rotation.until), rotation.who,
                  rotation.isBalanced() ? "every zone" : "not every zone"});
  }
  streams.out << (words.table ? table.text() : toText(json));
  return kDone;
}

int showRotations(const RotationsWords& words, const Streams& streams) {
  const Collection collection = openForReading(words.collection);
  if (!words.rotation) return listRotations(words, collection, streams);
  const RotationOnDesk rotation = keptRotationOf(collection, *words.rotation, dayOf(std::nullopt));
  const diet::RotationProblem& problem = rotation.desk.problem;
  if (words.asKept)
    streams.out << exchange::writeKeptRotation({rotation.kept.record, problem.base.invented});
  else if (words.table)
    streams.out << rotationTable(problem, transfer::planOf(rotation), rotation.desk.from);
  else
    streams.out << exchange::writeRotation(problem, transfer::planOf(rotation), rotation.desk.from);
  return kDone;
}

struct ReplanWords {
  std::string collection{};
  long long rotation = 0;
  std::optional<quantity::Date> day{};
  bool asEaten = false;
  double seconds = 10.0;
  bool table = false;
};

int replan(const ReplanWords& words, const Streams& streams) {
  Collection collection = openForWriting(words.collection);
  const quantity::Date from = dayOf(words.day);
  RotationOnDesk rotation = keptRotationOf(collection, words.rotation, from);
  const diet::KeptRotation& kept = rotation.kept.record;
  if (from > kept.until)
    throw UsageError(
        fmt::format("--day: the rotation ends on {}: no day of it is left to plan", isoDate(kept.until)));
  rotation.desk.asEaten = words.asEaten;
  transfer::takeFedDays(collection, kept, from, rotation.desk);
  diet::RotationOptions options;
  options.deadline = deadlineOf(words.seconds);
  options.seed = static_cast<std::uint64_t>(kept.seed);
  const diet::RotationPlan plan = diet::rotate(rotation.desk.problem, options);
  for (const std::string& food : rotation.desk.unknownFed)
    streams.err << fmt::format("not counted: {} was fed (there is no such food in the collection)\n", food);
  streams.out << (words.table ? rotationTable(rotation.desk.problem, plan, rotation.desk.from)
                              : exchange::writeRotation(rotation.desk.problem, plan, rotation.desk.from));
  keepDays(collection, rotation, plan, std::max(from, kept.from), streams);
  return exitStatusOf(plan.status);
}

void defineReplan(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<ReplanWords>();
  CLI::App& command =
      *app.add_subcommand("replan", "Plan the days of a rotation anew that are not over; what was fed stays");
  addCollectionFile(command, words->collection);
  command.add_option("--rotation", words->rotation, "Its number (see tarebowl rotations)")->required();
  addDay(command, "--day", words->day, "The first day that is planned anew, YYYY-MM-DD (default: today)");
  command.add_flag("--as-eaten", words->asEaten,
                   "Days that are over count as eaten, where somebody weighed back (default: as offered)");
  addSeconds(command, words->seconds);
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return replan(*words, streams); });
}

void defineRotations(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<RotationsWords>();
  CLI::App& command = *app.add_subcommand(
      "rotations", "List the rotations of a collection, or show one with what is bought for it");
  addCollectionFile(command, words->collection);
  command.add_option("--diet", words->diet, "Those of one diet, by its code");
  auto* rotation = command.add_option("--rotation", words->rotation, "One of them, by its number");
  command.add_flag("--as-kept", words->asKept, "Print it as it is kept (tarebowl-kept-rotation/1)")
      ->needs(rotation);
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return showRotations(*words, streams); });
}

}  // namespace

void defineKeptRotations(CLI::App& app, Run& chosen) {
  defineRotations(app, chosen);
  defineReplan(app, chosen);
}

}  // namespace tarebowl::app
