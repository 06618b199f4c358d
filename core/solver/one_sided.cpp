// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/one_sided.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

/// A row of the new program: what it is taken from, and the column of its shared violation or -1.
struct Row {
  Eigen::Index source;
  double lower;
  double upper;
  double price;
  Eigen::Index column;
};

bool isSplit(const Program& program, Eigen::Index i) {
  return program.rowLower[i] > -kInfinity && program.rowUpper[i] < kInfinity &&
         program.scatter->row(i).maxCoeff() > 0;
}

Eigen::VectorXd longer(const Eigen::VectorXd& own, Eigen::Index count, double value) {
  Eigen::VectorXd all(own.size() + count);
  all << own, Eigen::VectorXd::Constant(count, value);
  return all;
}

void addColumns(Program& program, const Program& source, Eigen::Index count) {
  program.lower = longer(source.lower, count, 0.0);
  program.upper = longer(source.upper, count, kInfinity);
  program.step = longer(source.step, count, 0.0);
  program.centre = longer(source.centre, count, 0.0);
  program.curvature = longer(source.curvature, count, 0.0);
  program.cost = longer(source.cost, count, 0.0);
  program.choices = source.choices;
}

void writeRows(Program& program, const Program& source, const std::vector<Row>& rows) {
  const auto m = Eigen::Index(rows.size());
  const Eigen::Index n = program.lower.size();
  program.rows.setZero(m, n);
  program.scatter = RowMatrix::Zero(m, n);
  program.rowLower.resize(m);
  program.rowUpper.resize(m);
  program.price.resize(m);
  for (Eigen::Index k = 0; k < m; ++k) {
    const Row& row = rows[std::size_t(k)];
    program.rowLower[k] = row.lower;
    program.rowUpper[k] = row.upper;
    program.price[k] = row.price;
    if (row.source >= 0) {
      program.rows.row(k).head(source.variableCount()) = source.rows.row(row.source);
      program.scatter->row(k).head(source.variableCount()) = source.scatter->row(row.source);
    }
    if (row.column >= 0) program.rows(k, row.column) = row.source >= 0 && row.upper < kInfinity ? -1.0 : 1.0;
  }
}

}  // namespace

OneSided::OneSided(const Program& source, const std::vector<Eigen::Index>& shared) : source_(source) {
  std::vector<Row> rows;
  Eigen::Index columns = source.variableCount();
  for (Eigen::Index i = 0; i < source.rowCount(); ++i) {
    const double low = source.rowLower[i];
    const double high = source.rowUpper[i];
    const double price = source.price[i];
    if (!isSplit(source, i)) {
      rows.push_back({i, low, high, price, -1});
      continue;
    }
    const bool isShared = std::ranges::find(shared, i) != shared.end();
    const Eigen::Index column = isShared ? columns++ : -1;
    rows.push_back({i, -kInfinity, high, isShared ? kInfinity : price, column});
    rows.push_back({i, low, kInfinity, isShared ? kInfinity : price, column});
    if (isShared) rows.push_back({-1, -kInfinity, 0.0, price, column});
  }
  addColumns(program, source, columns - source.variableCount());
  writeRows(program, source, rows);
  for (const Row& row : rows) origin.push_back(row.source);
}

std::vector<Eigen::Index> OneSided::overcharged(const Eigen::VectorXd& multipliers, double lambda) const {
  std::vector<Eigen::Index> found;
  for (std::size_t k = 0; k + 1 < origin.size(); ++k) {
    const Eigen::Index i = origin[k];
    if (i < 0 || origin[k + 1] != i || !(program.price[Eigen::Index(k)] < kInfinity)) continue;
    const double pushed = std::abs(multipliers[Eigen::Index(k)]) + std::abs(multipliers[Eigen::Index(k) + 1]);
    if (pushed > lambda * source_.price[i] * (1 + 1e-9)) found.push_back(i);
  }
  return found;
}

Eigen::VectorXd OneSided::sourceMultipliers(const Eigen::VectorXd& multipliers) const {
  Eigen::VectorXd all = Eigen::VectorXd::Zero(source_.rowCount());
  for (std::size_t k = 0; k < origin.size() && Eigen::Index(k) < multipliers.size(); ++k) {
    if (origin[k] >= 0) all[origin[k]] += multipliers[Eigen::Index(k)];
  }
  return all;
}

}  // namespace tarebowl::solver
