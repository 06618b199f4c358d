// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/explanation.h"

#include "core/diet/any_amounts.h"
#include "core/diet/food_safety.h"
#include "core/diet/supply.h"
#include "core/diet/verification.h"
#include "core/solver/chance.h"
#include "core/solver/ranges.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

using Clock = std::chrono::steady_clock;
using solver::Asked;

constexpr double kFarthest = 3.0;  // times the bound itself, upwards; downwards to 0
constexpr double kNearlyAll = 1.0 - 1e-6;
constexpr double kSmallStep = 1e-4;   // of a bound, to see how the bowl moves
constexpr double kMovesLeast = 1e-6;  // of the largest move
constexpr std::size_t kMostMoves = 4;
constexpr double kGramsPerKilogram = 1000.0;

class Explainer {
 public:
  Explainer(const BalanceProblem& problem, const DietSolution& solution, const ExplainOptions& options)
      : problem_(problem),
        solution_(solution),
        options_(options),
        deadline_(Clock::now() + options.deadline),
        measures_(measuresOf(problem)),
        formulation_(formulate(problem, measures_, referenceDiet(problem))) {}

  Explanation run() {
    addLeastChanges();
    if (!solution_.grams.empty()) addPrices();
    return explanation_;
  }

 private:
  [[nodiscard]] bool isOver() const { return options_.stop.stop_requested() || Clock::now() >= deadline_; }

  void addLeastChanges() {
    if (solution_.conflict.empty()) return;
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(deadline_ - Clock::now());
    explanation_.leastChanges =
        leastChanges(formulation_, measures_, solution_.status == DietStatus::Impossible, solution_.conflict,
                     {.deadline = left / 2, .stop = options_.stop});
  }

  void addPrices() {
    const solver::Program& asStated = formulation_.program;
    explanation_.ofAnyAmounts = (asStated.step.array() > 0).any() || !asStated.choices.empty();
    const Eigen::VectorXd bowl = gramsOf(problem_, solution_.grams);
    program_ = anyAmounts(formulation_, &bowl);
    pressure_ = solver::pressureOf(program_, Asked::Objective);
    if (pressure_.status == solver::Status::Infeasible && !solver::hasScatter(program_)) {
      asked_ = Asked::Violation;
      explanation_.ofShortfall = true;
      pressure_ = solver::pressureOf(program_, asked_);
    }
    if (pressure_.status != solver::Status::Optimal) return;
    shape_ = solver::shapeOf(pressure_);
    addBounds();
    addFoods();
    if (options_.ranges && problem_.objective.kind == Objective::Kind::LowestCost &&
        asked_ == Asked::Objective)
      addCosts();
  }

  /// What the solver minimises, in the terms of what is sought.
  [[nodiscard]] double inSought(double rate) const {
    const bool highest = problem_.objective.kind == Objective::Kind::Highest && asked_ == Asked::Objective;
    return highest ? -rate : rate;
  }

  /// How the row's activity, in the shortfall of its bound, changes with the bound.
  [[nodiscard]] double rowPerBound(const Measure& measure, BoundSide side) const {
    const double bound = *measure.bound(side);
    const double unit = measure.shortfallUnit(bound);
    if (measure.kind == TargetKind::Share || bound == 0.0) return -measure.whole.at(pressure_.x) / unit;
    const double spread = measure.guard * measure.partSd.cwiseProduct(pressure_.x).norm();
    const double part = measure.part.at(pressure_.x) + (side == BoundSide::Min ? -spread : spread);
    return -part / (bound * unit);
  }

  void addBounds() {
    for (std::size_t row = 0; row < formulation_.rows.size(); ++row) {
      if (shape_.rows[row] == 0) continue;
      const RowOrigin& origin = formulation_.rows[row];
      const Measure& measure = measures_[origin.measure];
      BindingBound binding{origin.measure, origin.side, *measure.bound(origin.side), 0.0, {}, {}};
      binding.perUnit =
          inSought(pressure_.rows[static_cast<Eigen::Index>(row)] * rowPerBound(measure, origin.side));
      if (options_.ranges && !isOver()) binding.range = rangeOf(row, binding.bound);
      if (asked_ == Asked::Objective && !isOver()) binding.moves = movesOf(row, binding);
      explanation_.bounds.push_back(std::move(binding));
    }
  }

