// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/branch_and_bound.h"

#include "core/solver/branching.h"
#include "core/solver/lattice_search.h"
#include "core/solver/node_relaxation.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <vector>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

/// Open nodes, the least bound first, the older of equals.
class Frontier {
 public:
  [[nodiscard]] bool empty() const { return nodes_.empty(); }
  [[nodiscard]] double leastBound() const { return nodes_.empty() ? kInfinity : nodes_.front()->bound; }
  void push(Node node) {
    node.order = ++pushed_;
    nodes_.push_back(std::make_unique<Node>(std::move(node)));
    std::push_heap(nodes_.begin(), nodes_.end(), isLater);
  }
  std::unique_ptr<Node> pop() {
    std::pop_heap(nodes_.begin(), nodes_.end(), isLater);
    std::unique_ptr<Node> node = std::move(nodes_.back());
    nodes_.pop_back();
    return node;
  }

 private:
  static bool isLater(const std::unique_ptr<Node>& a, const std::unique_ptr<Node>& b) {
    return a->bound != b->bound ? a->bound > b->bound : a->order > b->order;
  }
  std::vector<std::unique_ptr<Node>> nodes_;
  std::int64_t pushed_ = 0;
};

class Search {
 public:
  Search(const ScaledProgram& program, const Stage& stage, const Limits& limits, Clock::time_point deadline)
      : program_(program), stage_(stage), limits_(limits), deadline_(deadline), relaxation_(program, stage) {}

  SearchResult run(const std::optional<Incumbent>& start) {
    if (start) offer(*start);
    open_.push(relaxation_.root());
    while (!open_.empty() && !isOver()) {
      const std::unique_ptr<Node> node = open_.pop();
      if (node->bound >= cutoff()) continue;
      relaxation_.restore(*node);
      plunge(node->bound);
    }
    return finish();
  }

 private:
  [[nodiscard]] double valueOf(const Incumbent& candidate) const {
    return stage_.kind == Stage::Kind::LeastViolation ? candidate.violation : candidate.objective;
  }
  /// Nodes at or above this cannot better the answer by more than what counts as proven.
  [[nodiscard]] double cutoff() const {
    if (!best_) return kInfinity;
    const double value = valueOf(*best_);
    return value - (stage_.kind == Stage::Kind::LeastViolation ? 1e-9 + 1e-8 * value
                                                               : 1e-12 + 1e-9 * std::abs(value));
  }
  [[nodiscard]] bool isOver() {
    if (outOfTime_) return true;
    outOfTime_ = nodes_ >= limits_.nodes || limits_.stop.stop_requested() ||
                 ((nodes_ & 7) == 0 && Clock::now() >= deadline_);
    return outOfTime_;
  }

  void offer(Incumbent candidate) {
    if (!isAcceptable(program_, stage_, candidate)) return;
    if (!best_ || isBetter(stage_, candidate, *best_)) best_ = std::move(candidate);
  }

  /// Goes down from the restored node, one child at a time, until nothing better can lie below.
  void plunge(double bound) {
    while (!isOver()) {
      ++nodes_;
      const std::optional<double> own = relaxation_.solve(cutoff());
      if (!own) return;
      bound = std::max(bound, *own);
      if (bound >= cutoff()) return;
      if (nodes_ == 1) offer(improveOnGrid(program_, stage_, relaxation_.simplex().columnValues()));
      const std::optional<Branch> branch = chooseBranch(bound);
      if (!branch) return;
      keepSibling(*branch, bound);
      if (branch->upFirst) {
        relaxation_.setLower(branch->column, branch->up);
      } else {
        relaxation_.setUpper(branch->column, branch->down);
      }
    }
    unfinished_ = std::min(unfinished_, bound);  // out of time: what is unfinished counts with its bound
  }

  /// The column to branch on, or nothing when the node is finished.
  std::optional<Branch> chooseBranch(double bound) {
    if (const auto branch = fractionalBranch(program_, relaxation_)) return branch;
    const Incumbent candidate = evaluate(program_, relaxation_.wholeValues());
    if (isAcceptable(program_, stage_, candidate)) {
      const bool isNews = !best_ || isBetter(stage_, candidate, *best_);
      offer(candidate);
      if (isNews && anyOnGrid()) offer(improveOnGrid(program_, stage_, candidate.z));
      if (bound >= cutoff()) return std::nullopt;
    }
    if (const auto branch = choiceBranch(program_, relaxation_)) return branch;
    return widestBranch(program_, relaxation_);
  }

  [[nodiscard]] bool anyOnGrid() const {
    return std::any_of(program_.onGrid.begin(), program_.onGrid.end(), [](char grid) { return grid != 0; });
  }

  void keepSibling(const Branch& branch, double bound) {
    Node node = relaxation_.snapshot(bound);
    if (branch.upFirst) {
      node.upper[branch.column] = branch.down;
    } else {
      node.lower[branch.column] = branch.up;
    }
    if (node.lower[branch.column] <= node.upper[branch.column]) open_.push(std::move(node));
  }

  SearchResult finish() {
    SearchResult result;
    result.nodes = nodes_;
    const double open = std::min(unfinished_, open_.leastBound());
    result.closed = !outOfTime_ || open >= cutoff() || open == kInfinity;
    if (best_) {
      result.bound = result.closed ? valueOf(*best_) : std::min(open, valueOf(*best_));
      result.pressesGenerousLimit = pressesGenerousLimit(best_->z);
    } else {
      result.bound = open;
    }
    result.best = std::move(best_);
    return result;
  }

  [[nodiscard]] bool pressesGenerousLimit(const Eigen::VectorXd& z) const {
    for (Eigen::Index j = 0; j < z.size(); ++j) {
      if (program_.generous[std::size_t(j)] != 0 && z[j] >= program_.upper[j] - 1) return true;
    }
    return false;
  }

  const ScaledProgram& program_;
  const Stage stage_;
  const Limits& limits_;
  Clock::time_point deadline_;
  NodeRelaxation relaxation_;
  Frontier open_;
  std::optional<Incumbent> best_;
  std::int64_t nodes_ = 0;
  bool outOfTime_ = false;
  double unfinished_ = kInfinity;
};

}  // namespace

SearchResult search(const ScaledProgram& program, const Stage& stage, const std::optional<Incumbent>& start,
                    const Limits& limits, std::chrono::steady_clock::time_point deadline) {
  if (program.isEmptyBox()) return {std::nullopt, kInfinity, true, false, 0};
  return Search(program, stage, limits, deadline).run(start);
}

}  // namespace tarebowl::solver
