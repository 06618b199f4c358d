// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/other_solvers.h"

#include <Cbc_C_Interface.h>
#include <ClpSimplex.hpp>
#include <CoinPackedMatrix.hpp>
#include <glpk.h>

#include <cmath>
#include <string>

namespace tarebowl::reference {

namespace {

/// The entries in the form that all of these solvers take.
struct Triplets {
  std::vector<int> rows, columns;
  std::vector<double> values;

  Triplets(const LinearProgram& program, int first) {
    if (first == 1) add(0, 0, 0.0);  // GLPK counts from 1
    for (const LinearProgram::Entry& entry : program.entries)
      add(entry.row + first, entry.column + first, entry.value);
  }
  void add(int row, int column, double value) {
    rows.push_back(row);
    columns.push_back(column);
    values.push_back(value);
  }
};

CoinPackedMatrix packed(const LinearProgram& program) {
  const Triplets triplets(program, 0);
  CoinPackedMatrix matrix(true, triplets.rows.data(), triplets.columns.data(), triplets.values.data(),
                          static_cast<CoinBigIndex>(triplets.values.size()));
  matrix.setDimensions(program.rowCount(), program.columnCount());
  return matrix;
}

/// at(j) is the value of column j.
template <class At>
OtherAnswer answerOf(const LinearProgram& program, double cost, const At& at) {
  OtherAnswer answer{cost / program.costUnit,
                     Eigen::VectorXd(static_cast<Eigen::Index>(program.xUnits.size()))};
  for (Eigen::Index j = 0; j < answer.grams.size(); ++j) {
    const double z = at(static_cast<int>(j));
    const auto place = static_cast<std::size_t>(j);
    answer.grams[j] = program.xUnits[place] * (program.whole[place] != 0 ? std::round(z) : z);
  }
  return answer;
}

int glpkBounds(double lower, double upper) {
  if (lower == upper) return GLP_FX;
  if (std::isinf(lower)) return std::isinf(upper) ? GLP_FR : GLP_UP;
  return std::isinf(upper) ? GLP_LO : GLP_DB;
}

}  // namespace

struct Glpk::Problem {
  LinearProgram program;
  glp_prob* glpk = glp_create_prob();
  ~Problem() { glp_delete_prob(glpk); }

