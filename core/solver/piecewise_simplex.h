// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/piecewise_cost.h"
#include "core/solver/program.h"

#include <cstdint>
#include <vector>

namespace tarebowl::solver {

/// Dual simplex for   least sum_j cost_j(x_j) + sum_i cost_{n+i}(rows_i x)   over convex piecewise-linear
/// costs.
///
/// Variables are the n columns followed by the m row activities. A nonbasic variable sits at a breakpoint; a
/// basic one is assumed to lie in a piece, whose slope it contributes. Every iteration keeps all slopes
/// consistent (dual feasible), so the dual value is a lower bound at any time; long steps pass breakpoints
/// without a change of basis (Fourer 1985, "A simplex algorithm for piecewise-linear programming I"; bounded
/// case: Maros 2003, "A generalized dual phase-2 simplex algorithm"). An elastic row is merely a row whose
/// outer slopes are its price: no slack columns.
///
/// The tableau is dense, m x n: meant for tens of rows and columns and thousands of re-solves.
class PiecewiseSimplex {
 public:
  enum class Outcome { Optimal, Infeasible, IterationLimit };

  /// Costs: n columns then m rows. Columns need finite bounds.
  PiecewiseSimplex(const RowMatrix& rows, std::vector<PiecewiseCost> costs);

  [[nodiscard]] const PiecewiseCost& cost(Eigen::Index variable) const {
    return costs_[std::size_t(variable)];
  }
  [[nodiscard]] std::vector<PiecewiseCost>& costs() { return costs_; }
  [[nodiscard]] const std::vector<PiecewiseCost>& costs() const { return costs_; }

  /// Rows basic, columns at their cheapest breakpoint.
  void startFromRows();

  /// What is needed to take up the work elsewhere: which variables are nonbasic, and the basic slopes.
  struct Basis {
    std::vector<std::int16_t> nonbasic;
    std::vector<float> basicSlope;
  };
  [[nodiscard]] Basis basis() const;
  /// Rebuilds the tableau for a basis from the original rows; costs() may have changed since.
  void restart(const Basis& basis);
  /// To be called after costs() of columns were narrowed: moves what is no longer inside, keeping dual
  /// feasibility.
  void adoptBounds();

  /// Iterates until optimal or infeasible.
  Outcome optimise();

  /// How far outside its piece a value may lie, relative to 1 + its size; for the last digits of a final
  /// answer.
  void setFeasibility(double tolerance) { feasibility_ = tolerance; }

  /// Values of the columns.
  [[nodiscard]] Eigen::VectorXd columnValues() const;
  /// Slopes at which the rows are held: the multipliers, within each row's slopes.
  [[nodiscard]] Eigen::VectorXd rowSlopes() const;
  /// Both, solved anew for the present basis from the original rows: to the last digits that its conditioning
  /// allows.
  void polish(Eigen::VectorXd& columnValues, Eigen::VectorXd& rowSlopes) const;
  /// After Infeasible: adding any multiple of this to rowSlopes() raises the bound without end.
  [[nodiscard]] const Eigen::VectorXd& infeasibilityRay() const { return ray_; }

  [[nodiscard]] bool isBasic(Eigen::Index variable) const { return slot_[std::size_t(variable)] >= columns_; }
  [[nodiscard]] double value(Eigen::Index variable) const;
  /// Rise of the dual value in the first step if a basic column is forced to or beyond target (below its
  /// value or above it).
  [[nodiscard]] double firstGain(Eigen::Index column, double target) const;

 private:
  /// Where a basic variable is assumed to lie: between two breakpoints (equal: at one), and the slope it is
  /// held at.
  struct Piece {
    int low = 0;
    int high = 0;
    double lowAt = 0.0;
    double highAt = 0.0;
    double slope = 0.0;
  };

  /// The outcome of a ratio test.
  struct LongStep {
    enum class End { InPiece, AtBreakpoint, Enters, Nowhere };
    Piece piece;  ///< in which the leaving variable has arrived, or at whose nearer end it is to stay
    End end = End::InPiece;
    double theta = 0.0;  ///< how far its slope moved
    Eigen::Index entering = -1;
  };
  struct Leaving {
    int place = 0;
    double at = 0.0;
    double slope = 0.0;
  };

  /// How far the leaving slope may move before the nonbasic column at place has its own slope at an end.
  [[nodiscard]] double ratio(Eigen::Index column, double alpha, int place) const;
  [[nodiscard]] Piece pieceOfSlope(Eigen::Index variable, double slope) const;
  void placeAll();
  void recomputeValues();
  [[nodiscard]] Eigen::Index leavingRow() const;
  Outcome step(Eigen::Index row);
  [[nodiscard]] Eigen::Index firstBlocking(Eigen::Index row) const;
  LongStep longStep(Eigen::Index row, bool up);
  void passBreakpoints();
  void exchange(Eigen::Index row, Eigen::Index column, double direction, const Leaving& leaving);
  [[nodiscard]] bool advance(Piece& piece, const PiecewiseCost& cost, bool up) const;
  void pivot(Eigen::Index row, Eigen::Index column);
  void keepRay(Eigen::Index row, double direction);

  RowMatrix original_;
  std::vector<PiecewiseCost> costs_;
  Eigen::Index columns_;
  Eigen::Index rowCount_;

  RowMatrix tableau_;                   // basic = tableau * nonbasic
  std::vector<Eigen::Index> nonbasic_;  // variable in each column slot
  std::vector<Eigen::Index> basic_;     // variable in each row slot
  std::vector<Eigen::Index> slot_;      // of each variable: column slot, or columns_ + row slot
  std::vector<int> place_;              // of the nonbasic variable in each column slot
  Eigen::VectorXd nonbasicValue_;
  std::vector<Piece> piece_;  // of the basic variable in each row slot
  Eigen::VectorXd basicValue_;
  Eigen::VectorXd gradient_;  // of all basic costs, along each column slot
  Eigen::VectorXd rowNorm_;   // 1 + squared norm of each tableau row
  Eigen::VectorXd ray_;
  mutable std::vector<double> limit_;  // scratch of step() and firstGain()
  mutable std::vector<int> reached_;   // scratch of step() and firstGain()
  double feasibility_ = 1e-11;
  std::int64_t iterations_ = 0;
  int sinceRebuild_ = 0;
};

}  // namespace tarebowl::solver
