// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/normal_form.h"

#include <cmath>

namespace tarebowl::solver {

void NormalForm::reserve(Eigen::Index rows, Eigen::Index columns) {
  m_ = rows;
  n_ = columns;
  normals_.resize(rows, columns);
  byColumn_.resize(rows, columns);
  root_.resize(columns);
  inverseRoot_.resize(columns);
  norm_.resize(rows);
}

void NormalForm::assign(const RowMatrix& rows, const Eigen::VectorXd& hessian) {
  root_ = hessian.cwiseSqrt();
  inverseRoot_ = root_.cwiseInverse();
  for (Eigen::Index i = 0; i < m_; ++i) {
    auto normal = normals_.row(i).transpose();
    normal = rows.row(i).transpose().cwiseProduct(inverseRoot_);
    const double squared = normal.squaredNorm();
    norm_[i] = squared > 0 ? std::sqrt(squared) : 1.0;
    normal *= 1.0 / norm_[i];
  }
  byColumn_ = normals_;
}

double NormalForm::product(Eigen::Index k, Eigen::Index l) const {
  if (k < m_ && l < m_) return product(k, normals_.data() + l * n_);
  if (k < m_) return normals_(k, l - m_);
  if (l < m_) return normals_(l, k - m_);
  return k == l ? 1.0 : 0.0;
}

void NormalForm::products(const double* with, double* to) const {
  using Column = Eigen::Map<const Eigen::VectorXd>;
  Eigen::Map<Eigen::VectorXd> sum(to, m_);
  sum.setZero();
  Eigen::Index pending[4];
  int count = 0;
  for (Eigen::Index j = 0; j < n_; ++j) {  // four columns at a time: the sums are read and written less often
    if (with[j] == 0.0) continue;
    pending[count++] = j;
    if (count < 4) continue;
    count = 0;
    const double* data = byColumn_.data();
    sum += with[pending[0]] * Column(data + pending[0] * m_, m_) +
           with[pending[1]] * Column(data + pending[1] * m_, m_) +
           (with[pending[2]] * Column(data + pending[2] * m_, m_) +
            with[pending[3]] * Column(data + pending[3] * m_, m_));
  }
  for (int k = 0; k < count; ++k) sum += with[pending[k]] * byColumn_.col(pending[k]);
}

}  // namespace tarebowl::solver
