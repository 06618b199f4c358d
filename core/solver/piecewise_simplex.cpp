// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/piecewise_simplex.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr int kRebuildAfter = 300;
constexpr double kLongestWeight = 1e8;
/// Columns of the tableau come in whole vectors of this many numbers.
constexpr Eigen::Index kVector = 4;

Eigen::Index padded(Eigen::Index count) {
  return (count + kVector - 1) / kVector * kVector;
}

}  // namespace

PiecewiseSimplex::PiecewiseSimplex(const RowMatrix& rows, std::vector<PiecewiseCost> costs)
    : original_(rows), costs_(std::move(costs)), columns_(rows.cols()), rowCount_(rows.rows()) {
  const Eigen::Index width = padded(columns_);
  s_.tableau.resize(rowCount_, width);
  for (Eigen::VectorXd* const perColumn : {&s_.gradient, &s_.below, &s_.above, &s_.nonbasicValue, &limit_})
    perColumn->setZero(width);
  for (Eigen::VectorXd* const perRow : {&s_.basicValue, &s_.low, &s_.high, &s_.slope, &s_.weight, &factors_})
    perRow->setZero(rowCount_);
  for (std::vector<int>* const perRow : {&s_.pieceLow, &s_.pieceHigh, &s_.basic})
    perRow->resize(std::size_t(rowCount_));
  for (std::vector<int>* const perColumn : {&s_.nonbasic, &s_.place, &reached_})
    perColumn->resize(std::size_t(columns_));
  s_.slot.resize(std::size_t(columns_ + rowCount_));
  moved_.reserve(std::size_t(columns_));
  startFromRows();
}

void PiecewiseSimplex::startFromRows() {
  s_.tableau.setZero();
  s_.tableau.leftCols(columns_) = original_;
  for (int j = 0; j < columns_; ++j) {
    s_.nonbasic[std::size_t(j)] = j;
    s_.slot[std::size_t(j)] = j;
  }
  for (int i = 0; i < rowCount_; ++i) {
    const int variable = static_cast<int>(columns_) + i;
    s_.basic[std::size_t(i)] = variable;
    s_.slot[std::size_t(variable)] = variable;
    setPiece(i, pieceOfSlope(variable, 0.0));
  }
  s_.weight.setOnes();
  s_.sinceRebuild = 0;
  placeAll();
}

PiecewiseSimplex::Piece PiecewiseSimplex::piece(Eigen::Index row) const {
  return {s_.pieceLow[std::size_t(row)], s_.pieceHigh[std::size_t(row)], s_.low[row], s_.high[row],
          s_.slope[row]};
}

void PiecewiseSimplex::setPiece(Eigen::Index row, const Piece& piece) {
  s_.pieceLow[std::size_t(row)] = piece.low;
  s_.pieceHigh[std::size_t(row)] = piece.high;
  s_.low[row] = piece.lowAt;
  s_.high[row] = piece.highAt;
  s_.slope[row] = piece.slope;
}

PiecewiseSimplex::Piece PiecewiseSimplex::pieceOfSlope(Eigen::Index variable, double slope) const {
  const PiecewiseCost& cost = costs_[std::size_t(variable)];
  const int place = cost.placeOfSlope(slope);
  const double tolerance = 1e-5 * (1.0 + std::abs(slope));
  const double above = cost.slopeAbove(place);
  if (std::abs(above - slope) <= tolerance) {
    const int high = cost.next(place);
    return {place, high, cost.at(place), cost.at(high), above};
  }
  const double below = cost.slopeBelow(place);
  if (std::abs(below - slope) <= tolerance) {
    const int low = cost.previous(place);
    return {low, place, cost.at(low), cost.at(place), below};
  }
  return {place, place, cost.at(place), cost.at(place), std::clamp(slope, below, above)};
}

void PiecewiseSimplex::settle(Eigen::Index column, int place) {
  const PiecewiseCost& cost = costs_[std::size_t(s_.nonbasic[std::size_t(column)])];
  s_.place[std::size_t(column)] = place;
  s_.nonbasicValue[column] = cost.at(place);
  s_.below[column] = cost.slopeBelow(place);
  s_.above[column] = cost.slopeAbove(place);
}

