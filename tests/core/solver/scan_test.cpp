// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/scan.h"

#include "core/solver/linear_solver.h"
#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>

namespace tarebowl::solver {
namespace {

class Scan : public testing::Test {
 protected:
  Scan() {
    std::mt19937 random(3);
    program_ = randomProgram(random, {.columns = 6, .rows = 9, .hardShare = 0.0, .step = 0.0, .upper = 20.0});
    std::uniform_real_distribution<double> unit(-0.6, 1.0);
    coefficients_.resize(9 * kCandidates);
    for (double& coefficient : coefficients_) coefficient = unit(random);
    for (std::size_t k = 0; k < kCandidates; ++k) {
      const std::span<const double> own(coefficients_.data() + 9 * k, 9);
      candidates_.push_back({own, 0.0, 5.0 + double(k % 7), 1.0 + double(k % 3), 0.5 + double(k % 5), 0.0});
    }
  }

  static constexpr std::size_t kCandidates = 200;
  Program program_;
  std::vector<double> coefficients_;
  std::vector<ContinuousSolver::Column> candidates_;
};

TEST_F(Scan, FindsForEveryCandidateWhatSolvingAnewFinds) {
  const std::vector<ScanResult> results = scan(program_, 2, candidates_);
  ASSERT_EQ(results.size(), kCandidates);
  for (std::size_t k = 0; k < kCandidates; ++k) {
    SCOPED_TRACE(k);
    Program with = program_;
    for (Eigen::Index i = 0; i < 9; ++i) with.rows(i, 2) = candidates_[k].coefficients[std::size_t(i)];
    with.lower[2] = candidates_[k].lower;
    with.upper[2] = candidates_[k].upper;
    with.centre[2] = candidates_[k].centre;
    with.curvature[2] = candidates_[k].curvature;
    ContinuousSolver cold(ContinuousProgram::of(with));
    ASSERT_EQ(cold.solve(), Status::Optimal);
    ASSERT_EQ(results[k].status, Status::Optimal);
    EXPECT_NEAR(results[k].violation, cold.violation(), 1e-8 * (1 + cold.violation()));
    EXPECT_NEAR(results[k].objective, cold.objective(), 1e-7 * (1 + cold.objective()));
    EXPECT_NEAR(results[k].amount, cold.x()[2], 1e-6 * (1 + cold.x()[2]));
  }
}

TEST_F(Scan, FindsTheLeastCostWithEveryCandidateToo) {
  program_.curvature.setZero();
  for (Eigen::Index j = 0; j < 6; ++j) program_.cost[j] = 0.5 + double(j % 4);
  for (std::size_t k = 0; k < kCandidates; ++k) {
    candidates_[k].cost = 0.3 + double(k % 5);
    if (k % 3 == 0) candidates_[k].upper = kInfinity;
  }
  for (const std::optional<Eigen::Index> place :
       {std::optional<Eigen::Index>(2), std::optional<Eigen::Index>()}) {
    const std::vector<ScanResult> results = scan(program_, place, candidates_);
    for (std::size_t k = 0; k < kCandidates; ++k) {
      SCOPED_TRACE(k);
      Program with = program_;
      const Eigen::Index j = place.value_or(6);
      if (!place) {
        with.rows.conservativeResize(Eigen::NoChange, 7);
        for (Eigen::VectorXd* part : {&with.lower, &with.upper, &with.centre, &with.cost, &with.curvature}) {
          part->conservativeResize(7);
          (*part)[6] = 0.0;
        }
      }
      for (Eigen::Index i = 0; i < 9; ++i) with.rows(i, j) = candidates_[k].coefficients[std::size_t(i)];
      with.lower[j] = candidates_[k].lower;
      with.upper[j] = candidates_[k].upper;
      with.cost[j] = candidates_[k].cost;
      LinearSolver cold(ContinuousProgram::of(with));
      ASSERT_EQ(cold.solve(), Status::Optimal) << cold.reason();
      ASSERT_EQ(results[k].status, Status::Optimal);
      EXPECT_NEAR(results[k].violation, cold.violation(), 1e-8 * (1 + cold.violation()));
      EXPECT_NEAR(results[k].objective, cold.objective(), 1e-7 * (1 + cold.objective()));
    }
  }
}

TEST_F(Scan, DoesNotDependOnTheThreads) {
  const std::vector<ScanResult> one = scan(program_, std::nullopt, candidates_, {.threads = 1, .stop = {}});
  const std::vector<ScanResult> three = scan(program_, std::nullopt, candidates_, {.threads = 3, .stop = {}});
  for (std::size_t k = 0; k < kCandidates; ++k) {
    EXPECT_EQ(one[k].objective, three[k].objective);
    EXPECT_EQ(one[k].amount, three[k].amount);
  }
}

TEST_F(Scan, StopsWhenAsked) {
  std::stop_source stop;
  stop.request_stop();
  for (const ScanResult& result : scan(program_, 2, candidates_, {.threads = 2, .stop = stop.get_token()}))
    EXPECT_EQ(result.status, Status::Stopped);
}

}  // namespace
}  // namespace tarebowl::solver
