// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the window's ladder shows is what `tarebowl balance` says of the problem that the window exports.
#include "core/diet/judged.h"
#include "core/exchange/problem_json.h"
#include "tests/core/diet/random_problem.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/ladder_model.h"
#include "ui/diets/target_names.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace tarebowl::ui {
namespace {

using nlohmann::json;

/// As the command does: read, judged as it is, written.
json balanceOf(const diet::BalanceProblem& problem) {
  return json::parse(exchange::writeResult(problem, diet::judged(problem, diet::referenceDiet(problem))));
}

Mark markOf(const std::string& state) {
  if (state == "met") return Mark::Met;
  if (state == "at-min" || state == "at-max") return Mark::AtLimit;
  if (state == "short") return Mark::Lacking;
  return state == "over" ? Mark::Over : Mark::Unknown;
}

bool same(std::optional<double> shown, const json& said, double scale) {
  if (said.is_null()) return !shown;
  const double value = said.get<double>() * scale;
  return shown && std::abs(*shown - value) <= 1e-9 * std::max(1.0, std::abs(value));
}

/// The command says energy in the target's own unit, the window in the person's: kcal where nobody chose.
double inKilocalories(const diet::BalanceProblem& problem, RungRef rung) {
  const bool isInKilojoules = rung.kind == diet::TargetKind::Nutrient &&
                              problem.targets.at(rung.index).unit == quantity::Unit::Kilojoule;
  return isInKilojoules ? 1.0 / 4.184 : 1.0;
}

RC_GTEST_PROP(LadderProperty, ShowsWhatTheCommandSaysOfTheExportedProblem, ()) {
  diet::BalanceProblem problem = diet::testing::drawSensibleProblem();
  problem.reference = diet::testing::drawDiet(problem);
  double all = 0.0;
  for (const quantity::Grams grams : *problem.reference) all += grams.value();
  RC_PRE(all > 0.0);  // a bowl of nothing counts as none given
  DietDesk desk(&diet::solve);
  desk.setHolding(true);
  desk.open(problem);
  const LadderModel ladder(desk);
  const std::string exported = exchange::writeProblem(problemToSave(desk.draft()));
  RC_LOG() << exported;
  diet::BalanceProblem read;
  try {
    read = exchange::parseProblem(exported, "exported.json");
  } catch (const exchange::FormatError&) {
    RC_DISCARD("no such file is ever read");  // a share of a group that no food has, and its like
  }
  const json lines = balanceOf(read).at("targets");
  RC_ASSERT(static_cast<int>(lines.size()) == ladder.rowCount());
  for (const json& line : lines) {
    int row = 0;
    while (idOf(desk.problem(), ladder.refAt(row)) != line.at("id").get<std::string>()) ++row;
    const Rung rung = ladder.index(row, RungName).data(kRungRole).value<Rung>();
    const double scale =
        shownValue(ladder.refAt(row), 1.0) * inKilocalories(desk.problem(), ladder.refAt(row));
    RC_ASSERT(rung.mark == markOf(line.at("state").get<std::string>()));
    RC_ASSERT(same(rung.value, line.at("value"), scale));
    RC_ASSERT(same(rung.min, line.value("min", json()), scale));
    RC_ASSERT(same(rung.max, line.value("max", json()), scale));
    RC_ASSERT(same(rung.sd, line.at("sd"), scale));
    RC_ASSERT(same(rung.coverage, line.at("coverage"), 1.0));
  }
}

}  // namespace
}  // namespace tarebowl::ui
