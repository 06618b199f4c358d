// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/piecewise_simplex.h"

#include <Eigen/LU>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kSmallestPivot = 1e-9;
constexpr double kRebuildPivot = 1e-10;
constexpr int kRebuildAfter = 200;

bool isOutside(double value, double low, double high, double tolerance, double& by) {
  const double scale = tolerance * (1.0 + std::min(std::abs(value), 1e6));
  by = std::max(value - high, low - value);
  return by > scale;
}

}  // namespace

PiecewiseSimplex::PiecewiseSimplex(const RowMatrix& rows, std::vector<PiecewiseCost> costs)
    : original_(rows), costs_(std::move(costs)), columns_(rows.cols()), rowCount_(rows.rows()) {
  nonbasic_.resize(std::size_t(columns_));
  basic_.resize(std::size_t(rowCount_));
  slot_.resize(std::size_t(columns_ + rowCount_));
  place_.resize(std::size_t(columns_));
  piece_.resize(std::size_t(rowCount_));
  limit_.resize(std::size_t(columns_));
  reached_.resize(std::size_t(columns_));
  nonbasicValue_.resize(columns_);
  basicValue_.resize(rowCount_);
  gradient_.resize(columns_);
  rowNorm_.resize(rowCount_);
  startFromRows();
}

void PiecewiseSimplex::startFromRows() {
  tableau_ = original_;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    nonbasic_[std::size_t(j)] = j;
    slot_[std::size_t(j)] = j;
  }
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    basic_[std::size_t(i)] = columns_ + i;
    slot_[std::size_t(columns_ + i)] = columns_ + i;
    piece_[std::size_t(i)] = pieceOfSlope(columns_ + i, 0.0);
  }
  placeAll();
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

void PiecewiseSimplex::placeAll() {
  gradient_.setZero();
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    const double slope = piece_[std::size_t(i)].slope;
    if (slope != 0.0) gradient_.noalias() += slope * tableau_.row(i).transpose();
  }
  for (Eigen::Index j = 0; j < columns_; ++j) {
    const PiecewiseCost& cost = costs_[std::size_t(nonbasic_[std::size_t(j)])];
    place_[std::size_t(j)] = cost.placeOfSlope(-gradient_[j]);
    nonbasicValue_[j] = cost.at(place_[std::size_t(j)]);
  }
  for (Eigen::Index i = 0; i < rowCount_; ++i) rowNorm_[i] = 1.0 + tableau_.row(i).squaredNorm();
  recomputeValues();
  sinceRebuild_ = 0;
}

void PiecewiseSimplex::recomputeValues() {
  basicValue_.noalias() = tableau_ * nonbasicValue_;
}

PiecewiseSimplex::Basis PiecewiseSimplex::basis() const {
  Basis basis;
  basis.nonbasic.reserve(nonbasic_.size());
  for (const Eigen::Index variable : nonbasic_) basis.nonbasic.push_back(static_cast<std::int16_t>(variable));
  basis.basicSlope.assign(std::size_t(columns_ + rowCount_), 0.0F);
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    basis.basicSlope[std::size_t(basic_[std::size_t(i)])] = static_cast<float>(piece_[std::size_t(i)].slope);
  }
  return basis;
}

