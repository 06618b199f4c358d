// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/dual_active_set.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kHolds = 1e-13;  // relative distance that counts as none
constexpr double kDependent =
    1e-20;                          // squared length of a normal's part outside the active ones that is none
constexpr double kCorrect = 1e-3;   // squared length below which a split is corrected once
constexpr double kNoRate = 1e-12;   // a multiplier that moves slower than this does not block
constexpr double kRounding = 1e-8;  // a contradiction smaller than this is one of rounding, not of the rules

}  // namespace

void DualActiveSet::reserve(Eigen::Index rows, Eigen::Index columns) {
  form_.reserve(rows, columns);
  const Eigen::Index count = rows + columns;
  centre_.setZero(columns);
  columnLower_.setZero(columns);
  columnUpper_.setZero(columns);
  low_.setZero(count);
  high_.setZero(count);
  tolerance_.setConstant(count, kHolds);
  set_.reserve(rows, columns);
  for (Eigen::VectorXd* scratch : {&products_, &turned_, &share_, &scratch_}) scratch->setZero(columns + 1);
  outside_.setZero(count);
  by_.setZero(count);
  guess_.reserve(rows, columns);
  forget();
}

void DualActiveSet::WorkingSet::reserve(Eigen::Index rows, Eigen::Index columns) {
  const Eigen::Index count = rows + columns;
  active.clear();
  active.reserve(std::size_t(columns) + 1);
  state.assign(std::size_t(count), State::Inactive);
  multiplier.assign(std::size_t(count), TwoLevel{});
  cap.assign(std::size_t(count), kWithoutEnd);
  sign.setOnes(count);
  below.setZero(count);
  above.setZero(count);
  at.setZero(count);
  factor.reserve(columns);
}

void DualActiveSet::WorkingSet::copyTo(WorkingSet& other) const {
  other.active.assign(active.begin(), active.end());
  other.state = state;
  other.multiplier = multiplier;
  other.cap = cap;
  other.sign = sign;
  other.below = below;
  other.above = above;
  other.at = at;
  other.factor.copyFrom(factor);
}

void DualActiveSet::assign(const RowMatrix& rows, const Eigen::VectorXd& hessian) {
  form_.assign(rows, hessian);
  factorIsOld_ = !set_.active.empty();
}

void DualActiveSet::setRow(Eigen::Index row, double lower, double upper) {
  const double scale = form_.scale(row);
  low_[row] = lower * scale;
  high_[row] = upper * scale;
  placeLimits(row);
}

void DualActiveSet::setColumn(Eigen::Index column, double lower, double upper) {
  const Eigen::Index k = form_.rowCount() + column;
  columnLower_[column] = lower;
  columnUpper_[column] = upper;
  low_[k] = lower * form_.root(column);
  high_[k] = upper * form_.root(column);
  placeLimits(k);
}

void DualActiveSet::setCentre(Eigen::Index column, double centre) {
  centre_[column] = centre * form_.root(column);
}

void DualActiveSet::setCap(Eigen::Index row, TwoLevel cap) {
  TwoLevel& own = set_.cap[std::size_t(row)];
  own = cap.isFinite() ? TwoLevel{cap.high * form_.norm(row), cap.low * form_.norm(row)} : kWithoutEnd;
  TwoLevel& multiplier = set_.multiplier[std::size_t(row)];
  if (state(row) == State::Capped) {
    if (own.isFinite())
      multiplier = own;
    else
      forget();
  } else if (own < multiplier) {
    multiplier = own;
  }
}

void DualActiveSet::forget() {
  if (!set_.active.empty() || !isNew_) {
    for (Eigen::Index k = 0; k < form_.count(); ++k) {
      set_.multiplier[std::size_t(k)] = {};
      if (state(k) != State::Inactive) setState(k, State::Inactive);
    }
    tolerance_.setConstant(kHolds);
  }
  set_.active.clear();
  set_.factor.clear();
  factorIsOld_ = false;
  isNew_ = true;
  hasPriced_ = false;
}