void PiecewiseSimplex::placeAll() {
  s_.gradient.setZero();
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    const double slope = s_.slope[i];
    if (slope != 0.0) s_.gradient.noalias() += slope * s_.tableau.row(i).transpose();
  }
  for (Eigen::Index j = 0; j < columns_; ++j)
    settle(j, costs_[std::size_t(s_.nonbasic[std::size_t(j)])].placeOfSlope(-s_.gradient[j]));
  recomputeValues();
}

void PiecewiseSimplex::recomputeValues() {
  s_.basicValue.noalias() = s_.tableau * s_.nonbasicValue;
}

void PiecewiseSimplex::addToBasicValues(Eigen::Index column, double move) {
  if (rowCount_ == 0) return;  // nothing to point into
  const Eigen::Index width = s_.tableau.cols();
  const double* const entries = s_.tableau.data() + column;
  double* const values = s_.basicValue.data();
  for (Eigen::Index i = 0; i < rowCount_; ++i) values[i] += move * entries[i * width];
}

PiecewiseSimplex::Basis PiecewiseSimplex::basis() const {
  Basis basis;
  basis.nonbasic.reserve(s_.nonbasic.size());
  for (const int variable : s_.nonbasic) basis.nonbasic.push_back(static_cast<std::int16_t>(variable));
  basis.basicSlope.assign(std::size_t(columns_ + rowCount_), 0.0F);
  for (Eigen::Index i = 0; i < rowCount_; ++i)
    basis.basicSlope[std::size_t(s_.basic[std::size_t(i)])] = static_cast<float>(s_.slope[i]);
  return basis;
}

/// Exchanges the pair with the largest pivot among those that still stand on the wrong side.
bool PiecewiseSimplex::pivotTowards(const std::vector<char>& wanted) {
  double best = 1e-10;
  Eigen::Index row = -1;
  Eigen::Index column = -1;
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    if (wanted[std::size_t(s_.basic[std::size_t(i)])] == 0) continue;
    for (Eigen::Index j = 0; j < columns_; ++j) {
      if (wanted[std::size_t(s_.nonbasic[std::size_t(j)])] != 0) continue;
      if (std::abs(s_.tableau(i, j)) <= best) continue;
      best = std::abs(s_.tableau(i, j));
      row = i;
      column = j;
    }
  }
  if (row < 0) return false;
  pivot(row, column);
  return true;
}

void PiecewiseSimplex::restart(const Basis& basis) {
  std::vector<char> wanted(std::size_t(columns_ + rowCount_), 0);
  for (const std::int16_t variable : basis.nonbasic) wanted[std::size_t(variable)] = 1;
  s_.tableau.leftCols(columns_) = original_;
  for (int j = 0; j < columns_; ++j) s_.nonbasic[std::size_t(j)] = j;
  for (int i = 0; i < rowCount_; ++i) s_.basic[std::size_t(i)] = static_cast<int>(columns_) + i;
  while (pivotTowards(wanted)) {
  }
  for (int j = 0; j < columns_; ++j) s_.slot[std::size_t(s_.nonbasic[std::size_t(j)])] = j;
  for (int i = 0; i < rowCount_; ++i) {
    const int variable = s_.basic[std::size_t(i)];
    s_.slot[std::size_t(variable)] = static_cast<int>(columns_) + i;
    setPiece(i, pieceOfSlope(variable, basis.basicSlope[std::size_t(variable)]));
  }
  s_.weight.setOnes();
  s_.sinceRebuild = 0;
  placeAll();
}