void PiecewiseSimplex::restart(const Basis& basis) {
  std::vector<char> wanted(std::size_t(columns_ + rowCount_), 0);
  for (const std::int16_t variable : basis.nonbasic) wanted[std::size_t(variable)] = 1;
  tableau_ = original_;
  for (Eigen::Index j = 0; j < columns_; ++j) nonbasic_[std::size_t(j)] = j;
  for (Eigen::Index i = 0; i < rowCount_; ++i) basic_[std::size_t(i)] = columns_ + i;
  for (;;) {  // exchange with the largest pivot among the pairs that still stand on the wrong side
    double best = kRebuildPivot;
    Eigen::Index row = -1;
    Eigen::Index column = -1;
    for (Eigen::Index i = 0; i < rowCount_; ++i) {
      if (wanted[std::size_t(basic_[std::size_t(i)])] == 0) continue;
      for (Eigen::Index j = 0; j < columns_; ++j) {
        if (wanted[std::size_t(nonbasic_[std::size_t(j)])] != 0) continue;
        if (std::abs(tableau_(i, j)) > best) {
          best = std::abs(tableau_(i, j));
          row = i;
          column = j;
        }
      }
    }
    if (row < 0) break;
    pivot(row, column);
  }
  for (Eigen::Index j = 0; j < columns_; ++j) slot_[std::size_t(nonbasic_[std::size_t(j)])] = j;
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    const Eigen::Index variable = basic_[std::size_t(i)];
    slot_[std::size_t(variable)] = columns_ + i;
    piece_[std::size_t(i)] = pieceOfSlope(variable, basis.basicSlope[std::size_t(variable)]);
  }
  placeAll();
}

void PiecewiseSimplex::adoptBounds() {
  for (Eigen::Index j = 0; j < columns_; ++j) {
    const PiecewiseCost& cost = costs_[std::size_t(nonbasic_[std::size_t(j)])];
    const int place = cost.placeOfSlope(-gradient_[j]);
    const int current = place_[std::size_t(j)];
    const bool stays = current >= cost.first() && current <= cost.last() &&
                       cost.slopeBelow(current) <= -gradient_[j] && -gradient_[j] <= cost.slopeAbove(current);
    const int target = stays ? current : place;
    const double move = cost.at(target) - nonbasicValue_[j];
    place_[std::size_t(j)] = target;
    if (move != 0.0) {
      nonbasicValue_[j] += move;
      basicValue_.noalias() += move * tableau_.col(j);
    }
  }
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    const Eigen::Index variable = basic_[std::size_t(i)];
    if (variable >= columns_) continue;
    const PiecewiseCost& cost = costs_[std::size_t(variable)];
    Piece& piece = piece_[std::size_t(i)];
    if (piece.low >= cost.first() && piece.high <= cost.last() && cost.at(piece.low) == piece.lowAt &&
        cost.at(piece.high) == piece.highAt) {
      continue;
    }
    // The slope stays, so that nothing else moves; the piece becomes the breakpoint that supports it.
    const int place = cost.placeOfSlope(piece.slope);
    if (cost.slopeAbove(place) == piece.slope) {
      const int high = cost.next(place);
      piece = {place, high, cost.at(place), cost.at(high), piece.slope};
    } else {
      piece = {place, place, cost.at(place), cost.at(place), piece.slope};
    }
  }
}

Eigen::Index PiecewiseSimplex::leavingRow() const {
  Eigen::Index best = -1;
  double worst = 0.0;
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    const Piece& piece = piece_[std::size_t(i)];
    double by = 0.0;
    if (!isOutside(basicValue_[i], piece.lowAt, piece.highAt, feasibility_, by)) continue;
    const double merit = by * by / rowNorm_[i];
    if (merit > worst) {
      worst = merit;
      best = i;
    }
  }
  return best;
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

/// The nonbasic column that blocks first; of those that block within rounding, the one with the largest
/// pivot.
Eigen::Index PiecewiseSimplex::firstBlocking(Eigen::Index row) const {
  Eigen::Index first = -1;
  double least = kInfinity;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    const double limit = limit_[std::size_t(j)];
    const bool isLarger = first >= 0 && std::abs(tableau_(row, j)) > std::abs(tableau_(row, first));
    if (limit < least - 1e-12 || (limit <= least + 1e-12 && isLarger)) {
      least = std::min(limit, least);
      first = j;
    }
  }
  return first;
}

