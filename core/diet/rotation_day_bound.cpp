// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_day_bound.h"

#include "core/diet/rotation_day_mix.h"

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
constexpr int kMostMoves = 200;
constexpr double kFirstWidth = 0.1;  // of the largest cost of a link
constexpr double kPart = 0.3;        // of the way to the prices that the known days call best
constexpr double kClosed = 1e-6;
constexpr int kShorter = 4;                // times a way is halved at whose end the solver finds no answer
constexpr std::int64_t kNodesOfDay = 400;  // at first; more where days that are cut short say nothing new
constexpr std::int64_t kMostNodesOfDay = 2'000;
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

}  // namespace

class PricedDays {
 public:
  PricedDays(const RotationModel& model, const RotationBudgets& budgets) : model_(model) {
    const RotationProgram asked =
        rotationProgram(model, allTogether(model), RotationStage::Objective, budgets, WithDailyZones::Yes);
    constant_ = asked.constant;
    if (asked.program.variableCount() == 0) return;
    together_ = withPricedColumns(asked.program);
    step_ = together_.step;
    together_.step.setZero();
    for (const auto& days : alikeTogether(model)) addKind(model, days);
    for (Index j = 0; j < model.foods; ++j) {
      link(asked.gramsColumn, j, &RotationProgram::gramsColumn, false);
      link(asked.daysColumn, j, &RotationProgram::daysColumn, true);
    }
    ownCost_ = together_.cost;
    if (links_.empty()) return;
    width_ = firstWidth();
    best_ = Eigen::VectorXd::Zero(linkCount());
    mix_.emplace(emptyMix());
  }

  double raise(const solver::RowMatrix& plan, const DayByDayBound::Goal& goal, const solver::Limits& limits) {
    limits_ = limits;
    until_ = Clock::now() + limits.deadline;
    nodes_ = 0;
    if (!mix_) return -solver::kInfinity;
    known_ = goal.known - constant_;
    const double enough = goal.enough - constant_;
    addDaysOf(plan);
    if (!isBegun_) begin();
    for (int moves = 0; moves < goal.moves && !isAtEnd_ && reached() < enough && !isOver(); ++moves) {
      const bool mayRise = reached_ > -solver::kInfinity && !mix_->isFull() && move();
      if (!mayRise && !isOver()) end(enough);
    }
    return reached() + constant_;
  }
  [[nodiscard]] std::int64_t nodes() const { return nodes_; }

  [[nodiscard]] bool isAtEnd() const { return !mix_ || isAtEnd_; }

 private:
  struct Kind {
    RotationProgram day;
    std::vector<Index> all;  ///< days of the kind
  };
  /// Grams of a food, or the days on which it is fed: together, and on a day of each kind (-1: not there).
  struct Link {
    Index together = 0;
    std::vector<Index> apart;
    double unit = 1.0;
    Index food = 0;
    bool isDays = false;
  };

  [[nodiscard]] bool isOver() const {
    return Clock::now() >= until_ || limits_.stop.stop_requested() || nodes_ >= limits_.nodes;
  }

  void addKind(const RotationModel& model, const std::vector<Index>& days) {
    const RotationModel one = oneDay(model, days.front());
    Kind kind{
        rotationProgram(one, eachAlone(one), RotationStage::Objective, {0.0, 0.0, 0.0}, WithDailyZones::Yes),
        days};
    if (kind.day.program.variableCount() > 0) kinds_.push_back(std::move(kind));
  }

  void link(const solver::RowMatrix& together, Index food, solver::RowMatrix RotationProgram::*columns,
            bool isDays) {
    const auto column = static_cast<Index>(together(0, food));
    if (column < 0) return;
    Link made{column, {}, std::max(1.0, together_.upper[column]), food, isDays};
    for (const Kind& kind : kinds_) {
      const auto apart = static_cast<Index>((kind.day.*columns)(0, food));
      // Days that a kind does not count cannot be paid for.
      if (apart < 0 && kind.day.gramsColumn(0, food) >= 0.0) return;
      made.apart.push_back(apart);
    }
    links_.push_back(std::move(made));
  }

  [[nodiscard]] double reached() const { return std::max(reached_, whole_); }

  /// Without prices: the days together, as cheap as any day can be fed.
  void begin() {
    isBegun_ = true;
    reached_ = valueAt(best_, together_);
  }

  /// The best prices there are, with the days together in whole steps.
  void end(double enough) {
    isAtEnd_ = true;
    if (reached() < enough) whole_ = std::max(whole_, wholeValue());
  }

  /// False where the known days say that no prices reach more than is known.
  bool move() {
    const auto next = mix_->best(best_, width_);
    if (!next) return false;
    const double least = std::max(reached_, known_);
    const double promised = next->value - reached_;
    const bool promisesNothing = next->value - least <= kClosed * std::max(1.0, std::abs(least));
    if (promisesNothing) {
      width_ *= 4.0;
      return next->isAtBox;
    }
    // All the way only where part of it led no higher: the known days tell too little at first.
    const Index known = mix_->known();
    const bool wasPart = wasHigher_;
    const Priced at = valueTowards(next->prices, wasPart ? kPart : 1.0);
    wasHigher_ = at.value > reached_;
    if (!wasHigher_) return wasPart || mix_->known() > known || takesLongerOverDays();
    if (at.value > reached_ + 0.5 * promised) width_ *= 2.0;
    reached_ = at.value;
    best_ = at.prices;
    return true;
  }

  /// Days that are cut short are worth less than they are, and the same ones come again.
  bool takesLongerOverDays() {
    nodesOfDay_ *= 5;
    return nodesOfDay_ <= kMostNodesOfDay;
  }