void DualActiveSet::setState(Eigen::Index k, State state) {
  set_.state[std::size_t(k)] = state;
  placeLimits(k);
}

void DualActiveSet::placeLimits(Eigen::Index k) {
  const double slack = tolerance_[k];
  double below = -kInfinity;
  double above = kInfinity;
  switch (state(k)) {
    case State::Inactive:
      below = low_[k] - slack * (1.0 + std::abs(low_[k]));
      above = high_[k] + slack * (1.0 + std::abs(high_[k]));
      if (!(low_[k] > -kInfinity)) below = -kInfinity;
      if (!(high_[k] < kInfinity)) above = kInfinity;
      break;
    case State::Capped:  // beyond its bound, or it must come back
      if (set_.sign[k] > 0)
        below = high_[k] - slack * (1.0 + std::abs(high_[k]));
      else
        above = low_[k] + slack * (1.0 + std::abs(low_[k]));
      break;
    case State::Active:
      break;
  }
  set_.below[k] = below;
  set_.above[k] = above;
}

void DualActiveSet::activeProducts(const double* with, double* products) const {
  for (std::size_t a = 0; a < set_.active.size(); ++a) {
    const Eigen::Index k = set_.active[a];
    products[a] = set_.sign[k] * form_.product(k, with);
  }
}

void DualActiveSet::addActive(const double* factors, double scale, double* to) const {
  for (std::size_t a = 0; a < set_.active.size(); ++a) {
    const Eigen::Index k = set_.active[a];
    if (factors[a] != 0.0) form_.add(k, scale * factors[a] * set_.sign[k], to);
  }
}

DualActiveSet::Outcome DualActiveSet::run() {
  iterations_ = 0;
  most_ = 20 * int(form_.count()) + 200;
  blocked_ = -1;
  if (factorIsOld_) rebuildFactor();
  isNew_ = false;
  hasJumped_ = wantsJump_ = false;
  settle();
  const int patience = int(form_.columnCount()) / 4;  // steps that cost about as much as a guess
  for (int round = 0; round < 4; ++round) {
    const int before = iterations_;
    for (Eigen::Index p = mostViolated(); p >= 0; p = mostViolated()) {
      if (!resolve(p, mayJump_ && !hasJumped_)) {
        blocked_ = p;
        return Outcome::Infeasible;
      }
      const bool isDue = wantsJump_ || (mayJump_ && !hasJumped_ &&
                                        (hasPriced_ ? iterations_ > patience : isHardlyFeasible()));
      if (isDue && !jump()) return run();
      if (iterations_ >= most_) return Outcome::IterationLimit;
    }
    if (iterations_ == before) return Outcome::Optimal;
    if (hasPriced_) settlePrices();
    settle();
  }
  return mostViolated() < 0 ? Outcome::Optimal : Outcome::IterationLimit;
}

/// The constraint furthest from where its multiplier says it is: an inactive one beyond a bound, or a capped
/// one within.
Eigen::Index DualActiveSet::mostViolated() {
  by_.array() = (set_.below - set_.at).array().max((set_.at - set_.above).array());
  const double most = by_.maxCoeff();
  if (!(most > 0)) return -1;
  Eigen::Index worst = 0;
  while (by_[worst] < most) ++worst;
  if (state(worst) == State::Inactive) set_.sign[worst] = set_.at[worst] > set_.above[worst] ? 1.0 : -1.0;
  return worst;
}