/// How far the slope of a leaving variable moves: past its own breakpoints and those of nonbasic columns for
/// as long as it stays outside its piece.
PiecewiseSimplex::LongStep PiecewiseSimplex::longStep(Eigen::Index row, bool up) {
  const PiecewiseCost& ownCost = costs_[std::size_t(basic_[std::size_t(row)])];
  const double direction = up ? 1.0 : -1.0;
  const Piece& start = piece_[std::size_t(row)];
  const double nearEnough = feasibility_ * (1.0 + std::min(std::abs(basicValue_[row]), 1e6));
  double rate = up ? basicValue_[row] - start.highAt : start.lowAt - basicValue_[row];
  for (Eigen::Index j = 0; j < columns_; ++j) {
    limit_[std::size_t(j)] = ratio(j, direction * tableau_(row, j), place_[std::size_t(j)]);
    reached_[std::size_t(j)] = place_[std::size_t(j)];
  }
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
    const double limit = first < 0 ? kInfinity : std::max(step.theta, limit_[std::size_t(first)]);
    if (ownLimit <= limit) {
      step.theta = ownLimit;
      step.piece = nextPiece;
      const double length = nextPiece.highAt - nextPiece.lowAt;
      if (rate <= length + feasibility_) return step;  // it lies in the next piece: no change of basis
      rate -= length;
      continue;
    }
    step.theta = limit;
    const double alpha = direction * tableau_(row, first);
    const PiecewiseCost& cost = costs_[std::size_t(nonbasic_[std::size_t(first)])];
    const int place = reached_[std::size_t(first)];
    const int to = alpha > 0 ? cost.previous(place) : cost.next(place);
    const double length = std::abs(cost.at(to) - cost.at(place));
    if (!(rate > std::abs(alpha) * length)) {
      step.end = LongStep::End::Enters;
      step.entering = first;
      return step;
    }
    rate -= std::abs(alpha) * length;
    reached_[std::size_t(first)] = to;
    limit_[std::size_t(first)] = ratio(first, alpha, to);
    if (rate <= nearEnough) {
      step.end = LongStep::End::AtBreakpoint;
      return step;
    }
  }
}

/// Moves the nonbasic columns that passed breakpoints without entering.
void PiecewiseSimplex::passBreakpoints() {
  for (Eigen::Index j = 0; j < columns_; ++j) {
    const int to = reached_[std::size_t(j)];
    if (to == place_[std::size_t(j)]) continue;
    const double value = costs_[std::size_t(nonbasic_[std::size_t(j)])].at(to);
    basicValue_.noalias() += (value - nonbasicValue_[j]) * tableau_.col(j);
    nonbasicValue_[j] = value;
    place_[std::size_t(j)] = to;
  }
}

