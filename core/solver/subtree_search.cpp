// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/subtree_search.h"

#include "core/solver/branching.h"
#include "core/solver/lattice_search.h"

#include <cmath>

namespace tarebowl::solver {

SubtreeSearch::SubtreeSearch(const ScaledProgram& program, const Stage& stage, const Limits& limits,
                             std::chrono::steady_clock::time_point deadline)
    : program_(program),
      stage_(stage),
      limits_(limits),
      deadline_(deadline),
      relaxation_(program, stage),
      hasGrid_(std::ranges::any_of(program.onGrid, [](char grid) { return grid != 0; })),
      isAllGrid_(std::ranges::all_of(program.onGrid.begin(), program.onGrid.begin() + program.judgedColumns(),
                                     [](char grid) { return grid != 0; })) {}

double SubtreeSearch::cutoff() const {
  if (!best_) return kInfinity;
  if (stage_.kind == Stage::Kind::LeastViolation) return best_->violation - (1e-9 + 1e-8 * best_->violation);
  return best_->objective - (1e-12 + 1e-9 * std::abs(best_->objective));
}

/// Nodes above this hold no answer, not even one that ties with the best.
double SubtreeSearch::keepBelow() const {
  if (stage_.kind != Stage::Kind::LeastViolation || !best_) return cutoff();
  return violationBudget(best_->violation);
}

bool SubtreeSearch::isOver() {
  if (outOfTime_ || (firstIsEnough_ && best_) || missed_.size() >= mostMissed_) return true;
  outOfTime_ =
      limits_.stop.stop_requested() || ((nodes_ & 7) == 0 && std::chrono::steady_clock::now() >= deadline_);
  return outOfTime_;
}

void SubtreeSearch::offer(Incumbent candidate) {
  if (!isAcceptable(program_, stage_, candidate)) return;
  if (!best_ || isBetter(stage_, candidate, *best_)) best_ = std::move(candidate);
}

void SubtreeSearch::startFrom(const Region& region, bool improvesFirst) {
  relaxation_.start(region.limits);
  improves_ = improvesFirst;
  plunge(-kInfinity);
}

void SubtreeSearch::explore(std::int64_t mostNodes, std::size_t mostStates) {
  mostNodes_ = mostNodes;
  mostStates_ = mostStates;
  while (!open_.empty() && nodes_ < mostNodes_ && !isOver()) {
    Frontier::NodePtr node = open_.pop();
    const double bound = node->bound;
    if (bound < cutoff()) {
      relaxation_.restore(*node);
      open_.recycle(std::move(node));
      plunge(bound);
      continue;
    }
    if (bound <= keepBelow()) {
      relaxation_.restore(*node);
      keepTie(bound);
    }
    open_.recycle(std::move(node));
  }
}

/// Goes down from the present node, one child at a time, until nothing better can lie below.
void SubtreeSearch::plunge(double bound) {
  while (!isOver()) {
    ++nodes_;
    if (!looksAt(bound)) return;
    const std::optional<Branch> branch = chooseBranch(bound);
    if (!branch) return;
    keepSibling(*branch, bound);
    relaxation_.follow(*branch, branch->upFirst);
  }
  unfinished_ = std::min(unfinished_, bound);  // out of time: what is unfinished counts with its bound
}

/// Solves the present node. False: nothing better than the best is here.
bool SubtreeSearch::looksAt(double& bound) {
  const std::optional<double> own = relaxation_.solve(bound, cutoff(), keepBelow());
  if (!own) {
    keepTie(relaxation_.provenBound());
    return false;
  }
  bound = *own;
  if (improves_) {
    improves_ = false;
    offer(improveOnGrid(program_, stage_, relaxation_.simplex().columnValues()));
  }
  if (bound < cutoff()) return true;
  keepTie(bound);
  return false;
}

/// The column to branch on, or nothing when the node is finished.
std::optional<Branch> SubtreeSearch::chooseBranch(double bound) {
  if (const auto branch = fractionalBranch(program_, relaxation_, cutoff() - bound)) return branch;
  const Incumbent candidate = evaluate(program_, relaxation_.wholeValues());
  const bool isAnswer = isAcceptable(program_, stage_, candidate);
  if (program_.isOuter()) keepMissed(candidate, isAnswer, bound);
  if (isAnswer) {
    const bool isNews = !best_ || isBetter(stage_, candidate, *best_);
    offer(candidate);
    if (isNews && hasGrid_) offer(improveOnGrid(program_, stage_, candidate.z));
    if (bound >= cutoff()) {
      keepTie(bound);
      return std::nullopt;
    }
  }
  if (const auto branch = choiceBranch(program_, relaxation_)) return branch;
  std::optional<Branch> widest = widestBranch(program_, relaxation_);
  // One point is left, and it was judged; only columns between the grid's points could still be elsewhere.
  if (!widest && program_.isOuter() && !isAllGrid_) unfinished_ = std::min(unfinished_, bound);
  return widest;
}

/// Where the relaxation says that a whole point is better than it is.
void SubtreeSearch::keepMissed(const Incumbent& candidate, bool isAnswer, double bound) {
  const double value = stage_.kind == Stage::Kind::LeastViolation ? candidate.violation : candidate.objective;
  const bool isRight = isAnswer && value <= bound + 1e-9 * (1.0 + std::abs(bound));
  if (!isRight) missed_.push_back(program_.toJudge(candidate.z));
}

void SubtreeSearch::keepSibling(const Branch& branch, double bound) {
  const Eigen::Index j = branch.column;
  const bool upSide = !branch.upFirst;
  if (upSide ? branch.up > relaxation_.upper(j) : branch.down < relaxation_.lower(j)) return;
  if (branch.other.gain >= cutoff() - bound) {
    bound = std::max(bound, relaxation_.boundOfSecond(branch));
    if (bound > keepBelow()) return;
  }
  Frontier::NodePtr node = open_.blank();
  node->bound = bound;
  relaxation_.keep(*node, branch, upSide, open_.size() < mostStates_);
  open_.push(std::move(node));
}

void SubtreeSearch::keepTie(double bound) {
  if (stage_.kind != Stage::Kind::LeastViolation || bound > keepBelow()) return;
  ties_.push_back({bound, relaxation_.limits()});
}

}  // namespace tarebowl::solver
