// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/lexicographic_simplex.h"

#include <algorithm>
#include <cmath>

// The primal method: slopes into order, values in their pieces all the while; and the path as lambda falls.

namespace tarebowl::solver {
namespace {

constexpr double kSmallestPivot = 1e-9;
constexpr double kTied = 1e-12;            // of a distance: pieces that end together
constexpr double kEqual = 1e-9;            // a slope that is none
constexpr TwoLevel kAsGood{0.0, -1e-300};  // a way that costs nothing is gone to the first end of a piece

}  // namespace

/// The nonbasic variable whose slope is most out of order; once careful the first there is.
Eigen::Index LexicographicSimplex::enteringSlot(bool& up) const {
  Eigen::Index best = -1;
  TwoLevel least{};
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    if (isInOrder(j)) continue;
    const TwoLevel rise = slack(j, true);
    const TwoLevel fall = slack(j, false);
    const bool isUp = rise < fall;
    const TwoLevel& own = isUp ? rise : fall;
    const bool isBetter = isCareful_
                              ? best < 0 || s_.nonbasic[std::size_t(j)] < s_.nonbasic[std::size_t(best)]
                              : best < 0 || own < least;
    if (!isBetter) continue;
    best = j;
    least = own;
    up = isUp;
  }
  return best;
}

/// How far a nonbasic variable moves: past the ends of basic variables' pieces for as long as that gains;
/// rate < 0 is what a unit of the way costs at first. reached_ receives the pieces arrived in.
LexicographicSimplex::Edge LexicographicSimplex::edge(Eigen::Index slot, bool up, TwoLevel rate) {
  const double direction = up ? 1.0 : -1.0;
  const auto roomOf = [&](Eigen::Index i) {
    const double alpha = direction * s_.tableau(i, slot);
    if (std::abs(alpha) <= kSmallestPivot) return kInfinity;
    const Piece piece = reached_[std::size_t(i)];
    const double room = alpha > 0 ? highOf(basicBand(i), piece) - s_.basicValue[i]
                                  : s_.basicValue[i] - lowOf(basicBand(i), piece);
    return std::max(0.0, room) / std::abs(alpha);
  };
  reached_ = s_.piece;
  for (Eigen::Index i = 0; i < rowCount(); ++i) distance_[std::size_t(i)] = roomOf(i);
  const Band& own = nonbasicBand(slot);
  const double flip = pieceEntered(slot, up) == Piece::Within ? own.high - own.low : kInfinity;
  Edge edge;
  for (;;) {
    Eigen::Index first = -1;
    for (Eigen::Index i = 0; i < rowCount(); ++i) {
      const double distance = distance_[std::size_t(i)];
      if (!(distance < kInfinity)) continue;
      if (first < 0) {
        first = i;
        continue;
      }
      const double tie = kTied * (1.0 + distance_[std::size_t(first)]);
      const double by = distance - distance_[std::size_t(first)];
      const bool isPreferred = isCareful_ ? s_.basic[std::size_t(i)] < s_.basic[std::size_t(first)]
                                          : std::abs(s_.tableau(i, slot)) > std::abs(s_.tableau(first, slot));
      if (by < -tie || (by <= tie && isPreferred)) first = i;
    }
    const double distance = first < 0 ? kInfinity : distance_[std::size_t(first)];
    if (flip <= distance) {
      edge.length = flip;
      edge.isFlip = flip < kInfinity;
      return edge;
    }
    edge.length = distance;
    const double alpha = direction * s_.tableau(first, slot);
    Piece& piece = reached_[std::size_t(first)];
    const std::optional<Piece> nextPiece = next(basicBand(first), piece, alpha > 0);
    edge.row = first;
    if (!nextPiece) return edge;
    const TwoLevel from = slopeIn(basicBand(first), piece);
    const TwoLevel to = slopeIn(basicBand(first), *nextPiece);
    rate = {rate.high + alpha * (to.high - from.high), rate.low + alpha * (to.low - from.low)};
    if (!(rate < TwoLevel{})) return edge;
    piece = *nextPiece;
    edge.row = -1;
    distance_[std::size_t(first)] = std::max(distance, roomOf(first));
  }
}

void LexicographicSimplex::take(Eigen::Index slot, bool up, const Edge& edge) {
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    const auto at = std::size_t(i);
    if (reached_[at] == s_.piece[at]) continue;
    const TwoLevel from = slopeIn(basicBand(i), s_.piece[at]);
    const TwoLevel to = slopeIn(basicBand(i), reached_[at]);
    s_.piece[at] = reached_[at];
    addToGradient(i, {to.high - from.high, to.low - from.low});
  }
  if (edge.isFlip) {
    moveNonbasic(slot, up ? edge.length : -edge.length);
    s_.isAtHigh[std::size_t(slot)] = up ? 1 : 0;
    return;
  }
  const bool leavesUp = (up ? 1.0 : -1.0) * s_.tableau(edge.row, slot) > 0;
  exchange(edge.row, slot, pieceEntered(slot, up), leavesUp);
}

LexicographicSimplex::Outcome LexicographicSimplex::runPrimal() {
  for (;;) {
    bool up = false;
    const Eigen::Index slot = enteringSlot(up);
    if (slot < 0) return Outcome::Optimal;
    if (++iterations_ > most_) return Outcome::IterationLimit;
    isCareful_ = iterations_ > most_ / 2;
    const Edge way = edge(slot, up, slack(slot, up));
    if (!way.isFlip && way.row < 0) return Outcome::Unbounded;
    take(slot, up, way);
  }
}

/// Of answers that cost the same, one away from bounds that only stand for none.
void LexicographicSimplex::bringBack() {
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    if (s_.isAtHigh[std::size_t(j)] == 0 || !nonbasicBand(j).isFar) continue;
    const TwoLevel fall = slack(j, false);
    if (std::abs(fall.high) > kEqual || std::abs(fall.low) > kEqual) continue;
    const Edge way = edge(j, false, kAsGood);
    if (way.isFlip || way.row >= 0) take(j, false, way);
  }
}

LexicographicSimplex::Leaving LexicographicSimplex::leastLambda() const {
  Leaving leaving;
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    for (const bool up : {true, false}) {
      const TwoLevel own = slack(j, up);
      if (!own.isFinite() || !(own.high > 0.0) || !(own.low < 0.0)) continue;
      const double lambda = -own.low / own.high;
      if (!(lambda > leaving.lambda)) continue;
      leaving = {lambda, j, up ? 1.0 : -1.0, own.high};
    }
  }
  return leaving;
}

double LexicographicSimplex::reachOf(const Leaving& leaving) {
  isCareful_ = false;
  return edge(leaving.slot, leaving.direction > 0, kAsGood).length;
}

void LexicographicSimplex::columnRates(const Leaving& leaving, Eigen::VectorXd& rates) const {
  const Eigen::Index n = columnCount();
  rates.setZero(n);
  const int moving = s_.nonbasic[std::size_t(leaving.slot)];
  if (moving < n) rates[moving] = leaving.direction;
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    const int variable = s_.basic[std::size_t(i)];
    if (variable < n) rates[variable] = leaving.direction * s_.tableau(i, leaving.slot);
  }
}

void LexicographicSimplex::follow(const Leaving& leaving) {
  const bool up = leaving.direction > 0;
  const Edge way = edge(leaving.slot, up, kAsGood);
  if (way.isFlip || way.row >= 0) take(leaving.slot, up, way);
}

}  // namespace tarebowl::solver
