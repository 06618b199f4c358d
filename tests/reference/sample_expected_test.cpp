// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Each sample file carries the result it should give. The expected shortfall and objective were found by an
// independent mixed-integer solver from the problem format's text (tests/reference/oracle), not by
// this program.
#include "core/diet/solve.h"
#include "core/exchange/problem_json.h"
#include "tests/reference/sample_files.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <string>

namespace tarebowl::reference {
namespace {

using nlohmann::json;

class SampleResult : public testing::TestWithParam<std::string> {};

TEST_P(SampleResult, IsTheExpectedOne) {
  const json expected = readSampleJson(GetParam()).at("expected");
  const auto problem = exchange::readProblem(samplePath(GetParam()));
  const diet::DietSolution solution = diet::solve(problem);

  EXPECT_EQ(diet::symbolOf(solution.status), expected.at("status").get<std::string>());
  EXPECT_NEAR(solution.shortfall, expected.at("shortfall").get<double>(), 1e-9);
  const double objective = expected.at("objective").get<double>();
  EXPECT_NEAR(solution.objective, objective, 1e-6 * std::abs(objective) + 1e-9);
  EXPECT_EQ(solution.provenGap, 0.0);
  ASSERT_EQ(solution.grams.size(), problem.foods.size());
  // Several diets may cost the same; only one lies closest to the diet as it is now.
  if (problem.objective.kind != diet::Objective::Kind::Closest) return;
  for (std::size_t i = 0; i < problem.foods.size(); ++i) {
    const double grams = expected.at("grams").value(problem.foods[i].id, 0.0);
    EXPECT_NEAR(solution.grams[i].value(), grams, 1e-6) << problem.foods[i].id;
  }
}

INSTANTIATE_TEST_SUITE_P(Brackenmere, SampleResult, testing::ValuesIn(sampleNames()),
                         [](const auto& file) { return testNameOf(file.param); });

TEST(Sample, TheLemursGetNoFruit) {
  const json grams = readSampleJson("lemur-no-fruit.json").at("expected").at("grams");
  EXPECT_FALSE(grams.contains("papaya-raw"));
  EXPECT_FALSE(grams.contains("banana-raw"));
}

}  // namespace
}  // namespace tarebowl::reference
