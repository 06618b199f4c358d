// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_day_bound.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

namespace tarebowl::diet {
namespace {

using Clock = std::chrono::steady_clock;
using Eigen::Index;

constexpr double kNothing = 1e-9;
constexpr int kMostMoves = 150;
constexpr int kPatience = 8;  // moves that raise nothing, before they become shorter
constexpr std::int64_t kNodesOfDay = 400;
constexpr std::int64_t kNodesTogether = 4000;

/// A day by itself, without what rules say of the period.
RotationModel oneDay(const RotationModel& model, Index day) {
  RotationModel one;
  const auto foods = static_cast<std::size_t>(model.foods);
  one.days = 1;
  one.foods = model.foods;
  for (Index j = 0; j < model.foods; ++j) one.cells.push_back(model.cell(day, j));
  one.dayCounts = {model.dayCounts[static_cast<std::size_t>(day)]};
  one.isOpen = {1};
  one.isOver = {0};
  one.extra = solver::RowMatrix::Zero(1, model.foods);
  one.step = model.step;
  one.mostGrams = Eigen::VectorXd::Constant(model.foods, solver::kInfinity);
  one.longestRun.assign(foods, 1);
  one.leastDays.assign(foods, 0);
  one.mostDays.assign(foods, 1);
  one.period.rows = solver::RowMatrix::Zero(0, model.foods);
  one.daily = model.daily;
  one.isDistance = false;
  one.centre = model.centre;
  one.distance = model.distance;
  one.cost = Eigen::VectorXd::Zero(model.foods);
  return one;
}

/// What rows may miss at a price as columns of their own, so that it stands beside other costs.
solver::Program withPricedColumns(const solver::Program& asked) {
  const Index n = asked.variableCount();
  std::vector<Index> priced;
  for (Index i = 0; i < asked.rowCount(); ++i)
    if (asked.price[i] < solver::kInfinity) priced.push_back(i);
  solver::Program program = asked;
  const Index all = n + 2 * static_cast<Index>(priced.size());
  program.rows.conservativeResize(Eigen::NoChange, all);
  program.rows.rightCols(all - n).setZero();
  for (auto* column :
       {&program.lower, &program.upper, &program.step, &program.centre, &program.curvature, &program.cost}) {
    column->conservativeResize(all);
    column->tail(all - n).setZero();
  }
  program.upper.tail(all - n).setConstant(solver::kInfinity);
  Index next = n;
  for (const Index i : priced) {
    for (const double sign : {1.0, -1.0}) {
      program.rows(i, next) = sign;
      program.cost[next++] = asked.price[i];
    }
    program.price[i] = solver::kInfinity;
  }
  return program;
}

class PricedDays {
 public:
  PricedDays(const RotationModel& model, const RotationBudgets& budgets, const solver::Limits& limits)
      : limits_(limits), until_(Clock::now() + limits.deadline) {
    const RotationProgram asked =
        rotationProgram(model, allTogether(model), RotationStage::Objective, budgets, WithDailyZones::Yes);
    constant_ = asked.constant;
    if (asked.program.variableCount() == 0) return;
    together_ = withPricedColumns(asked.program);
    step_ = together_.step;
    together_.step.setZero();
    for (const auto& days : alikeTogether(model)) addKind(model, days);
    for (Index j = 0; j < model.foods; ++j) {
      link(asked.gramsColumn, j, &RotationProgram::gramsColumn);
      link(asked.daysColumn, j, &RotationProgram::daysColumn);
    }
    ownCost_ = together_.cost;
    prices_ = Eigen::VectorXd::Zero(static_cast<Index>(links_.size()));
  }

  double raised(double enough) {
    enough -= constant_;
    if (links_.empty()) return -solver::kInfinity;
    Eigen::VectorXd best = prices_;
    Eigen::VectorXd direction;
    double reached = -solver::kInfinity;
    double length = 1.0;
    int idle = 0;
    for (int move = 0; move < kMostMoves && !isOver(); ++move) {
      const double value = bound(together_);
      if (!(value > -solver::kInfinity)) break;
      const bool isHigher = value > reached + kNothing * std::abs(value);
      idle = isHigher ? 0 : idle + 1;
      if (value > reached) {
        reached = value;
        best = prices_;
      }
      if (reached >= enough || difference_.squaredNorm() <= kNothing) break;
      if (idle >= kPatience) {
        length *= 0.5;
        idle = 0;
        prices_ = best;
        direction.resize(0);
        static_cast<void>(bound(together_));
      }
      constexpr double kKept = 0.5;  // of the last direction: fewer turns back and forth
      direction = direction.size() == 0 ? difference_ : Eigen::VectorXd(difference_ + kKept * direction);
      const double aim = enough + 0.2 * std::max(0.0, enough - reached);
      prices_ += length * std::max(0.0, aim - value) / direction.squaredNorm() * direction;
    }
    prices_ = best;
    if (reached < enough && !isOver()) {
      solver::Program whole = together_;
      whole.step = step_;
      reached = std::max(reached, bound(whole));
    }
    return reached + constant_;
  }
  [[nodiscard]] std::int64_t nodes() const { return nodes_; }

