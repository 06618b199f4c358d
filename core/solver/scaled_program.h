// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/piecewise_cost.h"
#include "core/solver/program.h"

#include <vector>

namespace tarebowl::solver {

/// A Program brought to a scale on which numbers are near 1: columns counted in whole steps (or a typical
/// amount where continuous), rows divided by a power of two near their largest coefficient. µg of selenium
/// and kcal of energy meet here.
struct ScaledProgram {
  explicit ScaledProgram(const Program& program);

  const Program* source;  ///< must outlive this
  /// What whole answers are judged by: the source, or a program with cones of which the source is an outer
  /// approximation and whose columns are the first of the source's.
  const Program* judge;
  RowMatrix rows;
  Eigen::VectorXd rowLower;
  Eigen::VectorXd rowUpper;
  Eigen::VectorXd price;     ///< per unit of scaled violation
  Eigen::VectorXd rowScale;  ///< source row = rowScale * scaled row
  Eigen::VectorXd unit;      ///< x = unit * z
  Eigen::VectorXd lower;     ///< of z; whole numbers where onGrid
  Eigen::VectorXd upper;     ///< of z; finite: a column without a limit gets a generous one
  std::vector<char> onGrid;
  std::vector<int> gap;        ///< least z of a used column, in whole steps; 1 where every step is allowed
  Eigen::VectorXd threshold;   ///< least z of a used column, above 0; 0 where there is no choice
  std::vector<char> generous;  ///< the upper limit was invented here

  [[nodiscard]] bool isEmptyBox() const;  ///< a column's limits leave no value on its grid

  [[nodiscard]] Eigen::VectorXd toSource(const Eigen::VectorXd& z) const { return unit.cwiseProduct(z); }
  [[nodiscard]] bool isOuter() const { return judge != source; }
  [[nodiscard]] Eigen::Index judgedColumns() const { return judge->variableCount(); }
  /// The amounts that are judged.
  [[nodiscard]] Eigen::VectorXd toJudge(const Eigen::VectorXd& z) const {
    return unit.head(judgedColumns()).cwiseProduct(z.head(judgedColumns()));
  }

  enum class Rows { Priced, Hard };
  /// Row costs: elastic rows at price times factor, or hard.
  [[nodiscard]] PiecewiseCost rowCost(Eigen::Index row, Rows mode, double factor) const;
  /// Column costs of stage 1 (nothing) and of stage 2 (the objective).
  [[nodiscard]] PiecewiseCost freeColumn(Eigen::Index column) const;
  [[nodiscard]] PiecewiseCost objectiveColumn(Eigen::Index column) const;
};

}  // namespace tarebowl::solver