void PiecewiseSimplex::adoptBound(Eigen::Index column) {
  const PiecewiseCost& cost = costs_[std::size_t(column)];
  const Eigen::Index slot = s_.slot[std::size_t(column)];
  if (slot < columns_) {
    const double slope = -s_.gradient[slot];
    const int current = s_.place[std::size_t(slot)];
    const bool stays = current >= cost.first() && current <= cost.last() &&
                       cost.slopeBelow(current) <= slope && slope <= cost.slopeAbove(current);
    const double before = s_.nonbasicValue[slot];
    settle(slot, stays ? current : cost.placeOfSlope(slope));
    if (s_.nonbasicValue[slot] != before) addToBasicValues(slot, s_.nonbasicValue[slot] - before);
    return;
  }
  const Eigen::Index row = slot - columns_;
  const Piece held = piece(row);
  if (held.low >= cost.first() && held.high <= cost.last() && cost.at(held.low) == held.lowAt &&
      cost.at(held.high) == held.highAt) {
    return;
  }
  // The slope stays, so that nothing else moves; the piece becomes the breakpoint that supports it.
  const int place = cost.placeOfSlope(held.slope);
  const int high = cost.slopeAbove(place) == held.slope ? cost.next(place) : place;
  setPiece(row, {place, high, cost.at(place), cost.at(high), held.slope});
}

void PiecewiseSimplex::scaleRowSlopes(double factor, const std::vector<char>& isScaled) {
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    const int variable = s_.basic[std::size_t(i)];
    const bool scaled = variable >= columns_ && isScaled[std::size_t(variable - columns_)] != 0;
    setPiece(i, pieceOfSlope(variable, scaled ? factor * s_.slope[i] : s_.slope[i]));
  }
  placeAll();
  // A row that is held harder than its new price allows has lost dual feasibility: the rows as basis have it.
  for (Eigen::Index j = 0; j < columns_; ++j) {
    const double slack = 1e-7 * (1.0 + std::abs(s_.gradient[j]));
    if (-s_.gradient[j] < s_.below[j] - slack || -s_.gradient[j] > s_.above[j] + slack)
      return startFromRows();
  }
}

Eigen::Index PiecewiseSimplex::leavingRow() const {
  const double* const value = s_.basicValue.data();
  const double* const low = s_.low.data();
  const double* const high = s_.high.data();
  const double* const weight = s_.weight.data();
  Eigen::Index best = -1;
  double worst = 0.0;
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    const double by = std::max(value[i] - high[i], low[i] - value[i]);
    if (!(by > kFeasibility) || !(by * by > worst * weight[i])) continue;
    if (!(by > kFeasibility * (1.0 + std::min(std::abs(value[i]), 1e6)))) continue;
    worst = by * by / weight[i];
    best = i;
  }
  return best;
}

PiecewiseSimplex::Outcome PiecewiseSimplex::step(Eigen::Index row, double& gain) {
  const bool up = s_.basicValue[row] > s_.high[row];  // above its piece: its slope must rise
  const double direction = up ? 1.0 : -1.0;
  const LongStep step = longStep(row, up);
  if (step.end == LongStep::End::Nowhere) {
    keepRay(row, direction);
    return Outcome::Infeasible;
  }
  gain += step.gain;
  passBreakpoints();
  if (step.theta != 0.0) s_.gradient.noalias() += (direction * step.theta) * s_.tableau.row(row).transpose();
  const double slope = s_.slope[row] + direction * step.theta;
  const int target = up ? step.piece.high : step.piece.low;
  const double targetAt = up ? step.piece.highAt : step.piece.lowAt;
  switch (step.end) {
    case LongStep::End::InPiece:
      setPiece(row, step.piece);
      break;
    case LongStep::End::AtBreakpoint:
      setPiece(row, {target, target, targetAt, targetAt, slope});
      break;
    default:
      exchange(row, step.entering, direction, {target, targetAt, slope});
  }
  return Outcome::Optimal;
}