PiecewiseSimplex::Outcome PiecewiseSimplex::step(Eigen::Index row) {
  const bool up = basicValue_[row] > piece_[std::size_t(row)].highAt;  // above its piece: its slope must rise
  const double direction = up ? 1.0 : -1.0;
  const LongStep step = longStep(row, up);
  if (step.end == LongStep::End::Nowhere) {
    keepRay(row, direction);
    return Outcome::Infeasible;
  }
  passBreakpoints();
  if (step.theta != 0.0) gradient_.noalias() += (direction * step.theta) * tableau_.row(row).transpose();
  const double slope = piece_[std::size_t(row)].slope + direction * step.theta;
  const int target = up ? step.piece.high : step.piece.low;
  const double targetAt = up ? step.piece.highAt : step.piece.lowAt;
  switch (step.end) {
    case LongStep::End::InPiece:
      piece_[std::size_t(row)] = step.piece;
      break;
    case LongStep::End::AtBreakpoint:
      piece_[std::size_t(row)] = {target, target, targetAt, targetAt, slope};
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
  const PiecewiseCost& cost = costs_[std::size_t(nonbasic_[std::size_t(column)])];
  const bool leftward = direction * tableau_(row, column) > 0;
  const int place = place_[std::size_t(column)];
  const int other = leftward ? cost.previous(place) : cost.next(place);
  const Piece entered = leftward
                            ? Piece{other, place, cost.at(other), cost.at(place), cost.slopeBelow(place)}
                            : Piece{place, other, cost.at(place), cost.at(other), cost.slopeAbove(place)};
  const double move = (leaving.at - basicValue_[row]) / tableau_(row, column);
  const double value = nonbasicValue_[column] + move;
  basicValue_.noalias() += move * tableau_.col(column);
  pivot(row, column);
  slot_[std::size_t(basic_[std::size_t(row)])] = columns_ + row;
  slot_[std::size_t(nonbasic_[std::size_t(column)])] = column;
  basicValue_[row] = value;
  piece_[std::size_t(row)] = entered;
  place_[std::size_t(column)] = leaving.place;
  nonbasicValue_[column] = leaving.at;
  gradient_[column] = -leaving.slope;
}

void PiecewiseSimplex::pivot(Eigen::Index row, Eigen::Index column) {
  const double inverse = 1.0 / tableau_(row, column);
  const Eigen::VectorXd factors = tableau_.col(column);
  tableau_.row(row) *= -inverse;
  tableau_(row, column) = inverse;
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    if (i == row || factors[i] == 0.0) continue;
    tableau_(i, column) = 0.0;
    tableau_.row(i).noalias() += factors[i] * tableau_.row(row);
    rowNorm_[i] = 1.0 + tableau_.row(i).squaredNorm();
  }
  rowNorm_[row] = 1.0 + tableau_.row(row).squaredNorm();
  std::swap(basic_[std::size_t(row)], nonbasic_[std::size_t(column)]);
}

void PiecewiseSimplex::keepRay(Eigen::Index row, double direction) {
  ray_.setZero(rowCount_);
  if (basic_[std::size_t(row)] >= columns_) ray_[basic_[std::size_t(row)] - columns_] = direction;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    const Eigen::Index variable = nonbasic_[std::size_t(j)];
    if (variable >= columns_) ray_[variable - columns_] = -direction * tableau_(row, j);
  }
}

PiecewiseSimplex::Outcome PiecewiseSimplex::optimise() {
  const std::int64_t most = iterations_ + 50 * (columns_ + rowCount_) + 1000;
  bool recomputed = false;
  for (;;) {
    const Eigen::Index row = leavingRow();
    if (row < 0) return Outcome::Optimal;
    if (++iterations_ > most) return Outcome::IterationLimit;
    if (++sinceRebuild_ > kRebuildAfter) {
      restart(basis());
      continue;
    }
    if (step(row) != Outcome::Infeasible) {
      recomputed = false;
      continue;
    }
    if (recomputed) return Outcome::Infeasible;
    recomputeValues();  // values updated step by step carry the rounding of the largest limit they passed
    recomputed = true;
  }
}

double PiecewiseSimplex::value(Eigen::Index variable) const {
  const Eigen::Index slot = slot_[std::size_t(variable)];
  return slot < columns_ ? nonbasicValue_[slot] : basicValue_[slot - columns_];
}

Eigen::VectorXd PiecewiseSimplex::columnValues() const {
  Eigen::VectorXd x(columns_);
  for (Eigen::Index j = 0; j < columns_; ++j) x[j] = value(j);
  return x;
}

Eigen::VectorXd PiecewiseSimplex::rowSlopes() const {
  Eigen::VectorXd slopes(rowCount_);
  for (Eigen::Index i = 0; i < rowCount_; ++i) {
    const Eigen::Index slot = slot_[std::size_t(columns_ + i)];
    slopes[i] = slot < columns_ ? -gradient_[slot] : piece_[std::size_t(slot - columns_)].slope;
  }
  return slopes;
}

