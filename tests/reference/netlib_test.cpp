// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Small linear programs of the Netlib collection (D. M. Gay, "Electronic mail distribution of linear
// programming test problems", COAL Newsletter 13, 1985) with the optima that its README prints. Four are kept
// in data/netlib; the others are read where Debian's coinor-libcoinutils-dev puts them, and skipped without
// it.
#include "core/solver/solve.h"
#include "tests/reference/mps_file.h"
#include "tests/source_dir.h"

#include <gtest/gtest.h>

#include <cmath>
#include <ostream>
#include <string>

namespace tarebowl::reference {
namespace {

struct Published {
  std::string file;
  Eigen::Index rows;
  Eigen::Index columns;
  double optimum;

  friend std::ostream& operator<<(std::ostream& out, const Published& published) {
    return out << published.file;
  }
};

std::filesystem::path placeOf(const std::string& file) {
  const std::filesystem::path kept =
      std::filesystem::path(TAREBOWL_SOURCE_DIR) / "tests/reference/data/netlib" / file;
  return exists(kept) ? kept : std::filesystem::path("/usr/share/coin/Data/Sample") / file;
}

class Netlib : public testing::TestWithParam<Published> {};

TEST_P(Netlib, CostsWhatIsPublished) {
  const auto file = placeOf(GetParam().file);
  if (!exists(file)) GTEST_SKIP() << "no " << file << " (coinor-libcoinutils-dev)";
  const solver::Program program = readMps(file);
  ASSERT_EQ(program.rowCount(), GetParam().rows);
  ASSERT_EQ(program.variableCount(), GetParam().columns);
  const solver::Solution solution = solver::solve(program);
  ASSERT_EQ(solution.status, solver::Status::Optimal) << solution.reason;
  EXPECT_LE(solver::hardViolation(program, solution.x), 1e-7);
  EXPECT_NEAR(program.cost.dot(solution.x), GetParam().optimum, 1e-9 * std::abs(GetParam().optimum));
}

INSTANTIATE_TEST_SUITE_P(Small, Netlib,
                         testing::Values(Published{"afiro.mps", 27, 32, -4.6475314286E+02},
                                         Published{"kb2.mps", 43, 41, -1.7499001299E+03},
                                         Published{"sc50a.mps", 50, 48, -6.4575077059E+01},
                                         Published{"sc50b.mps", 50, 48, -7.0000000000E+01},
                                         Published{"sc105.mps", 105, 103, -5.2202061212E+01},
                                         Published{"share2qp.mps", 96, 79, -4.1573224074E+02},
                                         Published{"brandy.mps", 220, 249, 1.5185098965E+03},
                                         Published{"e226.mps", 223, 282, -1.8751929066E+01}),
                         [](const auto& named) {
                           return named.param.file.substr(0, named.param.file.find('.'));
                         });

// J. Chinneck's collection of infeasible programs: a network whose demands exceed what it can carry.
TEST(NetlibInfeasible, GalenetIsImpossible) {
  const auto file = placeOf("galenet.mps");
  if (!exists(file)) GTEST_SKIP() << "no " << file << " (coinor-libcoinutils-dev)";
  EXPECT_EQ(solver::solve(readMps(file)).status, solver::Status::Infeasible);
}

}  // namespace
}  // namespace tarebowl::reference
