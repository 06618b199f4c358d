// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/explore_command.h"

#include "app/command_line.h"
#include "app/problem_input.h"
#include "app/text_table.h"
#include "core/diet/diet_words.h"
#include "core/diet/explore.h"
#include "core/exchange/line_words.h"
#include "core/exchange/problem_words.h"
#include "core/exchange/trace_json.h"
#include "core/exchange/wording.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using diet::BalanceProblem;
using diet::BoundSide;
using diet::TracedBound;
using exchange::shortNumber;

struct ExploreWords {
  ProblemWords problem{};
  std::string bound{};         ///< id of a target, ratio or share that moves
  std::string food{};          ///< id of a food whose limit moves
  std::string against{};       ///< another objective, to trade for
  std::string side{};          ///< "min", "max"; empty: whichever there is
  std::optional<double> from;  ///< of the range that is traced; nothing: what is worth tracing
  std::optional<double> to;
  bool table = false;
};

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
BoundSide sideOf(const ExploreWords& words, const BalanceProblem& problem, TracedBound moved) {
  if (words.side == "min") return BoundSide::Min;
  if (words.side == "max") return BoundSide::Max;
  if (moved.of == TracedBound::Of::Food) return BoundSide::Max;
  moved.side = BoundSide::Min;
  return diet::boundNow(problem, moved) ? BoundSide::Min : BoundSide::Max;
}

TracedBound movedBy(const ExploreWords& words, const BalanceProblem& problem) {
  TracedBound moved;
  if (!words.food.empty()) {
    const auto food = std::ranges::find(problem.foods, words.food, &diet::DietFood::id);
    if (food == problem.foods.end()) throw UsageError("--food: the problem has no food " + words.food);
    moved.of = TracedBound::Of::Food;
    moved.index = static_cast<std::size_t>(food - problem.foods.begin());
  } else {
    const auto line = lineOf(problem, words.bound);
    if (!line) throw UsageError("--bound: the problem has no target, ratio or share " + words.bound);
    moved.index = *line;
  }
  moved.side = sideOf(words, problem, moved);
  if (moved.of == TracedBound::Of::Rule && !diet::boundNow(problem, moved))
    throw UsageError(fmt::format("--side: {} has no {}", words.bound,
                                 moved.side == BoundSide::Min ? "minimum" : "maximum"));
  return moved;
}

diet::TraceRange rangeOf(const ExploreWords& words, const BalanceProblem& problem, const TracedBound& moved,
                         const diet::Diet& now) {
  diet::TraceRange range = diet::rangeWorthTracing(problem, moved, now);
  range.from = words.from.value_or(range.from);
  range.to = words.to.value_or(range.to);
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

void requireSomethingToExplore(const ExploreWords& words) {
  if (words.bound.empty() && words.food.empty() && words.against.empty())
    throw UsageError("explore: expected --bound ID, --food ID or --against OBJECTIVE");
  for (const auto& end : {words.from, words.to})
    if (end && !(std::isfinite(*end) && *end >= 0.0))
      throw UsageError("--from, --to: expected numbers of 0 or more");
}

int explore(const ExploreWords& words, const Streams& streams) {
  requireSomethingToExplore(words);
  const BalanceProblem problem = problemOf(words.problem, streams);
  diet::TraceOptions options;
  const bool isTrade = !words.against.empty();
  // A bowl in which a choice is made already: the trace keeps to its foods.
  diet::SolveOptions asNow;
  asNow.findConflict = false;
  const diet::DietSolution now = diet::solve(problem, asNow);
  if (!now.grams.empty()) options.bowl = now.grams;
  diet::Trace trace;
  std::string heading;
  std::string json;
  if (isTrade) {
    const diet::Objective against = objectiveFrom(words.against);
    trace = diet::tradeOff(problem, against, options);
    heading = words.against;
    json = exchange::writeTradeOff(problem, against, trace);
  } else {
    const TracedBound moved = movedBy(words, problem);
    const diet::TraceRange range = rangeOf(words, problem, moved, now.grams);
    trace = diet::explore(problem, moved, range.from, range.to, options);
    heading = words.food.empty() ? words.bound : words.food;
    json = exchange::writeTrace(problem, moved, trace);
  }
  streams.out << (words.table ? tableOf(problem, trace, heading) : json);
  return statusOf(trace, streams);
}

}  // namespace

void defineExplore(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<ExploreWords>();
  CLI::App& command = *app.add_subcommand(
      "explore", "What gives while one bound moves, or one thing sought is traded for another");
  addProblemOrCollection(command, words->problem.file);
  auto* bound = command.add_option("--bound", words->bound, "The id of a target, ratio or share that moves");
  auto* food = command.add_option("--food", words->food, "The id of a food whose limit moves");
  auto* against = command.add_option(
      "--against", words->against,
      "Trade what is sought for this: closest, lowest-cost, lowest:TAGNAME, highest:TAGNAME");
  bound->excludes(food)->excludes(against);
  food->excludes(against);
  command.add_option("--side", words->side, "Which bound of it (default: the one there is)")
      ->check(CLI::IsMember({"min", "max"}));
  command.add_option("--from", words->from, "Where it begins, in the bound's own unit, of a food in grams");
  command.add_option("--to", words->to, "Where it ends");
  addDiet(command, words->problem.diet);
  addDay(command, words->problem.day);
  addCollection(command, words->problem.collection);
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return explore(*words, streams); });
}

}  // namespace tarebowl::app
