// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/cone_rows.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {

ConeRows::ConeRows(const ScaledProgram& program)
    : program_(program),
      scatter_(*program.source->scatter),
      side_(Eigen::VectorXd::Zero(program.rows.rows())) {
  scatter_ = program.rowScale.cwiseInverse().asDiagonal() * scatter_ * program.unit.asDiagonal();
  for (Eigen::Index i = 0; i < scatter_.rows(); ++i) {
    if (!(scatter_.row(i).maxCoeff() > 0)) continue;
    side_[i] = program.rowUpper[i] < kInfinity ? 1.0 : -1.0;
    cones_.push_back(i);
  }
}

double ConeRows::spread(Eigen::Index row, const Eigen::VectorXd& z) const {
  return scatter_.row(row).transpose().cwiseProduct(z).norm();
}

double ConeRows::activity(Eigen::Index row, const Eigen::VectorXd& z) const {
  const double mean = program_.rows.row(row).dot(z);
  return side_[row] != 0.0 ? mean + side_[row] * spread(row, z) : mean;
}

double ConeRows::violation(Eigen::Index row, const Eigen::VectorXd& z) const {
  const double at = activity(row, z);
  return std::max({0.0, program_.rowLower[row] - at, at - program_.rowUpper[row]});
}

void ConeRows::writeTangents(const Eigen::VectorXd& z, const Eigen::VectorXd& gradient,
                             const Eigen::VectorXd& multipliers, RowMatrix& rows) const {
  Eigen::VectorXd atTip;
  for (const Eigen::Index i : cones_) {
    const double spread = this->spread(i, z);
    const auto scatter = scatter_.row(i).array();
    if (!isTip(spread)) {
      rows.row(i) =
          program_.rows.row(i) + side_[i] * (scatter.square() * z.transpose().array() / spread).matrix();
      continue;
    }
    if (atTip.size() == 0) atTip = gradient + program_.rows.transpose() * multipliers;
    Eigen::ArrayXd pull = Eigen::ArrayXd::Zero(z.size());
    for (Eigen::Index j = 0; j < z.size(); ++j) {
      if (scatter[j] > 0) pull[j] = std::max(0.0, -atTip[j]) / scatter[j];
    }
    const double size = pull.matrix().norm();
    rows.row(i) = program_.rows.row(i);
    if (size > 0) rows.row(i) += side_[i] * (scatter.transpose() * pull / size).matrix().transpose();
  }
}

void ConeRows::addCurvature(const Eigen::VectorXd& z, const Eigen::VectorXd& multipliers,
                            const std::vector<Eigen::Index>& columns,
                            Eigen::Ref<Eigen::MatrixXd> hessian) const {
  const auto count = Eigen::Index(columns.size());
  Eigen::MatrixXd slopes(count, Eigen::Index(cones_.size()));
  Eigen::Index curved = 0;
  for (const Eigen::Index i : cones_) {
    const double multiplier = std::abs(multipliers[i]);
    if (!(multiplier > 0)) continue;
    const double spread = this->spread(i, z);
    if (isTip(spread)) continue;
    const double weight = multiplier / spread;
    const double root = std::sqrt(weight) / spread;
    for (Eigen::Index a = 0; a < count; ++a) {
      const Eigen::Index j = columns[std::size_t(a)];
      const double square = scatter_(i, j) * scatter_(i, j);
      hessian(a, a) += weight * square;
      slopes(a, curved) = root * square * z[j];
    }
    ++curved;
  }
  hessian.noalias() -= slopes.leftCols(curved) * slopes.leftCols(curved).transpose();
}

void ConeRows::addDiagonalCurvature(const Eigen::VectorXd& z, const Eigen::VectorXd& multipliers,
                                    Eigen::VectorXd& hessian) const {
  for (const Eigen::Index i : cones_) {
    const double weight = std::abs(multipliers[i]);
    const double spread = this->spread(i, z);
    if (!(weight > 0) || isTip(spread)) continue;
    hessian += (weight / spread) * scatter_.row(i).cwiseAbs2().transpose();
  }
}

}  // namespace tarebowl::solver
