// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_day_mix.h"

#include <algorithm>
#include <span>
#include <utility>

namespace tarebowl::diet {

using Eigen::Index;

DayMix::DayMix(const solver::Program& together, std::vector<Link> links,
               const std::vector<double>& daysOfKind, Index room)
    : links_(std::move(links)),
      own_(together.cost),
      firstLink_(together.rowCount()),
      firstKind_(firstLink_ + static_cast<Index>(links_.size())),
      room_(room) {
  const Index rows = firstKind_ + static_cast<Index>(daysOfKind.size());
  const Index columns = together.variableCount() + room;
  solver::Program mix;
  mix.rows = solver::RowMatrix::Zero(rows, columns);
  mix.rows.topLeftCorner(together.rowCount(), together.variableCount()) = together.rows;
  mix.rowLower = mix.rowUpper = Eigen::VectorXd::Zero(rows);
  mix.rowLower.head(together.rowCount()) = together.rowLower;
  mix.rowUpper.head(together.rowCount()) = together.rowUpper;
  mix.price = Eigen::VectorXd::Constant(rows, solver::kInfinity);
  for (Index i = 0; i < static_cast<Index>(links_.size()); ++i) {
    const Link& link = links_[static_cast<std::size_t>(i)];
    mix.rows(firstLink_ + i, link.together) = -1.0 / link.unit;
    mix.price[firstLink_ + i] = 1.0;
  }
  for (std::size_t k = 0; k < daysOfKind.size(); ++k) {
    const Index row = firstKind_ + static_cast<Index>(k);
    mix.rowLower[row] = mix.rowUpper[row] = daysOfKind[k];
  }
  mix.lower = mix.upper = mix.cost = Eigen::VectorXd::Zero(columns);
  mix.lower.head(own_.size()) = together.lower;
  mix.upper.head(own_.size()) = together.upper;
  mix.cost.head(own_.size()) = own_;
  mix.centre = mix.curvature = mix.step = Eigen::VectorXd::Zero(columns);
  solver_.assign(solver::ContinuousProgram::of(mix));
}

void DayMix::add(std::size_t kind, const Eigen::VectorXd& amounts) {
  if (isFull() || knows(kind, amounts)) return;
  Eigen::VectorXd column = Eigen::VectorXd::Zero(solver_.rowCount());
  column.segment(firstLink_, amounts.size()) = amounts;
  column[firstKind_ + static_cast<Index>(kind)] = 1.0;
  const std::span coefficients(column.data(), static_cast<std::size_t>(column.size()));
  solver_.replaceColumn(columnOf(known()), {.coefficients = coefficients, .lower = 0.0});
  days_.push_back({kind, amounts});
}

bool DayMix::knows(std::size_t kind, const Eigen::VectorXd& amounts) const {
  return std::ranges::any_of(days_,
                             [&](const Day& day) { return day.kind == kind && day.amounts == amounts; });
}

/// In prices counted from the centre, whose links may be missed at the width.
std::optional<DayMix::Answer> DayMix::best(const Eigen::VectorXd& centre, double width) {
  Eigen::VectorXd cost = own_;
  for (std::size_t i = 0; i < links_.size(); ++i) {
    cost[links_[i].together] -= centre[static_cast<Index>(i)] / links_[i].unit;
    solver_.setPrice(firstLink_ + static_cast<Index>(i), width);
  }
  for (Index j = 0; j < cost.size(); ++j) solver_.setCost(j, cost[j]);
  for (Index k = 0; k < known(); ++k)
    solver_.setCost(columnOf(k), centre.dot(days_[static_cast<std::size_t>(k)].amounts));
  if (solver_.solveAtPrice(1.0) != solver::Status::Optimal) return std::nullopt;
  const Eigen::VectorXd moved = solver_.rowMultipliers().segment(firstLink_, centre.size());
  constexpr double kInside = 1.0 - 1e-6;
  return Answer{centre + moved, solver_.objective() + solver_.violation(),
                moved.cwiseAbs().maxCoeff() > kInside * width};
}

}  // namespace tarebowl::diet
