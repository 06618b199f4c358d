// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/lexicographic_simplex.h"

#include <algorithm>
#include <cmath>

// The dual method: values into their pieces, slopes in order all the while; and the path as one bound moves.

namespace tarebowl::solver {
namespace {

constexpr double kSmallestPivot = 1e-9;
constexpr double kNear = 1e-11;
constexpr double kRounding = 1e-9;  // a contradiction smaller than this is one of rounding, not of the rules
constexpr double kStill = 1e-11;    // a rate that is rounding, relative to the rates at work
constexpr double kTied = 1e-13;     // of a length: events that come together

TwoLevel over(const TwoLevel& room, double size) {
  if (!room.isFinite()) return kWithoutEnd;
  if (room < TwoLevel{}) return {};
  return {room.high / size, room.low / size};
}

}  // namespace

/// The basic variable furthest outside its piece; once careful the first there is.
Eigen::Index LexicographicSimplex::leavingRow(bool& up) const {
  Eigen::Index best = -1;
  double worst = 0.0;
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    bool isUp = false;
    const double by = excess(i, isUp);
    if (!(by > 0.0)) continue;
    const bool isBetter = isCareful_ ? best < 0 || s_.basic[std::size_t(i)] < s_.basic[std::size_t(best)]
                                     : by * by > worst * s_.weight[i];
    if (!isBetter) continue;
    worst = by * by / s_.weight[i];
    best = i;
    up = isUp;
  }
  return best;
}

/// The nonbasic variable whose slope first comes to an end of its range; of those that come together the one
/// with the largest pivot, once careful the first.
Eigen::Index LexicographicSimplex::firstBlocking(Eigen::Index row) const {
  Eigen::Index first = -1;
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    const TwoLevel& limit = limit_[std::size_t(j)];
    if (!limit.isFinite()) continue;
    if (first < 0) {
      first = j;
      continue;
    }
    const TwoLevel& least = limit_[std::size_t(first)];
    const bool isTied = !(limit < least) && !(least < limit);
    const bool isPreferred = isCareful_ ? s_.nonbasic[std::size_t(j)] < s_.nonbasic[std::size_t(first)]
                                        : std::abs(s_.tableau(row, j)) > std::abs(s_.tableau(row, first));
    if (limit < least || (isTied && isPreferred)) first = j;
  }
  return first;
}

/// How far the slope of a leaving variable moves: past pieces of its own and bounds of others for as long as
/// it stays outside; rate is how far outside it is.
LexicographicSimplex::LongStep LexicographicSimplex::longStep(Eigen::Index row, bool up, double rate) {
  const double direction = up ? 1.0 : -1.0;
  const Band& own = basicBand(row);
  const TwoLevel start = slopeIn(own, s_.piece[std::size_t(row)]);
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    const double alpha = direction * s_.tableau(row, j);
    const double size = std::abs(alpha);
    flipped_[std::size_t(j)] = 0;
    limit_[std::size_t(j)] = size > kSmallestPivot ? over(slack(j, alpha < 0), size) : kWithoutEnd;
  }
  LongStep step;
  step.piece = s_.piece[std::size_t(row)];
  for (;;) {
    const std::optional<Piece> nextPiece = next(own, step.piece, up);
    TwoLevel ownLimit = kWithoutEnd;
    if (nextPiece) {
      const TwoLevel slope = slopeIn(own, *nextPiece);
      ownLimit = {direction * (slope.high - start.high), direction * (slope.low - start.low)};
    }
    const Eigen::Index first = firstBlocking(row);
    if (first < 0 && !nextPiece) return step;
    if (first < 0 || (nextPiece && !(limit_[std::size_t(first)] < ownLimit))) {
      step.theta = ownLimit;
      step.piece = *nextPiece;
      const double length = highOf(own, step.piece) - lowOf(own, step.piece);
      if (rate <= length + kNear) {
        step.end = LongStep::End::InPiece;
        return step;
      }
      rate -= length;
      continue;
    }
    const double alpha = direction * s_.tableau(row, first);
    const Piece entered = pieceEntered(first, alpha < 0);
    const Band& other = nonbasicBand(first);
    const double length =
        entered == Piece::Within && flipped_[std::size_t(first)] == 0 ? other.high - other.low : kInfinity;
    if (step.theta < limit_[std::size_t(first)]) step.theta = limit_[std::size_t(first)];
    if (!(rate - std::abs(alpha) * length > kNear * (1.0 + std::abs(s_.basicValue[row])))) {
      step.end = LongStep::End::Enters;
      step.entering = first;
      return step;
    }
    rate -= std::abs(alpha) * length;
    flipped_[std::size_t(first)] = 1;
    limit_[std::size_t(first)] = kWithoutEnd;
    if (!other.price.isFinite()) continue;
    const double wider = (other.price.high + std::abs(other.slope.high)) / std::abs(alpha);
    const double lower = (other.price.low + std::abs(other.slope.low)) / std::abs(alpha);
    limit_[std::size_t(first)] = {step.theta.high + wider, step.theta.low + lower};
  }
}

