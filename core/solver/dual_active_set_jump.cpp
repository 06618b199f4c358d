// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/dual_active_set.h"

#include <algorithm>
#include <cmath>

// Where not every row can hold, least violation is a linear programme, whose vertex steps of this method come
// to slowly. They go on from a guess at it instead; what is wrong with the guess they put right.

namespace tarebowl::solver {
namespace {

constexpr double kBalanced = 1e-11;  // what is left of prices that balance each other
constexpr double kStraight = 4e-15;  // of that: no further step makes it less
constexpr double kNoPrice = 1e-12;   // a part times lambda that counts as none, beside the largest

}  // namespace

/// The objective's value so far is the least that any answer without violation can have. Beyond half a unit
/// for each column, which is every column moved by as much as it amounts to, there is hardly one.
bool DualActiveSet::isHardlyFeasible() const {
  const Eigen::Map<const Eigen::VectorXd> point(y(), form_.columnCount());
  return (point - centre_).squaredNorm() > static_cast<double>(form_.columnCount());
}

/// False: the guess is none to go on from, and nothing is active; runs to come do without.
bool DualActiveSet::jump() {
  using At = VertexGuess::At;
  const Eigen::Index m = form_.rowCount();
  const bool mustMove = wantsJump_;
  wantsJump_ = false;
  hasJumped_ = true;
  for (Eigen::Index i = 0; i < m; ++i)
    guess_.setRow(i, form_.normal(i), low_[i], high_[i], set_.cap[std::size_t(i)].high);
  for (Eigen::Index j = 0; j < form_.columnCount(); ++j)
    guess_.setColumn(j, low_[m + j], high_[m + j], 0.0, centre_[j]);
  bool isGood = guess_.run();
  bool isAnyMissed = false;
  for (Eigen::Index i = 0; i < m; ++i) {
    const bool isMissed = guess_.row(i) == At::Below || guess_.row(i) == At::Above;
    isAnyMissed = isAnyMissed || isMissed;
    isGood = isGood && (!isMissed || set_.cap[std::size_t(i)].isFinite());
  }
  if (!mustMove && (!isGood || !isAnyMissed)) return true;  // on from where it is
  forget();
  if (isGood) {
    takeVertex();
    isGood = balancePrices();
  }
  isNew_ = false;
  if (isGood) {
    settle();
    return true;
  }
  forget();
  mayJump_ = false;
  return false;
}

/// What is held at a bound becomes active, a row that is missed is at its cap.
void DualActiveSet::takeVertex() {
  using At = VertexGuess::At;
  const Eigen::Index m = form_.rowCount();
  const auto take = [&](Eigen::Index k, At at) {
    if (at == At::Inside) return;
    set_.sign[k] = at == At::Upper || at == At::Above ? 1.0 : -1.0;
    if (at == At::Lower || at == At::Upper) {
      set_.active.push_back(k);
      setState(k, State::Active);
    } else {
      set_.multiplier[std::size_t(k)] = set_.cap[std::size_t(k)];
      setState(k, State::Capped);
    }
  };
  for (Eigen::Index j = 0; j < form_.columnCount(); ++j) take(m + j, guess_.column(j));
  for (Eigen::Index i = 0; i < m; ++i) take(i, guess_.row(i));
  rebuildFactor();
}

/// Parts times lambda of the active multipliers so that they balance those at their caps. False: they do not,
/// or not within their range.
bool DualActiveSet::balancePrices() {
  Eigen::Map<Eigen::VectorXd> sum(outside_.data() + form_.rowCount(), form_.columnCount());
  double most = 0.0;
  sum.setZero();
  for (Eigen::Index k = 0; k < form_.rowCount(); ++k) {
    if (state(k) == State::Capped)
      form_.add(k, set_.multiplier[std::size_t(k)].high * set_.sign[k], sum.data());
    if (state(k) == State::Capped) most = std::max(most, set_.multiplier[std::size_t(k)].high);
  }
  for (int round = 0; round < 3; ++round) {
    activeProducts(sum.data(), scratch_.data());
    set_.factor.forward(scratch_.data());
    set_.factor.backward(scratch_.data());
    addActive(scratch_.data(), -1.0, sum.data());
    for (std::size_t a = 0; a < set_.active.size(); ++a)
      set_.multiplier[std::size_t(set_.active[a])].high -= scratch_[Eigen::Index(a)];
    if (sum.cwiseAbs().maxCoeff() <= kStraight * most) break;
  }
  if (!(sum.cwiseAbs().maxCoeff() <= kBalanced * most)) return false;
  for (const Eigen::Index k : set_.active) {
    TwoLevel& own = set_.multiplier[std::size_t(k)];
    const double cap = set_.cap[std::size_t(k)].high;
    if (own.high < -kNoPrice * most || own.high > cap * (1.0 + kNoPrice)) return false;
    if (own.high < kNoPrice * most) own.high = 0.0;
    if (cap < kInfinity && own.high > cap * (1.0 - kNoPrice)) own.high = cap;
  }
  return true;
}

}  // namespace tarebowl::solver
