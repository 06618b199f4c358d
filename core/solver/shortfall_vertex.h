// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/continuous_solver.h"
#include "core/solver/optimality.h"
#include "core/solver/vertex_guess.h"

#include <Eigen/LU>
#include <optional>
#include <span>
#include <vector>

namespace tarebowl::solver {

/// The least violation alone: an answer, and by how much it would rise per unit by which a row's bound moves
/// (> 0 where the upper bound pushes), in the units of the program.
struct ShortfallVertex {
  Eigen::VectorXd x;
  Eigen::VectorXd multipliers;
};

/// Answers of a program whose limits of columns move: a vertex guessed in single precision from the last one,
/// worked out and verified in double (relative error of the optimality conditions <= 1e-9). The objective is
/// not looked at; limits must be finite.
class ShortfallVertices {
 public:
  /// What program refers to must outlive this, and may move but for the rows.
  /// far, where given: for each column whether its upper limit only stands for none and does not say how much
  /// is much.
  explicit ShortfallVertices(const ContinuousProgram& program, std::span<const char> far = {});

  /// Nothing where the guess is none, which says nothing of the program: the other solvers answer every one.
  [[nodiscard]] std::optional<ShortfallVertex> solve();

 private:
  [[nodiscard]] bool guess();
  [[nodiscard]] bool guessAnew();
  [[nodiscard]] bool take();
  [[nodiscard]] bool work(ShortfallVertex& answer);
  void correct(const Eigen::PartialPivLU<Eigen::MatrixXd>& factor);
  [[nodiscard]] bool isVerified(const ShortfallVertex& answer);

  ContinuousProgram program_;
  double unit_;            // x = unit z
  Eigen::VectorXd scale_;  // scaled row = scale times row
  Eigen::VectorXd amount_;
  Eigen::VectorXd none_;
  VertexGuess guess_;
  int guesses_ = 0;  // from the present table; 0: there is none
  OptimalityCheck check_;

  std::vector<Eigen::Index> used_;  // columns between their limits
  std::vector<Eigen::Index> held_;  // rows at a bound
  Eigen::VectorXd x_;
  Eigen::VectorXd multipliers_;
  Eigen::VectorXd bound_;  // of the rows that are held
};

/// One answer.
[[nodiscard]] std::optional<ShortfallVertex> shortfallVertex(const ContinuousProgram& program,
                                                             std::span<const char> far = {});

}  // namespace tarebowl::solver
