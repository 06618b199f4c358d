// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <vector>

namespace tarebowl::solver {

/// A program in which each row with scatter has one bound, and means the same as its source. A hard row of
/// two bounds becomes two rows. The two bounds of an elastic one share one violation, the larger of the two.
/// Where only one of them is ever missed that is their sum, so it becomes two rows with a price each, and an
/// answer is one of the source as long as the two do not push with more than that price together
/// (overcharged). Where they do, the violation becomes a column of its own behind the others, as far as which
/// both may be missed.
struct OneSided {
  /// shared: rows of the source whose violation gets a column.
  OneSided(const Program& source, const std::vector<Eigen::Index>& shared);

  Program program;
  std::vector<Eigen::Index>
      origin;  ///< row of the source that a row stands for; -1: a shared violation's own

  /// Rows of the source whose two bounds push with more than lambda times their price together.
  [[nodiscard]] std::vector<Eigen::Index> overcharged(const Eigen::VectorXd& multipliers,
                                                      double lambda) const;
  /// Multipliers of the source's rows: those of a row's two bounds together.
  [[nodiscard]] Eigen::VectorXd sourceMultipliers(const Eigen::VectorXd& multipliers) const;

 private:
  const Program& source_;  ///< must outlive this
};

}  // namespace tarebowl::solver
