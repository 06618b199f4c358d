// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/rotation_command.h"

#include "app/command_line.h"
#include "app/open_collection.h"
#include "app/problem_input.h"
#include "app/rotation_table.h"
#include "core/diet/rotation.h"
#include "core/exchange/rotation_json.h"
#include "core/store/food_reading.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <filesystem>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using diet::RotationStatus;

struct RotateWords {
  ProblemWords problem{};
  std::string rules{};                    ///< file
  std::optional<int> days{};              ///< nothing: as the rules say
  std::optional<quantity::Date> from{};   ///< the first day; nothing: as the rules say
  std::string replan{};                   ///< file of a plan, or of what was fed
  std::optional<quantity::Date> today{};  ///< the first day that is planned anew; nothing: after what was fed
  std::uint64_t seed = 1;
  double gapPercent = 0.0;  ///< a search ends at it
  double seconds = 10.0;
  bool table = false;
};

int exitStatusOf(RotationStatus status) {
  switch (status) {
    case RotationStatus::Balanced:
    case RotationStatus::Compromise:
      return kDone;
    case RotationStatus::Impossible:
      return kImpossible;
    case RotationStatus::Stopped:
    case RotationStatus::Failed:
      break;
  }
  return kInternalFailure;
}

/// What a collection knows of its foods' edible part; what the rules state goes before.
void addEdibleParts(const std::string& file, diet::RotationProblem& problem) {
  const store::Collection collection = openForReading(file);
  std::vector<diet::PurchaseLoss> known;
  for (const diet::DietFood& food : problem.base.foods) {
    const auto stored = store::findFood(collection, food.id);
    if (!stored) continue;
    diet::PurchaseLoss loss;
    loss.of.foods.push_back(food.id);
    loss.edible = stored->record.food.edibleFraction;
    known.push_back(std::move(loss));
  }
  auto& losses = problem.rules.purchase;
  losses.insert(losses.begin(), known.begin(), known.end());
}

/// Days before the one that is planned from.
std::optional<int> daysBefore(const RotateWords& words, std::optional<quantity::Date> from) {
  if (!words.today) return std::nullopt;
  if (!from) throw UsageError("--today: the date of the first day is not known; give it with --from");
  return static_cast<int>((std::chrono::sys_days(*words.today) - std::chrono::sys_days(*from)).count());
}

int rotateDays(const RotateWords& words, const Streams& streams) {
  diet::BalanceProblem base = problemOf(words.problem, streams);
  const exchange::RotationRulesFile file =
      exchange::readRotationRules(words.rules, base, {words.days, words.from});
  diet::RotationProblem problem{std::move(base), file.rules};
  if (!words.replan.empty())
    problem.rules.fed = exchange::readFedDays(words.replan, problem.base, {problem.rules.days, file.from},
                                              daysBefore(words, file.from));
  const std::string& collection =
      words.problem.diet.diet.empty() ? words.problem.collection : words.problem.file;
  if (!collection.empty()) addEdibleParts(collection, problem);
  if (problem.base.confidence)
    streams.err << "the confidence is not used: a period's zones are judged at the mean of its days\n";
  diet::RotationOptions options;
  options.deadline = deadlineOf(words.seconds);
  options.seed = words.seed;
  options.enoughGap = words.gapPercent / 100.0;
  const diet::RotationPlan plan = diet::rotate(problem, options);
  streams.out << (words.table ? rotationTable(problem, plan, file.from)
                              : exchange::writeRotation(problem, plan, file.from));
  return exitStatusOf(plan.status);
}

}  // namespace

void defineRotate(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<RotateWords>();
  CLI::App& command = *app.add_subcommand(
      "rotate", "Plan days that vary and balance over the period; prints tarebowl-rotation/1");
  addProblemOrCollection(command, words->problem.file);
  command.add_option("--rules", words->rules, "What holds from day to day (tarebowl-rotation-rules/1)")
      ->required();
  addDiet(command, words->problem.diet);
  addDay(command, "--day", words->problem.day, "The day the diet is read on, YYYY-MM-DD (default: today)")
      ->needs("--diet");
  addCollection(command, words->problem.collection);
  constexpr int kMostDays = 28;
  command.add_option("--days", words->days, "How many days (default: as the rules say, or 7)")
      ->check(CLI::Range(1, kMostDays));
  addDay(command, "--from", words->from, "The first day, YYYY-MM-DD (default: as the rules say)");
  command.add_option("--replan", words->replan,
                     "Days that are over stay as they were fed: an earlier plan, or a file with \"days\"");
  addDay(command, "--today", words->today, "With --replan: plan anew from this day on, YYYY-MM-DD")
      ->needs("--replan");
  command.add_option("--seed", words->seed, "Where the search starts: the same seed, the same plan")
      ->capture_default_str();
  command
      .add_option("--gap", words->gapPercent,
                  "End the search when a plan is proven to be within so many percent")
      ->check(CLI::Range(0.0, 100.0))
      ->capture_default_str();
  addSeconds(command, words->seconds);
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return rotateDays(*words, streams); });
}

}  // namespace tarebowl::app