/// Moves until constraint p is where its multiplier says, letting active ones go on the way. False: it cannot
/// be. Where that would be the first step in parts times lambda, it may stop short of it and want to jump
/// instead.
bool DualActiveSet::resolve(Eigen::Index p, bool mayJump) {
  TwoLevel& own = set_.multiplier[std::size_t(p)];
  const TwoLevel cap = set_.cap[std::size_t(p)];
  const double sign = set_.sign[p];
  const double direction = state(p) == State::Capped ? -1.0 : 1.0;
  for (std::size_t a = 0; a < set_.active.size(); ++a) {
    const Eigen::Index k = set_.active[a];
    products_[Eigen::Index(a)] = sign * set_.sign[k] * form_.product(k, p);
  }
  while (iterations_++ < most_) {
    const Split part = split(p);
    const double violation = direction * (sign * set_.at[p] - limit(p));
    const TwoLevel full =
        part.isDependent ? kWithoutEnd : TwoLevel{0.0, std::max(0.0, violation) / part.squaredLength};
    TwoLevel room = own;
    if (direction > 0) room = cap.isFinite() ? TwoLevel{cap.high - own.high, cap.low - own.low} : kWithoutEnd;
    const Block block = firstBlock(direction);
    const TwoLevel& least = block.reach < room ? block.reach : room;
    if (least.high > 0 && least.isFinite() && least < full && mayJump && !hasPriced_) {
      wantsJump_ = true;
      return true;
    }
    if (block.reach < full && block.reach < room) {
      move(p, direction, block.reach);
      if (!part.isDependent) set_.at -= (direction * block.reach.low) * outside_;
      release(block.position, -direction * share_[block.position] > 0);
      continue;
    }
    const bool toCap = room < full;
    const TwoLevel step = toCap ? room : full;
    if (!step.isFinite()) return isRounding(p, direction);
    move(p, direction, step);
    if (!part.isDependent) set_.at -= (direction * step.low) * outside_;
    if (!toCap) {
      activate(p, std::sqrt(part.squaredLength));
    } else {
      own = direction > 0 ? cap : TwoLevel{};
      setState(p, direction > 0 ? State::Capped : State::Inactive);
    }
    return true;
  }
  return true;
}

/// Parts the signed normal of p: share_ receives what of the active normals makes up the part inside their
/// span, outside_ the rest and its activities. A short rest is corrected once against the normals.
DualActiveSet::Split DualActiveSet::split(Eigen::Index p) {
  const Eigen::Index n = form_.columnCount();
  const auto count = Eigen::Index(set_.active.size());
  Eigen::Map<Eigen::VectorXd> outside(outside_.data() + form_.rowCount(), n);
  turned_.head(count) = products_.head(count);
  set_.factor.forward(turned_.data());
  share_.head(count) = turned_.head(count);
  set_.factor.backward(share_.data());
  outside.setZero();
  form_.add(p, set_.sign[p], outside.data());
  addActive(share_.data(), -1.0, outside.data());
  Split part{outside.squaredNorm(), false};
  if (part.squaredLength < kCorrect && count > 0) {
    activeProducts(outside.data(), scratch_.data());
    set_.factor.forward(scratch_.data());
    turned_.head(count) += scratch_.head(count);
    set_.factor.backward(scratch_.data());
    share_.head(count) += scratch_.head(count);
    addActive(scratch_.data(), -1.0, outside.data());
  }
  for (const Eigen::Index k : set_.active) {
    if (k >= form_.rowCount()) outside[k - form_.rowCount()] = 0.0;  // it is held exactly
  }
  part.squaredLength = outside.squaredNorm();
  part.isDependent = count == n || part.squaredLength <= kDependent;
  if (!part.isDependent) form_.products(outside.data(), outside_.data());
  return part;
}

