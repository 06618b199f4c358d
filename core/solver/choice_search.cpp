// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/choice_search.h"

#include "core/solver/choice_rules.h"

#include <queue>

#include <algorithm>
#include <cmath>
#include <optional>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

constexpr double kUsed = 1e-9;

/// The open member on which to part, or nothing where all choices hold: one whose amount lies between 0 and
/// its least, else of a choice whose count is wrong the one of which there is most.
std::optional<Eigen::Index> undecided(const ScaledProgram& program, const Box& box,
                                      const Eigen::VectorXd& z) {
  std::optional<Eigen::Index> chosen;
  const auto consider = [&](Eigen::Index j) {
    if (!chosen || z[j] > z[*chosen]) chosen = j;
  };
  for (const Choice& choice : program.source->choices) {
    int used = 0;
    for (const Eigen::Index j : choice.members) used += z[j] > kUsed || box.lower[j] > 0 ? 1 : 0;
    const bool isWrong = used < choice.atLeast || used > choice.atMost;
    for (const Eigen::Index j : choice.members) {
      if (box.lower[j] > 0 || !(box.upper[j] > 0)) continue;
      if (isWrong || (z[j] > kUsed && z[j] < program.threshold[j] * (1 - 1e-9))) consider(j);
    }
  }
  return chosen;
}

/// The box in which every member is used or left out as it is at z.
Box decided(const ScaledProgram& program, Box box, const Eigen::VectorXd& z) {
  for (const Choice& choice : program.source->choices) {
    for (const Eigen::Index j : choice.members) {
      if (z[j] > kUsed)
        box.lower[j] = std::max(box.lower[j], program.threshold[j]);
      else if (!(box.lower[j] > 0))
        box.upper[j] = 0.0;
    }
  }
  return box;
}

/// The best of a larger box is the best of every smaller one that it lies in.
bool isStill(const ContinuousAnswer& answer, const Box& box) {
  return answer.status == Status::Optimal && (answer.z.array() >= box.lower.array()).all() &&
         (answer.z.array() <= box.upper.array()).all();
}

/// A place to look: nothing below it is better than its bound.
struct Place {
  double bound;
  std::int64_t order;
  Box box;

  friend bool operator<(const Place& a, const Place& b) {  // the queue's last is the best
    return a.bound != b.bound ? a.bound > b.bound : a.order > b.order;
  }
};

struct Found {
  std::optional<ContinuousAnswer> best;
  Box box;                  ///< where best was found
  std::vector<Place> ties;  ///< all places with an answer within the budget of the least violation
  double bound = -kInfinity;
  bool isClosed = true;

  [[nodiscard]] double gap(double value) const {
    return isClosed ? 0.0 : std::max(0.0, value - bound) / std::max(1e-12, std::abs(value));
  }
};

/// The search for the answer to one question.
class ChoiceTree {
 public:
  ChoiceTree(const ScaledProgram& program, const Asker& ask, Question question, double least,
             std::function<bool()> isOver)
      : program_(program), ask_(ask), question_(question), least_(least), isOver_(std::move(isOver)) {}

  void start(ContinuousAnswer answer, Box box) {
    found_.best = std::move(answer);
    found_.box = std::move(box);
  }

  /// Over all that lies in these places.
  Found run(std::vector<Place> places) {
    for (Place& place : places) push(place.bound, std::move(place.box));
    while (!open_.empty() && open_.top().bound < cutoff()) {
      Place place = open_.top();
      open_.pop();
      descend(place.bound, std::move(place.box));
      if (!isStopped_) continue;
      found_.isClosed = false;
      break;
    }
    if (!open_.empty()) unfinished_ = std::min(unfinished_, open_.top().bound);
    found_.isClosed = found_.isClosed && unfinished_ >= cutoff();
    found_.bound = unfinished_;
    keepTies();
    return std::move(found_);
  }

  [[nodiscard]] const std::string& failure() const { return failure_; }

 private:
  [[nodiscard]] double valueOf(const ContinuousAnswer& answer) const {
    return question_ == Question::LeastViolation ? answer.violation : answer.objective;
  }
  /// What is not below this is not better by more than rounding.
  [[nodiscard]] double cutoff() const {
    if (!found_.best) return kInfinity;
    const double value = valueOf(*found_.best);
    return question_ == Question::LeastViolation && value <= 0.0 ? -kInfinity
                                                                 : value - 1e-12 * (1 + std::abs(value));
  }

