// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/solve_command.h"

#include "app/group_problem.h"
#include "app/result_table.h"
#include "core/diet/solve.h"
#include "core/diet/verification.h"
#include "core/exchange/larder_json.h"
#include "core/exchange/problem_json.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <filesystem>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

int exitStatusOf(diet::DietStatus status) {
  switch (status) {
    case diet::DietStatus::Balanced:
    case diet::DietStatus::Compromise:
      return kDone;
    case diet::DietStatus::Impossible:
      return kImpossible;
    case diet::DietStatus::Unbounded:
    case diet::DietStatus::Stopped:
    case diet::DietStatus::Failed:
      break;
  }
  return kInternalFailure;
}

diet::BalanceProblem problemOf(const SolveWords& words, const Streams& streams) {
  if (words.group.empty()) return problemOf(words.problem, streams);
  return groupProblemOf({words.problem.file, words.group, words.foods}, dayOf(words.problem.day), streams);
}

/// Why the answer is as it is, as far as it was asked for; a table for people names the least changes of a
/// conflict unasked.
std::optional<diet::Explanation> explanationOf(const SolveWords& words, const diet::BalanceProblem& problem,
                                               const diet::DietSolution& solution) {
  if (!words.explain && !(words.table && !solution.conflict.empty())) return std::nullopt;
  diet::ExplainOptions options;
  options.ranges = words.explain;
  diet::Explanation explanation = diet::explain(problem, solution, options);
  if (!words.explain) {  // prices were not asked for
    explanation.bounds.clear();
    explanation.foods.clear();
  }
  return explanation;
}

/// A file without them is refused when it is read; a diet of a collection is told where it stands.
void tellMissingPrices(const diet::BalanceProblem& problem, const Streams& streams) {
  for (const std::size_t food : diet::foodsWithoutPrice(problem))
    streams.err << fmt::format(
        "no price: {} (the lowest cost is sought, and unknown is not free of charge)\n",
        problem.foods[food].id);
}

}  // namespace

int solve(const SolveWords& words, const Streams& streams) {
  const diet::BalanceProblem problem = problemOf(words, streams);
  const exchange::Larder larder =
      words.larder.empty() ? exchange::Larder{} : exchange::readLarder(std::filesystem::path(words.larder));
  diet::SolveOptions options;
  options.deadline = deadlineOf(words.seconds);
  const diet::DietSolution solution = diet::solve(problem, options);
  tellMissingPrices(problem, streams);
  const std::optional<diet::Explanation> explanation = explanationOf(words, problem, solution);
  const std::vector<diet::Remedy> remedies = diet::findRemedies(problem, solution, larder.foods);
  const exchange::Reasons reasons{explanation ? &*explanation : nullptr, remedies, larder.foods};
  streams.out << (words.table ? solutionTable(problem, solution, reasons)
                              : exchange::writeResult(problem, solution, reasons));
  return exitStatusOf(solution.status);
}

void defineSolve(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<SolveWords>();
  CLI::App& command =
      *app.add_subcommand("solve", "Find the grams that meet the targets; prints tarebowl-result/1");
  command
      .add_option("FILE", words->problem.file,
                  "A problem file (tarebowl-problem/1), - for standard input, or with --group or --diet a "
                  "collection")
      ->required();
  CLI::Option* group = addGroup(command, words->group);
  addDay(command, words->problem.day);
  command
      .add_option(
          "--foods", words->foods,
          "With --group: codes of foods of the collection, parted by commas, or a file with one a line")
      ->needs(group);
  group->needs("--foods");
  addDiet(command, words->problem.diet);
  command.get_option("--diet")->excludes(group);
  addCollection(command, words->problem.collection);
  addTable(command, words->table);
  addSeconds(command, words->seconds);
  command.add_option("--larder", words->larder,
                     "Foods on hand (tarebowl-larder/1): name those that would close the gap");
  command.add_flag("--explain", words->explain,
                   "Say what binds, what a unit of it costs, over what range, and the least changes");
  runWhenNamed(command, chosen, [words](const Streams& streams) { return solve(*words, streams); });
}

}  // namespace tarebowl::app
