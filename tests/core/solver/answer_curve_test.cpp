// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/answer_curve.h"

#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

/// The answer on the straight line between the neighbours; both curves have it within their precision.
Eigen::VectorXd readAt(const AnswerCurve& curve, double at) {
  for (std::size_t k = 0; k + 1 < curve.points.size(); ++k) {
    const CurvePoint& a = curve.points[k];
    const CurvePoint& b = curve.points[k + 1];
    if (at < a.at || at > b.at || b.at <= a.at) continue;
    const double t = (at - a.at) / (b.at - a.at);
    return (1.0 - t) * a.x + t * b.x;
  }
  return curve.points.back().x;
}

/// By halving, which knows nothing of bases, and by ratio tests, which know nothing of halving.
TEST(AnswerCurve, HalvingFindsTheLineThatRatioTestsWalk) {
  int compared = 0;
  for (unsigned seed = 1; seed <= 60; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    const Program program =
        randomProgram(random, {.columns = 5, .rows = 8, .hardShare = 0.1, .step = 0.0, .upper = 10.0});
    const Eigen::Index column = seed % 5;
    const auto at = [&](double upper) {
      Program moved = program;
      moved.upper[column] = upper;
      return moved;
    };
    const AnswerCurve halved = curveOf(at, 1.5, 9.0);
    const AnswerCurve walked =
        curveOf(program, {MovingBound::Kind::ColumnUpper, column}, 1.5, 9.0, program.upper[column]);
    ASSERT_EQ(halved.status, walked.status) << halved.reason << walked.reason;
    if (halved.status != Status::Optimal) continue;
    EXPECT_EQ(halved.endsLow, walked.endsLow);
    EXPECT_NEAR(halved.points.front().at, walked.points.front().at, 1e-6);
    for (double bound = halved.points.front().at + 0.01; bound < 9.0; bound += 0.37) {
      const Eigen::VectorXd difference = readAt(halved, bound) - readAt(walked, bound);
      EXPECT_LE(difference.cwiseAbs().maxCoeff(), 1e-5) << bound;
      ++compared;
    }
  }
  EXPECT_GT(compared, 500);
}

TEST(AnswerCurve, RisesAndHasEachPlaceOnceUnlessItJumps) {
  std::mt19937 random(7);
  const Program program =
      randomProgram(random, {.columns = 5, .rows = 8, .hardShare = 0.1, .step = 0.0, .upper = 10.0});
  const AnswerCurve curve = curveOf(
      [&](double factor) {
        Program moved = program;
        moved.rows.row(0) *= factor;
        return moved;
      },
      0.5, 2.0);
  ASSERT_EQ(curve.status, Status::Optimal) << curve.reason;
  EXPECT_TRUE(std::ranges::is_sorted(curve.points, {}, &CurvePoint::at));
}

}  // namespace
}  // namespace tarebowl::solver
