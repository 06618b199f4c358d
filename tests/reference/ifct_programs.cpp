// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/ifct_programs.h"

#include "tests/reference/draw.h"
#include "tests/reference/ifct_foods.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace tarebowl::reference {

namespace {

using Eigen::Index;
using Eigen::VectorXd;
using Targets = ProgramKind::Targets;

constexpr double kMostGrams = 80.0;
constexpr double kLeastUsedGrams = 5.0;  // of a choice
constexpr Index kChoiceMembers = 6;

/// What an instance is made of: foods by row, per gram.
struct Larder {
  Eigen::MatrixXd content;  // foods x nutrients
  Eigen::MatrixXd sd;
  VectorXd dryMatter;
  std::vector<std::string> groups;
};

Larder drawFoods(const IfctTable& table, Index count, Draw& draw) {
  const auto water = std::ranges::find(ifctNutrients(), "Moisture; water") - ifctNutrients().begin();
  Larder larder{Eigen::MatrixXd(count, table.content.cols()),
                Eigen::MatrixXd(count, table.content.cols()),
                VectorXd(count),
                {}};
  const auto chosen = draw.some(static_cast<std::size_t>(count), table.groups.size());
  for (Index j = 0; j < count; ++j) {
    const std::size_t at = chosen[static_cast<std::size_t>(j)];
    larder.content.row(j) = table.content.row(static_cast<Index>(at)) / 100.0;
    larder.sd.row(j) = table.sd.row(static_cast<Index>(at)) / 100.0;
    larder.dryMatter[j] = 1.0 - larder.content(j, water);
    larder.groups.push_back(table.groups[at]);
  }
  return larder;
}

/// A fifth of the foods is not used; of a choice's six, two are.
VectorXd drawHidden(const ProgramKind& kind, Draw& draw) {
  VectorXd hidden(kind.foods);
  for (Index j = 0; j < kind.foods; ++j)
    hidden[j] = draw.chance(0.2) ? 0.0 : static_cast<double>(1 + draw.below(40));
  for (Index choice = 0; kind.twoOfSix && choice < 2; ++choice) {
    hidden.segment(choice * kChoiceMembers, kChoiceMembers).setZero();
    for (const std::size_t member : draw.some(2, kChoiceMembers))
      hidden[choice * kChoiceMembers + static_cast<Index>(member)] =
          kLeastUsedGrams + static_cast<double>(draw.below(30));
  }
  return hidden;
}

/// Writes rows one after the other, each over what the hidden diet holds of it.
class RowWriter {
 public:
  RowWriter(const ProgramKind& kind, const VectorXd& hidden, Draw& draw, solver::Program& program)
      : kind_(kind), hidden_(hidden), draw_(draw), program_(program) {}

  [[nodiscard]] bool full() const { return row_ == kind_.rows; }

  /// part x within a band around what the hidden diet holds, over size; false where size is nothing.
  bool add(const VectorXd& part, double size, const VectorXd& sd) {
    if (full() || !(size > 1e-12)) return false;
    const VectorXd scatter = kind_.guard * sd / size;
    const double guard = scatter.cwiseProduct(hidden_).norm();
    const double value = part.dot(hidden_) / size;
    const double width = draw_.between(0.05, kind_.widestBand);
    const double below = width * draw_.between(0.1, 0.9);
    const bool moved = kind_.targets == Targets::Unmet && draw_.chance(0.35);
    const double shift = moved ? draw_.between(-0.4, 0.6) : 0.0;
    program_.rows.row(row_) = part.transpose() / size;
    program_.rowLower[row_] = value + shift - below - guard;
    program_.rowUpper[row_] = value + shift + (width - below) + guard;
    const double weight = draw_.chance(0.3) ? draw_.between(0.2, 5.0) : 1.0;
    program_.price[row_] = kind_.targets == Targets::Hard ? solver::kInfinity : weight;
    if (program_.scatter) program_.scatter->row(row_) = scatter.transpose();
    ++row_;
    return true;
  }

