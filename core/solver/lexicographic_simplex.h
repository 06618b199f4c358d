// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"
#include "core/solver/two_level.h"

#include <optional>
#include <vector>

namespace tarebowl::solver {

/// Simplex method for   least sum_v cost_v(variable v)   over the n columns x_j followed by the m activities
/// rows_i x, each cost being a band: a slope between two bounds and a price per unit beyond either. Slopes
/// have two levels, so that violation counts for infinitely more than the objective and both stages are
/// answered in one run. Columns must be hard and bounded.
///
/// A nonbasic variable sits at a bound; a basic one lies in one of the three pieces of its band. Goes on from
/// its last basis: by the dual method where slopes are in order (after bounds moved), by the primal one where
/// values are (after costs or an unused column changed), else from the rows. Long steps in both (Fourer 1985,
/// "A simplex algorithm for piecewise-linear programming I"); Bland's rule where it does not come to an end.
/// The tableau is dense, m x n.
class LexicographicSimplex {
 public:
  enum class Outcome { Optimal, Infeasible, Unbounded, IterationLimit };

  struct Band {
    double low = -kInfinity;
    double high = kInfinity;
    TwoLevel slope{};
    TwoLevel price = kWithoutEnd;  ///< > 0; kWithoutEnd: it must not lie outside
    bool isFar = false;            ///< high only stands for no bound: kept clear of where that costs nothing

    [[nodiscard]] bool isFixed() const { return low >= high; }
  };

  /// bands: n columns, then m rows.
  void assign(const RowMatrix& rows, std::vector<Band> bands);
  void setBand(Eigen::Index variable, const Band& band) { bands_[std::size_t(variable)] = band; }
  void replaceColumn(Eigen::Index column, const Eigen::VectorXd& coefficients, const Band& band);
  /// The next run starts from the rows.
  void forget() { isNew_ = true; }
  [[nodiscard]] bool isNew() const { return isNew_; }
  Outcome run();
  [[nodiscard]] int iterations() const { return iterations_; }

  [[nodiscard]] Eigen::Index rowCount() const { return rows_.rows(); }
  [[nodiscard]] Eigen::Index columnCount() const { return rows_.cols(); }
  [[nodiscard]] const Band& band(Eigen::Index variable) const { return bands_[std::size_t(variable)]; }

  /// Works out values and slopes of the present basis anew.
  void refresh();

  /// The answer, worked out anew for the present basis from the rows themselves.
  struct Reading {
    Eigen::VectorXd x;
    Eigen::VectorXd high;  ///< of the rows' multipliers: > 0 where the upper bound pushes
    Eigen::VectorXd low;
  };
  void read(Reading& reading) const;

  /// The least lambda down to which this basis stays optimal, lambda being a number put in for the higher
  /// level; and which nonbasic variable it is that then moves.
  struct Leaving {
    double lambda = 0.0;
    Eigen::Index slot = -1;  ///< -1: it stays optimal down to 0
    double direction = 1.0;
    double rate = 0.0;  ///< of the higher level along the way
  };
  [[nodiscard]] Leaving leastLambda() const;
  /// How far the basis lets that variable go, and how the columns move with it.
  [[nodiscard]] double reachOf(const Leaving& leaving);
  void columnRates(const Leaving& leaving, Eigen::VectorXd& rates) const;
  /// Goes there: the next basis.
  void follow(const Leaving& leaving);

  /// A bound of one variable that moves with these rates, and where it takes the answer (as in ActivePath).
  void setRates(Eigen::Index variable, double low, double high);
  void direct();
  [[nodiscard]] double reach();
  void advance(double length);
  enum class Passed { On, Ended };
  [[nodiscard]] Passed pass();

 private:
  enum class Piece : signed char { Below = -1, Within = 0, Above = 1 };
  struct State {
    RowMatrix tableau;             // basic = tableau * nonbasic
    Eigen::VectorXd gradientHigh;  // of all basic costs, along each column slot
    Eigen::VectorXd gradientLow;
    Eigen::VectorXd nonbasicValue;
    Eigen::VectorXd basicValue;
    Eigen::VectorXd weight;      // how long each row of the tableau is taken to be
    std::vector<int> nonbasic;   // variable in each column slot
    std::vector<int> basic;      // variable in each row slot
    std::vector<int> slot;       // of each variable: column slot, or columns + row slot
    std::vector<char> isAtHigh;  // of the nonbasic variable in each column slot
    std::vector<Piece> piece;    // of the basic variable in each row slot
    std::vector<char> isLetBe;   // variables whose contradiction is one of rounding
  };

