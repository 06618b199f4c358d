// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/row_sheet.h"

#include <utility>

namespace tarebowl::diet {

using Eigen::Index;

Index RowSheet::addColumn(double lower, double upper, double step) {
  lower_.push_back(lower);
  upper_.push_back(upper);
  step_.push_back(step);
  cost_.push_back(0.0);
  return static_cast<Index>(lower_.size()) - 1;
}

void RowSheet::addRow(std::vector<Entry> entries, double lower, double upper, double price) {
  rows_.push_back({std::move(entries), lower, upper, price});
}

solver::Program RowSheet::program() const {
  solver::Program program;
  const auto n = static_cast<Index>(lower_.size());
  const auto m = static_cast<Index>(rows_.size());
  program.rows = solver::RowMatrix::Zero(m, n);
  program.rowLower = program.rowUpper = program.price = Eigen::VectorXd::Zero(m);
  for (Index i = 0; i < m; ++i) {
    const Row& row = rows_[static_cast<std::size_t>(i)];
    for (const Entry& entry : row.entries) program.rows(i, entry.column) += entry.value;
    program.rowLower[i] = row.lower;
    program.rowUpper[i] = row.upper;
    program.price[i] = row.price;
  }
  program.lower = Eigen::Map<const Eigen::VectorXd>(lower_.data(), n);
  program.upper = Eigen::Map<const Eigen::VectorXd>(upper_.data(), n);
  program.step = Eigen::Map<const Eigen::VectorXd>(step_.data(), n);
  program.cost = Eigen::Map<const Eigen::VectorXd>(cost_.data(), n);
  program.centre = program.curvature = Eigen::VectorXd::Zero(n);
  return program;
}

}  // namespace tarebowl::diet
