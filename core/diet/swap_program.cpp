// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap_program.h"

#include "core/diet/larder_prices.h"
#include "core/diet/scale_step.h"
#include "core/diet/swap_single.h"
#include "core/solver/solve.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

constexpr double kSameGrams = 1e-9;  // of a step

/// How far a line of the diet may move: not at all where it is not used or lies beside its scale's steps, and
/// never so far that it is used no more.
struct LineRange {
  double least;
  double most;
  double step;  ///< 0 where it is held
};

LineRange lineRange(const SwapFrame& frame, std::size_t line) {
  const DietFood& food = frame.problem().foods[line];
  const double grams = frame.rest()[static_cast<Eigen::Index>(line)];
  const double move = frame.request().move;
  const double step = food.scaleStep.value();
  if (!(move > 0.0) || !(grams > 0.0) || !(step > 0.0) || !isOnScale(quantity::Grams(grams), food.scaleStep))
    return {grams, grams, 0.0};
  double least = std::max({step, food.min.value(), (1.0 - move) * grams});
  for (const ChoiceRule& choice : frame.problem().choices)
    if (choice.group == food.group) least = std::max(least, choice.minEach.value());
  double most = (1.0 + move) * grams;
  if (food.max) most = std::min(most, food.max->value());
  return {std::min(least, grams), std::max(most, grams), step};
}

}  // namespace

SwapPrograms::SwapPrograms(const SwapFrame& frame, const SwapColumns& columns)
    : frame_(frame), columns_(columns) {}

void SwapPrograms::boundLines(solver::Program& program) const {
  for (std::size_t j = 0; j < frame_.problem().foods.size(); ++j) {
    const auto column = static_cast<Eigen::Index>(j);
    const LineRange range = lineRange(frame_, j);
    program.lower[column] = range.least;
    program.upper[column] = range.most;
    program.step[column] = range.step;
  }
}

solver::Program SwapPrograms::base(Eigen::Index places) const {
  const solver::Program& bounds = frame_.formulation().program;
  const Eigen::Index lines = bounds.variableCount();
  const Eigen::Index m = bounds.rowCount();
  const Eigen::Index kept = frame_.keptRows().rows();
  const Eigen::Index n = lines + places + 2 * kept;
  solver::Program program;
  program.rows = solver::RowMatrix::Zero(m + kept, n);
  program.rows.topLeftCorner(m, lines) = bounds.rows;
  program.rows.bottomLeftCorner(kept, lines) = frame_.keptRows();
  program.rows.block(m, lines + places, kept, kept).diagonal().setConstant(-1.0);  // more
  program.rows.block(m, lines + places + kept, kept, kept).diagonal().setConstant(1.0);
  program.rowLower.resize(m + kept);
  program.rowLower << bounds.rowLower, frame_.keptAmounts();
  program.rowUpper.resize(m + kept);
  program.rowUpper << bounds.rowUpper, frame_.keptAmounts();
  program.price.resize(m + kept);
  program.price << bounds.price, Eigen::VectorXd::Constant(kept, solver::kInfinity);
  program.lower = program.step = program.centre = program.curvature = program.cost = Eigen::VectorXd::Zero(n);
  program.upper = Eigen::VectorXd::Zero(n);
  program.upper.tail(2 * kept).setConstant(solver::kInfinity);
  for (Eigen::Index k = 0; k < kept; ++k)
    program.cost[lines + places + k] = program.cost[lines + places + kept + k] =
        frame_.kept()[static_cast<std::size_t>(k)].weight / frame_.weightOfKept();
  if (bounds.scatter) {
    program.scatter = solver::RowMatrix::Zero(m + kept, n);
    program.scatter->topLeftCorner(m, lines) = *bounds.scatter;
  }
  boundLines(program);
  return program;
}

solver::Program SwapPrograms::of(std::span<const std::size_t> candidates,
                                 std::span<const SwapRange> ranges) const {
  solver::Program program = base(static_cast<Eigen::Index>(candidates.size()));
  const Eigen::Index lines = frame_.formulation().program.variableCount();
  const Eigen::Index m = frame_.formulation().program.rowCount();
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    const std::size_t candidate = candidates[i];
    const auto line = columns_.ownLine(candidate);
    const Eigen::Index column =
        line ? static_cast<Eigen::Index>(*line) : lines + static_cast<Eigen::Index>(i);
    program.lower[column] = ranges[i].least;
    program.upper[column] = ranges[i].most;
    program.step[column] = ranges[i].step;
    if (line) continue;
    program.rows.col(column).head(m) = columns_.rows(candidate);
    program.rows.col(column).tail(program.rowCount() - m) = columns_.kept(candidate);
    if (program.scatter) program.scatter->col(column).head(m) = columns_.scatter(candidate);
  }
  return program;
}

