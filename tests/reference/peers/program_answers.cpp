// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// program_answers KIND FIRST_SEED COUNT: one line of JSON for each seed, a program from real foods and the
// solver's answer, for compare_answers.py to compare with solvers of other people. Status 77 without the
// table of foods.
#include "core/solver/continuous_solver.h"
#include "core/solver/solve.h"
#include "tests/reference/ifct_programs.h"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdlib>
#include <map>
#include <string>

namespace tarebowl::reference {
namespace {

using nlohmann::json;
using Aim = ProgramKind::Aim;
using Targets = ProgramKind::Targets;

/// A bound that holds with a chance of 95 %: the normal quantile.
constexpr double kGuard = 1.6448536269514722;

std::optional<ProgramKind> kindNamed(const std::string& name) {
  static const std::map<std::string, ProgramKind> kKinds{
      {"nearest-hard", {.targets = Targets::Hard, .aim = Aim::Nearest}},
      {"nearest-priced", {.targets = Targets::Unmet, .aim = Aim::Nearest}},
      {"nearest-met", {.targets = Targets::Met, .aim = Aim::Nearest}},
      {"nearest-unmet", {.targets = Targets::Unmet, .aim = Aim::Nearest}},
      {"cheapest-hard", {.targets = Targets::Hard, .aim = Aim::Cheapest}},
      {"cheapest-unmet", {.targets = Targets::Unmet, .aim = Aim::Cheapest}},
      {"shortfall", {.targets = Targets::Unmet, .aim = Aim::ShortfallOnly}},
      {"whole-shortfall", {.targets = Targets::Unmet, .aim = Aim::ShortfallOnly, .step = 1.0}},
      {"whole-cheapest", {.targets = Targets::Hard, .aim = Aim::Cheapest, .step = 1.0}},
      {"chance-hard", {.targets = Targets::Hard, .aim = Aim::Nearest, .guard = kGuard}},
      {"chance-unmet", {.targets = Targets::Unmet, .aim = Aim::Nearest, .guard = kGuard}},
  };
  const auto found = kKinds.find(name);
  return found == kKinds.end() ? std::nullopt : std::optional(found->second);
}

/// Whole grams and chances are asked of small diets only, which the other solvers can still answer.
ProgramKind sized(ProgramKind kind, std::uint64_t seed) {
  if (kind.step > 0.0 || kind.guard > 0.0) {
    kind.foods = 5 + static_cast<Eigen::Index>(seed % 6);
    kind.rows = kind.guard > 0.0 ? 12 : 31;
    return kind;
  }
  const ProgramKind size = seed % 10 == 0 ? kLarge : (seed % 3 == 0 ? kMedium : kSmall);
  kind.foods = size.foods;
  kind.rows = size.rows;
  return kind;
}

json numbers(const Eigen::VectorXd& values) {
  json list = json::array();
  for (const double value : values) list.push_back(std::isfinite(value) ? json(value) : json(nullptr));
  return list;
}

json rowsOf(const solver::RowMatrix& matrix) {
  json list = json::array();
  for (const auto& row : matrix.rowwise()) list.push_back(numbers(row.transpose()));
  return list;
}

json lineFor(const solver::Program& p, const solver::Solution& solution) {
  json program{
      {"rows", rowsOf(p.rows)},    {"row_lower", numbers(p.rowLower)}, {"row_upper", numbers(p.rowUpper)},
      {"price", numbers(p.price)}, {"lower", numbers(p.lower)},        {"upper", numbers(p.upper)},
      {"step", numbers(p.step)},   {"centre", numbers(p.centre)},      {"curvature", numbers(p.curvature)},
      {"cost", numbers(p.cost)}};
  if (p.scatter) program["scatter"] = rowsOf(*p.scatter);
  const bool optimal = solution.status == solver::Status::Optimal;
  return {{"program", program},
          {"answer",
           {{"optimal", optimal},
            {"reason", solution.reason},
            {"grams", numbers(solution.x)},
            {"shortfall", solution.violation},
            {"objective", solution.objective},
            {"gap", solution.gap}}}};
}

/// One stage: a unit of shortfall weighs as much as ten of the objective.
solver::Solution atPrice(const solver::Program& program) {
  solver::ContinuousSolver solver(solver::ContinuousProgram::of(program));
  solver::Solution solution;
  solution.status = solver.solveAtPrice(10.0);
  solution.reason = solver.reason();
  solution.x = solver.x();
  solution.violation = solver.violation();
  solution.objective = solver.objective();
  return solution;
}

int run(const std::string& name, std::uint64_t first, std::uint64_t count) {
  const auto kind = kindNamed(name);
  if (!kind) return 2;
  for (std::uint64_t seed = first; seed < first + count; ++seed) {
    const auto program = ifctProgram(sized(*kind, seed), seed);
    if (!program) {
      fmt::print(stderr, "skipped: {}\n", ifctMissingNote());
      return 77;
    }
    json line = lineFor(*program, name == "nearest-priced" ? atPrice(*program) : solver::solve(*program));
    line["seed"] = seed;
    fmt::print("{}\n", line.dump());
  }
  return 0;
}

}  // namespace
}  // namespace tarebowl::reference

int main(int argc, char** argv) {
  if (argc != 4) return 2;
  return tarebowl::reference::run(argv[1], std::strtoull(argv[2], nullptr, 10),
                                  std::strtoull(argv[3], nullptr, 10));
}
