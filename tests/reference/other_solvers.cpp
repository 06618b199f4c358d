// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/other_solvers.h"

#include <ClpSimplex.hpp>
#include <CoinPackedMatrix.hpp>
#include <glpk.h>

#include <cmath>
#include <memory>
#include <vector>

namespace tarebowl::reference {

namespace {

using Eigen::Index;
using solver::kInfinity;
using solver::Program;

/// least cost z, row_lower <= entries z <= row_upper, lower <= z <= upper: columns x, then one violation for
/// each elastic side of a row.
struct Lifted {
  struct Entry {
    int row;
    int column;
    double value;
  };
  std::vector<double> cost, lower, upper, rowLower, rowUpper;
  std::vector<Entry> entries;
};

/// Integer programs may slip by 1e-7 of a row: rows are made worth more, so that this is nothing.
constexpr double kRowWorth = 1e4;

/// Grams in units of one step and violations in units of 1 / kRowWorth where inSteps.
Lifted lift(const Program& program, bool inSteps) {
  Lifted out;
  const Index n = program.variableCount();
  const double worth = inSteps ? kRowWorth : 1.0;
  for (Index j = 0; j < n; ++j) {
    const double unit = inSteps ? program.step[j] : 1.0;
    const double low = program.lower[j] / unit;
    const double high = program.upper[j] / unit;
    out.cost.push_back(0.0);
    out.lower.push_back(inSteps ? std::ceil(low - 1e-9) : low);
    out.upper.push_back(inSteps ? std::floor(high + 1e-9) : high);
  }
  const auto addSide = [&](Index i, double limit, double sign) {
    const int row = static_cast<int>(out.rowLower.size());
    for (Index j = 0; j < n; ++j) {
      const double value = worth * program.rows(i, j) * (inSteps ? program.step[j] : 1.0);
      if (value != 0.0) out.entries.push_back({row, static_cast<int>(j), sign * value});
    }
    out.rowLower.push_back(sign * worth * limit);
    out.rowUpper.push_back(kInfinity);
    if (!std::isfinite(program.price[i])) return;
    out.entries.push_back({row, static_cast<int>(out.cost.size()), 1.0});
    out.cost.push_back(program.price[i]);
    out.lower.push_back(0.0);
    out.upper.push_back(kInfinity);
  };
  for (Index i = 0; i < program.rowCount(); ++i) {
    if (program.rowLower[i] > -kInfinity) addSide(i, program.rowLower[i], 1.0);
    if (program.rowUpper[i] < kInfinity) addSide(i, program.rowUpper[i], -1.0);
  }
  return out;
}

using GlpkProblem = std::unique_ptr<glp_prob, void (*)(glp_prob*)>;

GlpkProblem toGlpk(const Lifted& lifted) {
  glp_term_out(GLP_OFF);
  GlpkProblem problem(glp_create_prob(), glp_delete_prob);
  glp_add_rows(problem.get(), static_cast<int>(lifted.rowLower.size()));
  glp_add_cols(problem.get(), static_cast<int>(lifted.cost.size()));
  for (std::size_t i = 0; i < lifted.rowLower.size(); ++i)
    glp_set_row_bnds(problem.get(), static_cast<int>(i) + 1, GLP_LO, lifted.rowLower[i], 0.0);
  for (std::size_t j = 0; j < lifted.cost.size(); ++j) {
    const double low = lifted.lower[j];
    const double high = lifted.upper[j];
    const int kind = std::isinf(high) ? GLP_LO : (low == high ? GLP_FX : GLP_DB);
    glp_set_col_bnds(problem.get(), static_cast<int>(j) + 1, kind, low, high);
    glp_set_obj_coef(problem.get(), static_cast<int>(j) + 1, lifted.cost[j]);
  }
  std::vector<int> rows{0};
  std::vector<int> columns{0};
  std::vector<double> values{0.0};
  for (const Lifted::Entry& entry : lifted.entries) {
    rows.push_back(entry.row + 1);
    columns.push_back(entry.column + 1);
    values.push_back(entry.value);
  }
  glp_load_matrix(problem.get(), static_cast<int>(lifted.entries.size()), rows.data(), columns.data(),
                  values.data());
  return problem;
}

bool solveRelaxation(glp_prob* problem) {
  glp_smcp settings;
  glp_init_smcp(&settings);
  settings.msg_lev = GLP_MSG_OFF;
  settings.meth = GLP_DUALP;
  settings.tol_bnd = settings.tol_dj = 1e-9;
  glp_scale_prob(problem, GLP_SF_AUTO);
  return glp_simplex(problem, &settings) == 0 && glp_get_status(problem) == GLP_OPT;
}

}  // namespace

std::optional<double> leastViolationByGlpk(const Program& program) {
  const GlpkProblem problem = toGlpk(lift(program, false));
  if (!solveRelaxation(problem.get())) return std::nullopt;
  if (glp_exact(problem.get(), nullptr) != 0 || glp_get_status(problem.get()) != GLP_OPT) return std::nullopt;
  return glp_get_obj_val(problem.get());
}

std::optional<double> leastViolationByClp(const Program& program) {
  const Lifted lifted = lift(program, false);
  std::vector<int> rows;
  std::vector<int> columns;
  std::vector<double> values;
  for (const Lifted::Entry& entry : lifted.entries) {
    rows.push_back(entry.row);
    columns.push_back(entry.column);
    values.push_back(entry.value);
  }
  CoinPackedMatrix matrix(true, rows.data(), columns.data(), values.data(),
                          static_cast<CoinBigIndex>(values.size()));
  matrix.setDimensions(static_cast<int>(lifted.rowLower.size()), static_cast<int>(lifted.cost.size()));
  ClpSimplex simplex;
  simplex.setLogLevel(0);
  simplex.loadProblem(matrix, lifted.lower.data(), lifted.upper.data(), lifted.cost.data(),
                      lifted.rowLower.data(), lifted.rowUpper.data());
  simplex.setPrimalTolerance(1e-9);
  simplex.setDualTolerance(1e-9);
  simplex.dual();
  if (!simplex.isProvenOptimal()) return std::nullopt;
  return simplex.objectiveValue();
}

std::optional<double> leastViolationInStepsByGlpk(const Program& program) {
  const GlpkProblem problem = toGlpk(lift(program, true));
  const Index n = program.variableCount();
  for (Index j = 0; j < n; ++j) glp_set_col_kind(problem.get(), static_cast<int>(j) + 1, GLP_IV);
  if (!solveRelaxation(problem.get())) return std::nullopt;
  glp_iocp settings;
  glp_init_iocp(&settings);
  settings.msg_lev = GLP_MSG_OFF;
  settings.tol_int = 1e-9;
  settings.tol_obj = 1e-12;
  settings.mip_gap = 0.0;
  settings.tm_lim = 60'000;
  if (glp_intopt(problem.get(), &settings) != 0 || glp_mip_status(problem.get()) != GLP_OPT)
    return std::nullopt;
  Eigen::VectorXd grams(n);
  for (Index j = 0; j < n; ++j)
    grams[j] = std::round(glp_mip_col_val(problem.get(), static_cast<int>(j) + 1)) * program.step[j];
  return solver::elasticViolation(program, grams);
}

}  // namespace tarebowl::reference
