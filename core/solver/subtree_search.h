// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/branch_and_bound.h"
#include "core/solver/frontier.h"
#include "core/solver/node_relaxation.h"

#include <optional>
#include <utility>
#include <vector>

namespace tarebowl::solver {

/// One worker of a search: explores the subtrees below the nodes that it is given, best first with plunging,
/// by nothing but what it was given and found itself. Two workers therefore find the same whether they run
/// one after the other or at once.
class SubtreeSearch {
 public:
  SubtreeSearch(const ScaledProgram& program, const Stage& stage, const Limits& limits,
                std::chrono::steady_clock::time_point deadline);

  /// Looks at the root of a region before anything else: solves it and goes down from there.
  void startFrom(const Region& region, bool improvesFirst);
  void give(Frontier::NodePtr node) { open_.push(std::move(node)); }
  void setBest(const std::optional<Incumbent>& best) { best_ = best; }
  /// To end with the first answer, whatever it is worth.
  void setFirstIsEnough(bool enough) { firstIsEnough_ = enough; }
  /// To end after so many whole points at which the relaxation is kinder than the judge.
  void setMostMissed(std::size_t most) { mostMissed_ = most; }
  /// Goes on until no node is open or mostNodes were looked at. Nodes are kept with their tableau while
  /// there are fewer than mostStates.
  void explore(std::int64_t mostNodes, std::size_t mostStates);

  [[nodiscard]] Frontier& open() { return open_; }
  [[nodiscard]] const std::optional<Incumbent>& best() const { return best_; }
  [[nodiscard]] std::vector<Region>& ties() { return ties_; }
  [[nodiscard]] std::vector<Eigen::VectorXd>& missed() { return missed_; }
  [[nodiscard]] std::int64_t takeNodeCount() { return std::exchange(nodes_, 0); }
  [[nodiscard]] bool isOutOfTime() const { return outOfTime_; }
  /// The least bound among what was left unfinished when the time ran out.
  [[nodiscard]] double unfinishedBound() const { return unfinished_; }
  /// Nodes at or above this cannot better the answer by more than what counts as proven.
  [[nodiscard]] double cutoff() const;

 private:
  [[nodiscard]] double keepBelow() const;
  [[nodiscard]] bool isOver();
  void offer(Incumbent candidate);
  void plunge(double bound);
  [[nodiscard]] bool looksAt(double& bound);
  [[nodiscard]] std::optional<Branch> chooseBranch(double bound);
  void keepSibling(const Branch& branch, double bound);
  void keepTie(double bound);
  void keepMissed(const Incumbent& candidate, bool isAnswer, double bound);

  const ScaledProgram& program_;
  const Stage stage_;
  const Limits& limits_;
  std::chrono::steady_clock::time_point deadline_;
  NodeRelaxation relaxation_;
  Frontier open_;
  std::optional<Incumbent> best_;
  std::vector<Region> ties_;
  std::vector<Eigen::VectorXd> missed_;
  std::size_t mostMissed_ = std::numeric_limits<std::size_t>::max();
  bool hasGrid_;
  bool isAllGrid_;  // of the columns that are judged
  bool improves_ = false;
  bool firstIsEnough_ = false;
  std::int64_t nodes_ = 0;
  std::int64_t mostNodes_ = 0;
  std::size_t mostStates_ = 0;
  bool outOfTime_ = false;
  double unfinished_ = kInfinity;
};

}  // namespace tarebowl::solver
