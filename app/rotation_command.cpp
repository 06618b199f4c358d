// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/rotation_command.h"

#include "app/open_collection.h"
#include "app/rotation_table.h"
#include "core/diet/rotation.h"
#include "core/exchange/rotation_json.h"
#include "core/transfer/rotation_desk.h"

#include <fmt/format.h>

#include <filesystem>
#include <ostream>

namespace tarebowl::app {

namespace {

using diet::RotationStatus;

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

/// What the rules state goes before.
void addEdibleParts(const std::string& file, diet::RotationProblem& problem) {
  std::vector<std::string> codes;
  for (const diet::DietFood& food : problem.base.foods) codes.push_back(food.id);
  transfer::addEdibleParts(openForReading(file), codes, problem);
}

/// Days before the one that is planned from.
std::optional<int> daysBefore(const Command& command, std::optional<quantity::Date> from) {
  if (!command.today) return std::nullopt;
  if (!from) throw UsageError("--today: the date of the first day is not known; give it with --from");
  return static_cast<int>((std::chrono::sys_days(*command.today) - std::chrono::sys_days(*from)).count());
}

}  // namespace

int rotateDays(const Command& command, diet::BalanceProblem base, const Streams& streams) {
  const exchange::RotationRulesFile file =
      exchange::readRotationRules(command.rules, base, {command.days, command.from});
  diet::RotationProblem problem{std::move(base), file.rules};
  if (command.replan)
    problem.rules.fed = exchange::readFedDays(*command.replan, problem.base, {problem.rules.days, file.from},
                                              daysBefore(command, file.from));
  const std::optional<std::string> collection = command.diet.empty() ? command.collection : command.file;
  if (collection) addEdibleParts(*collection, problem);
  if (problem.base.confidence)
    streams.err << "the confidence is not used: a period's zones are judged at the mean of its days\n";
  diet::RotationOptions options;
  options.deadline = command.deadline;
  options.seed = command.seed;
  options.enoughGap = command.enoughGap;
  const diet::RotationPlan plan = diet::rotate(problem, options);
  streams.out << (command.table ? rotationTable(problem, plan, file.from)
                                : exchange::writeRotation(problem, plan, file.from));
  return exitStatusOf(plan.status);
}

}  // namespace tarebowl::app
