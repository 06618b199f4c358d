// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <vector>

namespace tarebowl::solver {

/// The triangle R of  N N^T = R^T R  for the active normals N (one row each), kept up to date while normals
/// come and go. The orthogonal part is not kept: who solves with R corrects once against the normals
/// themselves (Bjoerck 1987, "Stability analysis of the method of seminormal equations", Linear Algebra Appl.
/// 88/89), which is as exact and several times cheaper. Never allocates after reserve().
class ActiveFactor {
 public:
  void reserve(Eigen::Index most);
  void clear() { size_ = 0; }
  [[nodiscard]] Eigen::Index size() const { return size_; }

  /// v := R^-T v, over the first size() entries.
  void forward(double* v) const;
  /// v := R^-1 v.
  void backward(double* v) const;
  /// A new last normal: column as forward() turned its products with the active ones, and the length of what
  /// of it lies outside their span, > 0.
  void append(const double* column, double outside);
  void remove(Eigen::Index position);
  /// Takes over another factor of the same capacity.
  void copyFrom(const ActiveFactor& other);

 private:
  RowMatrix r_;
  Eigen::VectorXd inverse_;  // of the diagonal: a solve multiplies only
  Eigen::Index size_ = 0;
};

}  // namespace tarebowl::solver
