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
  enum class Outcome {
    Optimal,
    Infeasible,
    IterationLimit,
    GainReached  ///< stopped because the dual value has risen as far as asked for
  };

  /// Costs: n columns then m rows. Columns need finite bounds.
  PiecewiseSimplex(const RowMatrix& rows, std::vector<PiecewiseCost> costs);

  [[nodiscard]] const PiecewiseCost& cost(Eigen::Index variable) const {
    return costs_[std::size_t(variable)];
  }
  /// After a change of costs: adoptBound() for a narrowed column, refresh() for other slopes.
  [[nodiscard]] std::vector<PiecewiseCost>& costs() { return costs_; }
  [[nodiscard]] const std::vector<PiecewiseCost>& costs() const { return costs_; }

  /// Rows basic, columns at their cheapest breakpoint.
  void startFromRows();

  /// What is needed to take up the work elsewhere, small: which variables are nonbasic, and the basic slopes.
  struct Basis {
    std::vector<std::int16_t> nonbasic;
    std::vector<float> basicSlope;
  };
  [[nodiscard]] Basis basis() const;
  /// Rebuilds the tableau for a basis from the original rows; costs() may have changed since.
  void restart(const Basis& basis);

  /// All that changes while the simplex works, large: to go on elsewhere at the price of a copy.
  struct State {
    RowMatrix tableau;         ///< basic = tableau * nonbasic; columns filled up with zeros to whole vectors
    Eigen::VectorXd gradient;  ///< of all basic costs, along each column slot
    Eigen::VectorXd below;     ///< slopes left and right of the place of each nonbasic variable
    Eigen::VectorXd above;
    Eigen::VectorXd nonbasicValue;
    Eigen::VectorXd basicValue;
    Eigen::VectorXd low;  ///< the piece in which each basic variable is assumed to lie, and its slope
    Eigen::VectorXd high;
    Eigen::VectorXd slope;
    Eigen::VectorXd weight;  ///< how long each row of the tableau is taken to be
    std::vector<int> pieceLow;
    std::vector<int> pieceHigh;
    std::vector<int> nonbasic;  ///< variable in each column slot
    std::vector<int> basic;     ///< variable in each row slot
    std::vector<int> slot;      ///< of each variable: column slot, or columns + row slot
    std::vector<int> place;     ///< of the nonbasic variable in each column slot
    int sinceRebuild = 0;
  };
  [[nodiscard]] const State& state() const { return s_; }
  /// Goes on from a state; follow with adoptBound() for every column whose bounds differ.
  void resume(const State& state) { s_ = state; }

  /// To be called after the cost of a column was narrowed: moves it inside, keeping dual feasibility.
  void adoptBound(Eigen::Index column);
  /// To be called after prices of rows were multiplied by factor: keeps the basis, places all anew.
  void scaleRowSlopes(double factor, const std::vector<char>& isScaled);

  /// Iterates until optimal or infeasible, or until the dual value has risen by more than gain.
  Outcome optimise(double gain = kInfinity);

  /// Values of the columns.
  [[nodiscard]] Eigen::VectorXd columnValues() const;
  /// Slopes at which the rows are held: the multipliers, within each row's slopes.
  [[nodiscard]] Eigen::VectorXd rowSlopes() const;
  void rowSlopes(Eigen::VectorXd& slopes) const;
  /// After Infeasible: adding any multiple of this to rowSlopes() raises the bound without end.
  [[nodiscard]] const Eigen::VectorXd& infeasibilityRay() const { return ray_; }

  [[nodiscard]] bool isBasic(Eigen::Index variable) const {
    return s_.slot[std::size_t(variable)] >= columns_;
  }
  [[nodiscard]] double value(Eigen::Index variable) const {
    const int slot = s_.slot[std::size_t(variable)];
    return slot < columns_ ? s_.nonbasicValue[slot] : s_.basicValue[slot - columns_];
  }
  /// A breakpoint next to the present value, where a look for the cheapest may start.
  [[nodiscard]] int placeNear(Eigen::Index variable) const {
    const int slot = s_.slot[std::size_t(variable)];
    return slot < columns_ ? s_.place[std::size_t(slot)] : s_.pieceLow[std::size_t(slot - columns_)];
  }
  struct FirstStep {
    double gain = 0.0;   ///< rise of the dual value
    double theta = 0.0;  ///< how far the column's slope moves for it
  };
  /// The first step if a basic column is forced to or beyond target (below its value or above it). Not
  /// followed further than to enough gain.
  [[nodiscard]] FirstStep firstStep(Eigen::Index column, double target, double enough = kInfinity) const;
  /// Row slopes after that step.
  void rowSlopesAfter(Eigen::Index column, double target, double theta, Eigen::VectorXd& slopes) const;

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
    double gain = 0.0;   ///< of the dual value
    Eigen::Index entering = -1;
  };
  struct Leaving {
    int place = 0;
    double at = 0.0;
    double slope = 0.0;
  };

  [[nodiscard]] Piece piece(Eigen::Index row) const;
  void setPiece(Eigen::Index row, const Piece& piece);
  [[nodiscard]] Piece pieceOfSlope(Eigen::Index variable, double slope) const;
  void settle(Eigen::Index column, int place);
  void placeAll();
  void recomputeValues();
  void addToBasicValues(Eigen::Index column, double move);

  [[nodiscard]] Eigen::Index leavingRow() const;
  Outcome step(Eigen::Index row, double& gain);
  void exchange(Eigen::Index row, Eigen::Index column, double direction, const Leaving& leaving);
  void pivot(Eigen::Index row, Eigen::Index column);
  bool pivotTowards(const std::vector<char>& wanted);
  void keepRay(Eigen::Index row, double direction);

  // The ratio test, in piecewise_ratio_test.cpp.
  void fillLimits(Eigen::Index row, double direction) const;
  [[nodiscard]] double limitAt(Eigen::Index column, double alpha, int place) const;
  [[nodiscard]] Eigen::Index firstBlocking(Eigen::Index row) const;
  [[nodiscard]] bool advance(Piece& piece, const PiecewiseCost& cost, bool up) const;
  LongStep longStep(Eigen::Index row, bool up);
  [[nodiscard]] int placeReached(Eigen::Index column) const;
  void pass(Eigen::Index column, int to) const;
  void passBreakpoints();

  RowMatrix original_;
  std::vector<PiecewiseCost> costs_;
  Eigen::Index columns_;
  Eigen::Index rowCount_;
  State s_;
  Eigen::VectorXd ray_;
  mutable Eigen::VectorXd limit_;            // scratch of the ratio test
  mutable std::vector<int> reached_;         // scratch of the ratio test: places
  mutable std::vector<Eigen::Index> moved_;  // scratch of the ratio test: columns that passed a breakpoint
  Eigen::VectorXd factors_;                  // scratch of pivot()
  static constexpr double kFeasibility = 1e-11;  // how far outside its piece a value may lie
  std::int64_t iterations_ = 0;
};

}  // namespace tarebowl::solver