  bool solve(double tolerance) const {
    glp_smcp settings;
    glp_init_smcp(&settings);
    settings.msg_lev = GLP_MSG_OFF;
    settings.meth = GLP_DUALP;
    settings.tol_bnd = settings.tol_dj = tolerance;
    return glp_simplex(glpk, &settings) == 0 && glp_get_status(glpk) == GLP_OPT;
  }
};

Glpk::Glpk(const LinearProgram& program) : problem_(std::make_unique<Problem>()) {
  problem_->program = program;
  glp_prob* glpk = problem_->glpk;
  glp_term_out(GLP_OFF);
  glp_add_rows(glpk, program.rowCount());
  glp_add_cols(glpk, program.columnCount());
  for (int i = 0; i < program.rowCount(); ++i)
    moveRow(i, program.rowLower[static_cast<std::size_t>(i)], program.rowUpper[static_cast<std::size_t>(i)]);
  for (int j = 0; j < program.columnCount(); ++j) {
    const auto at = static_cast<std::size_t>(j);
    glp_set_col_bnds(glpk, j + 1, glpkBounds(program.lower[at], program.upper[at]), program.lower[at],
                     program.upper[at]);
    glp_set_obj_coef(glpk, j + 1, program.cost[at]);
    if (program.whole[at] != 0) glp_set_col_kind(glpk, j + 1, GLP_IV);
  }
  const Triplets triplets(program, 1);
  glp_load_matrix(glpk, static_cast<int>(program.entries.size()), triplets.rows.data(),
                  triplets.columns.data(), triplets.values.data());
}

Glpk::~Glpk() = default;

void Glpk::moveRow(int row, double lower, double upper) {
  glp_set_row_bnds(problem_->glpk, row + 1, glpkBounds(lower, upper), lower, upper);
}

std::optional<double> Glpk::solve() {
  if (!problem_->solve(1e-7)) return std::nullopt;
  return glp_get_obj_val(problem_->glpk) / problem_->program.costUnit;
}

std::optional<OtherAnswer> Glpk::solveExactly() {
  glp_prob* glpk = problem_->glpk;
  glp_scale_prob(glpk, GLP_SF_AUTO);
  if (!problem_->solve(1e-9)) return std::nullopt;
  if (glp_exact(glpk, nullptr) != 0 || glp_get_status(glpk) != GLP_OPT) return std::nullopt;
  return answerOf(problem_->program, glp_get_obj_val(glpk),
                  [&](int j) { return glp_get_col_prim(glpk, j + 1); });
}

std::optional<OtherAnswer> Glpk::solveWhole(double seconds, double gap) {
  glp_prob* glpk = problem_->glpk;
  if (!problem_->solve(1e-9)) return std::nullopt;
  glp_iocp settings;
  glp_init_iocp(&settings);
  settings.msg_lev = GLP_MSG_OFF;
  settings.tol_int = 1e-9;
  settings.tol_obj = 1e-12;
  settings.mip_gap = gap;
  settings.tm_lim = static_cast<int>(seconds * 1000);
  const int ended = glp_intopt(glpk, &settings);
  const bool isWithinGap = ended == GLP_EMIPGAP && glp_mip_status(glpk) == GLP_FEAS;
  const bool isProven = ended == 0 && glp_mip_status(glpk) == GLP_OPT;
  if (!isWithinGap && !isProven) return std::nullopt;
  return answerOf(problem_->program, glp_mip_obj_val(glpk),
                  [&](int j) { return glp_mip_col_val(glpk, j + 1); });
}

struct Clp::Problem {
  LinearProgram program;
  ClpSimplex clp;
};

Clp::Clp(const LinearProgram& program) : problem_(std::make_unique<Problem>()) {
  problem_->program = program;
  ClpSimplex& clp = problem_->clp;
  clp.setLogLevel(0);
  clp.loadProblem(packed(program), program.lower.data(), program.upper.data(), program.cost.data(),
                  program.rowLower.data(), program.rowUpper.data());
}

Clp::~Clp() = default;

void Clp::moveRow(int row, double lower, double upper) {
  problem_->clp.setRowBounds(row, lower, upper);
}

std::optional<double> Clp::solve() {
  problem_->clp.dual();
  if (!problem_->clp.isProvenOptimal()) return std::nullopt;
  return problem_->clp.objectiveValue() / problem_->program.costUnit;
}

std::optional<OtherAnswer> Clp::solveClosely() {
  ClpSimplex& clp = problem_->clp;
  clp.setPrimalTolerance(1e-9);
  clp.setDualTolerance(1e-9);
  if (!solve()) return std::nullopt;
  return answerOf(problem_->program, clp.objectiveValue(),
                  [&](int j) { return clp.primalColumnSolution()[j]; });
}

std::optional<OtherAnswer> solveWholeByCbc(const LinearProgram& program, double seconds, double gap) {
  const std::unique_ptr<Cbc_Model, void (*)(Cbc_Model*)> model(Cbc_newModel(), Cbc_deleteModel);
  const CoinPackedMatrix matrix = packed(program);
  Cbc_loadProblem(model.get(), program.columnCount(), program.rowCount(), matrix.getVectorStarts(),
                  matrix.getIndices(), matrix.getElements(), program.lower.data(), program.upper.data(),
                  program.cost.data(), program.rowLower.data(), program.rowUpper.data());
  for (int j = 0; j < program.columnCount(); ++j) {
    if (program.whole[static_cast<std::size_t>(j)] != 0) Cbc_setInteger(model.get(), j);
  }
  Cbc_setLogLevel(model.get(), 0);
  const std::string limit = std::to_string(seconds);
  const std::string ratio = std::to_string(gap);
  for (const auto& [name, value] : {std::pair{"log", "0"}, std::pair{"sec", limit.c_str()},
                                    std::pair{"ratioGap", ratio.c_str()}, std::pair{"allowableGap", "1e-10"},
                                    std::pair{"increment", "1e-9"}, std::pair{"integerTolerance", "1e-9"}})
    Cbc_setParameter(model.get(), name, value);
  Cbc_solve(model.get());
  if (Cbc_isProvenOptimal(model.get()) == 0) return std::nullopt;
  const double* z = Cbc_getColSolution(model.get());
  return answerOf(program, Cbc_getObjValue(model.get()), [&](int j) { return z[j]; });
}

}  // namespace tarebowl::reference
