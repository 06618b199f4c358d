// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/active_factor.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {

using Row = Eigen::Map<Eigen::VectorXd>;
using ConstRow = Eigen::Map<const Eigen::VectorXd>;

void ActiveFactor::reserve(Eigen::Index most) {
  r_.resize(most, most);
  inverse_.resize(most);
  size_ = 0;
}

void ActiveFactor::forward(double* v) const {
  const Eigen::Index stride = r_.cols();
  for (Eigen::Index k = 0; k < size_; ++k) {
    if (v[k] == 0.0) continue;
    v[k] *= inverse_[k];
    const Eigen::Index rest = size_ - k - 1;
    if (rest > 0) Row(v + k + 1, rest) -= v[k] * ConstRow(r_.data() + k * stride + k + 1, rest);
  }
}

/// Four rows at a time, which do not wait for each other until their last entries.
void ActiveFactor::backward(double* v) const {
  const Eigen::Index stride = r_.cols();
  Eigen::Index end = size_;
  for (; end >= 4; end -= 4) {
    const Eigen::Index k = end - 4;
    const double* const rows = r_.data() + k * stride;
    const ConstRow known(v + end, size_ - end);
    double sums[4] = {v[k], v[k + 1], v[k + 2], v[k + 3]};
    if (size_ > end) {
      const auto tail = [&](Eigen::Index row) { return ConstRow(rows + row * stride + end, size_ - end); };
      sums[0] -= tail(0).dot(known);
      sums[1] -= tail(1).dot(known);
      sums[2] -= tail(2).dot(known);
      sums[3] -= tail(3).dot(known);
    }
    for (Eigen::Index row = 3; row >= 0; --row) {
      for (Eigen::Index j = row + 1; j < 4; ++j) sums[row] -= rows[row * stride + k + j] * v[k + j];
      v[k + row] = sums[row] * inverse_[k + row];
    }
  }
  for (Eigen::Index k = end - 1; k >= 0; --k) {
    const Eigen::Index rest = size_ - k - 1;
    double sum = v[k];
    if (rest > 0) sum -= ConstRow(r_.data() + k * stride + k + 1, rest).dot(ConstRow(v + k + 1, rest));
    v[k] = sum * inverse_[k];
  }
}

void ActiveFactor::append(const double* column, double outside) {
  const Eigen::Index stride = r_.cols();
  double* at = r_.data() + size_;
  for (Eigen::Index k = 0; k < size_; ++k) at[k * stride] = column[k];
  at[size_ * stride] = outside;
  inverse_[size_] = 1.0 / outside;
  ++size_;
}

void ActiveFactor::remove(Eigen::Index position) {
  const Eigen::Index stride = r_.cols();
  for (Eigen::Index k = 0; k < size_; ++k) {
    double* row = r_.data() + k * stride;
    const Eigen::Index from = std::max(position, k - 1);
    std::copy(row + from + 1, row + size_, row + from);
  }
  --size_;
  for (Eigen::Index k = position; k < size_; ++k) {
    double* upper = r_.data() + k * stride;
    double* lower = upper + stride;
    const double length = std::sqrt(upper[k] * upper[k] + lower[k] * lower[k]);
    const double c = upper[k] / length;
    const double s = lower[k] / length;
    upper[k] = length;
    inverse_[k] = 1.0 / length;
    for (Eigen::Index j = k + 1; j < size_; ++j) {
      const double a = upper[j];
      const double b = lower[j];
      upper[j] = c * a + s * b;
      lower[j] = c * b - s * a;
    }
  }
}

void ActiveFactor::copyFrom(const ActiveFactor& other) {
  size_ = other.size_;
  r_.topLeftCorner(size_, size_) = other.r_.topLeftCorner(size_, size_);
  inverse_.head(size_) = other.inverse_.head(size_);
}

}  // namespace tarebowl::solver