/// The active constraint whose multiplier first comes to an end of its range; of those that come together the
/// one that moves fastest, which keeps the factor well conditioned.
DualActiveSet::Block DualActiveSet::firstBlock(double direction) const {
  Block block;
  double fastest = 0.0;
  for (std::size_t a = 0; a < set_.active.size(); ++a) {
    const double rate = -direction * share_[Eigen::Index(a)];
    if (std::abs(rate) <= kNoRate) continue;
    const auto k = std::size_t(set_.active[a]);
    TwoLevel room = set_.multiplier[k];
    if (rate > 0) {
      if (!set_.cap[k].isFinite()) continue;
      room = {set_.cap[k].high - room.high, set_.cap[k].low - room.low};
    }
    const double speed = std::abs(rate);
    TwoLevel reach{std::max(0.0, room.high / speed), room.low / speed};
    if (reach.high <= 0) reach.low = std::max(0.0, reach.low);
    if (reach < block.reach || (!(block.reach < reach) && speed > fastest)) {
      block = {reach, Eigen::Index(a)};
      fastest = speed;
    }
  }
  return block;
}

void DualActiveSet::move(Eigen::Index p, double direction, const TwoLevel& step) {
  TwoLevel& own = set_.multiplier[std::size_t(p)];
  own.high = cancelled(own.high, direction * step.high);
  own.low += direction * step.low;
  const double high = direction * step.high;
  const double low = direction * step.low;
  hasPriced_ = hasPriced_ || high != 0.0 || own.high != 0.0;
  for (std::size_t a = 0; a < set_.active.size(); ++a) {
    const auto k = std::size_t(set_.active[a]);
    const double share = share_[Eigen::Index(a)];
    TwoLevel& multiplier = set_.multiplier[k];
    multiplier.low -= low * share;
    if (high == 0.0 || std::abs(share) <= kNoRate) continue;  // as in firstBlock()
    multiplier.high = cancelled(multiplier.high, -high * share);
    const double cap = set_.cap[k].high;
    if (cap < kInfinity && std::abs(cap - multiplier.high) <= 2e-11 * cap) multiplier.high = cap;
  }
}

void DualActiveSet::release(Eigen::Index position, bool atCap) {
  const Eigen::Index k = set_.active[std::size_t(position)];
  set_.multiplier[std::size_t(k)] = atCap ? set_.cap[std::size_t(k)] : TwoLevel{};
  setState(k, atCap ? State::Capped : State::Inactive);
  set_.factor.remove(position);
  set_.active.erase(set_.active.begin() + position);
  std::copy(products_.data() + position + 1, products_.data() + set_.active.size() + 1,
            products_.data() + position);
}

void DualActiveSet::activate(Eigen::Index p, double outsideLength) {
  set_.factor.append(turned_.data(), outsideLength);
  set_.active.push_back(p);
  setState(p, State::Active);
}

/// Nothing can give way to constraint p. At a corner where more constraints meet than there are columns that
/// happens to one that holds there too, but for the rounding of large multipliers: such a one is let be.
bool DualActiveSet::isRounding(Eigen::Index p, double direction) {
  settle();
  const double at = set_.sign[p] * set_.at[p];
  if (direction * (at - limit(p)) > kRounding * (1.0 + std::abs(at))) return false;
  tolerance_[p] = kRounding;
  placeLimits(p);
  return true;
}

void DualActiveSet::blockingRows(std::vector<Eigen::Index>& rows) const {
  rows.clear();
  if (blocked_ >= 0 && blocked_ < form_.rowCount()) rows.push_back(blocked_);
  for (const Eigen::Index k : set_.active) {
    if (k < form_.rowCount()) rows.push_back(k);
  }
}

void DualActiveSet::point(Eigen::VectorXd& z) const {
  for (Eigen::Index j = 0; j < form_.columnCount(); ++j) {
    const Eigen::Index k = form_.rowCount() + j;
    if (state(k) == State::Active)
      z[j] = set_.sign[k] > 0 ? columnUpper_[j] : columnLower_[j];
    else
      z[j] = std::clamp(y()[j] / form_.root(j), columnLower_[j], columnUpper_[j]);
  }
}

TwoLevel DualActiveSet::multiplier(Eigen::Index k) const {
  const double factor = set_.sign[k] * form_.scale(k);
  const TwoLevel& own = set_.multiplier[std::size_t(k)];
  return {factor * own.high, factor * own.low};
}

}  // namespace tarebowl::solver
