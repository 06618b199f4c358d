// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/trace_json.h"

#include "core/diet/diet_words.h"
#include "core/exchange/line_words.h"
#include "core/exchange/numbers.h"
#include "core/exchange/problem_words.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;
using diet::BalanceProblem;

struct Line {
  std::string id;
  Json unit = nullptr;
  Json basis = nullptr;
};

/// Targets, then ratios, then shares: the order of Balance::targets.
Line lineOf(const BalanceProblem& problem, std::size_t line) {
  if (line < problem.targets.size()) {
    const animal::Target& target = problem.targets[line];
    return {target.id, quantity::symbolOf(target.unit), quantity::symbolOf(target.basis)};
  }
  line -= problem.targets.size();
  if (line < problem.ratios.size()) return {problem.ratios[line].id};
  return {problem.shares.at(line - problem.ratios.size()).id};
}

Json pointToJson(const BalanceProblem& problem, const diet::TracePoint& point) {
  Json grams = Json::object();
  for (std::size_t j = 0; j < point.grams.size(); ++j)
    grams[problem.foods[j].id] = toJson(point.grams[j].value());
  Json missed = Json::object();
  for (std::size_t i = 0; i < point.shortfalls.size(); ++i)
    if (point.shortfalls[i] > 0.0) missed[lineOf(problem, i).id] = toJson(point.shortfalls[i]);
  return {{"at", toJson(point.at)},
          {"grams", std::move(grams)},
          {"shortfall", toJson(point.shortfall)},
          {"objective", toJson(point.objective)},
          {"missed", std::move(missed)},
          {"breakpoint", point.isBreakpoint}};
}

std::string written(const BalanceProblem& problem, Json of, const diet::Trace& trace) {
  Json json{{"format", "tarebowl-trace/1"}, {"of", std::move(of)}, {"status", symbolOf(trace.status)}};
  if (!trace.reason.empty()) json["reason"] = trace.reason;
  json["any_amounts"] = trace.ofAnyAmounts;
  json["ends_low"] = trace.endsLow;
  json["ends_high"] = trace.endsHigh;
  json["points"] = Json::array();
  for (const diet::TracePoint& point : trace.points) json["points"].push_back(pointToJson(problem, point));
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

Json objectiveToJson(const diet::Objective& objective) {
  Json json{{"kind", animal::symbolOf(objective.kind)}};
  if (objective.nutrient) json["nutrient"] = food::describe(*objective.nutrient).tagname;
  return json;
}

}  // namespace

std::string_view symbolOf(diet::Trace::Status status) {
  switch (status) {
    case diet::Trace::Status::Traced:
      return "traced";
    case diet::Trace::Status::Impossible:
      return "impossible";
    case diet::Trace::Status::Unbounded:
      return "unbounded";
    case diet::Trace::Status::Stopped:
      return "stopped";
    case diet::Trace::Status::Failed:
      break;
  }
  return "failed";
}

std::string writeTrace(const BalanceProblem& problem, const diet::TracedBound& moved,
                       const diet::Trace& trace) {
  const bool isFood = moved.of == diet::TracedBound::Of::Food;
  Json of;
  if (isFood) {
    of = {{"food", problem.foods.at(moved.index).id}};
  } else {
    const Line line = lineOf(problem, moved.index);
    of = {{"rule", line.id}, {"unit", line.unit}, {"basis", line.basis}};
  }
  of["bound"] = moved.side == diet::BoundSide::Min ? "min" : "max";
  const auto now = diet::boundNow(problem, moved);
  of["now"] = now ? toJson(*now) : Json(nullptr);
  return written(problem, std::move(of), trace);
}

std::string writeTradeOff(const BalanceProblem& problem, const diet::Objective& against,
                          const diet::Trace& trace) {
  return written(problem,
                 {{"objective", objectiveToJson(problem.objective)}, {"against", objectiveToJson(against)}},
                 trace);
}

}  // namespace tarebowl::exchange
