// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/least_change.h"

#include "core/solver/rule_check.h"
#include "core/solver/solve.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace tarebowl::diet {
namespace {

using Clock = std::chrono::steady_clock;
using Rules = std::vector<std::size_t>;

constexpr int kMostRounds = 30;
constexpr double kSettled = 1e-10;  // relative step of the bound after which it has arrived
constexpr double kHolds = 1e-9;
constexpr double kBeyondReach = 10.0;  // in relative shortfall: more than any bowl exceeds a bound by
constexpr int kQuestions = 8;          // one solve on the grid may take this part of the time

class LeastChangeFinder {
 public:
  LeastChangeFinder(const Formulation& formulation, std::span<const Measure> measures, bool hardOnly,
                    const LeastChangeOptions& options)
      : formulation_(formulation),
        measures_(measures),
        options_(options),
        deadline_(Clock::now() + options.deadline),
        rules_(rulesOf(formulation, measures, hardOnly)) {
    for (const DietRule& rule : rules_) plain_.push_back(rule.rule);
  }

  std::vector<LeastChange> run(std::span<const std::string> conflict) {
    Rules members;
    for (std::size_t r = 0; r < rules_.size(); ++r) {
      if (std::ranges::find(conflict, rules_[r].id) != conflict.end()) members.push_back(r);
    }
    Rules all(rules_.size());
    for (std::size_t r = 0; r < all.size(); ++r) all[r] = r;
    std::vector<LeastChange> changes;
    for (const std::size_t member : members) {
      for (const BoundSide side : {BoundSide::Min, BoundSide::Max}) {
        std::optional<LeastChange> change = nearest(member, side, all);
        if (change)
          change->resolvesAll = true;
        else
          change = nearest(member, side, members);
        if (change) changes.push_back(*change);
      }
    }
    return changes;
  }

 private:
  std::optional<LeastChange> nearest(std::size_t member, BoundSide side, const Rules& chosen) const {
    if (!rules_[member].measure) return changeOfChoice(member, side, chosen);
    if (!measures_[*rules_[member].measure].bound(side)) return std::nullopt;
    std::optional<LeastChange> change = changeOfBound(member, side, chosen, solver::Strictness::All);
    return change ? change : changeOfBound(member, side, chosen, solver::Strictness::Amounts);
  }

  [[nodiscard]] std::optional<solver::Limits> limits() const {
    solver::Limits limits;
    limits.stop = options_.stop;
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(deadline_ - Clock::now());
    limits.deadline = std::min(left, options_.deadline / kQuestions);
    if (limits.deadline.count() <= 0 || options_.stop.stop_requested()) return std::nullopt;
    return limits;
  }

  /// Where the bound's row stands among the rows of the chosen rules.
  [[nodiscard]] Eigen::Index rowOf(std::size_t member, BoundSide side, const Rules& chosen) const {
    Eigen::Index at = 0;
    for (const std::size_t rule : chosen) {
      for (const Eigen::Index row : plain_[rule].rows) {
        if (rule == member && formulation_.rows[static_cast<std::size_t>(row)].side == side) return at;
        ++at;
      }
    }
    return -1;
  }

  /// The measure as its bound sees it: with a confidence, the side of the scatter that counts.
  static double seen(const Measure& measure, BoundSide side, const Eigen::VectorXd& x) {
    const double spread = measure.guard * measure.partSd.cwiseProduct(x).norm();
    const double part = measure.part.at(x) + (side == BoundSide::Min ? -spread : spread);
    return part / measure.whole.at(x);
  }

  /// The bound that the best bowl reaches while the other rules hold.
  std::optional<LeastChange> changeOfBound(std::size_t member, BoundSide side, const Rules& chosen,
                                           solver::Strictness strictness) const {
    const Measure& measure = measures_[*rules_[member].measure];
    const double from = *measure.bound(side);
    solver::Program program = solver::programOfRules(formulation_.program, plain_, chosen, strictness);
    const Eigen::Index row = rowOf(member, side, chosen);
    if (row < 0) return std::nullopt;
    program.price.setConstant(solver::kInfinity);
    program.price[row] = 1.0;
    double bound = from;
    for (int round = 0; round < kMostRounds; ++round) {
      const double beyond = round == 0 ? 0.0 : kBeyondReach;
      aim(program, row, measure, side, bound, from, beyond);
      const auto limit = limits();
      if (!limit) return std::nullopt;
      const solver::Solution solution = solver::solve(program, *limit);
      if (solution.status != solver::Status::Optimal || solution.gap > 0.0) return std::nullopt;
      if (round == 0 && solution.violation <= kHolds) return std::nullopt;  // it holds as it is
      if (!(measure.whole.at(solution.x) > 0.0)) return std::nullopt;
      const double next = seen(measure, side, solution.x);
      const bool arrived = round > 0 && std::abs(next - bound) <= kSettled * std::max(std::abs(from), 1e-12);
      bound = next;
      if (!arrived) continue;
      return LeastChange{rules_[member].id, side, from, bound, false, strictness == solver::Strictness::All};
    }
    return std::nullopt;
  }

  /// Writes the row as that of another bound, in the shortfall of the bound as it is.
  static void aim(solver::Program& program, Eigen::Index row, const Measure& measure, BoundSide side,
                  double bound, double from, double beyond) {
    const double unit = measure.shortfallUnit(from);
    program.rows.row(row) = (measure.part.perGram - bound * measure.whole.perGram).transpose() / unit;
    const double limit = (bound * measure.whole.constant - measure.part.constant) / unit;
    program.rowLower[row] = side == BoundSide::Min ? limit + beyond : -solver::kInfinity;
    program.rowUpper[row] = side == BoundSide::Max ? limit - beyond : solver::kInfinity;
  }

  /// Fewer foods asked of a group, or more allowed, until the rules hold together.
  std::optional<LeastChange> changeOfChoice(std::size_t member, BoundSide side, const Rules& chosen) const {
    solver::Program program = formulation_.program;
    solver::Choice& choice = program.choices[plain_[member].choices.front()];
    const int members = static_cast<int>(choice.members.size());
    int& count = side == BoundSide::Min ? choice.atLeast : choice.atMost;
    const int from = count;
    const int last = side == BoundSide::Min ? 0 : members;
    while (side == BoundSide::Min ? count > last : count < last) {
      count += side == BoundSide::Min ? -1 : 1;
      const auto limit = limits();
      if (!limit) return std::nullopt;
      const solver::Verdict verdict =
          solver::holdTogether(program, plain_, chosen, solver::Strictness::All, *limit);
      if (verdict.kind == solver::Verdict::Kind::Unknown) return std::nullopt;
      if (verdict.kind == solver::Verdict::Kind::Holds)
        return LeastChange{rules_[member].id, side, double(from), double(count), false, true};
    }
    return std::nullopt;
  }

  const Formulation& formulation_;
  std::span<const Measure> measures_;
  const LeastChangeOptions& options_;
  Clock::time_point deadline_;
  std::vector<DietRule> rules_;
  std::vector<solver::Rule> plain_;
};

}  // namespace

std::vector<LeastChange> leastChanges(const Formulation& formulation, std::span<const Measure> measures,
                                      bool hardOnly, std::span<const std::string> conflict,
                                      const LeastChangeOptions& options) {
  return LeastChangeFinder(formulation, measures, hardOnly, options).run(conflict);
}

}  // namespace tarebowl::diet
