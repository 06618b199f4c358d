// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/branch_and_bound.h"

#include "core/solver/lattice_search.h"
#include "core/solver/subtree_search.h"

#include <array>
#include <cmath>
#include <thread>
#include <utility>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

/// Small searches end before a second thread would have started.
constexpr std::int64_t kNodesAlone = 400;
constexpr std::int64_t kNodesPerRound = 400;
constexpr std::size_t kShare = 64;
constexpr std::size_t kMostTies = 1000;
constexpr double kBytesForStates = 96e6;

class Search {
 public:
  Search(const ScaledProgram& program, const Stage& stage, SearchStart start, const Limits& limits,
         Clock::time_point deadline)
      : program_(program),
        stage_(stage),
        start_(std::move(start)),
        limits_(limits),
        deadline_(deadline),
        mostStates_(std::size_t(kBytesForStates /
                                (8.0 * double((program.rows.rows() + 8) * (program.rows.cols() + 8))))) {}

  SearchResult run() {
    SubtreeSearch alone(program_, stage_, limits_, deadline_);
    alone.setFirstIsEnough(start_.firstIsEnough);
    alone.setMostMissed(start_.mostMissed);
    if (start_.incumbent && isAcceptable(program_, stage_, *start_.incumbent))
      alone.setBest(start_.incumbent);
    if (start_.regions.empty()) start_.regions.push_back({-kInfinity, {program_.lower, program_.upper}});
    bool first = true;
    for (const Region& region : start_.regions) alone.startFrom(region, std::exchange(first, false));
    alone.explore(std::min(kNodesAlone, limits_.nodes), mostStates_);
    collect(alone);
    if (!isOver() && !open_.empty()) exploreTogether();
    return finish();
  }

 private:
  [[nodiscard]] bool isOver() const {
    return outOfTime_ || missed_.size() >= start_.mostMissed || nodes_ >= limits_.nodes ||
           (best_ ? start_.firstIsEnough : nodes_ >= start_.nodesToFirst);
  }

  void collect(SubtreeSearch& worker) {
    nodes_ += worker.takeNodeCount();
    outOfTime_ = outOfTime_ || worker.isOutOfTime();
    unfinished_ = std::min(unfinished_, worker.unfinishedBound());
    if (worker.best() && (!best_ || isBetter(stage_, *worker.best(), *best_))) {
      best_ = worker.best();
      cutoff_ = worker.cutoff();
    }
    while (!worker.open().empty()) open_.push(worker.open().pop());
    for (Region& tie : worker.ties()) ties_.push_back(std::move(tie));
    worker.ties().clear();
    for (Eigen::VectorXd& point : worker.missed()) missed_.push_back(std::move(point));
    worker.missed().clear();
  }

  /// Rounds in which each of two workers takes every other of the best nodes and explores below them. What
  /// they find is gathered in a fixed order, so that it does not matter which thread was faster.
  void exploreTogether() {
    std::array<SubtreeSearch, 2> workers{SubtreeSearch(program_, stage_, limits_, deadline_),
                                         SubtreeSearch(program_, stage_, limits_, deadline_)};
    while (!open_.empty() && open_.leastBound() < cutoff_ && !isOver()) {
      for (std::size_t k = 0; k < kShare && !open_.empty(); ++k) workers[k % 2].give(open_.pop());
      const std::size_t states = mostStates_ > open_.size() ? mostStates_ - open_.size() : 0;
      for (SubtreeSearch& worker : workers) {
        worker.setFirstIsEnough(start_.firstIsEnough);
        worker.setMostMissed(start_.mostMissed);
        worker.setBest(best_);
      }
      if (limits_.threads > 1) {
        std::thread other([&] { workers[1].explore(kNodesPerRound, states / 2); });
        workers[0].explore(kNodesPerRound, states / 2);
        other.join();
      } else {
        for (SubtreeSearch& worker : workers) worker.explore(kNodesPerRound, states / 2);
      }
      for (SubtreeSearch& worker : workers) collect(worker);
    }
  }

  SearchResult finish() {
    SearchResult result;
    result.nodes = nodes_;
    const double open = std::min(unfinished_, open_.leastBound());
    result.closed = open >= cutoff_ || open == kInfinity;
    if (best_) {
      result.bound = result.closed ? valueOf(*best_) : std::min(open, valueOf(*best_));
      result.pressesGenerousLimit = pressesGenerousLimit(best_->z);
      keepTies(result);
    } else {
      result.bound = open;
    }
    result.best = std::move(best_);
    result.hasManyMissed = missed_.size() >= start_.mostMissed;
    result.missed = std::move(missed_);
    return result;
  }

  void keepTies(SearchResult& result) {
    if (stage_.kind != Stage::Kind::LeastViolation || !result.closed) return;
    const double budget = violationBudget(best_->violation);
    while (!open_.empty()) {
      const Frontier::NodePtr node = open_.pop();
      if (node->bound <= budget) ties_.push_back({node->bound, sideOf(*node)});
    }
    for (Region& tie : ties_) {
      if (tie.bound <= budget) result.ties.push_back(std::move(tie));
    }
    if (result.ties.size() > kMostTies) result.ties.clear();
  }

  static Box sideOf(const Node& node) {
    Box box{node.lower, node.upper};
    if (node.isUpSide)
      box.lower[node.branch.column] = node.branch.up;
    else
      box.upper[node.branch.column] = node.branch.down;
    return box;
  }

  [[nodiscard]] double valueOf(const Incumbent& candidate) const {
    return stage_.kind == Stage::Kind::LeastViolation ? candidate.violation : candidate.objective;
  }

  [[nodiscard]] bool pressesGenerousLimit(const Eigen::VectorXd& z) const {
    for (Eigen::Index j = 0; j < z.size(); ++j) {
      if (program_.generous[std::size_t(j)] != 0 && z[j] >= program_.upper[j] - 1) return true;
    }
    return false;
  }

  const ScaledProgram& program_;
  const Stage stage_;
  SearchStart start_;
  const Limits& limits_;
  Clock::time_point deadline_;
  std::size_t mostStates_;
  Frontier open_;
  std::optional<Incumbent> best_;
  double cutoff_ = kInfinity;
  std::vector<Region> ties_;
  std::vector<Eigen::VectorXd> missed_;
  std::int64_t nodes_ = 0;
  bool outOfTime_ = false;
  double unfinished_ = kInfinity;
};

}  // namespace

SearchResult search(const ScaledProgram& program, const Stage& stage, SearchStart start, const Limits& limits,
                    std::chrono::steady_clock::time_point deadline) {
  if (program.isEmptyBox()) return {std::nullopt, kInfinity, true, false, 0, {}, {}, false};
  return Search(program, stage, std::move(start), limits, deadline).run();
}

}  // namespace tarebowl::solver
