// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands.h"

#include "app/animal_commands.h"
#include "app/collection_commands.h"
#include "app/diet_commands.h"
#include "app/explore_command.h"
#include "app/health_commands.h"
#include "app/intake_commands.h"
#include "app/kitchen_commands.h"
#include "app/not_counted.h"
#include "app/problem_input.h"
#include "app/result_table.h"
#include "app/rotation_command.h"
#include "app/swap_command.h"
#include "app/table_commands.h"
#include "core/diet/food_safety.h"
#include "core/diet/judged.h"
#include "core/diet/solve.h"
#include "core/diet/verification.h"
#include "core/exchange/larder_json.h"
#include "core/exchange/nutrients_json.h"
#include "core/exchange/problem_json.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <istream>
#include <optional>
#include <ostream>
#include <vector>

namespace tarebowl::app {

namespace {

/// Whether an empty bowl falls short of anything.
bool asksForFood(const diet::BalanceProblem& problem) {
  using quantity::Basis;
  return !problem.choices.empty() ||
         std::any_of(problem.targets.begin(), problem.targets.end(), [](const animal::Target& target) {
           return target.min.value_or(0.0) > 0.0 &&
                  (target.basis == Basis::Day || target.basis == Basis::BodyMass ||
                   target.basis == Basis::MetabolicMass);
         });
}

/// With a group, its problem; what could not be counted, and what may not be given, is said beside the
/// result.
diet::BalanceProblem problemOf(const Command& command, const Streams& streams) {
  if (!command.diet.empty()) return dietProblemOf(command, streams);
  if (command.group.empty()) return readProblemFile(command, streams);
  diet::ProblemOfProfile made = groupProblemOf(command);
  tellNotCounted(made.notCounted, streams.err);
  if (!asksForFood(made.problem))
    streams.err
        << "no target says how much to give: an empty bowl would do (give the group an energy plan and a "
           "mass, or its profile a target per day or per body mass)\n";
  for (const diet::FoodFinding& finding : diet::findingsOn(made.problem))
    if (finding.forbids())
      streams.err << fmt::format("not given: {} ({}: {})\n", made.problem.foods[finding.food].id, finding.ban,
                                 finding.reason);
  return std::move(made.problem);
}

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

/// Why the answer is as it is, as far as it was asked for; a table for people names the least changes of a
/// conflict unasked.
std::optional<diet::Explanation> explanationOf(const Command& command, const diet::BalanceProblem& problem,
                                               const diet::DietSolution& solution) {
  if (!command.explain && !(command.table && !solution.conflict.empty())) return std::nullopt;
  diet::ExplainOptions options;
  options.ranges = command.explain;
  diet::Explanation explanation = diet::explain(problem, solution, options);
  if (!command.explain) {  // prices were not asked for
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

int solveFile(const Command& command, const Streams& streams) {
  const diet::BalanceProblem problem = problemOf(command, streams);
  const exchange::Larder larder =
      command.larder ? exchange::readLarder(std::filesystem::path(*command.larder)) : exchange::Larder{};
  diet::SolveOptions options;
  options.deadline = command.deadline;
  const diet::DietSolution solution = diet::solve(problem, options);
  tellMissingPrices(problem, streams);
  const std::optional<diet::Explanation> explanation = explanationOf(command, problem, solution);
  const std::vector<diet::Remedy> remedies = diet::findRemedies(problem, solution, larder.foods);
  const exchange::Reasons reasons{explanation ? &*explanation : nullptr, remedies, larder.foods};
  streams.out << (command.table ? solutionTable(problem, solution, reasons)
                                : exchange::writeResult(problem, solution, reasons));
  return exitStatusOf(solution.status);
}

int balanceFile(const Command& command, const Streams& streams) {
  const diet::BalanceProblem problem = readProblemFile(command, streams);
  const diet::DietSolution judged = diet::judged(problem, diet::referenceDiet(problem));
  streams.out << (command.table ? judgementTable(problem, judged) : exchange::writeResult(problem, judged));
  return kDone;
}

int importFile(const Command& command, const Streams& streams) {
  if (std::filesystem::path(command.tableFile).extension() != ".json")
    return importTableFile(command, streams);
  return isDietFile(command.tableFile) ? importDiet(command, streams) : importProfile(command, streams);
}

}  // namespace

int runInTerminal(const Command& command, const Streams& streams) {
  switch (command.kind) {
    case Command::Kind::Solve:
      return solveFile(command, streams);
    case Command::Kind::Balance:
      return balanceFile(command, streams);
    case Command::Kind::Nutrients:
      streams.out << (command.table ? nutrientTable() : exchange::writeNutrients());
      return kDone;
    case Command::Kind::NewCollection:
      return makeCollection(command, streams);
    case Command::Kind::Foods:
      return listFoods(command, streams);
    case Command::Kind::Import:
      return importFile(command, streams);
    case Command::Kind::Export:
      if (!command.diet.empty()) return exportDiet(command, streams);
      return command.profile ? exportProfile(command, streams) : exportFoods(command, streams);
    case Command::Kind::Check:
      return checkCollection(command, streams);
    case Command::Kind::Animals:
      return listAnimals(command, streams);
    case Command::Kind::Targets:
      return listTargets(command, streams);
    case Command::Kind::Diets:
      return showDiets(command, streams);
    case Command::Kind::Compare:
      return compareVersions(command, streams);
    case Command::Kind::Explore:
      return explore(command, problemOf(command, streams), streams);
    case Command::Kind::Sheet:
      return writeSheet(command, streams);
    case Command::Kind::Prep:
      return prepare(command, streams);
    case Command::Kind::WeighIn:
      return weighInTable(command, streams);
    case Command::Kind::Leftovers:
      return takeLeftovers(command, streams);
    case Command::Kind::Stock:
      return showStock(command, streams);
    case Command::Kind::Swap:
      return rankSwaps(command, streams);
    case Command::Kind::Intake:
      return showIntake(command, streams);
    case Command::Kind::Rotate:
      return rotateDays(command, problemOf(command, streams), streams);
    case Command::Kind::Calcium:
      return reviewCalcium(command, streams);
    case Command::Kind::LookBack:
      return lookBack(command, streams);
    case Command::Kind::Observe:
      return observe(command, streams);
    case Command::Kind::Tolerance:
      return showTolerance(command, streams);
    case Command::Kind::ShowText:
      streams.out << command.text;
      return kDone;
    case Command::Kind::OpenWindow:
      break;
  }
  return kInternalFailure;
}

}  // namespace tarebowl::app
