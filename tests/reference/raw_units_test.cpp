// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Programs from real foods in raw units, µg beside kJ and tonnes beside milligrams: an answer every time, and
// the same one.
#include "core/solver/solve.h"
#include "tests/reference/draw.h"
#include "tests/reference/ifct_programs.h"

#include <gtest/gtest.h>

#include <cmath>
#include <tuple>

namespace tarebowl::reference {
namespace {

using Aim = ProgramKind::Aim;
using Targets = ProgramKind::Targets;

/// Rows in units up to a million times larger or smaller, foods up to a thousand times.
solver::Program inRawUnits(solver::Program p, Eigen::VectorXd& foodUnit, std::uint64_t seed) {
  Draw draw(seed);
  for (Eigen::Index i = 0; i < p.rowCount(); ++i) {
    const double unit = std::pow(10.0, draw.between(-6.0, 6.0));
    p.rows.row(i) *= unit;
    p.rowLower[i] *= unit;
    p.rowUpper[i] *= unit;
    p.price[i] /= unit;
  }
  foodUnit.resize(p.variableCount());
  for (double& unit : foodUnit) unit = std::pow(10.0, draw.between(-3.0, 3.0));
  p.rows = solver::RowMatrix(p.rows * foodUnit.asDiagonal());
  for (Eigen::VectorXd* grams : {&p.lower, &p.upper, &p.step, &p.centre})
    *grams = grams->cwiseQuotient(foodUnit);
  p.curvature = p.curvature.cwiseProduct(foodUnit.cwiseAbs2());
  p.cost = p.cost.cwiseProduct(foodUnit);
  return p;
}

class RawUnits : public testing::TestWithParam<std::tuple<Targets, Aim>> {
 protected:
  void SetUp() override {
    const auto file = ifctFile();
    if (!file) GTEST_SKIP() << ifctMissingNote();
    table = readIfctTable(*file);
  }

  void expectTheSame(ProgramKind kind, std::uint64_t seed) const {
    SCOPED_TRACE(testing::Message() << kind.foods << " foods, seed " << seed);
    std::tie(kind.targets, kind.aim) = GetParam();
    const solver::Program program = seededProgram(table, kind, seed).program;
    Eigen::VectorXd unit;
    const solver::Solution plain = solver::solve(program);
    const solver::Solution raw = solver::solve(inRawUnits(program, unit, seed));
    ASSERT_EQ(plain.status, solver::Status::Optimal) << plain.reason;
    ASSERT_EQ(raw.status, solver::Status::Optimal) << raw.reason;
    EXPECT_NEAR(raw.violation, plain.violation, 1e-7 * plain.violation + 2e-9);
    EXPECT_NEAR(raw.objective, plain.objective, 1e-5 * plain.objective + 1e-9);
    const Eigen::VectorXd grams = raw.x.cwiseProduct(unit);
    EXPECT_LE(solver::hardViolation(program, grams), 1e-8);
    EXPECT_NEAR(solver::elasticViolation(program, grams), plain.violation, 1e-7 * plain.violation + 1e-8);
  }

  IfctTable table;
};

TEST_P(RawUnits, AreTheSameProgram) {
  for (std::uint64_t seed = 101; seed <= 160; ++seed) expectTheSame(kSmall, seed);
  for (std::uint64_t seed = 101; seed <= 120; ++seed) expectTheSame(kMedium, seed);
  for (std::uint64_t seed = 101; seed <= 104; ++seed) expectTheSame(kLarge, seed);
}

INSTANTIATE_TEST_SUITE_P(Programs, RawUnits,
                         testing::Combine(testing::Values(Targets::Met, Targets::Unmet, Targets::Hard),
                                          testing::Values(Aim::Nearest, Aim::Cheapest)));

}  // namespace
}  // namespace tarebowl::reference
