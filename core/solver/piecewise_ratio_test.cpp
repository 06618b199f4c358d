// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// How far the slope of a leaving variable may move, and what that gains.
#include "core/solver/piecewise_simplex.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kSmallestPivot = 1e-9;

}  // namespace

/// For every column: how far the leaving slope may move before the column's own slope is at an end.
void PiecewiseSimplex::fillLimits(Eigen::Index row, double direction) const {
  const Eigen::Index width = s_.tableau.cols();
  const double* const alphas = s_.tableau.data() + row * width;
  const double* const gradient = s_.gradient.data();
  const double* const below = s_.below.data();
  const double* const above = s_.above.data();
  double* const limit = limit_.data();
  for (Eigen::Index j = 0; j < width; ++j) {
    const double alpha = direction * alphas[j];
    const double down = -below[j] - gradient[j];
    const double up = above[j] + gradient[j];
    const double room = alpha > 0 ? down : up;
    const double size = std::abs(alpha);
    const double most = (room > 0 ? room : 0.0) / size;
    limit[j] = size > kSmallestPivot ? most : kInfinity;
  }
}

double PiecewiseSimplex::limitAt(Eigen::Index column, double alpha, int place) const {
  const PiecewiseCost& cost = costs_[std::size_t(s_.nonbasic[std::size_t(column)])];
  const double limit = alpha > 0 ? (-cost.slopeBelow(place) - s_.gradient[column]) / alpha
                                 : (s_.gradient[column] + cost.slopeAbove(place)) / -alpha;
  return std::max(limit, 0.0);
}

/// The nonbasic column that blocks first; of those that block within rounding, the one with the largest
/// pivot.
Eigen::Index PiecewiseSimplex::firstBlocking(Eigen::Index row) const {
  const double* const limit = limit_.data();
  double least = kInfinity;
  for (Eigen::Index j = 0; j < columns_; ++j) least = limit[j] < least ? limit[j] : least;
  if (least == kInfinity) return -1;
  const double* const alphas = s_.tableau.data() + row * s_.tableau.cols();
  Eigen::Index first = -1;
  double largest = 0.0;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    if (limit[j] > least + 1e-12 || std::abs(alphas[j]) <= largest) continue;
    largest = std::abs(alphas[j]);
    first = j;
  }
  return first;
}

bool PiecewiseSimplex::advance(Piece& piece, const PiecewiseCost& cost, bool up) const {
  const int from = up ? piece.high : piece.low;
  const double slope = up ? cost.slopeAbove(from) : cost.slopeBelow(from);
  if (!std::isfinite(slope)) return false;
  const int to = up ? cost.next(from) : cost.previous(from);
  piece = up ? Piece{from, to, cost.at(from), cost.at(to), slope}
             : Piece{to, from, cost.at(to), cost.at(from), slope};
  return true;
}