Swap SwapPrograms::read(std::span<const std::size_t> candidates, std::span<const SwapRange> ranges,
                        const Eigen::VectorXd& x) const {
  using quantity::Grams;
  const std::size_t lines = frame_.problem().foods.size();
  Swap swap;
  std::vector<bool> isPart(lines, false);
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    const auto line = columns_.ownLine(candidates[i]);
    if (line) isPart[*line] = true;
    const auto column = static_cast<Eigen::Index>(line ? *line : lines + i);
    const Grams step(ranges[i].step);
    const Grams total = nearestOnScale(Grams(x[column]), step);
    swap.parts.push_back({candidates[i], nearestOnScale(total - Grams(ranges[i].held), step)});
  }
  for (std::size_t j = 0; j < lines; ++j) {
    const LineRange range = lineRange(frame_, j);
    if (isPart[j] || !(range.step > 0.0)) continue;
    const Grams grams = nearestOnScale(Grams(x[static_cast<Eigen::Index>(j)]), Grams(range.step));
    if (std::abs(grams.value() - frame_.rest()[static_cast<Eigen::Index>(j)]) > kSameGrams * range.step)
      swap.moved.push_back({j, grams});
  }
  return judgedSwap(frame_, columns_, swap);
}

std::optional<Swap> SwapPrograms::nearest(std::span<const std::size_t> candidates,
                                          std::span<const SwapRange> ranges, const Limits& limits) const {
  const solver::Program program = of(candidates, ranges);
  solver::Limits within;
  within.deadline = limits.deadline;
  within.threads = limits.threads;
  within.stop = limits.stop;
  const solver::Solution solution = solver::solve(program, within);
  if (solution.status != solver::Status::Optimal) return std::nullopt;
  Swap swap = read(candidates, ranges, solution.x);
  swap.isProven = solution.gap == 0.0;
  return swap;
}

std::vector<solver::ScanResult> SwapPrograms::scan(std::optional<std::size_t> first,
                                                   std::optional<SwapRange> firstRange,
                                                   std::span<const std::size_t> candidates,
                                                   std::span<const SwapRange> ranges,
                                                   const solver::ScanLimits& limits) const {
  // The place is the column of a candidate that is not there yet, beside that of the first one.
  std::vector<std::size_t> fixed;
  std::vector<SwapRange> fixedRanges;
  if (first) {
    fixed.push_back(*first);
    fixedRanges.push_back(*firstRange);
  }
  solver::Program program = of(fixed, fixedRanges);
  program.scatter.reset();  // a bound without it asks no more
  program.step.setZero();
  const Eigen::Index m = frame_.formulation().program.rowCount();
  Eigen::MatrixXd coefficients(program.rowCount(), static_cast<Eigen::Index>(candidates.size()));
  std::vector<solver::ContinuousSolver::Column> places;
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    auto column = coefficients.col(static_cast<Eigen::Index>(i));
    column.head(m) = columns_.rows(candidates[i]);
    column.tail(column.size() - m) = columns_.kept(candidates[i]);
    const SwapRange& range = ranges[i];
    places.push_back({.coefficients = {column.data(), static_cast<std::size_t>(column.size())},
                      .lower = columns_.ownLine(candidates[i]) ? 0.0 : range.least,
                      .upper = std::max(range.most, 0.0)});
  }
  return solver::scan(program, std::nullopt, places, limits);
}

Eigen::VectorXd SwapPrograms::prices(std::size_t first, const SwapRange& range, bool ofHardRules) const {
  constexpr double kNextToNothing = 1e-12;
  solver::Program program = of({&first, 1}, {&range, 1});
  program.scatter.reset();
  program.step.setZero();
  const Eigen::Index m = frame_.formulation().program.rowCount();
  if (ofHardRules) {
    for (double& price : program.price.head(m)) price = price < solver::kInfinity ? kNextToNothing : 1.0;
  }
  return rowPrices(program).perRow.head(m);
}

Swap judgedSwap(const SwapFrame& frame, const SwapColumns& columns, Swap swap) {
  const solver::Program& bounds = frame.formulation().program;
  const Eigen::Index lines = bounds.variableCount();
  const auto places = static_cast<Eigen::Index>(swap.parts.size());
  solver::Program wide = bounds;
  wide.rows.conservativeResize(Eigen::NoChange, lines + places);
  wide.rows.rightCols(places).setZero();
  if (wide.scatter) {
    wide.scatter->conservativeResize(Eigen::NoChange, lines + places);
    wide.scatter->rightCols(places).setZero();
  }
  Eigen::VectorXd grams(lines + places);
  grams << frame.rest(), Eigen::VectorXd::Zero(places);
  for (const MovedLine& line : swap.moved) grams[static_cast<Eigen::Index>(line.food)] = line.grams.value();
  Eigen::VectorXd kept = -frame.keptAmounts();
  for (Eigen::Index i = 0; i < places; ++i) {
    const SwapPart& part = swap.parts[static_cast<std::size_t>(i)];
    const auto line = columns.ownLine(part.candidate);
    if (line) {
      grams[static_cast<Eigen::Index>(*line)] += part.grams.value();
      continue;
    }
    grams[lines + i] = part.grams.value();
    wide.rows.col(lines + i) = columns.rows(part.candidate);
    if (wide.scatter) wide.scatter->col(lines + i) = columns.scatter(part.candidate);
    kept += columns.kept(part.candidate) * part.grams.value();
  }
  kept += frame.keptRows() * grams.head(lines);
  swap.shortfall = solver::elasticViolation(wide, grams);
  swap.difference = 0.0;
  for (Eigen::Index k = 0; k < kept.size(); ++k)
    swap.difference +=
        frame.kept()[static_cast<std::size_t>(k)].weight * std::abs(kept[k]) / frame.weightOfKept();
  return swap;
}

}  // namespace tarebowl::diet