 private:
  const ProgramKind& kind_;
  const VectorXd& hidden_;
  Draw& draw_;
  solver::Program& program_;
  Index row_ = 0;
};

std::vector<Index> knownInMost(const Larder& larder) {
  std::vector<Index> known;
  for (Index k = 0; k < larder.content.cols(); ++k) {
    if (2 * (larder.content.col(k).array() > 0.0).count() > larder.content.rows()) known.push_back(k);
  }
  return known;
}

void addShares(const Larder& larder, const VectorXd& hidden, Index most, RowWriter& writer) {
  std::vector<std::string> groups = larder.groups;
  std::ranges::sort(groups);
  groups.erase(std::unique(groups.begin(), groups.end()), groups.end());
  const double total = larder.dryMatter.dot(hidden);
  Index added = 0;
  for (std::size_t g = 0; g + 1 < groups.size() && added < most; ++g) {
    VectorXd own = VectorXd::Zero(hidden.size());
    for (Index j = 0; j < own.size(); ++j) {
      if (larder.groups[static_cast<std::size_t>(j)] == groups[g]) own[j] = larder.dryMatter[j];
    }
    const double held = own.dot(hidden);
    added += writer.add(own - held / total * larder.dryMatter, held, VectorXd::Zero(own.size())) ? 1 : 0;
  }
}

/// N_a - r N_b over r N_b° with r the hidden diet's own ratio.
void addRatio(const Larder& larder, const VectorXd& hidden, Index a, Index b, RowWriter& writer) {
  const double above = larder.content.col(a).dot(hidden);
  const double below = larder.content.col(b).dot(hidden);
  if (a == b || !(above > 1e-12) || !(below > 1e-12)) return;
  writer.add(larder.content.col(a) - above / below * larder.content.col(b), above,
             VectorXd::Zero(hidden.size()));
}

void writeRows(const Larder& larder, const ProgramKind& kind, const VectorXd& hidden, Draw& draw,
               solver::Program& program) {
  RowWriter writer(kind, hidden, draw, program);
  addShares(larder, hidden, kind.rows / 12, writer);
  const std::vector<Index> known = knownInMost(larder);
  for (Index i = 0; i < kind.rows / 8; ++i)
    addRatio(larder, hidden, known[draw.below(known.size())], known[draw.below(known.size())], writer);
  for (const std::size_t at : draw.some(known.size(), known.size())) {
    const Index k = known[at];
    writer.add(larder.content.col(k), larder.content.col(k).dot(hidden), larder.sd.col(k));
  }
  while (!writer.full())
    addRatio(larder, hidden, known[draw.below(known.size())], known[draw.below(known.size())], writer);
}

void writeObjective(const ProgramKind& kind, const VectorXd& hidden, Draw& draw, solver::Program& program) {
  for (Index j = 0; j < kind.foods; ++j) {
    program.centre[j] = hidden[j] > 0.0 ? std::round(hidden[j] * draw.between(0.3, 1.7))
                                        : static_cast<double>(draw.below(10));
    program.cost[j] = draw.between(0.5, 12.0) / 1000.0;
  }
  const VectorXd unit = program.centre.cwiseMax(0.05 * program.centre.sum());
  if (kind.aim == ProgramKind::Aim::Nearest) program.curvature = unit.cwiseAbs2().cwiseInverse();
  if (kind.aim != ProgramKind::Aim::Cheapest) program.cost.setZero();
  if (kind.aim != ProgramKind::Aim::Nearest) program.centre.setZero();
}

solver::Program blank(const ProgramKind& kind) {
  solver::Program program;
  program.rows = solver::RowMatrix::Zero(kind.rows, kind.foods);
  program.rowLower = program.rowUpper = program.price = VectorXd::Zero(kind.rows);
  program.lower = program.centre = program.curvature = program.cost = VectorXd::Zero(kind.foods);
  program.upper = VectorXd::Constant(kind.foods, kMostGrams);
  program.step = VectorXd::Constant(kind.foods, kind.step);
  if (kind.guard > 0.0) program.scatter = solver::RowMatrix::Zero(kind.rows, kind.foods);
  for (Index choice = 0; kind.twoOfSix && choice < 2; ++choice) {
    solver::Choice rule{.members = {}, .atLeast = 2, .atMost = 2, .threshold = kLeastUsedGrams};
    for (Index j = 0; j < kChoiceMembers; ++j) rule.members.push_back(choice * kChoiceMembers + j);
    program.choices.push_back(rule);
  }
  return program;
}

}  // namespace

SeededProgram seededProgram(const IfctTable& table, const ProgramKind& kind, std::uint64_t seed) {
  if (kind.twoOfSix && kind.foods < 2 * kChoiceMembers) throw std::invalid_argument("too few foods");
  Draw draw(seed);
  const Larder larder = drawFoods(table, kind.foods, draw);
  SeededProgram seeded{blank(kind), drawHidden(kind, draw)};
  writeRows(larder, kind, seeded.hidden, draw, seeded.program);
  writeObjective(kind, seeded.hidden, draw, seeded.program);
  return seeded;
}

std::optional<solver::Program> ifctProgram(const ProgramKind& kind, std::uint64_t seed) {
  const auto file = ifctFile();
  if (!file) return std::nullopt;
  static const IfctTable kTable = readIfctTable(*file);
  return seededProgram(kTable, kind, seed).program;
}

}  // namespace tarebowl::reference
