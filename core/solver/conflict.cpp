// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/conflict.h"

#include "core/solver/chance.h"
#include "core/solver/rule_check.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;
using Rules = std::vector<std::size_t>;
using Kind = Verdict::Kind;

constexpr int kQuestions = 6;  // one hard question may take this part of the time

class ConflictFinder {
 public:
  ConflictFinder(const Program& program, std::span<const Rule> rules, bool knownToFail, const Limits& limits)
      : program_(program),
        rules_(rules),
        knownToFail_(knownToFail),
        limits_(limits),
        deadline_(Clock::now() + limits.deadline) {}

  Conflict run() {
    Rules all(rules_.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    std::optional<Rules> members = contradictionOfRows(all);
    if (isStricterThanRows()) {
      witnesses_.clear();  // they need not lie on the grid
      conflict_.minimal = true;
      if (!members) members = gather(all, Strictness::All);
      if (members) leaveOut(*members, Strictness::All);
    }
    if (members) conflict_.rules = std::move(*members);
    std::ranges::sort(conflict_.rules);
    conflict_.onlyOnGrid =
        !conflict_.empty() && isCoarse() && ask(conflict_.rules, Strictness::Amounts).kind == Kind::Holds;
    return conflict_;
  }

 private:
  [[nodiscard]] bool isCoarse() const { return (program_.step.array() > 0).any(); }
  [[nodiscard]] bool isStricterThanRows() const {
    return isCoarse() || hasScatter(program_) || !program_.choices.empty();
  }

  Verdict ask(const Rules& chosen, Strictness strictness) {
    Limits left = limits_;
    left.deadline = std::chrono::duration_cast<std::chrono::milliseconds>(deadline_ - Clock::now());
    left.deadline = std::min(left.deadline, limits_.deadline / kQuestions);
    if (left.deadline.count() <= 0 && strictness != Strictness::Rows) return {};
    ++conflict_.solves;
    return holdTogether(program_, rules_, chosen, strictness, left);
  }

  /// A smallest set that fails without grid, choices and scatter, where there is one.
  std::optional<Rules> contradictionOfRows(const Rules& all) {
    const Verdict verdict = ask(all, Strictness::Rows);
    if (verdict.kind != Kind::Fails || verdict.support.empty()) return std::nullopt;
    std::optional<Rules> members = gather(verdict.support, Strictness::Rows);
    if (!members) {  // a hair's breadth: what the certificate names, if it fails by itself
      if (ask(verdict.support, Strictness::Rows).kind != Kind::Fails) return std::nullopt;
      members = verdict.support;
    }
    leaveOut(*members, Strictness::Rows);
    return members;
  }

  [[nodiscard]] std::optional<std::size_t> mostMissed(const Rules& among, const Eigen::VectorXd& x,
                                                      Strictness strictness) const {
    std::optional<std::size_t> worst;
    double most = 0.0;
    for (const std::size_t rule : among) {
      const double miss = missOf(program_, rules_[rule], x, strictness);
      if (miss <= most) continue;
      most = miss;
      worst = rule;
    }
    return worst;
  }

  /// Few of these rules that fail together; nothing where a point keeps all. Where time ran out before few
  /// were seen to fail, more are taken, in the end all if those are known to fail.
  std::optional<Rules> gather(const Rules& among, Strictness strictness) {
    Rules chosen;
    Rules left = among;
    Eigen::VectorXd x = program_.centre.cwiseMax(program_.lower).cwiseMin(program_.upper);
    bool isWitness = true;
    while (!left.empty()) {
      const std::optional<std::size_t> next = mostMissed(left, x, strictness);
      if (!next && isWitness) return std::nullopt;
      chosen.push_back(next.value_or(left.front()));
      std::erase(left, chosen.back());
      const Verdict verdict = ask(chosen, strictness);
      if (verdict.kind == Kind::Fails) return verdict.support.empty() ? chosen : verdict.support;
      isWitness = verdict.kind == Kind::Holds;
      if (!isWitness) continue;
      x = verdict.x;
      witnesses_.push_back(x);
    }
    return knownToFail_ && !isWitness ? std::optional(chosen) : std::nullopt;
  }

  [[nodiscard]] bool isKeptByAWitness(const Rules& chosen, Strictness strictness) const {
    return std::ranges::any_of(witnesses_,
                               [&](const Eigen::VectorXd& x) { return !mostMissed(chosen, x, strictness); });
  }

  /// Leaves out every member without which the rest still fails.
  void leaveOut(Rules& members, Strictness strictness) {
    for (std::size_t k = 0; k < members.size();) {
      Rules rest = members;
      rest.erase(rest.begin() + std::ptrdiff_t(k));
      if (rest.empty() || isKeptByAWitness(rest, strictness)) {
        ++k;
        continue;
      }
      Verdict verdict = ask(rest, strictness);
      if (verdict.kind ==
          Kind::Fails) {  // those before k were needed in a larger set, so they are in this one
        members = std::move(rest);
        continue;
      }
      if (verdict.kind == Kind::Holds) witnesses_.push_back(std::move(verdict.x));
      if (verdict.kind == Kind::Unknown) conflict_.minimal = false;
      ++k;
    }
  }

  const Program& program_;
  std::span<const Rule> rules_;
  bool knownToFail_;
  const Limits& limits_;
  Clock::time_point deadline_;
  Conflict conflict_;
  std::vector<Eigen::VectorXd> witnesses_;  ///< points that kept some rules
};

}  // namespace

Conflict findConflict(const Program& program, std::span<const Rule> rules, bool knownToFail,
                      const Limits& limits) {
  return ConflictFinder(program, rules, knownToFail, limits).run();
}

}  // namespace tarebowl::solver