/// False: nothing can give way.
bool LexicographicSimplex::dualStep(Eigen::Index row, bool up, double rate) {
  const LongStep step = longStep(row, up, rate);
  if (step.end == LongStep::End::Nowhere) return false;
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    if (flipped_[std::size_t(j)] == 0) continue;
    const Band& own = nonbasicBand(j);
    char& isAtHigh = s_.isAtHigh[std::size_t(j)];
    moveNonbasic(j, isAtHigh != 0 ? own.low - own.high : own.high - own.low);
    isAtHigh = isAtHigh != 0 ? 0 : 1;
  }
  Piece& piece = s_.piece[std::size_t(row)];
  const TwoLevel before = slopeIn(basicBand(row), piece);
  const TwoLevel after = slopeIn(basicBand(row), step.piece);
  piece = step.piece;
  addToGradient(row, {after.high - before.high, after.low - before.low});
  if (step.end == LongStep::End::InPiece) return true;
  const bool entersUp = (up ? 1.0 : -1.0) * s_.tableau(row, step.entering) < 0;
  exchange(row, step.entering, pieceEntered(step.entering, entersUp), up);
  return true;
}

LexicographicSimplex::Outcome LexicographicSimplex::runDual() {
  constexpr int kRebuildAfter = 200;
  for (;;) {
    bool up = false;
    const Eigen::Index row = leavingRow(up);
    if (row < 0) return Outcome::Optimal;
    if (++iterations_ > most_) return Outcome::IterationLimit;
    isCareful_ = iterations_ > most_ / 2;
    if (sinceRebuild_ > kRebuildAfter) {
      rebuild();
      sinceRebuild_ = 0;
      placeAll();
      continue;
    }
    if (dualStep(row, up, excess(row, up))) continue;
    if (excess(row, up) > kRounding * (1.0 + std::abs(s_.basicValue[row]))) return Outcome::Infeasible;
    s_.isLetBe[std::size_t(s_.basic[std::size_t(row)])] = 1;
  }
}

void LexicographicSimplex::setRates(Eigen::Index variable, double low, double high) {
  moving_ = variable;
  lowRate_ = low;
  highRate_ = high;
}

void LexicographicSimplex::direct() {
  const int slot = s_.slot[std::size_t(moving_)];
  nonbasicRate_ = 0.0;
  basicRate_.setZero();
  if (slot >= columnCount()) return;
  nonbasicRate_ = s_.isAtHigh[std::size_t(slot)] != 0 ? highRate_ : lowRate_;
  if (nonbasicRate_ != 0.0) basicRate_ = nonbasicRate_ * s_.tableau.col(slot);
}

double LexicographicSimplex::reach() {
  eventRow_ = -1;
  double reached = kInfinity;
  double fastest = 0.0;
  const double speed = basicRate_.size() > 0 ? basicRate_.cwiseAbs().maxCoeff() : 0.0;
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    const Band& own = basicBand(i);
    const Piece piece = s_.piece[std::size_t(i)];
    const bool isMoving = s_.basic[std::size_t(i)] == moving_;
    const double lowRate = isMoving ? (piece == Piece::Above ? highRate_ : lowRate_) : 0.0;
    const double highRate = isMoving ? (piece == Piece::Below ? lowRate_ : highRate_) : 0.0;
    const double still = kStill * std::max({speed, std::abs(lowRate), std::abs(highRate)});
    const auto offer = [&](double room, double rate, bool up) {
      if (!(rate > still) || !(room < kInfinity)) return;
      const double length = std::max(0.0, room) / rate;
      const double tie = kTied * (1.0 + reached);
      if (length > reached + tie || (length >= reached - tie && rate <= fastest)) return;
      reached = std::min(reached, length);
      fastest = rate;
      eventRow_ = i;
      eventUp_ = up;
    };
    offer(highOf(own, piece) - s_.basicValue[i], basicRate_[i] - highRate, true);
    offer(s_.basicValue[i] - lowOf(own, piece), lowRate - basicRate_[i], false);
  }
  const Band& moving = band(moving_);
  if (lowRate_ > highRate_ && moving.high < kInfinity && moving.low > -kInfinity) {
    const double crossing = std::max(0.0, moving.high - moving.low) / (lowRate_ - highRate_);
    if (crossing <= reached) {  // beyond, no value lies between the bounds
      reached = crossing;
      eventRow_ = -1;
    }
  }
  return reached;
}

void LexicographicSimplex::advance(double length) {
  s_.basicValue += length * basicRate_;
  Band& moving = bands_[std::size_t(moving_)];
  moving.low += length * lowRate_;
  moving.high += length * highRate_;
  const int slot = s_.slot[std::size_t(moving_)];
  if (slot < columnCount()) s_.nonbasicValue[slot] += length * nonbasicRate_;
}

LexicographicSimplex::Passed LexicographicSimplex::pass() {
  if (eventRow_ < 0) return Passed::Ended;
  return dualStep(eventRow_, eventUp_, 0.0) ? Passed::On : Passed::Ended;
}

}  // namespace tarebowl::solver
