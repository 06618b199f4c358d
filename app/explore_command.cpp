// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/explore_command.h"

#include "app/text_table.h"
#include "core/diet/diet_words.h"
#include "core/diet/explore.h"
#include "core/exchange/line_words.h"
#include "core/exchange/problem_words.h"
#include "core/exchange/trace_json.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace tarebowl::app {

namespace {

using diet::BalanceProblem;
using diet::BoundSide;
using diet::TracedBound;
using exchange::shortNumber;

std::optional<std::size_t> lineOf(const BalanceProblem& problem, const std::string& id) {
  std::size_t line = 0;
  const auto find = [&](const auto& rules) {
    const auto found = std::ranges::find_if(rules, [&](const auto& rule) { return rule.id == id; });
    line += static_cast<std::size_t>(found - rules.begin());
    return found != rules.end();
  };
  const bool known = find(problem.targets) || find(problem.ratios) || find(problem.shares);
  return known ? std::optional(line) : std::nullopt;
}

/// Where nothing says which: the only bound that there is, of a rule its minimum and of a food its maximum
/// first.
BoundSide sideOf(const Command& command, const BalanceProblem& problem, TracedBound moved) {
  if (command.side == "min") return BoundSide::Min;
  if (command.side == "max") return BoundSide::Max;
  if (moved.of == TracedBound::Of::Food) return BoundSide::Max;
  moved.side = BoundSide::Min;
  return diet::boundNow(problem, moved) ? BoundSide::Min : BoundSide::Max;
}

TracedBound movedBy(const Command& command, const BalanceProblem& problem) {
  TracedBound moved;
  if (!command.food.empty()) {
    const auto food = std::ranges::find(problem.foods, command.food, &diet::DietFood::id);
    if (food == problem.foods.end()) throw UsageError("--food: the problem has no food " + command.food);
    moved.of = TracedBound::Of::Food;
    moved.index = static_cast<std::size_t>(food - problem.foods.begin());
  } else {
    const auto line = lineOf(problem, command.bound);
    if (!line) throw UsageError("--bound: the problem has no target, ratio or share " + command.bound);
    moved.index = *line;
  }
  moved.side = sideOf(command, problem, moved);
  if (moved.of == TracedBound::Of::Rule && !diet::boundNow(problem, moved))
    throw UsageError(fmt::format("--side: {} has no {}", command.bound,
                                 moved.side == BoundSide::Min ? "minimum" : "maximum"));
  return moved;
}

diet::TraceRange rangeOf(const Command& command, const BalanceProblem& problem, const TracedBound& moved,
                         const diet::Diet& now) {
  diet::TraceRange range = diet::rangeWorthTracing(problem, moved, now);
  range.from = command.rangeFrom.value_or(range.from);
  range.to = command.rangeTo.value_or(range.to);
  if (!(range.from < range.to)) throw UsageError("--from: expected a number below --to");
  return range;
}

/// "closest", "lowest-cost", "lowest:FE", "highest:CA".
diet::Objective objectiveFrom(const std::string& text) {
  const std::size_t colon = text.find(':');
  const auto kind = animal::parseWord<diet::Objective::Kind>(text.substr(0, colon));
  diet::Objective objective;
  if (kind) objective.kind = *kind;
  if (colon != std::string::npos) objective.nutrient = food::findByTagname(text.substr(colon + 1));
  const bool wantsNutrient =
      objective.kind == diet::Objective::Kind::Lowest || objective.kind == diet::Objective::Kind::Highest;
  if (!kind || wantsNutrient != objective.nutrient.has_value() ||
      (colon != std::string::npos && !objective.nutrient))
    throw UsageError("--against: expected closest, lowest-cost, lowest:TAGNAME or highest:TAGNAME, found \"" +
                     text + "\"");
  return objective;
}

/// Breakpoints and ends; a table of every point of a bend would hide them.
std::string tableOf(const BalanceProblem& problem, const diet::Trace& trace, const std::string& heading) {
  std::vector<TextTable::Column> columns{{heading, TextTable::Align::Right}};
  for (const diet::DietFood& food : problem.foods) columns.push_back({food.id, TextTable::Align::Right});
  columns.push_back({"shortfall", TextTable::Align::Right});
  columns.push_back({"objective", TextTable::Align::Right});
  TextTable table(columns);
  for (const diet::TracePoint& point : trace.points) {
    const bool isEnd = &point == &trace.points.front() || &point == &trace.points.back();
    if (!isEnd && !point.isBreakpoint) continue;
    std::vector<std::string> cells{shortNumber(point.at)};
    for (const quantity::Grams grams : point.grams) cells.push_back(shortNumber(grams.value()));
    cells.push_back(shortNumber(point.shortfall));
    cells.push_back(shortNumber(point.objective));
    table.addRow(std::move(cells));
  }
  std::string text = table.text();
  if (trace.endsLow) text += "Below the first row the hard rules contradict each other.\n";
  if (trace.endsHigh) text += "Beyond the last row the hard rules contradict each other.\n";
  if (trace.ofAnyAmounts) text += "In amounts between the scale's steps.\n";
  return text;
}

int statusOf(const diet::Trace& trace, const Streams& streams) {
  switch (trace.status) {
    case diet::Trace::Status::Traced:
      return kDone;
    case diet::Trace::Status::Impossible:
      return kImpossible;
    case diet::Trace::Status::Unbounded:
    case diet::Trace::Status::Stopped:
    case diet::Trace::Status::Failed:
      break;
  }
  streams.err << fmt::format("not traced: {} {}\n", exchange::symbolOf(trace.status), trace.reason);
  return kInternalFailure;
}

}  // namespace

int explore(const Command& command, const BalanceProblem& problem, const Streams& streams) {
  diet::TraceOptions options;
  options.deadline = command.deadline;
  const bool isTrade = !command.against.empty();
  // A bowl in which a choice is made already: the trace keeps to its foods.
  diet::SolveOptions asNow;
  asNow.deadline = command.deadline;
  asNow.findConflict = false;
  const diet::DietSolution now = diet::solve(problem, asNow);
  if (!now.grams.empty()) options.bowl = now.grams;
  diet::Trace trace;
  std::string heading;
  std::string json;
  if (isTrade) {
    const diet::Objective against = objectiveFrom(command.against);
    trace = diet::tradeOff(problem, against, options);
    heading = command.against;
    json = exchange::writeTradeOff(problem, against, trace);
  } else {
    const TracedBound moved = movedBy(command, problem);
    const diet::TraceRange range = rangeOf(command, problem, moved, now.grams);
    trace = diet::explore(problem, moved, range.from, range.to, options);
    heading = command.food.empty() ? command.bound : command.food;
    json = exchange::writeTrace(problem, moved, trace);
  }
  streams.out << (command.table ? tableOf(problem, trace, heading) : json);
  return statusOf(trace, streams);
}

}  // namespace tarebowl::app
