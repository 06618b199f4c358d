// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// How exact answers are: the Karush-Kuhn-Tucker conditions of the nearest diet with shortfalls at a price,
// worked out here from the program itself in extended precision.
#include "core/solver/continuous_solver.h"
#include "tests/reference/ifct_foods.h"
#include "tests/reference/ifct_programs.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace tarebowl::reference {
namespace {

using Eigen::Index;
using Exact = long double;

constexpr double kLambda = 10.0;
constexpr double kWorst = 1e-10;

/// push > 0 presses against a limit that is room away: one of the two must be nothing.
Exact slackness(Exact push, Exact room) {
  return room < 0 ? -room : std::min(push, room);
}

class Conditions {
 public:
  Conditions(const solver::Program& program, const solver::ContinuousSolver& solver)
      : program_(program), x_(solver.x()), multipliers_(solver.rowMultipliers()) {}

  [[nodiscard]] double worst() const {
    Exact worst = 0;
    for (Index i = 0; i < program_.rowCount(); ++i) worst = std::max(worst, rowError(i));
    for (Index j = 0; j < program_.variableCount(); ++j) worst = std::max(worst, columnError(j));
    return static_cast<double>(worst);
  }

 private:
  /// The multiplier is 0 between the bounds, up to the price at one of them, the price beyond it.
  [[nodiscard]] Exact rowError(Index i) const {
    Exact activity = 0;
    Exact size = 1e-300L;
    for (Index j = 0; j < program_.variableCount(); ++j) {
      const Exact term = static_cast<Exact>(program_.rows(i, j)) * x_[j];
      activity += term;
      size += std::abs(term);
    }
    const Exact below = (program_.rowLower[i] - activity) / size;
    const Exact above = (activity - program_.rowUpper[i]) / size;
    const bool hard = !std::isfinite(program_.price[i]);
    const Exact most = hard ? multipliers_.cwiseAbs().maxCoeff() + 1e-300 : kLambda * program_.price[i];
    const Exact share = multipliers_[i] / most;
    if (!hard && std::abs(share) > 1) return std::abs(share) - 1;
    const Exact beyond = share > 0 ? above : (share < 0 ? below : std::max(above, below));
    if (beyond <= 0) return std::min(std::abs(share), -beyond);
    return hard ? beyond : std::min(1 - std::abs(share), beyond);
  }

  /// The objective's slope is balanced by the multipliers wherever the food is free to move.
  [[nodiscard]] Exact columnError(Index j) const {
    const Exact twice = 2 * static_cast<Exact>(program_.curvature[j]);
    Exact slope = twice * (static_cast<Exact>(x_[j]) - program_.centre[j]) + program_.cost[j];
    Exact size =
        twice * (std::abs(x_[j]) + std::abs(program_.centre[j])) + std::abs(program_.cost[j]) + 1e-300L;
    for (Index i = 0; i < program_.rowCount(); ++i) {
      const Exact term = static_cast<Exact>(program_.rows(i, j)) * multipliers_[i];
      slope += term;
      size += std::abs(term);
    }
    const Exact grams = std::max<Exact>(1, std::abs(x_[j]));
    const Exact room = (slope > 0 ? x_[j] - program_.lower[j] : program_.upper[j] - x_[j]) / grams;
    return slackness(std::abs(slope) / size, room);
  }

  const solver::Program& program_;
  const Eigen::VectorXd& x_;
  const Eigen::VectorXd& multipliers_;
};

double worstOf(const IfctTable& table, ProgramKind kind, std::uint64_t first, std::uint64_t count) {
  double worst = 0.0;
  solver::ContinuousSolver solver;
  for (std::uint64_t seed = first; seed < first + count; ++seed) {
    const solver::Program program = seededProgram(table, kind, seed).program;
    solver.assign(solver::ContinuousProgram::of(program));
    EXPECT_EQ(solver.solveAtPrice(kLambda), solver::Status::Optimal)
        << "seed " << seed << ": " << solver.reason();
    if (solver.status() == solver::Status::Optimal)
      worst = std::max(worst, Conditions(program, solver).worst());
  }
  return worst;
}

class Accuracy : public testing::TestWithParam<ProgramKind::Targets> {
 protected:
  void SetUp() override {
    const auto file = ifctFile();
    if (!file) GTEST_SKIP() << ifctMissingNote();
    table = readIfctTable(*file);
  }
  IfctTable table;
};

// Together over ten thousand programs.
TEST_P(Accuracy, TheConditionsOfTheBestHoldToTenDigitsOnAllOf3340Programs) {
  for (const auto& [size, count] : {std::pair{kSmall, 2500U}, std::pair{kMedium, 700U},
                                    std::pair{kLarge, 100U}, std::pair{kLargest, 40U}}) {
    ProgramKind kind = size;
    kind.targets = GetParam();
    EXPECT_LE(worstOf(table, kind, 1, count), kWorst) << kind.foods << " foods";
  }
}

// Programs on which multipliers at a price were once cut short.
TEST_P(Accuracy, TheLargestDietsAtAPriceAreVerified) {
  ProgramKind kind = kLargest;
  kind.targets = GetParam();
  for (const std::uint64_t seed : {16U, 115U, 120U}) EXPECT_LE(worstOf(table, kind, seed, 1), kWorst);
}

INSTANTIATE_TEST_SUITE_P(Bands, Accuracy,
                         testing::Values(ProgramKind::Targets::Met, ProgramKind::Targets::Unmet,
                                         ProgramKind::Targets::Hard));

}  // namespace
}  // namespace tarebowl::reference
