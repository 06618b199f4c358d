// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/calcium_command.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/health_subject.h"
#include "app/health_table.h"
#include "app/open_collection.h"
#include "app/options.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>

namespace tarebowl::app {

namespace {

constexpr int kReviewDays = 28;

struct CalciumWords {
  std::string collection{};
  std::string page{};  ///< file; empty: none
  SubjectWords of{};
  PeriodWords period{};
  std::string supplement{};  ///< code of a food
  double retained = 1.0;     ///< share of it
  double eaten = 1.0;        ///< share of what is retained
  bool table = false;
};

int reviewCalcium(const CalciumWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.collection);
  const transfer::HealthPeriod period =
      readPeriod(collection, subjectOf(words.of), words.period, today(), kReviewDays);
  auto review = transfer::calciumOf(collection, period, {words.supplement, words.retained, words.eaten});
  if (!words.supplement.empty() && !review.advice && review.completeDays > 0)
    throw UsageError(fmt::format("{}: there is no food {}", collection.file().string(), words.supplement));
  const exchange::CalciumPage page = transfer::calciumPage(period, std::move(review));
  return give({exchange::writeCalcium(page), calciumTable(page), exchange::calciumPageAsHtml(page)},
              words.page, words.table, streams);
}

}  // namespace

void defineCalcium(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<CalciumWords>();
  CLI::App& command = *app.add_subcommand(
      "calcium", "Calcium, phosphorus, Ca:P and vitamin D of a group or an animal, as offered and as eaten");
  addCollectionFile(command, words->collection);
  addPage(command, words->page);
  addGroup(command, words->of.group);
  addAnimal(command, words->of);
  addPeriod(command, words->period,
            {"The first day, YYYY-MM-DD (default: four weeks)", "The last day (default: today)"});
  command.add_option("--supplement", words->supplement,
                     "The code of a food: how little of it brings calcium and Ca:P into zone");
  const auto share = CLI::Range(0.01, 1.0);
  command
      .add_option("--retained", words->retained, "The share of a dust that stays on and reaches the mouth")
      ->check(share)
      ->capture_default_str();
  command.add_option("--eaten", words->eaten, "The share of what is retained that is eaten")
      ->check(share)
      ->capture_default_str();
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return reviewCalcium(*words, streams); });
}

}  // namespace tarebowl::app
