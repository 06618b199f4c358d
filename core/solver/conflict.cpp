// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/conflict.h"

#include "core/solver/branch_and_bound.h"
#include "core/solver/chance.h"
#include "core/solver/choice_search.h"
#include "core/solver/continuous.h"

#include <algorithm>
#include <optional>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

constexpr double kHolds = 1e-9;
constexpr int kQuestions = 6;  // one hard question may take this part of the time

enum class Verdict { Holds, Fails, Unknown };

class ConflictFinder {
 public:
  ConflictFinder(const Program& program, Among among, const Limits& limits)
      : program_(program), limits_(limits), deadline_(Clock::now() + limits.deadline) {
    for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
      if (among == Among::AllRows || !(program.price[i] < kInfinity)) conflict_.rows.push_back(i);
    }
    for (std::size_t c = 0; c < program.choices.size(); ++c) conflict_.choices.push_back(c);
  }

  Conflict run() {
    shrinkToCertificate();
    // where time does not suffice to see that they contradict each other, whoever asks is taken at their word
    if (!certified_ && judge(conflict_) == Verdict::Holds) return {};
    filter(conflict_.choices);
    filter(conflict_.rows);
    if (certified_ && isCoarse()) {  // what the relaxation needs to contradict itself, a grid may not need
      certified_ = false;
      filter(conflict_.rows);
    }
    return conflict_;
  }

 private:
  [[nodiscard]] bool isCoarse() const { return (program_.step.array() > 0).any(); }

  /// The program of the chosen rows, each elastic at price 1, and the chosen choices.
  [[nodiscard]] Program subset(const Conflict& chosen, bool relaxed) const {
    Program part = program_;
    const auto m = Eigen::Index(chosen.rows.size());
    part.rows.resize(m, program_.variableCount());
    part.rowLower.resize(m);
    part.rowUpper.resize(m);
    part.price.setOnes(m);
    if (part.scatter) part.scatter->resize(m, program_.variableCount());
    for (Eigen::Index k = 0; k < m; ++k) {
      const Eigen::Index i = chosen.rows[std::size_t(k)];
      part.rows.row(k) = program_.rows.row(i);
      part.rowLower[k] = program_.rowLower[i];
      part.rowUpper[k] = program_.rowUpper[i];
      if (part.scatter) part.scatter->row(k) = program_.scatter->row(i);
    }
    part.curvature.setZero();
    part.cost.setZero();
    part.choices.clear();
    if (relaxed) {
      part.step.setZero();
    } else {
      for (const std::size_t c : chosen.choices) part.choices.push_back(program_.choices[c]);
    }
    return part;
  }

  /// Where the relaxation without grid and choices already fails, the rows with a multiplier are proof
  /// enough.
  void shrinkToCertificate() {
    if (hasScatter(program_)) return;
    Conflict rows{conflict_.rows, {}, true};
    const Program part = subset(rows, true);
    const ScaledProgram scaled(part);
    if (scaled.isEmptyBox()) return;
    const ContinuousAnswer answer = leastViolation(scaled, {scaled.lower, scaled.upper});
    if (answer.status != Status::Optimal || answer.violation <= kHolds) return;
    Conflict support;
    for (std::size_t k = 0; k < rows.rows.size(); ++k) {
      if (answer.rowMultipliers[Eigen::Index(k)] != 0.0) support.rows.push_back(rows.rows[k]);
    }
    if (judgeRelaxed(support) != Verdict::Fails) return;
    conflict_ = support;
    certified_ = true;
  }

  [[nodiscard]] Verdict judgeRelaxed(const Conflict& chosen) const {
    const Program part = subset(chosen, true);
    const ScaledProgram scaled(part);
    const ContinuousAnswer answer = leastViolation(scaled, {scaled.lower, scaled.upper});
    if (answer.status != Status::Optimal) return Verdict::Unknown;
    return answer.violation > kHolds ? Verdict::Fails : Verdict::Holds;
  }

  [[nodiscard]] Verdict judge(const Conflict& chosen) const {
    if (certified_) return judgeRelaxed(chosen);
    Limits left = limits_;
    left.deadline = std::chrono::duration_cast<std::chrono::milliseconds>(deadline_ - Clock::now());
    if (left.deadline.count() <= 0) return Verdict::Unknown;
    left.deadline = std::min(left.deadline, limits_.deadline / kQuestions);
    const Program part = subset(chosen, false);
    if (part.rowCount() == 0 && part.choices.empty()) return Verdict::Holds;
    if (isCoarse() && !hasScatter(part)) return judgeOnGrid(part, left);
    const Solution solution = solve(part, left);
    if (solution.status == Status::Infeasible) return Verdict::Fails;
    if (solution.status != Status::Optimal && solution.status != Status::Unbounded) return Verdict::Unknown;
    if (solution.status == Status::Unbounded || solution.violation <= kHolds) return Verdict::Holds;
    return solution.gap <= 0.0 || solution.violation * (1.0 - solution.gap) > kHolds ? Verdict::Fails
                                                                                     : Verdict::Unknown;
  }

  /// Whether any grid point holds every row: the first one found is enough, and none found is proof.
  [[nodiscard]] static Verdict judgeOnGrid(const Program& part, const Limits& limits) {
    const ScaledProgram scaled(part);
    const Stage stage{Stage::Kind::ObjectiveHard, kHolds, 1.0};
    const SearchResult result = search(scaled, stage, std::nullopt, limits, Clock::now() + limits.deadline);
    if (result.best) return Verdict::Holds;
    return result.closed ? Verdict::Fails : Verdict::Unknown;
  }

  template <class Members>
  void filter(Members& members) {
    for (std::size_t k = 0; k < members.size();) {
      const auto member = members[k];
      members.erase(members.begin() + std::ptrdiff_t(k));
      const Verdict verdict = judge(conflict_);
      if (verdict == Verdict::Fails) continue;  // not needed for the contradiction
      if (verdict == Verdict::Unknown) conflict_.minimal = false;
      members.insert(members.begin() + std::ptrdiff_t(k), member);
      ++k;
    }
  }

  const Program& program_;
  const Limits& limits_;
  Clock::time_point deadline_;
  Conflict conflict_;
  bool certified_ = false;
};

}  // namespace

Conflict findConflict(const Program& program, Among among, const Limits& limits) {
  return ConflictFinder(program, among, limits).run();
}

}  // namespace tarebowl::solver
