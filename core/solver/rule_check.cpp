// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/rule_check.h"

#include "core/solver/branch_and_bound.h"
#include "core/solver/chance.h"
#include "core/solver/continuous.h"

#include <algorithm>

namespace tarebowl::solver {
namespace {

constexpr double kHolds = 1e-9;  // violation, in all, that is rounding
constexpr double kUsed = 1e-9;

std::vector<Eigen::Index> rowsOf(std::span<const Rule> rules, std::span<const std::size_t> chosen) {
  std::vector<Eigen::Index> rows;
  for (const std::size_t c : chosen) rows.insert(rows.end(), rules[c].rows.begin(), rules[c].rows.end());
  return rows;
}

/// Rules that have a row with a multiplier.
std::vector<std::size_t> supportOf(std::span<const Rule> rules, std::span<const std::size_t> chosen,
                                   const Eigen::VectorXd& multipliers) {
  std::vector<std::size_t> support;
  Eigen::Index row = 0;
  for (const std::size_t c : chosen) {
    bool pushes = false;
    for (std::size_t k = 0; k < rules[c].rows.size(); ++k) pushes |= multipliers[row++] != 0.0;
    if (pushes) support.push_back(c);
  }
  return support;
}

Verdict checkRows(const Program& part, std::span<const Rule> rules, std::span<const std::size_t> chosen) {
  const ScaledProgram scaled(part);
  if (scaled.isEmptyBox()) return {Verdict::Kind::Fails, {}, {}};
  const ContinuousAnswer answer = leastViolation(scaled, {scaled.lower, scaled.upper});
  if (answer.status != Status::Optimal) return {};
  if (answer.violation <= kHolds) return {Verdict::Kind::Holds, scaled.toSource(answer.z), {}};
  return {Verdict::Kind::Fails, {}, supportOf(rules, chosen, answer.rowMultipliers)};
}

/// Whether any grid point holds every row: the first one found is enough, and none found is proof.
Verdict checkGrid(const Program& part, const Limits& limits) {
  const ScaledProgram scaled(part);
  if (scaled.isEmptyBox()) return {Verdict::Kind::Fails, {}, {}};
  const Stage stage{Stage::Kind::ObjectiveHard, kHolds, 1.0};
  const SearchResult result = search(scaled, stage, {.firstIsEnough = true}, limits,
                                     std::chrono::steady_clock::now() + limits.deadline);
  if (result.best) return {Verdict::Kind::Holds, scaled.toSource(result.best->z), {}};
  return {result.closed ? Verdict::Kind::Fails : Verdict::Kind::Unknown, {}, {}};
}

/// With scatter or choices: every row hard, so that the first relaxation that fails is proof.
Verdict checkBySolving(Program part, const Program& whole, const Limits& limits) {
  part.price.setConstant(kInfinity);
  const bool onGrid = (part.step.array() > 0).any();
  // a point near the centre keeps tangents short; on a grid any point will do
  if (!onGrid && (whole.curvature.array() > 0).all()) part.curvature = whole.curvature;
  const Solution solution = solve(part, limits);
  if (solution.status == Status::Infeasible) return {Verdict::Kind::Fails, {}, {}};
  if (solution.status != Status::Optimal) return {};
  if (hardViolation(part, solution.x) > 10 * kHolds) return {};
  return {Verdict::Kind::Holds, solution.x, {}};
}

bool isKept(const Choice& choice, const Eigen::VectorXd& x) {
  int used = 0;
  for (const Eigen::Index j : choice.members) {
    if (!(x[j] > kUsed)) continue;
    if (x[j] < choice.threshold * (1.0 - kUsed)) return false;
    ++used;
  }
  return used >= choice.atLeast && used <= choice.atMost;
}

}  // namespace

Program programOfRules(const Program& program, std::span<const Rule> rules,
                       std::span<const std::size_t> chosen, Strictness strictness) {
  const std::vector<Eigen::Index> rows = rowsOf(rules, chosen);
  Program part;
  part.lower = program.lower;
  part.upper = program.upper;
  part.step = strictness == Strictness::All ? program.step
                                            : Eigen::VectorXd(Eigen::VectorXd::Zero(program.step.size()));
  part.centre = program.centre;
  part.curvature = part.cost = Eigen::VectorXd::Zero(program.variableCount());
  part.rows = program.rows(rows, Eigen::all);
  part.rowLower = program.rowLower(rows);
  part.rowUpper = program.rowUpper(rows);
  part.price = Eigen::VectorXd::Ones(part.rowLower.size());
  if (strictness == Strictness::Rows) return part;
  if (program.scatter) part.scatter = (*program.scatter)(rows, Eigen::all);
  for (const std::size_t c : chosen) {
    for (const std::size_t choice : rules[c].choices) part.choices.push_back(program.choices[choice]);
  }
  return part;
}

Verdict holdTogether(const Program& program, std::span<const Rule> rules, std::span<const std::size_t> chosen,
                     Strictness strictness, const Limits& limits) {
  const Program part = programOfRules(program, rules, chosen, strictness);
  const bool onGrid = (part.step.array() > 0).any();
  if (hasScatter(part)) return checkBySolving(part, program, limits);
  if (onGrid) return checkGrid(part, limits);
  return part.choices.empty() ? checkRows(part, rules, chosen) : checkBySolving(part, program, limits);
}

double missOf(const Program& program, const Rule& rule, const Eigen::VectorXd& x, Strictness strictness) {
  const bool rowsOnly = strictness == Strictness::Rows;
  const bool scatters = program.scatter && !rowsOnly;
  double miss = 0.0;
  for (const Eigen::Index i : rule.rows) {
    const double activity = program.rows.row(i).dot(x);
    const double spread = scatters ? program.scatter->row(i).transpose().cwiseProduct(x).norm() : 0.0;
    miss =
        std::max({miss, program.rowLower[i] - (activity - spread), activity + spread - program.rowUpper[i]});
  }
  if (miss <= (scatters ? 10 * kHolds : kHolds)) miss = 0.0;  // tangents close a little later
  if (rowsOnly) return miss;
  const bool allKept =
      std::ranges::all_of(rule.choices, [&](std::size_t c) { return isKept(program.choices[c], x); });
  return allKept ? miss : std::max(miss, 1.0);
}

}  // namespace tarebowl::solver
