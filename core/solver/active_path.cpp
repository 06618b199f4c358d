// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/active_path.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kStill = 1e-11;  // a rate that is rounding, relative to the rates at work

}  // namespace

void ActivePath::reserve(const NormalForm& form) {
  for (Eigen::VectorXd* rates : {&lowRate_, &highRate_, &capRate_, &atRate_}) rates->setZero(form.count());
  multiplierRate_.setZero(form.columnCount() + 1);
  scratch_.setZero(form.columnCount() + 1);
  kept_.reserve(form.rowCount(), form.columnCount());
}

void ActivePath::clearRates() {
  lowRate_.setZero();
  highRate_.setZero();
  capRate_.setZero();
}

void ActivePath::setRowRate(const NormalForm& form, Eigen::Index row, double lower, double upper) {
  lowRate_[row] = lower * form.scale(row);
  highRate_[row] = upper * form.scale(row);
}

void ActivePath::setColumnRate(const NormalForm& form, Eigen::Index column, double lower, double upper) {
  lowRate_[form.rowCount() + column] = lower * form.root(column);
  highRate_[form.rowCount() + column] = upper * form.root(column);
}

/// Rates of the active multipliers, so that active constraints stay at their limits; y receives its own rate.
void ActivePath::solveRates(const DualActiveSet& set, double* y) {
  const auto& active = set.set_.active;
  const auto count = Eigen::Index(active.size());
  multiplierRate_.head(count).setZero();
  for (int round = 0; round < 2 && count > 0; ++round) {
    set.activeProducts(y, scratch_.data());
    for (Eigen::Index a = 0; a < count; ++a) scratch_[a] -= limitRate(set, active[std::size_t(a)]);
    set.set_.factor.forward(scratch_.data());
    set.set_.factor.backward(scratch_.data());
    multiplierRate_.head(count) += scratch_.head(count);
    set.addActive(scratch_.data(), -1.0, y);
  }
}

void ActivePath::direct(const DualActiveSet& set) {
  const NormalForm& form = set.form_;
  double* y = atRate_.data() + form.rowCount();
  std::fill(y, y + form.columnCount(), 0.0);
  for (Eigen::Index k = 0; k < form.rowCount(); ++k) {
    if (set.state(k) == DualActiveSet::State::Capped && capRate_[k] != 0.0)
      form.add(k, -capRate_[k] * set.set_.sign[k], y);
  }
  drive_ = Eigen::Map<const Eigen::VectorXd>(y, form.columnCount()).lpNorm<Eigen::Infinity>();
  solveRates(set, y);
  for (const Eigen::Index k : set.set_.active) {
    if (k >= form.rowCount()) y[k - form.rowCount()] = set.set_.sign[k] * limitRate(set, k);
  }
  form.products(y, atRate_.data());
}

/// room / rate is how far constraint k can go.
void ActivePath::offer(double room, double rate, Eigen::Index k, Eigen::Index position, bool atCap,
                       double sign) {
  const double length = std::max(0.0, room) / rate;
  if (length > reach_ || (length >= reach_ && rate <= event_.rate)) return;
  reach_ = length;
  event_ = {k, position, atCap, sign, rate};
}

double ActivePath::reach(const DualActiveSet& set) {
  using State = DualActiveSet::State;
  const auto& active = set.set_.active;
  reach_ = kInfinity;
  event_ = {};
  const auto count = Eigen::Index(active.size());
  const double fast = count > 0 ? multiplierRate_.head(count).cwiseAbs().maxCoeff() : 0.0;
  for (Eigen::Index a = 0; a < count; ++a) {
    const Eigen::Index k = active[std::size_t(a)];
    const TwoLevel& own = set.set_.multiplier[std::size_t(k)];
    const TwoLevel& cap = set.set_.cap[std::size_t(k)];
    const double rate = multiplierRate_[a];
    if (own.high <= 0 && rate < -kStill * fast) offer(own.low, -rate, k, a, false, 1.0);
    const double capRate = rate - capRate_[k];
    if (cap.isFinite() && own.high >= cap.high && capRate > kStill * std::max(fast, std::abs(capRate_[k])))
      offer(cap.low - own.low, capRate, k, a, true, 1.0);
  }
  const double speed = std::max(atRate_.cwiseAbs().maxCoeff(), drive_);
  for (Eigen::Index k = 0; k < set.form_.count(); ++k) {
    const double at = set.set_.at[k];
    const double still = kStill * std::max({speed, std::abs(highRate_[k]), std::abs(lowRate_[k])});
    if (set.state(k) == State::Inactive) {
      const double up = atRate_[k] - highRate_[k];
      const double down = lowRate_[k] - atRate_[k];
      if (up > still && set.high_[k] < kInfinity) offer(set.high_[k] - at, up, k, -1, false, 1.0);
      if (down > still && set.low_[k] > -kInfinity) offer(at - set.low_[k], down, k, -1, false, -1.0);
    } else if (set.state(k) == State::Capped) {
      const double back = -beyondRate(set, k);
      if (back > still) offer(beyond(set, k), back, k, -1, true, set.set_.sign[k]);
    }
  }
  return reach_;
}

