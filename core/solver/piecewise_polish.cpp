// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The last digits of an answer, from the original rows.
#include "core/solver/piecewise_simplex.h"

#include <Eigen/LU>

namespace tarebowl::solver {

void PiecewiseSimplex::polish(Eigen::VectorXd& values, Eigen::VectorXd& slopes) const {
  values = columnValues();
  slopes = rowSlopes();
  std::vector<Eigen::Index> freeColumns;
  std::vector<Eigen::Index> heldRows;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    if (isBasic(j)) freeColumns.push_back(j);
    if (s_.nonbasic[std::size_t(j)] >= columns_) {
      heldRows.push_back(s_.nonbasic[std::size_t(j)] - columns_);
    }
  }
  if (freeColumns.empty()) return;
  const Eigen::MatrixXd corner = original_(heldRows, freeColumns);
  const Eigen::PartialPivLU<Eigen::MatrixXd> factor(corner);
  const Eigen::PartialPivLU<Eigen::MatrixXd> transposed(corner.transpose());
  for (int round = 0; round < 2; ++round) {  // one solve and one refinement, as corrections of what is there
    Eigen::VectorXd rowResidual(Eigen::Index(heldRows.size()));
    for (std::size_t k = 0; k < heldRows.size(); ++k) {
      rowResidual[Eigen::Index(k)] = value(columns_ + heldRows[k]) - original_.row(heldRows[k]).dot(values);
    }
    const Eigen::VectorXd columnCorrection = factor.solve(rowResidual);
    Eigen::VectorXd slopeResidual(Eigen::Index(freeColumns.size()));
    for (std::size_t k = 0; k < freeColumns.size(); ++k) {
      const double slope = s_.slope[s_.slot[std::size_t(freeColumns[k])] - columns_];
      slopeResidual[Eigen::Index(k)] = -slope - original_.col(freeColumns[k]).dot(slopes);
    }
    const Eigen::VectorXd slopeCorrection = transposed.solve(slopeResidual);
    if (!columnCorrection.allFinite() || !slopeCorrection.allFinite()) return;
    for (std::size_t k = 0; k < freeColumns.size(); ++k)
      values[freeColumns[k]] += columnCorrection[Eigen::Index(k)];
    for (std::size_t k = 0; k < heldRows.size(); ++k) slopes[heldRows[k]] += slopeCorrection[Eigen::Index(k)];
  }
}

}  // namespace tarebowl::solver
