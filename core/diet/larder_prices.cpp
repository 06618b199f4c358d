// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/larder_prices.h"

#include "core/diet/supply.h"
#include "core/solver/continuous.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace tarebowl::diet {
namespace {

/// The share of the problem's rules that is known of each food: a rule counts where all it adds up is known.
Eigen::VectorXd knownShares(const Formulation& formulation, std::span<const Measure> over,
                            Eigen::Index foods) {
  Eigen::ArrayXd count = Eigen::ArrayXd::Zero(foods);
  double rules = 0.0;
  std::optional<std::size_t> last;
  for (const RowOrigin& origin : formulation.rows) {
    if (last == origin.measure) continue;
    last = origin.measure;
    Eigen::ArrayXd isKnown = Eigen::ArrayXd::Ones(foods);
    for (const KnownMask& mask : over[origin.measure].known) isKnown *= mask.cast<double>();
    count += isKnown;
    rules += 1.0;
  }
  return rules > 0.0 ? Eigen::VectorXd(count / rules) : Eigen::VectorXd::Ones(foods);
}

/// Positions of the largest positive scores.
void addBest(std::vector<std::size_t>& best, const Eigen::VectorXd& score, std::size_t most) {
  std::vector<std::size_t> order(static_cast<std::size_t>(score.size()));
  std::iota(order.begin(), order.end(), std::size_t{0});
  const std::size_t kept = std::min(most, order.size());
  const auto at = [&](std::size_t food) { return score[static_cast<Eigen::Index>(food)]; };
  std::partial_sort(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(kept), order.end(),
                    [&](std::size_t a, std::size_t b) { return at(a) != at(b) ? at(a) > at(b) : a < b; });
  for (std::size_t k = 0; k < kept && at(order[k]) > 0.0; ++k) {
    if (std::ranges::find(best, order[k]) == best.end()) best.push_back(order[k]);
  }
}

template <class Vector>
Vector appended(const Vector& vector, double value) {
  Vector longer(vector.size() + 1);
  longer << vector, value;
  return longer;
}

}  // namespace

RowPrices rowPrices(const solver::Program& anyAmounts) {
  RowPrices prices{Eigen::VectorXd::Zero(anyAmounts.rowCount()), 0.0};
  solver::Program unsought = anyAmounts;  // prices of the shortfall alone, whatever is sought after it
  unsought.curvature.setZero();
  unsought.cost.setZero();
  const solver::ScaledProgram scaled(unsought);
  const solver::ContinuousAnswer answer = solver::leastViolation(scaled, {scaled.lower, scaled.upper});
  if (answer.status != solver::Status::Optimal) return prices;
  prices.perRow = answer.rowMultipliers.cwiseQuotient(scaled.rowScale);
  prices.shortfall = answer.violation;
  return prices;
}

LarderColumns::LarderColumns(const BalanceProblem& problem, const Formulation& formulation,
                             std::span<const Measure> measures, std::span<const DietFood> larder)
    : larder_(larder) {
  const std::vector<Measure> over = measuresOver(larder, problem, measures);
  columns_ = columnsOf(formulation, over, larder.size());
  known_ = knownShares(formulation, over, static_cast<Eigen::Index>(larder.size()));
  const Supply dryMatter = dryMatterSupply({larder, problem.energyMethod});
  dryMatter_ = dryMatter.perGram;
  known_ = dryMatter.known.select(known_.array(), 0.0).matrix();  // of which not even the water is known
}

std::vector<PricedFood> LarderColumns::promising(const RowPrices& prices, std::size_t most) const {
  const Eigen::VectorXd gain = -(columns_.rows.transpose() * prices.perRow).cwiseProduct(known_);
  std::vector<std::size_t> best;
  addBest(best, gain, most / 2);
  addBest(best, gain.cwiseQuotient(dryMatter_.cwiseMax(1e-3)), most - best.size());
  std::vector<PricedFood> foods;
  foods.reserve(best.size());
  for (const std::size_t food : best) {
    const auto j = static_cast<Eigen::Index>(food);
    foods.push_back({food, known_[j]});
  }
  return foods;
}

std::vector<PricedFood> LarderColumns::ofGroups(const std::vector<std::string>& groups,
                                                std::size_t most) const {
  Eigen::VectorXd score = Eigen::VectorXd::Zero(known_.size());
  for (Eigen::Index j = 0; j < known_.size(); ++j) {
    const std::string& group = larder_[static_cast<std::size_t>(j)].group;
    if (std::ranges::find(groups, group) != groups.end()) score[j] = known_[j];
  }
  std::vector<std::size_t> best;
  addBest(best, score, most);
  std::vector<PricedFood> foods;
  foods.reserve(best.size());
  for (const std::size_t food : best) foods.push_back({food, known_[static_cast<Eigen::Index>(food)]});
  return foods;
}

solver::Program LarderColumns::with(const solver::Program& program, std::size_t food) const {
  const DietFood& added = larder_[food];
  const auto j = static_cast<Eigen::Index>(food);
  solver::Program wider = program;
  wider.rows.conservativeResize(Eigen::NoChange, program.variableCount() + 1);
  wider.rows.rightCols(1) = columns_.rows.col(j);
  if (wider.scatter) {
    wider.scatter->conservativeResize(Eigen::NoChange, program.variableCount() + 1);
    wider.scatter->rightCols(1) = columns_.scatter->col(j);
  }
  wider.lower = appended(program.lower, std::max(0.0, added.min.value()));
  wider.upper = appended(program.upper, added.max ? added.max->value() : solver::kInfinity);
  wider.step = appended(program.step, 0.0);
  wider.centre = appended(program.centre, 0.0);
  wider.curvature = appended(program.curvature, 0.0);
  wider.cost = appended(program.cost, 0.0);
  return wider;
}

}  // namespace tarebowl::diet
