// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <Eigen/Jacobi>

namespace tarebowl::solver {

/// Q R of the active normals (one column each), kept up to date while normals come and go. Q is n x n,
/// orthogonal.
class OrthogonalFactor {
 public:
  explicit OrthogonalFactor(Eigen::Index n)
      : q_(Eigen::MatrixXd::Identity(n, n)), r_(Eigen::MatrixXd::Zero(n, n)), turned_(n) {}

  [[nodiscard]] Eigen::Index size() const { return size_; }

  /// Splits a normal: returned is the part outside the active normals' span; coefficients receives what of
  /// each active normal makes up the part inside. The normal is remembered for append().
  Eigen::VectorXd split(const Eigen::VectorXd& normal, Eigen::VectorXd& coefficients) {
    const Eigen::Index n = q_.rows();
    turned_.noalias() = q_.transpose() * normal;
    coefficients = r_.topLeftCorner(size_, size_).triangularView<Eigen::Upper>().solve(turned_.head(size_));
    return q_.rightCols(n - size_) * turned_.tail(n - size_);
  }

  /// Adds the normal last given to split().
  void append() {
    for (Eigen::Index i = q_.rows() - 1; i > size_; --i) {
      Eigen::JacobiRotation<double> rotation;
      rotation.makeGivens(turned_[i - 1], turned_[i], &turned_[i - 1]);
      turned_[i] = 0.0;
      q_.applyOnTheRight(i - 1, i, rotation);
    }
    r_.col(size_).head(size_ + 1) = turned_.head(size_ + 1);
    ++size_;
  }

  void remove(Eigen::Index position) {
    for (Eigen::Index k = position; k + 1 < size_; ++k) r_.col(k).head(k + 2) = r_.col(k + 1).head(k + 2);
    --size_;
    for (Eigen::Index k = position; k < size_; ++k) {
      Eigen::JacobiRotation<double> rotation;
      rotation.makeGivens(r_(k, k), r_(k + 1, k), &r_(k, k));
      r_(k + 1, k) = 0.0;
      if (k + 1 < size_) {
        r_.block(0, k + 1, r_.rows(), size_ - k - 1).applyOnTheLeft(k, k + 1, rotation.adjoint());
      }
      q_.applyOnTheRight(k, k + 1, rotation);
    }
  }

  /// (R^T R)^-1 v: turns residuals of the active rows into corrections of their multipliers.
  [[nodiscard]] Eigen::VectorXd solveNormal(const Eigen::VectorXd& v) const {
    const auto r = r_.topLeftCorner(size_, size_).triangularView<Eigen::Upper>();
    return r.solve(r.transpose().solve(v));
  }

 private:
  Eigen::MatrixXd q_;
  Eigen::MatrixXd r_;
  Eigen::VectorXd turned_;
  Eigen::Index size_ = 0;
};

}  // namespace tarebowl::solver