void PiecewiseSimplex::polish(Eigen::VectorXd& values, Eigen::VectorXd& slopes) const {
  values = columnValues();
  slopes = rowSlopes();
  std::vector<Eigen::Index> freeColumns;
  std::vector<Eigen::Index> heldRows;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    if (isBasic(j)) freeColumns.push_back(j);
    if (nonbasic_[std::size_t(j)] >= columns_) {
      heldRows.push_back(nonbasic_[std::size_t(j)] - columns_);
    }
  }
  if (freeColumns.empty()) return;
  const Eigen::MatrixXd corner = original_(heldRows, freeColumns);
  const Eigen::PartialPivLU<Eigen::MatrixXd> factor(corner);
  const Eigen::PartialPivLU<Eigen::MatrixXd> transposed(corner.transpose());
  for (int round = 0; round < 2; ++round) {  // one solve and one refinement, as corrections of what is there
    Eigen::VectorXd rowResidual(Eigen::Index(heldRows.size()));
    for (std::size_t k = 0; k < heldRows.size(); ++k) {
      rowResidual[Eigen::Index(k)] = value(columns_ + heldRows[k]) - original_.row(heldRows[k]).dot(values);
    }
    const Eigen::VectorXd columnCorrection = factor.solve(rowResidual);
    Eigen::VectorXd slopeResidual(Eigen::Index(freeColumns.size()));
    for (std::size_t k = 0; k < freeColumns.size(); ++k) {
      const Piece& piece = piece_[std::size_t(slot_[std::size_t(freeColumns[k])] - columns_)];
      slopeResidual[Eigen::Index(k)] = -piece.slope - original_.col(freeColumns[k]).dot(slopes);
    }
    const Eigen::VectorXd slopeCorrection = transposed.solve(slopeResidual);
    if (!columnCorrection.allFinite() || !slopeCorrection.allFinite()) return;
    for (std::size_t k = 0; k < freeColumns.size(); ++k)
      values[freeColumns[k]] += columnCorrection[Eigen::Index(k)];
    for (std::size_t k = 0; k < heldRows.size(); ++k) slopes[heldRows[k]] += slopeCorrection[Eigen::Index(k)];
  }
}

double PiecewiseSimplex::firstGain(Eigen::Index column, double target) const {
  const Eigen::Index row = slot_[std::size_t(column)] - columns_;
  const double direction = basicValue_[row] > target ? 1.0 : -1.0;
  double rate = std::abs(basicValue_[row] - target);
  for (Eigen::Index j = 0; j < columns_; ++j) {
    limit_[std::size_t(j)] = ratio(j, direction * tableau_(row, j), place_[std::size_t(j)]);
    reached_[std::size_t(j)] = place_[std::size_t(j)];
  }
  double gain = 0.0;
  double theta = 0.0;
  for (;;) {
    const auto first = std::min_element(limit_.begin(), limit_.end());
    if (first == limit_.end() || *first == kInfinity) return kInfinity;
    const auto j = Eigen::Index(first - limit_.begin());
    gain += rate * (std::max(*first, theta) - theta);
    theta = std::max(*first, theta);
    const double alpha = direction * tableau_(row, j);
    const PiecewiseCost& cost = costs_[std::size_t(nonbasic_[std::size_t(j)])];
    const int place = reached_[std::size_t(j)];
    const int to = alpha > 0 ? cost.previous(place) : cost.next(place);
    rate -= std::abs(alpha) * std::abs(cost.at(to) - cost.at(place));
    if (!(rate > 0)) return gain;
    reached_[std::size_t(j)] = to;
    *first = ratio(j, alpha, to);
  }
}

double PiecewiseSimplex::ratio(Eigen::Index column, double alpha, int place) const {
  if (std::abs(alpha) <= kSmallestPivot) return kInfinity;
  const PiecewiseCost& cost = costs_[std::size_t(nonbasic_[std::size_t(column)])];
  const double limit = alpha > 0 ? (-cost.slopeBelow(place) - gradient_[column]) / alpha
                                 : (gradient_[column] + cost.slopeAbove(place)) / -alpha;
  return std::max(limit, 0.0);
}

}  // namespace tarebowl::solver