  [[nodiscard]] Index linkCount() const { return static_cast<Index>(links_.size()); }
  [[nodiscard]] DayMix emptyMix() const {
    std::vector<DayMix::Link> links;
    for (const Link& link : links_) links.push_back({link.together, link.unit});
    std::vector<double> days;
    double all = 0.0;
    for (const Kind& kind : kinds_) {
      days.push_back(static_cast<double>(kind.all.size()));
      all += days.back();
    }
    const auto kinds = static_cast<Index>(kinds_.size());
    return {together_, std::move(links), days, kMostMoves * kinds + static_cast<Index>(all)};
  }
  /// Prices are of the size of what their links cost.
  [[nodiscard]] double firstWidth() const {
    double most = 0.0;
    for (const Link& link : links_) most = std::max(most, std::abs(ownCost_[link.together]) * link.unit);
    return most > 0.0 ? kFirstWidth * most : 1.0;
  }

  void addDaysOf(const solver::RowMatrix& plan) {
    for (std::size_t k = 0; k < kinds_.size(); ++k) {
      for (const Index d : kinds_[k].all) {
        if (model_.daily.missed(model_.daily.rows * plan.row(d).transpose()).soft > kNothing) continue;
        Eigen::VectorXd amounts = Eigen::VectorXd::Zero(linkCount());
        for (std::size_t i = 0; i < links_.size(); ++i) {
          const Link& link = links_[i];
          if (link.apart[k] < 0 || model_.cell(d, link.food).isFixed) continue;
          const double grams = plan(d, link.food);
          amounts[static_cast<Index>(i)] = (link.isDays ? (grams > 0.0 ? 1.0 : 0.0) : grams) / link.unit;
        }
        mix_->add(k, amounts);
      }
    }
  }

  struct Priced {
    Eigen::VectorXd prices;
    double value = -solver::kInfinity;
  };
  /// At a place between the best prices and those; nearer to the best ones where the solver has no answer.
  Priced valueTowards(const Eigen::VectorXd& prices, double part) {
    Priced at;
    for (int halved = 0; halved < kShorter && !isOver() && !(at.value > -solver::kInfinity); ++halved) {
      at.prices = best_ + part * (prices - best_);
      at.value = valueAt(at.prices, together_);
      part *= 0.5;
    }
    return at;
  }
  double wholeValue() {
    solver::Program whole = together_;
    whole.step = step_;
    return valueAt(best_, whole);
  }
  /// What the days together and the days apart come to at the prices. The days become known.
  double valueAt(const Eigen::VectorXd& prices, const solver::Program& together) {
    solver::Program asked = together;
    asked.cost = ownCost_;
    for (std::size_t i = 0; i < links_.size(); ++i)
      asked.cost[links_[i].together] -= prices[static_cast<Index>(i)] / links_[i].unit;
    const auto whole = answered(asked, kNodesTogether);
    if (!whole) return -solver::kInfinity;
    double value = whole->value;
    for (std::size_t k = 0; k < kinds_.size(); ++k) {
      const auto day = answeredOn(k, prices);
      if (!day) return -solver::kInfinity;
      value += static_cast<double>(kinds_[k].all.size()) * day->value;
      Eigen::VectorXd amounts = Eigen::VectorXd::Zero(linkCount());
      for (std::size_t i = 0; i < links_.size(); ++i)
        if (links_[i].apart[k] >= 0)
          amounts[static_cast<Index>(i)] = day->x[links_[i].apart[k]] / links_[i].unit;
      mix_->add(k, amounts);
    }
    return value;
  }

  struct Answer {
    double value = 0.0;  ///< no answer lies below it
    Eigen::VectorXd x;
  };
  std::optional<Answer> answeredOn(std::size_t k, const Eigen::VectorXd& prices) {
    solver::Program& day = kinds_[k].day.program;
    day.cost.setZero();
    for (std::size_t i = 0; i < links_.size(); ++i)
      if (links_[i].apart[k] >= 0)
        day.cost[links_[i].apart[k]] = prices[static_cast<Index>(i)] / links_[i].unit;
    return answered(day, nodesOfDay_);
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

  const RotationModel& model_;
  solver::Program together_;  ///< in any amounts
  Eigen::VectorXd step_;
  Eigen::VectorXd ownCost_;
  double constant_ = 0.0;
  std::vector<Kind> kinds_;
  std::vector<Link> links_;

  std::optional<DayMix> mix_;
  Eigen::VectorXd best_;                 ///< prices, of each link's unit
  double reached_ = -solver::kInfinity;  ///< at these prices, the days together in any amounts
  double whole_ = -solver::kInfinity;    ///< in whole steps
  double width_ = 1.0;
  double known_ = -solver::kInfinity;
  std::int64_t nodesOfDay_ = kNodesOfDay;
  bool isBegun_ = false;
  bool isAtEnd_ = false;
  bool wasHigher_ = true;

  solver::Limits limits_;
  Clock::time_point until_;
  std::int64_t nodes_ = 0;
};

DayByDayBound::DayByDayBound(const RotationModel& model, const RotationBudgets& budgets) : budgets_(budgets) {
  if (budgets[1] <= kNothing) days_ = std::make_unique<PricedDays>(model, budgets);
}

DayByDayBound::~DayByDayBound() = default;

bool DayByDayBound::isAtEnd() const {
  return !days_ || days_->isAtEnd();
}

double DayByDayBound::raise(const solver::RowMatrix& plan, const Goal& goal, const solver::Limits& limits,
                            std::int64_t& nodes) {
  if (!days_) return -solver::kInfinity;
  const double value = days_->raise(plan, goal, limits);
  nodes += days_->nodes();
  return value;
}

}  // namespace tarebowl::diet
