// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/mps_file.h"

#include <cmath>
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace tarebowl::reference {

namespace {

using Eigen::Index;
using solver::kInfinity;
using Fields = std::vector<std::string>;

class Reader {
 public:
  void read(std::istream& text);
  [[nodiscard]] solver::Program program() const;

 private:
  struct Row {
    char type = 'N';
    double right = 0.0;
    double range = NAN;
  };
  struct Column {
    double lower = 0.0;
    double upper = kInfinity;
    std::map<std::string, double> entries;
  };

  void take(const std::string& section, const Fields& fields);
  void takeBound(const Fields& fields);
  void place(solver::Program& p, Index i, const Row& row) const;

  /// Pairs of a row's name and a number, after as many fields as there are over.
  template <class Put>
  static void forPairs(const Fields& fields, const Put& put) {
    for (std::size_t k = fields.size() % 2; k + 1 < fields.size(); k += 2)
      put(fields[k], std::stod(fields[k + 1]));
  }

  std::string objective_;
  std::vector<std::string> rowOrder_, columnOrder_;
  std::map<std::string, Row> rows_;
  std::map<std::string, Column> columns_;
};

void Reader::read(std::istream& text) {
  std::string line;
  std::string section;
  while (std::getline(text, line)) {
    if (line.empty() || line[0] == '*') continue;
    std::istringstream words(line);
    Fields fields;
    for (std::string word; words >> word;) fields.push_back(word);
    if (fields.empty()) continue;
    if (line[0] != ' ') {
      section = fields[0];
    } else {
      take(section, fields);
    }
  }
  if (section != "ENDATA") throw std::runtime_error("no ENDATA");
}

void Reader::take(const std::string& section, const Fields& fields) {
  if (section == "ROWS") {
    rows_[fields.at(1)].type = fields[0].at(0);
    if (fields[0] == "N" && objective_.empty()) objective_ = fields[1];
    if (fields[0] != "N") rowOrder_.push_back(fields[1]);
  } else if (section == "COLUMNS") {
    if (!columns_.contains(fields.at(0))) columnOrder_.push_back(fields[0]);
    Column& column = columns_[fields[0]];
    forPairs(fields, [&](const std::string& row, double value) { column.entries[row] = value; });
  } else if (section == "RHS") {
    forPairs(fields, [&](const std::string& row, double value) { rows_.at(row).right = value; });
  } else if (section == "RANGES") {
    forPairs(fields, [&](const std::string& row, double value) { rows_.at(row).range = value; });
  } else if (section == "BOUNDS") {
    takeBound(fields);
  } else if (section != "QUADOBJ") {
    throw std::runtime_error("unknown section " + section);
  }
}

void Reader::takeBound(const Fields& fields) {
  Column& column = columns_.at(fields.at(2));
  const std::string& type = fields[0];
  const double value = fields.size() > 3 ? std::stod(fields[3]) : 0.0;
  if (type == "UP" || type == "FX") column.upper = value;
  if (type == "LO" || type == "FX") column.lower = value;
  if (column.lower < 0.0 || column.upper < 0.0 || type == "FR" || type == "MI")
    throw std::runtime_error("a negative or free variable");
}

void Reader::place(solver::Program& p, Index i, const Row& row) const {
  const double range = std::isnan(row.range) ? kInfinity : std::abs(row.range);
  const bool below = row.type == 'L' || (row.type == 'E' && row.range < 0);
  p.rowLower[i] = below ? row.right - range : row.right;
  p.rowUpper[i] = below ? row.right : row.right + range;
  if (row.type == 'E' && std::isnan(row.range)) p.rowLower[i] = p.rowUpper[i] = row.right;
}

solver::Program Reader::program() const {
  const auto m = static_cast<Index>(rowOrder_.size());
  const auto n = static_cast<Index>(columnOrder_.size());
  solver::Program p;
  p.rows = solver::RowMatrix::Zero(m, n);
  p.rowLower = p.rowUpper = Eigen::VectorXd::Zero(m);
  p.price = Eigen::VectorXd::Constant(m, kInfinity);
  p.lower = p.upper = p.step = p.centre = p.curvature = p.cost = Eigen::VectorXd::Zero(n);
  std::map<std::string, Index> number;
  for (Index i = 0; i < m; ++i) {
    const std::string& name = rowOrder_[static_cast<std::size_t>(i)];
    number[name] = i;
    place(p, i, rows_.at(name));
  }
  for (Index j = 0; j < n; ++j) {
    const Column& column = columns_.at(columnOrder_[static_cast<std::size_t>(j)]);
    p.lower[j] = column.lower;
    p.upper[j] = column.upper;
    for (const auto& [row, value] : column.entries) {
      if (row == objective_) p.cost[j] = value;
      if (const auto found = number.find(row); found != number.end()) p.rows(found->second, j) = value;
    }
  }
  return p;
}

}  // namespace

solver::Program readMps(const std::filesystem::path& file) {
  std::ifstream text(file);
  if (!text) throw std::runtime_error("cannot open " + file.string());
  Reader reader;
  reader.read(text);
  return reader.program();
}

}  // namespace tarebowl::reference
