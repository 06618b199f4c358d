// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/choice_search.h"

#include "core/solver/choice_rules.h"

#include <cmath>
#include <optional>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

constexpr double kUsed = 1e-9;

/// A member whose amount breaks its choice, or nothing where all choices hold.
std::optional<Eigen::Index> undecided(const ScaledProgram& program, const Box& box,
                                      const Eigen::VectorXd& z) {
  for (const Choice& choice : program.source->choices) {
    int used = 0;
    std::optional<Eigen::Index> open;
    for (const Eigen::Index j : choice.members) {
      const bool isOpen = box.lower[j] <= 0 && box.upper[j] > 0;
      if (isOpen && z[j] > kUsed && z[j] < program.threshold[j] * (1 - 1e-9)) return j;
      used += z[j] > kUsed || box.lower[j] > 0 ? 1 : 0;
      if (isOpen && (!open || z[j] > z[*open])) open = j;
    }
    if ((used < choice.atLeast || used > choice.atMost) && open) return open;
  }
  return std::nullopt;
}

class ChoiceSearch {
 public:
  ChoiceSearch(const ScaledProgram& program, const Limits& limits, Clock::time_point deadline)
      : program_(program), limits_(limits), deadline_(deadline) {}

  ChoiceAnswer run() {
    ChoiceAnswer answer;
    explore({program_.lower, program_.upper}, std::nullopt);
    if (best_) {
      least_ = best_->violation;
      if (!stopped_) {
        best_.reset();
        explore({program_.lower, program_.upper}, least_);
      }
    }
    answer.nodes = nodes_;
    if (best_) {
      answer.best = *best_;
      if (stopped_) answer.gap = 1.0;  // what was left unexplored is not bounded here
    } else {
      answer.best.status = stopped_           ? Status::Stopped
                           : failure_.empty() ? Status::Infeasible
                                              : Status::Failed;
      answer.best.reason = failure_;
    }
    return answer;
  }

 private:
  [[nodiscard]] double valueOf(const ContinuousAnswer& answer) const {
    return least_ ? answer.objective : answer.violation;
  }

  ContinuousAnswer relax(const Box& box, const std::optional<double>& least) const {
    ContinuousAnswer first = leastViolation(program_, box);
    if (first.status != Status::Optimal || !least) return first;
    if (first.violation > violationBudget(*least)) {
      first.status = Status::Infeasible;
      return first;
    }
    return leastObjective(program_, box, *least);
  }

  void explore(Box box, const std::optional<double>& least) {
    least_ = least;
    ++nodes_;
    stopped_ =
        stopped_ || limits_.stop.stop_requested() || nodes_ > limits_.nodes || Clock::now() >= deadline_;
    narrowed_.clear();
    if (stopped_ || !settleChoices(program_, box.lower, box.upper, narrowed_)) return;
    const ContinuousAnswer answer = relax(box, least);
    if (answer.status == Status::Failed) failure_ = answer.reason;
    if (answer.status != Status::Optimal) return;
    if (best_ && valueOf(answer) >= valueOf(*best_) - 1e-12 * (1 + std::abs(valueOf(*best_)))) return;
    const std::optional<Eigen::Index> column = undecided(program_, box, answer.z);
    if (!column) {
      best_ = answer;
      return;
    }
    Box used = box;
    used.lower[*column] = program_.threshold[*column];
    Box unused = std::move(box);
    unused.upper[*column] = 0.0;
    const bool usedFirst = answer.z[*column] > 0.5 * program_.threshold[*column];
    explore(usedFirst ? used : unused, least);
    explore(usedFirst ? unused : used, least);
  }

  const ScaledProgram& program_;
  const Limits& limits_;
  Clock::time_point deadline_;
  std::optional<ContinuousAnswer> best_;
  std::optional<double> least_;
  std::string failure_;
  std::vector<Eigen::Index> narrowed_;
  std::int64_t nodes_ = 0;
  bool stopped_ = false;
};

}  // namespace

ChoiceAnswer searchChoices(const ScaledProgram& program, const Limits& limits, Clock::time_point deadline) {
  return ChoiceSearch(program, limits, deadline).run();
}

}  // namespace tarebowl::solver