  // Setting up, in lexicographic_simplex.cpp.
  void startFromRows();
  void rebuild();
  void placeAll();
  [[nodiscard]] bool canBePlaced() const;
  void placeNonbasic(Eigen::Index slot);
  [[nodiscard]] bool flipIntoOrder();
  void recomputeValues() { s_.basicValue.noalias() = s_.tableau * s_.nonbasicValue; }
  void pivot(Eigen::Index row, Eigen::Index column);
  void writeColumn(Eigen::Index slot);

  [[nodiscard]] const Band& basicBand(Eigen::Index row) const { return band(s_.basic[std::size_t(row)]); }
  [[nodiscard]] const Band& nonbasicBand(Eigen::Index slot) const {
    return band(s_.nonbasic[std::size_t(slot)]);
  }
  [[nodiscard]] static TwoLevel slopeIn(const Band& band, Piece piece);
  [[nodiscard]] static double lowOf(const Band& band, Piece piece);
  [[nodiscard]] static double highOf(const Band& band, Piece piece);
  [[nodiscard]] static std::optional<Piece> next(const Band& band, Piece piece, bool up);
  [[nodiscard]] Piece pieceEntered(Eigen::Index slot, bool up) const;
  /// How much the slope of a nonbasic variable allows it to be pushed up (down) before it moves.
  [[nodiscard]] TwoLevel slack(Eigen::Index slot, bool up) const;
  [[nodiscard]] double excess(Eigen::Index row, bool& up) const;
  [[nodiscard]] bool isPrimalFeasible() const;
  [[nodiscard]] bool isInOrder(Eigen::Index slot) const;
  [[nodiscard]] bool isDualFeasible() const;
  void addToGradient(Eigen::Index row, const TwoLevel& change);
  void moveNonbasic(Eigen::Index slot, double by);
  void exchange(Eigen::Index row, Eigen::Index slot, Piece entered, bool leavesUp);

  // In lexicographic_dual.cpp.
  struct LongStep {
    enum class End { InPiece, Enters, Nowhere };
    End end = End::Nowhere;
    Piece piece = Piece::Within;
    TwoLevel theta{};
    Eigen::Index entering = -1;
  };
  Outcome runDual();
  [[nodiscard]] Eigen::Index leavingRow(bool& up) const;
  [[nodiscard]] LongStep longStep(Eigen::Index row, bool up, double rate);
  [[nodiscard]] Eigen::Index firstBlocking(Eigen::Index row) const;
  [[nodiscard]] bool dualStep(Eigen::Index row, bool up, double rate);

  // In lexicographic_primal.cpp.
  struct Edge {
    double length = kInfinity;
    Eigen::Index row = -1;  // which leaves; -1: the moving variable arrives at its other bound
    bool isFlip = false;
  };
  Outcome runPrimal();
  [[nodiscard]] Eigen::Index enteringSlot(bool& up) const;
  [[nodiscard]] Edge edge(Eigen::Index slot, bool up, TwoLevel rate);
  void take(Eigen::Index slot, bool up, const Edge& edge);
  void bringBack();

  RowMatrix rows_;
  std::vector<Band> bands_;
  State s_;
  bool isNew_ = true;
  bool isOld_ = false;  // columns were replaced
  bool isCareful_ = false;
  int iterations_ = 0;
  int most_ = 0;
  int sinceRebuild_ = 0;

  std::vector<TwoLevel> limit_;   // scratch of the ratio tests
  std::vector<double> distance_;  // scratch of the ratio tests
  std::vector<Piece> reached_;    // scratch of the ratio tests
  std::vector<char> flipped_;     // scratch of the ratio tests

  Eigen::Index moving_ = -1;
  double lowRate_ = 0.0;
  double highRate_ = 0.0;
  double nonbasicRate_ = 0.0;
  Eigen::VectorXd basicRate_;
  Eigen::Index eventRow_ = -1;
  bool eventUp_ = true;
};

}  // namespace tarebowl::solver