/// The entering column becomes basic in the piece it moves into; the leaving variable stays at its
/// breakpoint.
void PiecewiseSimplex::exchange(Eigen::Index row, Eigen::Index column, double direction,
                                const Leaving& leaving) {
  const PiecewiseCost& cost = costs_[std::size_t(s_.nonbasic[std::size_t(column)])];
  const bool leftward = direction * s_.tableau(row, column) > 0;
  const int place = s_.place[std::size_t(column)];
  const int other = leftward ? cost.previous(place) : cost.next(place);
  const Piece entered = leftward
                            ? Piece{other, place, cost.at(other), cost.at(place), cost.slopeBelow(place)}
                            : Piece{place, other, cost.at(place), cost.at(other), cost.slopeAbove(place)};
  const double move = (leaving.at - s_.basicValue[row]) / s_.tableau(row, column);
  const double value = s_.nonbasicValue[column] + move;
  addToBasicValues(column, move);
  pivot(row, column);
  s_.slot[std::size_t(s_.basic[std::size_t(row)])] = static_cast<int>(columns_ + row);
  s_.slot[std::size_t(s_.nonbasic[std::size_t(column)])] = static_cast<int>(column);
  s_.basicValue[row] = value;
  setPiece(row, entered);
  s_.gradient[column] = -leaving.slope;
  settle(column, leaving.place);
}

void PiecewiseSimplex::pivot(Eigen::Index row, Eigen::Index column) {
  const Eigen::Index width = s_.tableau.cols();
  double* const table = s_.tableau.data();
  double* const pivotRow = table + row * width;
  const double inverse = 1.0 / pivotRow[column];
  const double ownWeight = s_.weight[row] * inverse * inverse;
  for (Eigen::Index j = 0; j < width; ++j) pivotRow[j] *= -inverse;
  pivotRow[column] = inverse;
  double* const weight = s_.weight.data();
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    double* __restrict const target = table + i * width;
    const double factor = target[column];
    if (i == row || factor == 0.0) continue;
    target[column] = 0.0;
    for (Eigen::Index j = 0; j < width; ++j) target[j] += factor * pivotRow[j];
    weight[i] = std::max(weight[i], factor * factor * ownWeight);
  }
  weight[row] = std::max(1.0, ownWeight);
  if (weight[row] > kLongestWeight) s_.weight.setOnes();
  std::swap(s_.basic[std::size_t(row)], s_.nonbasic[std::size_t(column)]);
}

void PiecewiseSimplex::keepRay(Eigen::Index row, double direction) {
  ray_.setZero(rowCount_);
  const int own = s_.basic[std::size_t(row)];
  if (own >= columns_) ray_[own - columns_] = direction;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    const int variable = s_.nonbasic[std::size_t(j)];
    if (variable >= columns_) ray_[variable - columns_] = -direction * s_.tableau(row, j);
  }
}

PiecewiseSimplex::Outcome PiecewiseSimplex::optimise(double gain) {
  const std::int64_t most = iterations_ + 50 * (columns_ + rowCount_) + 1000;
  bool recomputed = false;
  double gained = 0.0;
  for (;;) {
    const Eigen::Index row = leavingRow();
    if (row < 0) return Outcome::Optimal;
    if (gained > gain) return Outcome::GainReached;
    if (++iterations_ > most) return Outcome::IterationLimit;
    if (++s_.sinceRebuild > kRebuildAfter) {
      restart(basis());
      continue;
    }
    if (step(row, gained) != Outcome::Infeasible) {
      recomputed = false;
      continue;
    }
    if (recomputed) return Outcome::Infeasible;
    recomputeValues();  // values updated step by step carry the rounding of the largest limit they passed
    recomputed = true;
  }
}

Eigen::VectorXd PiecewiseSimplex::columnValues() const {
  Eigen::VectorXd x(columns_);
  for (Eigen::Index j = 0; j < columns_; ++j) x[j] = value(j);
  return x;
}

void PiecewiseSimplex::rowSlopes(Eigen::VectorXd& slopes) const {
  slopes.resize(rowCount_);
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    const int slot = s_.slot[std::size_t(columns_ + i)];
    slopes[i] = slot < columns_ ? -s_.gradient[slot] : s_.slope[slot - columns_];
  }
}

Eigen::VectorXd PiecewiseSimplex::rowSlopes() const {
  Eigen::VectorXd slopes;
  rowSlopes(slopes);
  return slopes;
}

}  // namespace tarebowl::solver
