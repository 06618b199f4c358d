// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/staged_answer.h"

#include <algorithm>

namespace tarebowl::solver {

void StagedAnswer::reserveAnswer(Eigen::Index rows, Eigen::Index columns) {
  check_.reserve(rows, columns);
  x_.setZero(columns);
  none_.setZero(columns);
  gradientSize_.setZero(columns);
  rowMultipliers_.setZero(rows);
  violationMultipliers_.setZero(rows);
}

void StagedAnswer::measureViolation() {
  check_.measure(rows_, x_);
  violation_ = 0.0;
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    const double at = check_.activity()[i];
    if (price_[i] < kInfinity)
      violation_ += price_[i] * std::max({0.0, rowLower_[i] - at, at - rowUpper_[i]});
  }
}

bool StagedAnswer::isLeastViolation() {
  error_ =
      std::max(error_, check_.error(pricedRows(1.0), none_, none_, x_, violationMultipliers_, kNoMultiplier));
  return error_ <= kVerified;
}

bool StagedAnswer::isBalanced(const Eigen::VectorXd& gradient, double priceFactor) {
  error_ = std::max(error_, check_.error(pricedRows(priceFactor), gradient, gradientSize_, x_,
                                         rowMultipliers_, kNoMultiplier));
  return error_ <= kVerified;
}

}  // namespace tarebowl::solver
