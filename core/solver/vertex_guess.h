// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <vector>

namespace tarebowl::solver {

/// A guess at the best vertex of   least sum_j cost_j x_j + sum_i price_i violation_i(x)   within limits of
/// x, by primal simplex steps in single precision: each goes down an edge past all the breakpoints beyond
/// which it still goes down (Barrodale and Roberts 1973, "An improved algorithm for discrete l1 linear
/// approximation", SIAM J. Numer. Anal. 10). Who takes it up verifies it in double precision: it promises
/// nothing. Numbers should be near 1. Nothing is allocated after reserve().
class VertexGuess {
 public:
  /// Where a variable stands: a column or a row's activity.
  enum class At : signed char {
    Below,  ///< a row beneath its lower bound
    Lower,  ///< held at its lower bound
    Inside,
    Upper,  ///< held at its upper bound
    Above   ///< a row beyond its upper bound
  };

  void reserve(Eigen::Index rows, Eigen::Index columns);
  /// Row i: its coefficients, bounds (perhaps infinite) and price (infinite: it must hold).
  void setRow(Eigen::Index i, const double* coefficients, double lower, double upper, double price);
  /// Limits finite; start: from where it sets out.
  void setColumn(Eigen::Index j, double lower, double upper, double cost, double start);
  /// Steps until no edge goes down; false where they led nowhere.
  bool run();
  /// The same from the vertex of the last run, after limits of columns moved. A column may come to lie Below
  /// or Above its limits: then it led nowhere too.
  void moveColumn(Eigen::Index j, double lower, double upper);
  bool runOn();

  [[nodiscard]] At column(Eigen::Index j) const { return at_[std::size_t(j)]; }
  [[nodiscard]] At row(Eigen::Index i) const { return at_[std::size_t(columns_ + i)]; }
  [[nodiscard]] int steps() const { return steps_; }

 private:
  struct Edge {
    Eigen::Index column = -1;
    bool rises = true;
    float slope = 0.0F;
  };

  [[nodiscard]] float slopeAt(int variable, At piece) const;
  [[nodiscard]] float boundBelow(int variable, At piece) const;
  [[nodiscard]] float boundAbove(int variable, At piece) const;
  void placeRows();
  void placeAgain();
  [[nodiscard]] At pieceOf(int variable, float value) const;
  bool stepDown();
  void settle(Eigen::Index column, At at);
  void setPiece(Eigen::Index row, At at);
  [[nodiscard]] Edge steepest();
  void fillKinks(const Edge& edge);
  [[nodiscard]] static At pieceAhead(At at, bool rises);
  [[nodiscard]] float ownRoom(const Edge& edge, At piece) const;
  [[nodiscard]] Eigen::Index firstKink(float first) const;
  [[nodiscard]] bool follow(const Edge& edge);
  void passRow(Eigen::Index row);
  void exchange(Eigen::Index row, const Edge& edge);
  void pivot(Eigen::Index row, Eigen::Index column);
  template <int kVectors>
  void addToOthers(Eigen::Index row, Eigen::Index from);

  Eigen::Index rows_ = 0;
  Eigen::Index columns_ = 0;
  Eigen::Index width_ = 0;
  float most_ = 0.0F;  ///< the largest finite price
  using Floats = Eigen::VectorXf;
  Floats table_;          ///< rows_ x width_, by rows: basic = table nonbasic
  Floats lower_, upper_;  ///< of each variable, columns first
  Floats price_;          ///< of each variable; infinite: a limit
  Floats cost_;           ///< of each variable
  std::vector<At> at_;
  std::vector<int> basic_, nonbasic_;
  Floats gradient_, falling_, rising_, lengths_, nonbasicValue_;  ///< of each column slot
  Floats value_, low_, high_, slope_;                             ///< of each row slot
  Floats rate_, kink_;                                            ///< along the edge, of each row slot
  Floats perColumn_, perRow_;                                     ///< scratch
  int steps_ = 0;
};

}  // namespace tarebowl::solver
