// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

namespace tarebowl::solver {

/// The constraints of a program in y = sqrt(hessian) z, where the objective is half a squared distance: m
/// rows divided by their length there, followed by the n columns, whose normals are unit vectors and not
/// stored. Index k < m is a row, k = m + j column j. Nothing is allocated after reserve().
class NormalForm {
 public:
  void reserve(Eigen::Index rows, Eigen::Index columns);
  /// hessian > 0.
  void assign(const RowMatrix& rows, const Eigen::VectorXd& hessian);

  [[nodiscard]] Eigen::Index rowCount() const { return m_; }
  [[nodiscard]] Eigen::Index columnCount() const { return n_; }
  [[nodiscard]] Eigen::Index count() const { return m_ + n_; }
  /// Activity of constraint k in terms of z times this is its activity here; multipliers the other way round.
  [[nodiscard]] double scale(Eigen::Index k) const { return k < m_ ? 1.0 / norm_[k] : root_[k - m_]; }
  [[nodiscard]] double root(Eigen::Index column) const { return root_[column]; }
  [[nodiscard]] double norm(Eigen::Index row) const { return norm_[row]; }

  /// The normal of a row.
  [[nodiscard]] const double* normal(Eigen::Index row) const { return normals_.data() + row * n_; }
  /// The product of normal k with a vector over the columns.
  [[nodiscard]] double product(Eigen::Index k, const double* with) const {
    return k < m_ ? Eigen::Map<const Eigen::VectorXd>(normals_.data() + k * n_, n_)
                        .dot(Eigen::Map<const Eigen::VectorXd>(with, n_))
                  : with[k - m_];
  }
  /// to += factor * normal k.
  void add(Eigen::Index k, double factor, double* to) const {
    if (k < m_)
      Eigen::Map<Eigen::VectorXd>(to, n_) +=
          factor * Eigen::Map<const Eigen::VectorXd>(normals_.data() + k * n_, n_);
    else
      to[k - m_] += factor;
  }
  /// The product of two normals.
  [[nodiscard]] double product(Eigen::Index k, Eigen::Index l) const;
  /// The rows' products with a vector over the columns; its zeros cost nothing.
  void products(const double* with, double* to) const;

 private:
  Eigen::Index m_ = 0;
  Eigen::Index n_ = 0;
  RowMatrix normals_;
  Eigen::MatrixXd byColumn_;  // the same numbers, column by column
  Eigen::VectorXd root_;
  Eigen::VectorXd inverseRoot_;
  Eigen::VectorXd norm_;
};

}  // namespace tarebowl::solver
