// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap_frame.h"

#include "core/diet/scale_step.h"
#include "core/diet/supply.h"
#include "core/diet/verification.h"
#include "core/food/vitamin_units.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <stdexcept>

namespace tarebowl::diet {
namespace {

constexpr double kSlack = 1e-9;  // of a step: amounts that rounding puts beside the scale

void check(const SwapRequest& request) {
  const std::size_t foods = request.problem.foods.size();
  if (request.approved.size() != foods) throw std::invalid_argument("swap: one entry per food");
  if (request.missing.empty()) throw std::invalid_argument("swap: nothing is missing");
  for (const std::size_t food : request.missing)
    if (food >= foods) throw std::invalid_argument("swap: what is missing is no food of the diet");
  if (!(request.move >= 0.0 && request.move <= 1.0)) throw std::invalid_argument("swap: move is a share");
  if (const auto why = unsolvable(request.problem)) throw std::invalid_argument("swap: " + *why);
}

/// The problem counted from the approved bowl, whose energy is to be kept like a target: else targets per
/// energy would be missed by less where the bowl is smaller.
BalanceProblem fromApproved(const SwapRequest& request) {
  BalanceProblem problem = request.problem;
  problem.reference = request.approved;
  const double energy =
      nutrientSupply(problem, food::nutrients::energy()).perGram.dot(gramsOf(problem, request.approved));
  if (energy > 0.0)
    problem.targets.push_back({.id = "energy as approved",
                               .nutrient = food::nutrients::energy(),
                               .min = energy * (1.0 - kEnergyBand),
                               .max = energy * (1.0 + kEnergyBand),
                               .unit = quantity::Unit::Kilocalorie,
                               .basis = quantity::Basis::Day,
                               .origin = {}});
  return problem;
}

Eigen::VectorXd without(Eigen::VectorXd grams, const std::vector<std::size_t>& missing) {
  for (const std::size_t food : missing) grams[static_cast<Eigen::Index>(food)] = 0.0;
  return grams;
}

/// What the approved diet misses of a bound already is not held against a swap.
void loosen(solver::Program& program, const Eigen::VectorXd& approved) {
  for (Eigen::Index row = 0; row < program.rowCount(); ++row) {
    const double missed = solver::rowViolation(program, row, approved);
    if (!(missed > 0.0)) continue;
    program.rowLower[row] -= missed;
    program.rowUpper[row] += missed;
  }
}

/// What the bounds on a nutrient ask for in the approved bowl: its minimum, or where there is none its
/// maximum.
double askedFor(const animal::Target& target, const Measure& measure, const Eigen::VectorXd& approved) {
  const std::optional<double> factor = food::toOwnUnitFactor(target.nutrient, target.unit);
  const std::optional<double> bound = target.min && *target.min > 0.0 ? target.min : target.max;
  if (!factor || !bound || !measure.defect.empty()) return 0.0;
  return *factor * *bound * measure.whole.at(approved);
}

Eigen::MatrixXd keptOver(const FoodList& foods, const std::vector<KeptNutrient>& kept) {
  Eigen::MatrixXd rows(static_cast<Eigen::Index>(kept.size()), static_cast<Eigen::Index>(foods.foods.size()));
  for (std::size_t k = 0; k < kept.size(); ++k)
    rows.row(static_cast<Eigen::Index>(k)) =
        nutrientSupply(foods, kept[k].nutrient).perGram.transpose() / kept[k].unit;
  return rows;
}

/// A line that was approved beside its scale's steps stands in for itself as one step of its own mass.
double stepOf(const SwapFrame& frame, const DietFood& food, std::optional<std::size_t> line) {
  const double step = food.scaleStep.value() > 0.0 ? food.scaleStep.value() : 1.0;
  if (!line || !frame.isMissing(*line)) return step;
  const double approved = frame.approved()[static_cast<Eigen::Index>(*line)];
  return isOnScale(quantity::Grams(approved), quantity::Grams(step)) || !(approved > 0.0) ? step : approved;
}

double leastUsed(const BalanceProblem& problem, const DietFood& food, double step) {
  double least = std::max(step, food.min.value());
  for (const ChoiceRule& choice : problem.choices)
    if (choice.group == food.group) least = std::max(least, choice.minEach.value());
  return least;
}

}  // namespace

std::vector<KeptNutrient> keptNutrients(const BalanceProblem& problem, const std::vector<Measure>& measures,
                                        const Eigen::VectorXd& approved) {
  std::map<food::NutrientId, KeptNutrient> byNutrient;
  const auto keep = [&](food::NutrientId nutrient, double weight, double asked) {
    KeptNutrient& entry = byNutrient.try_emplace(nutrient, KeptNutrient{nutrient, 0.0, 0.0}).first->second;
    entry.weight = std::max(entry.weight, weight);
    entry.unit = std::max(entry.unit, asked);
  };
  keep(food::nutrients::energy(), 1.0, 0.0);
  for (std::size_t i = 0; i < problem.targets.size(); ++i) {
    const animal::Target& target = problem.targets[i];
    keep(target.nutrient, target.weight, askedFor(target, measures[i], approved));
  }
  for (const animal::RatioTarget& ratio : problem.ratios)
    for (const food::NutrientId nutrient : {ratio.of, ratio.to}) keep(nutrient, ratio.weight, 0.0);
  std::vector<KeptNutrient> kept;
  for (auto& [nutrient, entry] : byNutrient) {
    if (!(entry.weight > 0.0)) continue;
    entry.unit = std::max(entry.unit, nutrientSupply(problem, nutrient).perGram.dot(approved));
    if (!(entry.unit > 0.0)) entry.unit = 1.0;
    kept.push_back(entry);
  }
  return kept;
}

SwapFrame::SwapFrame(const SwapRequest& request)
    : request_((check(request), request)),
      problem_(fromApproved(request)),
      measures_(measuresOf(problem_)),
      approved_(gramsOf(problem_, request.approved)),
      rest_(without(approved_, request.missing)),
      formulation_(formulate(problem_, measures_, *problem_.reference)),
      kept_(keptNutrients(problem_, measures_, approved_)) {
  solver::Program& program = formulation_.program;
  if (problem_.confidence && !program.scatter)  // of the candidates' values
    program.scatter = solver::RowMatrix::Zero(program.rowCount(), program.variableCount());
  loosen(program, approved_);
  keptRows_ = keptOver(problem_, kept_);
  keptAmounts_ = keptRows_ * approved_;
  for (const KeptNutrient& nutrient : kept_) weightOfKept_ += nutrient.weight;
}

bool SwapFrame::isMissing(std::size_t food) const {
  return std::ranges::find(request_.missing, food) != request_.missing.end();
}

SwapColumns::SwapColumns(const SwapFrame& frame) : frame_(frame) {
  const std::vector<DietFood>& foods = frame.request().candidates;
  const auto over = measuresOver(foods, frame.problem(), frame.measures());
  Columns columns = columnsOf(frame.formulation(), over, foods.size());
  rows_ = columns.rows;
  if (columns.scatter) scatter_ = *columns.scatter;
  kept_ = keptOver({foods, frame.problem().energyMethod}, frame.kept());
  ownLine_.resize(foods.size());
  takeOwnLines();
}

void SwapColumns::takeOwnLines() {
  std::map<std::string_view, std::size_t> lines;
  const std::vector<DietFood>& foods = frame_.problem().foods;
  for (std::size_t j = 0; j < foods.size(); ++j) lines.emplace(foods[j].id, j);
  for (std::size_t c = 0; c < ownLine_.size(); ++c) {
    const auto found = lines.find(frame_.request().candidates[c].id);
    if (found == lines.end()) continue;
    ownLine_[c] = found->second;
    const auto to = static_cast<Eigen::Index>(c);
    const auto from = static_cast<Eigen::Index>(found->second);
    const solver::Program& program = frame_.formulation().program;
    rows_.col(to) = program.rows.col(from);
    if (scatter_) scatter_->col(to) = program.scatter->col(from);
    kept_.col(to) = frame_.keptRows().col(from);
  }
}

const DietFood& SwapColumns::food(std::size_t candidate) const {
  const std::optional<std::size_t> line = ownLine_[candidate];
  return line ? frame_.problem().foods[*line] : frame_.request().candidates[candidate];
}

SwapRange rangeOf(const SwapFrame& frame, const SwapColumns& columns, std::size_t candidate) {
  const DietFood& food = columns.food(candidate);
  SwapRange range;
  const std::optional<std::size_t> line = columns.ownLine(candidate);
  range.step = stepOf(frame, food, line);
  if (line) range.held = frame.rest()[static_cast<Eigen::Index>(*line)];
  const double least = std::max(range.held + range.step, leastUsed(frame.problem(), food, range.step));
  double most = range.held + std::max(frame.mostGrams(), range.step);
  if (food.max) most = std::min(most, food.max->value());
  range.least = range.step * std::ceil(least / range.step - kSlack);
  range.most = range.step * std::floor(most / range.step + kSlack);
  return range;
}

}  // namespace tarebowl::diet