/// How far the slope of a leaving variable moves: past its own breakpoints and those of nonbasic columns for
/// as long as it stays outside its piece.
PiecewiseSimplex::LongStep PiecewiseSimplex::longStep(Eigen::Index row, bool up) {
  const PiecewiseCost& ownCost = costs_[std::size_t(s_.basic[std::size_t(row)])];
  const double direction = up ? 1.0 : -1.0;
  const Piece start = piece(row);
  const double nearEnough = kFeasibility * (1.0 + std::min(std::abs(s_.basicValue[row]), 1e6));
  double rate = up ? s_.basicValue[row] - start.highAt : start.lowAt - s_.basicValue[row];
  fillLimits(row, direction);
  moved_.clear();
  LongStep step{start};
  for (;;) {
    Piece nextPiece = step.piece;
    const bool canAdvance = advance(nextPiece, ownCost, up);
    const double ownLimit =
        canAdvance ? std::max(step.theta, direction * (nextPiece.slope - start.slope)) : kInfinity;
    const Eigen::Index first = firstBlocking(row);
    if (first < 0 && !canAdvance) {
      step.end = LongStep::End::Nowhere;
      return step;
    }
    const double limit = first < 0 ? kInfinity : std::max(step.theta, limit_[first]);
    const double reached = std::min(ownLimit, limit);
    step.gain += rate * (reached - step.theta);
    step.theta = reached;
    if (ownLimit <= limit) {
      step.piece = nextPiece;
      const double length = nextPiece.highAt - nextPiece.lowAt;
      if (rate <= length + kFeasibility) return step;  // it lies in the next piece: no change of basis
      rate -= length;
      continue;
    }
    const double alpha = direction * s_.tableau(row, first);
    const PiecewiseCost& cost = costs_[std::size_t(s_.nonbasic[std::size_t(first)])];
    const int place = placeReached(first);
    const int to = alpha > 0 ? cost.previous(place) : cost.next(place);
    const double length = std::abs(cost.at(to) - cost.at(place));
    if (!(rate > std::abs(alpha) * length)) {
      step.end = LongStep::End::Enters;
      step.entering = first;
      return step;
    }
    rate -= std::abs(alpha) * length;
    pass(first, to);
    limit_[first] = limitAt(first, alpha, to);
    if (rate <= nearEnough) {
      step.end = LongStep::End::AtBreakpoint;
      return step;
    }
  }
}

int PiecewiseSimplex::placeReached(Eigen::Index column) const {
  const bool hasMoved = std::find(moved_.begin(), moved_.end(), column) != moved_.end();
  return hasMoved ? reached_[std::size_t(column)] : s_.place[std::size_t(column)];
}

void PiecewiseSimplex::pass(Eigen::Index column, int to) const {
  if (std::find(moved_.begin(), moved_.end(), column) == moved_.end()) moved_.push_back(column);
  reached_[std::size_t(column)] = to;
}

/// Moves the nonbasic columns that passed breakpoints without entering.
void PiecewiseSimplex::passBreakpoints() {
  for (const Eigen::Index j : moved_) {
    const double before = s_.nonbasicValue[j];
    settle(j, reached_[std::size_t(j)]);
    addToBasicValues(j, s_.nonbasicValue[j] - before);
  }
}

PiecewiseSimplex::FirstStep PiecewiseSimplex::firstStep(Eigen::Index column, double target,
                                                        double enough) const {
  const Eigen::Index row = s_.slot[std::size_t(column)] - columns_;
  const double direction = s_.basicValue[row] > target ? 1.0 : -1.0;
  double rate = std::abs(s_.basicValue[row] - target);
  fillLimits(row, direction);
  moved_.clear();
  FirstStep step;
  for (;;) {
    Eigen::Index first = 0;
    const double least = limit_.head(columns_).minCoeff(&first);
    if (least == kInfinity) return {kInfinity, std::max(1.0, 2.0 * step.theta)};
    const double reached = std::max(least, step.theta);
    step.gain += rate * (reached - step.theta);
    step.theta = reached;
    const double alpha = direction * s_.tableau(row, first);
    const PiecewiseCost& cost = costs_[std::size_t(s_.nonbasic[std::size_t(first)])];
    const int place = placeReached(first);
    const int to = alpha > 0 ? cost.previous(place) : cost.next(place);
    rate -= std::abs(alpha) * std::abs(cost.at(to) - cost.at(place));
    if (!(rate > 0) || step.gain > enough) return step;
    pass(first, to);
    limit_[first] = limitAt(first, alpha, to);
  }
}

void PiecewiseSimplex::rowSlopesAfter(Eigen::Index column, double target, double theta,
                                      Eigen::VectorXd& slopes) const {
  rowSlopes(slopes);
  const Eigen::Index row = s_.slot[std::size_t(column)] - columns_;
  const double move = s_.basicValue[row] > target ? theta : -theta;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    const int variable = s_.nonbasic[std::size_t(j)];
    if (variable >= columns_) slopes[variable - columns_] -= move * s_.tableau(row, j);
  }
}

}  // namespace tarebowl::solver
