// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/reference/linear_program.h"

#include <memory>
#include <optional>

/// General solvers of other people, to compare with. Every answer is nothing unless it is proved optimal.
namespace tarebowl::reference {

/// What an answer costs, and the grams, rounded to the grid where there is one.
struct OtherAnswer {
  double value = 0.0;
  Eigen::VectorXd grams;
};

/// GLPK. Kept alive, so that a bound can be moved and the next solve starts from the last basis.
class Glpk {
 public:
  explicit Glpk(const LinearProgram& program);
  ~Glpk();
  Glpk(const Glpk&) = delete;
  Glpk& operator=(const Glpk&) = delete;

  void moveRow(int row, double lower, double upper);
  /// Dual simplex as it comes.
  std::optional<double> solve();
  /// Dual simplex with tolerances of 1e-9, then the simplex in rational arithmetic from its basis.
  std::optional<OtherAnswer> solveExactly();
  /// Branch and cut over the whole columns, to a relative gap.
  std::optional<OtherAnswer> solveWhole(double seconds, double gap = 0.0);

 private:
  struct Problem;
  std::unique_ptr<Problem> problem_;
};

/// Clp, kept alive likewise.
class Clp {
 public:
  explicit Clp(const LinearProgram& program);
  ~Clp();
  Clp(const Clp&) = delete;
  Clp& operator=(const Clp&) = delete;

  void moveRow(int row, double lower, double upper);
  /// Dual simplex as it comes.
  std::optional<double> solve();
  /// Dual simplex with tolerances of 1e-9.
  std::optional<OtherAnswer> solveClosely();

 private:
  struct Problem;
  std::unique_ptr<Problem> problem_;
};

/// CBC's branch and cut over the whole columns, to a relative gap.
[[nodiscard]] std::optional<OtherAnswer> solveWholeByCbc(const LinearProgram& program, double seconds,
                                                         double gap = 0.0);

}  // namespace tarebowl::reference
