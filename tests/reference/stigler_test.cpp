// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Stigler, "The Cost of Subsistence", Journal of Farm Economics 27 (1945) 303-314: 77 foods at the prices of
// August 1939, 9 nutrients, the least cost of a year. Table as transcribed in the OR-Tools sample
// (Apache-2.0), with one trade name replaced by its kind. Stigler's own heuristic reached $39.93; the
// optimum, found by Laderman's group in 1947, is the $39.69 of the literature (a year of 365.25 days). The
// digits below were worked out with HiGHS and GLPK.
#include "core/solver/solve.h"
#include "tests/reference/reference_data.h"
#include "tests/source_dir.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace tarebowl::reference {
namespace {

using solver::kInfinity;

constexpr std::array<const char*, 9> kNutrients{"calories_kkcal",   "protein_g",     "calcium_g",
                                                "iron_mg",          "vitamin_a_kiu", "thiamin_b1_mg",
                                                "riboflavin_b2_mg", "niacin_mg",     "ascorbic_acid_mg"};
constexpr double kOptimum = 0.10866227820675683;  // dollars a day

struct Subsistence {
  std::vector<std::string> foods;
  solver::Program program;  // x: dollars a day spent on each food
};

Subsistence readTable() {
  std::vector<std::array<double, kNutrients.size()>> perDollar;
  Subsistence table;
  forEachRow(std::filesystem::path(TAREBOWL_SOURCE_DIR) / "tests/reference/data/stigler.csv",
             [&](const CsvRow& row) {
               table.foods.push_back(row.at("food"));
               auto& values = perDollar.emplace_back();
               for (std::size_t k = 0; k < kNutrients.size(); ++k)
                 values[k] = row.number(kNutrients[k]).value();
             });
  table.foods.erase(table.foods.begin());  // the first record is what a man needs a day
  const auto rows = static_cast<Eigen::Index>(kNutrients.size());
  const auto columns = static_cast<Eigen::Index>(table.foods.size());
  solver::Program& p = table.program;
  p.rows.resize(rows, columns);
  p.rowLower.resize(rows);
  for (Eigen::Index k = 0; k < rows; ++k) {
    p.rowLower[k] = perDollar[0][static_cast<std::size_t>(k)];
    for (Eigen::Index j = 0; j < columns; ++j)
      p.rows(k, j) = perDollar[static_cast<std::size_t>(j) + 1][static_cast<std::size_t>(k)];
  }
  p.rowUpper = Eigen::VectorXd::Constant(rows, kInfinity);
  p.price = Eigen::VectorXd::Constant(rows, kInfinity);
  p.lower = p.step = p.centre = p.curvature = Eigen::VectorXd::Zero(columns);
  p.upper = Eigen::VectorXd::Constant(columns, kInfinity);
  p.cost = Eigen::VectorXd::Ones(columns);
  return table;
}

class Stigler1945 : public testing::Test {
 protected:
  const Subsistence table = readTable();
  const solver::Solution solution = solver::solve(table.program);
};

TEST_F(Stigler1945, HasSeventySevenFoods) {
  EXPECT_EQ(table.foods.size(), 77u);
}

TEST_F(Stigler1945, SubsistenceCosts39Dollars66AYearOf365Days) {
  ASSERT_EQ(solution.status, solver::Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.objective, kOptimum, 1e-12);
  EXPECT_NEAR(365 * solution.objective, 39.661731545466246, 4e-10);
  EXPECT_NEAR(365.25 * solution.objective, 39.68889711501794, 4e-10);
  EXPECT_EQ(solution.violation, 0.0);
}

TEST_F(Stigler1945, FiveFoodsAreBought) {
  const std::map<std::string, double> dollarsADay{{"Wheat Flour (Enriched)", 0.0295190617},
                                                  {"Liver (Beef)", 0.0018925573},
                                                  {"Cabbage", 0.0112144352},
                                                  {"Spinach", 0.0050076605},
                                                  {"Navy Beans, Dried", 0.0610285635}};
  ASSERT_EQ(solution.x.size(), 77);
  std::size_t bought = 0;
  for (std::size_t j = 0; j < table.foods.size(); ++j) {
    const auto found = dollarsADay.find(table.foods[j]);
    bought += found != dollarsADay.end() ? 1 : 0;
    EXPECT_NEAR(solution.x[static_cast<Eigen::Index>(j)], found == dollarsADay.end() ? 0.0 : found->second,
                1e-10)
        << table.foods[j];
  }
  EXPECT_EQ(bought, dollarsADay.size());
}

TEST_F(Stigler1945, CaloriesCalciumAndVitaminsAB2AndCAreOnTheirBound) {
  const std::array<double, 9> intake{3, 147.413535, 0.8, 60.466922, 5, 4.120439, 2.7, 27.315981, 75};
  const Eigen::VectorXd eaten = table.program.rows * solution.x;
  for (std::size_t k = 0; k < intake.size(); ++k)
    EXPECT_NEAR(eaten[static_cast<Eigen::Index>(k)], intake[k], 6e-7) << kNutrients[k];
}

TEST_F(Stigler1945, MultipliersAreTheMarginalCostsOfTheNutrients) {
  const std::array<double, 9> dollarsPerUnit{0.008765147298, 0, 0.031737713446, 0, 0.000400232722, 0,
                                             0.016358032699, 0, 0.000144117515};
  ASSERT_EQ(solution.multipliers.size(), 9);
  double total = 0.0;
  for (std::size_t k = 0; k < dollarsPerUnit.size(); ++k) {
    const double multiplier = std::abs(solution.multipliers[static_cast<Eigen::Index>(k)]);
    EXPECT_NEAR(multiplier, dollarsPerUnit[k], 6e-13) << kNutrients[k];
    total += multiplier * table.program.rowLower[static_cast<Eigen::Index>(k)];
  }
  EXPECT_NEAR(total, kOptimum, 1e-12) << "strong duality: the requirements at their prices cost the diet";
}

}  // namespace
}  // namespace tarebowl::reference
