// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/linear_program.h"

#include <cmath>

namespace tarebowl::reference {

namespace {

using Eigen::Index;
using solver::kInfinity;

/// Integer programs may slip by 1e-7 of a row: rows are made worth more, so that this is nothing.
constexpr double kRowWorth = 1e4;

int addColumn(LinearProgram& out, double cost, double lower, double upper) {
  out.cost.push_back(cost);
  out.lower.push_back(lower);
  out.upper.push_back(upper);
  out.whole.push_back(0);
  return out.columnCount() - 1;
}

void addGrams(LinearProgram& out, const solver::Program& program, bool withCost) {
  for (Index j = 0; j < program.variableCount(); ++j) {
    const bool whole = program.step[j] > 0.0;
    const double unit = whole ? program.step[j] : 1.0;
    const double low = program.lower[j] / unit;
    const double high = program.upper[j] / unit;
    addColumn(out, withCost ? program.cost[j] * unit : 0.0, whole ? std::ceil(low - 1e-9) : low,
              whole ? std::floor(high + 1e-9) : high);
    out.whole.back() = whole ? 1 : 0;
    out.xUnits.push_back(unit);
  }
}

/// Columns for what an elastic row lacks and exceeds, each at factor times the row's price.
void addRow(LinearProgram& out, const solver::Program& program, Index i, double worth, double factor) {
  const int row = out.rowCount();
  for (Index j = 0; j < program.variableCount(); ++j) {
    const double value = worth * program.rows(i, j) * out.xUnits[static_cast<std::size_t>(j)];
    if (value != 0.0) out.entries.push_back({row, static_cast<int>(j), value});
  }
  out.rowLower.push_back(worth * program.rowLower[i]);
  out.rowUpper.push_back(worth * program.rowUpper[i]);
  if (!std::isfinite(program.price[i])) return;
  const double cost = factor * program.price[i];
  if (program.rowLower[i] > -kInfinity)
    out.entries.push_back({row, addColumn(out, cost, 0.0, kInfinity), 1.0});
  if (program.rowUpper[i] < kInfinity)
    out.entries.push_back({row, addColumn(out, cost, 0.0, kInfinity), -1.0});
}

double worthOf(const solver::Program& program) {
  return (program.step.array() > 0.0).any() ? kRowWorth : 1.0;
}

}  // namespace

LinearProgram leastShortfall(const solver::Program& program) {
  LinearProgram out;
  addGrams(out, program, false);
  out.costUnit = worthOf(program);
  for (Index i = 0; i < program.rowCount(); ++i) addRow(out, program, i, worthOf(program), 1.0);
  return out;
}

LinearProgram leastCost(const solver::Program& program, double budget) {
  LinearProgram out;
  addGrams(out, program, true);
  const double worth = worthOf(program);
  const int grams = out.columnCount();
  for (Index i = 0; i < program.rowCount(); ++i) addRow(out, program, i, worth, 1.0);
  if (out.columnCount() == grams) return out;
  const int row = out.rowCount();
  for (int j = grams; j < out.columnCount(); ++j) {
    out.entries.push_back({row, j, out.cost[static_cast<std::size_t>(j)]});
    out.cost[static_cast<std::size_t>(j)] = 0.0;
  }
  out.rowLower.push_back(-kInfinity);
  out.rowUpper.push_back(worth * budget);
  return out;
}

LinearProgram leastDeviation(const solver::Program& program, const Eigen::VectorXd& weight) {
  LinearProgram out = leastShortfall(program);
  for (Index j = 0; j < program.variableCount(); ++j) {
    const int row = out.rowCount();
    out.entries.push_back({row, static_cast<int>(j), out.xUnits[static_cast<std::size_t>(j)]});
    out.entries.push_back({row, addColumn(out, weight[j] * worthOf(program), 0.0, kInfinity), 1.0});
    out.entries.push_back({row, addColumn(out, weight[j] * worthOf(program), 0.0, kInfinity), -1.0});
    out.rowLower.push_back(program.centre[j]);
    out.rowUpper.push_back(program.centre[j]);
  }
  return out;
}

}  // namespace tarebowl::reference
