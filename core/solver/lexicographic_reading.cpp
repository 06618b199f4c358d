// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The last digits of an answer, from the original rows.
#include "core/solver/lexicographic_simplex.h"

#include <Eigen/LU>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kNoPush = 1e-13;  // a multiplier beside the largest one that is rounding

void dropRounding(Eigen::VectorXd& multipliers) {
  const double least = kNoPush * multipliers.cwiseAbs().maxCoeff();
  for (double& multiplier : multipliers) {
    if (std::abs(multiplier) <= least) multiplier = 0.0;
  }
}

}  // namespace

void LexicographicSimplex::read(Reading& reading) const {
  const Eigen::Index n = columnCount();
  std::vector<Eigen::Index> used;
  std::vector<Eigen::Index> held;
  reading.x.resize(n);
  reading.high.resize(rowCount());
  reading.low.resize(rowCount());
  for (Eigen::Index k = 0; k < n; ++k) {
    const Eigen::Index variable = s_.nonbasic[std::size_t(k)];
    if (variable < n) {
      reading.x[variable] = s_.nonbasicValue[k];
      continue;
    }
    held.push_back(variable - n);
    reading.high[variable - n] = -s_.gradientHigh[k];
    reading.low[variable - n] = -s_.gradientLow[k];
  }
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    const Eigen::Index variable = s_.basic[std::size_t(i)];
    const TwoLevel slope = slopeIn(basicBand(i), s_.piece[std::size_t(i)]);
    if (variable < n) {
      used.push_back(variable);
      reading.x[variable] = s_.basicValue[i];
    } else {
      reading.high[variable - n] = slope.high;
      reading.low[variable - n] = slope.low;
    }
  }
  if (used.empty()) return;
  const Eigen::MatrixXd corner = rows_(held, used);
  const Eigen::PartialPivLU<Eigen::MatrixXd> factor(corner);
  const Eigen::PartialPivLU<Eigen::MatrixXd> transposed(corner.transpose());
  const auto count = Eigen::Index(used.size());
  Eigen::VectorXd missing(count);
  Eigen::MatrixX2d pushed(count, 2);
  for (int round = 0; round < 2; ++round) {  // one solve and one refinement, as corrections of what is there
    for (Eigen::Index k = 0; k < count; ++k) {
      const Eigen::Index i = held[std::size_t(k)];
      const Eigen::Index j = used[std::size_t(k)];
      missing[k] = s_.nonbasicValue[s_.slot[std::size_t(n + i)]] - rows_.row(i).dot(reading.x);
      const TwoLevel slope = bands_[std::size_t(j)].slope;
      pushed(k, 0) = -slope.high - rows_.col(j).dot(reading.high);
      pushed(k, 1) = -slope.low - rows_.col(j).dot(reading.low);
    }
    const Eigen::VectorXd move = factor.solve(missing);
    const Eigen::MatrixX2d change = transposed.solve(pushed);
    for (Eigen::Index k = 0; k < count; ++k) {
      reading.x[used[std::size_t(k)]] += move[k];
      double& high = reading.high[held[std::size_t(k)]];
      high = cancelled(high, change(k, 0));
      reading.low[held[std::size_t(k)]] += change(k, 1);
    }
  }
  dropRounding(reading.high);
  dropRounding(reading.low);
}

}  // namespace tarebowl::solver