  /// The program with another value for the bound of one row.
  [[nodiscard]] solver::Program withBound(std::size_t row, double bound) const {
    const RowOrigin& origin = formulation_.rows[row];
    Measure measure = measures_[origin.measure];
    (origin.side == BoundSide::Min ? measure.min : measure.max) = bound;
    solver::Program program = program_;
    writeRow(program, static_cast<Eigen::Index>(row), measure, origin.side);
    return program;
  }

  [[nodiscard]] Range rangeBetween(const std::function<solver::Program(double)>& at, double value,
                                   double scale) const {
    Range range;
    const double down = value > 0.0 ? -kNearlyAll * value : 0.0;  // at 0 itself nothing pushes
    const double up = kFarthest * scale;
    if (down < 0.0) {
      const double reach = solver::reachOfShape(at, asked_, shape_, down);
      if (reach > down) range.low = value + reach;
    }
    const double reach = solver::reachOfShape(at, asked_, shape_, up);
    if (reach < up) range.high = value + reach;
    return range;
  }

  [[nodiscard]] Range rangeOf(std::size_t row, double bound) const {
    const auto at = [&](double t) { return withBound(row, bound + t); };
    return rangeBetween(at, bound, bound > 0.0 ? bound : 1.0);
  }

  /// By how much the bowl differs a small step of the bound away, towards where its shape is kept.
  [[nodiscard]] std::vector<Move> movesOf(std::size_t row, const BindingBound& binding) const {
    const double scale = binding.bound > 0.0 ? binding.bound : 1.0;
    double step = kSmallStep * scale;
    if (binding.range && binding.range->high && *binding.range->high - binding.bound < step) step = -step;
    const solver::Pressure moved = solver::pressureOf(withBound(row, binding.bound + step), Asked::Objective);
    if (moved.status != solver::Status::Optimal) return {};
    const Eigen::VectorXd rate = (moved.x - pressure_.x) / step;
    const double least = kMovesLeast * rate.cwiseAbs().maxCoeff();
    std::vector<Move> moves;
    for (Eigen::Index j = 0; j < rate.size(); ++j) {
      if (std::abs(rate[j]) > least) moves.push_back({static_cast<std::size_t>(j), rate[j]});
    }
    std::ranges::stable_sort(moves, [](const Move& a, const Move& b) {
      return std::abs(a.gramsPerUnit) > std::abs(b.gramsPerUnit);
    });
    if (moves.size() > kMostMoves) moves.resize(kMostMoves);
    return moves;
  }

  void addFoods() {
    for (std::size_t j = 0; j < problem_.foods.size(); ++j) {
      const auto column = static_cast<Eigen::Index>(j);
      if (shape_.columns[j] == 0) continue;
      const DietFood& food = problem_.foods[j];
      const double perGram = inSought(-pressure_.columns[column]);
      if (shape_.columns[j] > 0 && food.max && program_.upper[column] == food.max->value())
        explanation_.foods.push_back({j, BoundSide::Max, *food.max, perGram});
      if (shape_.columns[j] < 0 && food.min.value() > 0.0 && program_.lower[column] == food.min.value())
        explanation_.foods.push_back({j, BoundSide::Min, food.min, perGram});
    }
  }

  void addCosts() {
    for (std::size_t j = 0; j < problem_.foods.size() && !isOver(); ++j) {
      const double cost = problem_.foods[j].costPerKg.value_or(0.0);
      const auto at = [&](double t) {
        solver::Program program = program_;
        program.cost[static_cast<Eigen::Index>(j)] = (cost + t) / kGramsPerKilogram;
        return program;
      };
      explanation_.costs.push_back({j, cost, rangeBetween(at, cost, cost > 0.0 ? cost : 1.0)});
    }
  }

  const BalanceProblem& problem_;
  const DietSolution& solution_;
  const ExplainOptions& options_;
  Clock::time_point deadline_;
  std::vector<Measure> measures_;
  Formulation formulation_;
  solver::Program program_;
  Asked asked_ = Asked::Objective;
  solver::Pressure pressure_;
  solver::Shape shape_;
  Explanation explanation_;
};

}  // namespace

Explanation explain(const BalanceProblem& problem, const DietSolution& solution,
                    const ExplainOptions& options) {
  const bool isAnswer = solution.status == DietStatus::Balanced ||
                        solution.status == DietStatus::Compromise ||
                        solution.status == DietStatus::Impossible;
  if (!isAnswer || unsolvable(problem)) return {};
  if (!bansAnything(problem)) return Explainer(problem, solution, options).run();
  const BalanceProblem safe = withoutBanned(problem);
  return Explainer(safe, solution, options).run();
}

}  // namespace tarebowl::diet