 private:
  struct Kind {
    RotationProgram day;
    double days = 0.0;
  };
  /// Grams of a food, or the days on which it is fed: together, and on a day of each kind (-1: not there).
  struct Link {
    Index together = 0;
    std::vector<Index> apart;
    double unit = 1.0;
  };

  [[nodiscard]] bool isOver() const {
    return Clock::now() >= until_ || limits_.stop.stop_requested() || nodes_ >= limits_.nodes;
  }

  void addKind(const RotationModel& model, const std::vector<Index>& days) {
    const RotationModel one = oneDay(model, days.front());
    Kind kind{
        rotationProgram(one, eachAlone(one), RotationStage::Objective, {0.0, 0.0, 0.0}, WithDailyZones::Yes),
        static_cast<double>(days.size())};
    if (kind.day.program.variableCount() > 0) kinds_.push_back(std::move(kind));
  }

  void link(const solver::RowMatrix& together, Index food, solver::RowMatrix RotationProgram::*columns) {
    const auto column = static_cast<Index>(together(0, food));
    if (column < 0) return;
    Link made{column, {}, std::max(1.0, together_.upper[column])};
    for (const Kind& kind : kinds_) {
      const auto apart = static_cast<Index>((kind.day.*columns)(0, food));
      // Days that a kind does not count cannot be paid for.
      if (apart < 0 && kind.day.gramsColumn(0, food) >= 0.0) return;
      made.apart.push_back(apart);
    }
    links_.push_back(std::move(made));
  }

  /// What the days together and the days apart come to at the prices; the difference says where prices go.
  double bound(const solver::Program& together) {
    solver::Program asked = together;
    asked.cost = ownCost_;
    for (std::size_t i = 0; i < links_.size(); ++i)
      asked.cost[links_[i].together] -= prices_[static_cast<Index>(i)] / links_[i].unit;
    const auto whole = answered(asked, kNodesTogether);
    if (!whole) return -solver::kInfinity;
    double value = whole->value;
    difference_ = Eigen::VectorXd::Zero(prices_.size());
    for (std::size_t i = 0; i < links_.size(); ++i)
      difference_[static_cast<Index>(i)] = -whole->x[links_[i].together] / links_[i].unit;
    for (std::size_t k = 0; k < kinds_.size(); ++k) {
      const auto day = answeredOn(k);
      if (!day) return -solver::kInfinity;
      value += kinds_[k].days * day->value;
      for (std::size_t i = 0; i < links_.size(); ++i)
        if (links_[i].apart[k] >= 0)
          difference_[static_cast<Index>(i)] += kinds_[k].days * day->x[links_[i].apart[k]] / links_[i].unit;
    }
    return value;
  }

  struct Answer {
    double value = 0.0;  ///< no answer lies below it
    Eigen::VectorXd x;
  };
  std::optional<Answer> answeredOn(std::size_t k) {
    solver::Program& day = kinds_[k].day.program;
    day.cost.setZero();
    for (std::size_t i = 0; i < links_.size(); ++i)
      if (links_[i].apart[k] >= 0)
        day.cost[links_[i].apart[k]] = prices_[static_cast<Index>(i)] / links_[i].unit;
    return answered(day, kNodesOfDay);
  }
  std::optional<Answer> answered(const solver::Program& program, std::int64_t most) {
    solver::Limits limits = limits_;
    limits.threads = 1;
    limits.nodes = std::max<std::int64_t>(1, std::min(most, limits_.nodes - nodes_));
    solver::Solution solution = solver::solve(program, limits);
    nodes_ += std::max<std::int64_t>(1, solution.nodes);
    if (solution.status != solver::Status::Optimal) return std::nullopt;
    return Answer{solution.objective - solution.gap * std::abs(solution.objective), std::move(solution.x)};
  }

  solver::Limits limits_;
  Clock::time_point until_;
  solver::Program together_;  ///< in any amounts
  Eigen::VectorXd step_;
  Eigen::VectorXd ownCost_;
  double constant_ = 0.0;
  std::vector<Kind> kinds_;
  std::vector<Link> links_;
  Eigen::VectorXd prices_;  ///< of a link's unit
  Eigen::VectorXd difference_;
  std::int64_t nodes_ = 0;
};

}  // namespace

double dayByDayBound(const RotationModel& model, const RotationBudgets& budgets, double enough,
                     const solver::Limits& limits, std::int64_t& nodes) {
  if (budgets[1] > kNothing) return -solver::kInfinity;
  PricedDays days(model, budgets, limits);
  const double value = days.raised(enough);
  nodes += days.nodes();
  return value;
}

}  // namespace tarebowl::diet
