// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <Eigen/Core>
#include <vector>

namespace tarebowl::diet {

/// Rows and columns of a program as they come, before it is known how many.
class RowSheet {
 public:
  struct Entry {
    Eigen::Index column;
    double value;
  };
  Eigen::Index addColumn(double lower, double upper, double step);
  void addCost(Eigen::Index column, double cost) { cost_[static_cast<std::size_t>(column)] += cost; }
  void addRow(std::vector<Entry> entries, double lower, double upper, double price = solver::kInfinity);
  [[nodiscard]] solver::Program program() const;

 private:
  struct Row {
    std::vector<Entry> entries;
    double lower;
    double upper;
    double price;
  };
  std::vector<double> lower_, upper_, step_, cost_;
  std::vector<Row> rows_;
};

}  // namespace tarebowl::diet