  void push(double bound, Box box) { open_.push({bound, ++pushed_, std::move(box)}); }

  /// The second stage goes on from where the first let be.
  void letBe(double bound, Box box) {
    if (question_ == Question::LeastViolation) found_.ties.push_back({bound, 0, std::move(box)});
  }
  void keepTies() {
    for (; !open_.empty(); open_.pop()) letBe(open_.top().bound, open_.top().box);
    const double most = found_.best ? violationBudget(found_.best->violation) : kInfinity;
    std::erase_if(found_.ties, [&](const Place& place) { return place.bound > most; });
    for (Place& place : found_.ties) place.bound = -kInfinity;  // of the second stage nothing is known
  }

  /// From a place down, one decision after the other, until nothing better can lie below.
  void descend(double bound, Box box) {
    ContinuousAnswer answer;
    for (;;) {
      isStopped_ = isOver_();
      if (isStopped_) break;
      narrowed_.clear();
      if (!settleChoices(program_, box.lower, box.upper, narrowed_)) return;
      if (!isStill(answer, box)) answer = ask_(question_, box, least_);
      if (answer.status == Status::Infeasible) return;
      if (answer.status != Status::Optimal) {  // not known: it counts as unfinished
        failure_ = answer.reason;
        break;
      }
      bound = std::max(bound, valueOf(answer));
      if (bound >= cutoff()) return letBe(bound, std::move(box));
      const std::optional<Eigen::Index> column = undecided(program_, box, answer.z);
      if (!column) {
        letBe(bound, box);
        start(std::move(answer), std::move(box));
        return;
      }
      Box other = box;
      const bool useFirst = answer.z[*column] > 0.5 * program_.threshold[*column];
      Box& used = useFirst ? box : other;
      Box& unused = useFirst ? other : box;
      used.lower[*column] = program_.threshold[*column];
      unused.upper[*column] = 0.0;
      push(bound, std::move(other));
    }
    unfinished_ = std::min(unfinished_, bound);
    letBe(bound, std::move(box));
  }

  const ScaledProgram& program_;
  const Asker& ask_;
  Question question_;
  double least_;
  std::function<bool()> isOver_;
  std::priority_queue<Place> open_;
  Found found_;
  std::vector<Eigen::Index> narrowed_;
  std::string failure_;
  std::int64_t pushed_ = 0;
  double unfinished_ = kInfinity;
  bool isStopped_ = false;
};

ChoiceAnswer without(const Found& found, const std::string& failure) {
  ChoiceAnswer answer;
  answer.best.status = found.isClosed    ? Status::Infeasible
                       : failure.empty() ? Status::Stopped
                                         : Status::Failed;
  answer.best.reason = failure;
  return answer;
}

}  // namespace

ChoiceAnswer searchChoices(const ScaledProgram& program, const Asker& ask, const Limits& limits,
                           Clock::time_point deadline) {
  std::int64_t nodes = 0;
  const auto isOver = [&] {
    return ++nodes > limits.nodes || limits.stop.stop_requested() || Clock::now() >= deadline;
  };
  const std::vector<Place> everywhere{{-kInfinity, 0, {program.lower, program.upper}}};
  Found hard = ChoiceTree(program, ask, Question::AllHold, 0.0, isOver).run(everywhere);
  if (hard.best) {
    const double gap = hard.gap(hard.best->objective);
    return {std::move(*hard.best), gap, nodes};
  }
  ChoiceTree first(program, ask, Question::LeastViolation, 0.0, isOver);
  Found least = first.run(everywhere);
  if (!least.best) {
    ChoiceAnswer answer = without(least, first.failure());
    answer.nodes = nodes;
    return answer;
  }
  const double violation = least.best->violation;
  Box box = decided(program, std::move(least.box), least.best->z);
  ContinuousAnswer start = ask(Question::WithinBudget, box, violation);
  ChoiceTree second(program, ask, Question::WithinBudget, violation, isOver);
  if (start.status == Status::Optimal) second.start(std::move(start), std::move(box));
  Found best = second.run(std::move(least.ties));
  if (!best.best) return {std::move(*least.best), 1.0, nodes};
  const double gap = least.isClosed ? best.gap(best.best->objective) : least.gap(violation);
  return {std::move(*best.best), gap, nodes};
}

}  // namespace tarebowl::solver