void ActivePath::advance(DualActiveSet& set, double length) const {
  using State = DualActiveSet::State;
  const auto& active = set.set_.active;
  set.set_.at += length * atRate_;
  set.low_ += length * lowRate_;
  set.high_ += length * highRate_;
  for (std::size_t a = 0; a < active.size(); ++a) {
    set.set_.multiplier[std::size_t(active[a])].low += length * multiplierRate_[Eigen::Index(a)];
  }
  for (Eigen::Index k = 0; k < set.form_.count(); ++k) {
    const auto at = std::size_t(k);
    if (capRate_[k] != 0.0) {
      set.set_.cap[at].low += length * capRate_[k];
      if (set.state(k) == State::Capped) set.set_.multiplier[at] = set.set_.cap[at];
    }
    if (lowRate_[k] != 0.0 || highRate_[k] != 0.0) set.placeLimits(k);
  }
}

ActivePath::Passed ActivePath::pass(DualActiveSet& set) {
  if (event_.position >= 0) {
    set.release(event_.position, event_.atCap);
    return Passed::On;
  }
  set.set_.sign[event_.constraint] = event_.sign;
  set.iterations_ = 0;
  const DualActiveSet::State before = set.state(event_.constraint);
  const bool isResolved = set.resolve(event_.constraint);
  return isResolved && set.state(event_.constraint) != before ? Passed::On : Passed::Ended;
}

ActivePath::Leaving ActivePath::leastLambda(const DualActiveSet& set) {
  Leaving least;
  const auto& active = set.set_.active;
  for (std::size_t a = 0; a < active.size(); ++a) {
    const auto k = std::size_t(active[a]);
    const TwoLevel& own = set.set_.multiplier[k];
    const TwoLevel& cap = set.set_.cap[k];
    const auto offer = [&](double lambda, bool atCap) {
      if (lambda > least.lambda) least = {lambda, Eigen::Index(a), atCap};
    };
    if (own.high > 0) offer(-own.low / own.high, false);
    if (cap.isFinite() && cap.high > own.high) offer((own.low - cap.low) / (cap.high - own.high), true);
  }
  return least;
}

void ActivePath::leave(DualActiveSet& set, const Leaving& leaving) {
  if (leaving.position >= 0) set.release(leaving.position, leaving.atCap);
}

void ActivePath::fixLambda(DualActiveSet& set, double lambda) {
  for (Eigen::Index k = 0; k < set.form_.count(); ++k) {
    TwoLevel& cap = set.set_.cap[std::size_t(k)];
    TwoLevel& own = set.set_.multiplier[std::size_t(k)];
    if (cap.isFinite()) cap = {0.0, cap.at(lambda)};
    own = {0.0, own.high != 0.0 ? own.at(lambda) : own.low};
    if (own.low < 0) own.low = 0.0;
    if (cap < own || set.state(k) == DualActiveSet::State::Capped) own = cap;
  }
  set.hasPriced_ = false;
}

void ActivePath::keep(const DualActiveSet& set) {
  set.set_.copyTo(kept_);
}

void ActivePath::restore(DualActiveSet& set) const {
  kept_.copyTo(set.set_);
  set.hasPriced_ = true;
}

}  // namespace tarebowl::solver
