// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/study_command.h"

#include "app/command_line.h"
#include "app/nutrient_list.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/written_file.h"
#include "core/exchange/wording.h"
#include "core/store/reading.h"
#include "core/transfer/study_planning.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <chrono>
#include <filesystem>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using transfer::NoStudyPlan;

struct PlanWords {
  std::string collection{};
  std::string group{};
  std::optional<quantity::Date> from{};  ///< nothing: tomorrow
  std::string nutrient{};                ///< tagname; empty: grams of all food
  double precision = 10.0;               ///< percent of the mean
  double confidence = 95.0;              ///< percent
  bool table = false;
  std::string file{};  ///< that is written; empty: none
};

std::string whyText(const NoStudyPlan& none, const std::string& group, double precision) {
  switch (none.why) {
    case NoStudyPlan::Why::NoGroup:
      return fmt::format("--group: there is no group {}", group);
    case NoStudyPlan::Why::NoBowl:
      return fmt::format(
          "{} had no bowl in the week before --from: nobody knows what it is fed. Name a day after "
          "days that were weighed",
          group);
    case NoStudyPlan::Why::TooFewDays:
      return fmt::format(
          "of the eight weeks before --from what {} ate is known on {}: weigh back at least two days "
          "in full first",
          group, exchange::counted(none.daysKnown, "day", "days"));
    case NoStudyPlan::Why::NothingEaten:
      return fmt::format(
          "{} ate none of it in the eight weeks before --from: no share of nothing is a precision", group);
    case NoStudyPlan::Why::OutOfReach:
      break;
  }
  return fmt::format("± {} % needs more than ten years: ask for less with --precision",
                     exchange::shortNumber(precision));
}

transfer::StudyAsked askedBy(const PlanWords& words, const store::Collection& collection) {
  transfer::StudyAsked asked{.precision = words.precision / 100.0, .confidence = words.confidence / 100.0};
  const quantity::Date tomorrow = std::chrono::sys_days(dayOf({})) + std::chrono::days(1);
  asked.first = words.from.value_or(tomorrow);
  asked.group = groupOf(collection, words.group, asked.first).group.record.code;
  if (words.nutrient.empty()) return asked;
  const auto nutrients = nutrientsNamed(words.nutrient);
  if (nutrients.size() != 1) throw UsageError("--nutrient: expected one tagname, found " + words.nutrient);
  asked.nutrient = nutrients.front();
  return asked;
}

int planStudy(const PlanWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.collection);
  const auto planned =
      store::readTogether(collection, [asked = askedBy(words, collection)](const store::Collection& whole) {
        return transfer::planIntakeStudy(whole, asked);
      });
  if (const auto* none = std::get_if<NoStudyPlan>(&planned)) {
    streams.err << whyText(*none, words.group, words.precision) << '\n';
    return kImpossible;
  }
  const auto& plan = std::get<exchange::StudyPlanToWrite>(planned);
  if (words.file.empty()) {
    streams.out << (words.table ? studyPlanAsText(plan) : studyPlanAsJson(plan));
    return kDone;
  }
  if (std::filesystem::path(words.file).extension() != ".html")
    throw UsageError(words.file + ": expected NAME.html (the window writes PDF)");
  writeWhole(words.file, exchange::studyPlanAsHtml(plan));
  streams.out << fmt::format("The plan of the study of {} is written to {}\n", plan.groupName, words.file);
  return kDone;
}

}  // namespace

void definePlanStudy(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<PlanWords>();
  CLI::App& command = *app.add_subcommand(
      "plan-study",
      "How many days an intake study needs, by how the group's own days differ; foods and pans");
  addCollectionFile(command, words->collection);
  addGroup(command, words->group)->required();
  addDay(command, "--from", words->from, "The first day of the study, YYYY-MM-DD (default: tomorrow)");
  command.add_option("--nutrient", words->nutrient,
                     "Tagname of what is to be known (default: grams of all food)");
  command.add_option("--precision", words->precision, "Half of the interval in percent of the mean")
      ->capture_default_str()
      ->check(CLI::Range(0.1, 100.0));
  command.add_option("--confidence", words->confidence, "In percent")
      ->capture_default_str()
      ->check(CLI::Range(50.0, 99.9));
  addTableOrJson(command, words->table);
  command.add_option("FILE", words->file, "Write it as a page to tick off: NAME.html")
      ->excludes("--table")
      ->excludes("--json");
  runWhenNamed(command, chosen, [words](const Streams& streams) { return planStudy(*words, streams); });
}

}  // namespace tarebowl::app
