// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/dual_active_set.h"

#include <algorithm>
#include <cmath>

// Putting a working set straight: after limits moved, after columns changed, and at the end of a run.

namespace tarebowl::solver {
namespace {

constexpr double kStraight = 4e-15;  // residuals of active constraints, relative, that need no further step
constexpr double kNudge = 1e-13;  // a multiplier that rounding pushed this far out of its range is put back

}  // namespace

void DualActiveSet::pointFromMultipliers() {
  Eigen::Map<Eigen::VectorXd> point(y(), form_.columnCount());
  point = centre_;
  hasPriced_ = false;
  for (Eigen::Index k = 0; k < form_.count(); ++k) {
    const TwoLevel& own = set_.multiplier[std::size_t(k)];
    hasPriced_ = hasPriced_ || own.high != 0.0;
    if (own.low != 0.0) form_.add(k, -own.low * set_.sign[k], y());
  }
}

/// Brings active multipliers back into their range where ties of parts times lambda led them out.
void DualActiveSet::clampActive() {
  for (const Eigen::Index k : set_.active) {
    TwoLevel& own = set_.multiplier[std::size_t(k)];
    const TwoLevel& cap = set_.cap[std::size_t(k)];
    if (own.high <= 0) own.low = std::max(0.0, own.low);
    if (own.high >= cap.high) own.low = std::min(own.low, cap.low);
  }
}

/// y anew from the multipliers; then the active constraints' residuals are removed, letting go those whose
/// multipliers come to an end of their range on the way: every such step raises the dual value.
void DualActiveSet::settle() {
  clampActive();
  pointFromMultipliers();
  const Eigen::Index m = form_.rowCount();
  for (int round = 0; round < 4 + int(form_.count()); ++round) {
    const auto count = set_.active.size();
    if (count == 0) break;
    double worst = 0.0;
    for (std::size_t a = 0; a < count; ++a) {
      const Eigen::Index k = set_.active[a];
      const double bound = limit(k);
      const double residual = set_.sign[k] * form_.product(k, y()) - bound;
      worst = std::max(worst, std::abs(residual) / (1.0 + std::abs(bound)));
      share_[Eigen::Index(a)] = residual;
    }
    if (worst <= kStraight) break;
    set_.factor.forward(share_.data());
    set_.factor.backward(share_.data());
    double step = 1.0;
    Eigen::Index blocker = -1;
    for (std::size_t a = 0; a < count; ++a) {
      const auto k = std::size_t(set_.active[a]);
      const TwoLevel& own = set_.multiplier[k];
      const double change = share_[Eigen::Index(a)];
      const double slack = kNudge * (std::abs(own.low) + std::abs(change));
      double room = kInfinity;
      if (change < 0 && own.high <= 0) room = std::max(0.0, own.low);
      if (change > 0 && own.high >= set_.cap[k].high) room = std::max(0.0, set_.cap[k].low - own.low);
      if (std::abs(change) > room + slack && room < step * std::abs(change)) {
        step = room / std::abs(change);
        blocker = Eigen::Index(a);
      }
    }
    for (std::size_t a = 0; a < count; ++a) {
      set_.multiplier[std::size_t(set_.active[a])].low += step * share_[Eigen::Index(a)];
    }
    addActive(share_.data(), -step, y());
    if (blocker >= 0)
      release(blocker, share_[blocker] > 0);
    else if (round > 3)
      break;
  }
  clampActive();
  for (const Eigen::Index k : set_.active) {
    if (k >= m) y()[k - m] = set_.sign[k] * limit(k);
  }
  form_.products(y(), set_.at.data());
}

/// One step of refinement for the parts times lambda, which balance each other: sum high sign normal = 0.
void DualActiveSet::settlePrices() {
  Eigen::Map<Eigen::VectorXd> sum(outside_.data() + form_.rowCount(), form_.columnCount());
  sum.setZero();
  for (Eigen::Index k = 0; k < form_.count(); ++k) {
    const double high = set_.multiplier[std::size_t(k)].high;
    if (high != 0.0) form_.add(k, high * set_.sign[k], sum.data());
  }
  activeProducts(sum.data(), scratch_.data());
  set_.factor.forward(scratch_.data());
  set_.factor.backward(scratch_.data());
  for (std::size_t a = 0; a < set_.active.size(); ++a) {
    const auto k = std::size_t(set_.active[a]);
    TwoLevel& own = set_.multiplier[k];
    if (own.high > 0 && own.high < set_.cap[k].high)
      own.high = std::clamp(own.high - scratch_[Eigen::Index(a)], 0.0, set_.cap[k].high);
  }
}

/// R anew for the kept working set; constraints that became dependent are let go.
void DualActiveSet::rebuildFactor() {
  factorIsOld_ = false;
  std::size_t kept = 0;
  const std::size_t count = set_.active.size();
  set_.factor.clear();
  std::vector<Eigen::Index>& active = set_.active;
  for (std::size_t next = 0; next < count; ++next) {
    const Eigen::Index p = active[next];
    double* turned = turned_.data();
    for (std::size_t a = 0; a < kept; ++a) {
      turned[a] = set_.sign[p] * set_.sign[active[a]] * form_.product(active[a], p);
    }
    set_.factor.forward(turned);
    double squared = form_.product(p, p);
    for (std::size_t a = 0; a < kept; ++a) squared -= turned[a] * turned[a];
    if (squared > 1e-10) {
      set_.factor.append(turned, std::sqrt(squared));
      active[kept++] = p;
    } else {
      set_.multiplier[std::size_t(p)] = {};
      setState(p, State::Inactive);
    }
  }
  active.resize(kept);
}

}  // namespace tarebowl::solver
