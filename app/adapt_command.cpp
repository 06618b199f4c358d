// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/adapt_command.h"

#include "app/command_line.h"
#include "app/kept_rotation.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/rotation_status.h"
#include "app/rotation_table.h"
#include "core/diet/rotation_locks.h"
#include "core/exchange/rotation_json.h"
#include "core/transfer/rotation_desk.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <memory>
#include <ostream>
#include <utility>

namespace tarebowl::app {

namespace {

using quantity::Date;
using quantity::isoDate;
using transfer::RotationOnDesk;

struct AdaptWords {
  std::string collection{};
  long long rotation = 0;
  std::string food{};             ///< its code
  std::optional<Date> day{};      ///< on which it stands
  std::optional<Date> to{};       ///< to which it goes
  std::optional<double> grams{};  ///< per animal
  std::optional<Date> today{};
  bool isLocked = false;  ///< as it is
  bool isFree = false;    ///< again
  double seconds = 10.0;
  bool table = false;
};

std::size_t placeOf(const RotationOnDesk& rotation, const std::string& code) {
  const auto& foods = rotation.desk.problem.base.foods;
  const auto food = std::ranges::find(foods, code, &diet::DietFood::id);
  if (food == foods.end())
    throw UsageError(
        fmt::format("--food: {} is not a food of the rotation of {}", code, rotation.kept.record.diet));
  const auto place = static_cast<std::size_t>(food - foods.begin());
  if (rotation.desk.places.at(place).allowance)
    throw UsageError(
        fmt::format("--food: {} is given unweighed, at each feeding: it is not planned by the day", code));
  return place;
}

/// A day of the rotation that can still be planned.
int dayIn(const RotationOnDesk& rotation, std::string_view option, Date date, Date today) {
  const diet::KeptRotation& kept = rotation.kept.record;
  if (date < kept.from || date > kept.until)
    throw UsageError(
        fmt::format("{}: the rotation is from {} to {}", option, isoDate(kept.from), isoDate(kept.until)));
  const auto day = static_cast<int>((std::chrono::sys_days(date) - std::chrono::sys_days(kept.from)).count());
  if (date < today || diet::isOver(rotation.desk.problem.rules, day))
    throw UsageError(fmt::format("{}: {} is over: what was fed stays", option, isoDate(date)));
  return day;
}

diet::LockedCells locksAfter(const AdaptWords& words, const RotationOnDesk& rotation) {
  const diet::RotationProblem& problem = rotation.desk.problem;
  const std::size_t food = placeOf(rotation, words.food);
  const int day = dayIn(rotation, "--day", words.day.value(), dayOf(words.today));
  if (words.grams) return diet::locksWithGrams(problem, food, day, quantity::Grams(*words.grams));
  if (words.to) {
    if (!(rotation.days.at(static_cast<std::size_t>(day)).at(food) > quantity::Grams(0)))
      throw UsageError(fmt::format("--day: {} is not fed on {}: there is nothing to move", words.food,
                                   isoDate(*words.day)));
    return diet::locksWithFoodMoved(problem, rotation.days, food, day,
                                    dayIn(rotation, "--to", *words.to, dayOf(words.today)));
  }
  const bool isTurned = words.isLocked != diet::isLocked(problem, day, food);
  return isTurned ? diet::locksWithCellTurned(problem, rotation.days, food, day) : problem.rules.locked;
}

/// Around what was laid down the rest follows; nothing has to where a cell stays as it is.
diet::RotationPlan planAround(const AdaptWords& words, const RotationOnDesk& rotation) {
  if (words.isLocked || words.isFree) return transfer::planOf(rotation);
  diet::RotationOptions options;
  options.deadline = deadlineOf(words.seconds);
  options.seed = static_cast<std::uint64_t>(rotation.kept.record.seed);
  options.start = rotation.days;
  return diet::rotate(rotation.desk.problem, options);
}

int adapt(const AdaptWords& words, const Streams& streams) {
  if (!words.day) throw UsageError("adapt: say with --day on which day the food stands");
  if (!words.to && !words.grams && !words.isLocked && !words.isFree)
    throw UsageError("adapt: say what is to become of it: --to, --grams, --lock or --free");
  store::Collection collection = openForWriting(words.collection);
  RotationOnDesk rotation = keptRotationOf(collection, words.rotation, dayOf(words.today));
  rotation.desk.problem.rules.locked = locksAfter(words, rotation);
  const diet::RotationPlan plan = planAround(words, rotation);
  streams.out << (words.table ? rotationTable(rotation.desk.problem, plan, rotation.desk.from)
                              : exchange::writeRotation(rotation.desk.problem, plan, rotation.desk.from));
  keepDays(collection, rotation, plan, rotation.kept.record.plannedFrom, streams);
  return exitStatusOf(plan.status);
}

}  // namespace

void defineAdapt(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<AdaptWords>();
  CLI::App& command = *app.add_subcommand(
      "adapt",
      "Move a food of a rotation to another day, or give it other grams there; only what must follows");
  addCollectionFile(command, words->collection);
  command.add_option("--rotation", words->rotation, "Its number (see tarebowl rotations)")->required();
  command.add_option("--food", words->food, "The food, by its code")->required();
  addDay(command, "--day", words->day, "The day on which it stands, YYYY-MM-DD");
  auto* to = addDay(command, "--to", words->to, "The day to which it goes, YYYY-MM-DD");
  auto* grams = command.add_option("--grams", words->grams, "Grams of it per animal on that day; 0: none")
                    ->check(CLI::NonNegativeNumber);
  auto* lock = command.add_flag("--lock", words->isLocked, "Lock it there as it is");
  auto* free = command.add_flag("--free", words->isFree, "Let it be planned again");
  grams->excludes(to);
  lock->excludes(to)->excludes(grams);
  free->excludes(to)->excludes(grams)->excludes(lock);
  addDay(command, "--today", words->today, "Days before it are over, YYYY-MM-DD (default: today)");
  addSeconds(command, words->seconds);
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return adapt(*words, streams); });
}

}  // namespace tarebowl::app
