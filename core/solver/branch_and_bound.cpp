// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/branch_and_bound.h"

#include "core/solver/lattice_search.h"

#include <queue>

#include <cmath>
#include <memory>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

constexpr double kWhole = 1e-7;  // how near a whole number counts as one
constexpr double kLambdaStep = 4.0;
constexpr int kMostClimbs = 24;
constexpr double kLambdaMost = 1e14;
constexpr double kLambdaLeast = 1e-9;

struct Node {
  double bound = -kInfinity;
  double lambda = 1.0;
  Eigen::VectorXd lower;
  Eigen::VectorXd upper;
  PiecewiseSimplex::Basis basis;
  std::int64_t order = 0;
};

struct Later {  // the heap gives the least bound first, the older of equals
  bool operator()(const std::unique_ptr<Node>& a, const std::unique_ptr<Node>& b) const {
    return a->bound != b->bound ? a->bound > b->bound : a->order > b->order;
  }
};

struct Branch {
  Eigen::Index column = -1;
  double down = 0.0;  // upper limit of one child
  double up = 0.0;    // lower limit of the other
  bool upFirst = false;
};

class Search {
 public:
  Search(const ScaledProgram& program, const Stage& stage, const Limits& limits, Clock::time_point deadline)
      : program_(program),
        stage_(stage),
        limits_(limits),
        deadline_(deadline),
        columns_(program.rows.cols()),
        base_(makeCosts(program, stage)),
        simplex_(program.rows, base_),
        lower_(program.lower),
        upper_(program.upper),
        lambda_(stage.lambda) {}

  SearchResult run(const std::optional<Incumbent>& start) {
    if (start && isAcceptable(program_, stage_, *start)) offer(*start);
    pushRoot();
    while (!open_.empty() && !isOver()) {
      std::unique_ptr<Node> node = std::move(const_cast<std::unique_ptr<Node>&>(open_.top()));
      open_.pop();
      if (node->bound >= cutoff()) continue;
      restore(*node);
      plunge(node->bound);
    }
    return finish();
  }

 private:
  static std::vector<PiecewiseCost> makeCosts(const ScaledProgram& program, const Stage& stage) {
    std::vector<PiecewiseCost> costs;
    const bool objective = stage.kind != Stage::Kind::LeastViolation;
    for (Eigen::Index j = 0; j < program.rows.cols(); ++j) {
      costs.push_back(objective ? program.objectiveColumn(j) : program.freeColumn(j));
    }
    const auto rows =
        stage.kind == Stage::Kind::ObjectiveHard ? ScaledProgram::Rows::Hard : ScaledProgram::Rows::Priced;
    const double factor = stage.kind == Stage::Kind::ObjectiveBudget ? stage.lambda : 1.0;
    for (Eigen::Index i = 0; i < program.rows.rows(); ++i) costs.push_back(program.rowCost(i, rows, factor));
    return costs;
  }

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

  void pushRoot() {
    auto root = std::make_unique<Node>();
    root->lambda = lambda_;
    root->lower = lower_;
    root->upper = upper_;
    simplex_.startFromRows();
    root->basis = simplex_.basis();
    open_.push(std::move(root));
  }

  void applyLimits(Eigen::Index j) {
    PiecewiseCost& cost = simplex_.costs()[std::size_t(j)];
    cost = base_[std::size_t(j)];
    cost.setBounds(lower_[j], upper_[j]);
  }

  void setLambda(double lambda) {
    lambda_ = lambda;
    if (stage_.kind != Stage::Kind::ObjectiveBudget) return;
    for (Eigen::Index i = 0; i < program_.rows.rows(); ++i) {
      if (program_.price[i] < kInfinity)
        simplex_.costs()[std::size_t(columns_ + i)].setPrice(program_.price[i] * lambda);
    }
  }

  void restore(const Node& node) {
    lower_ = node.lower;
    upper_ = node.upper;
    setLambda(node.lambda);
    for (Eigen::Index j = 0; j < columns_; ++j) applyLimits(j);
    simplex_.restart(node.basis);
  }

  /// Another price of violation on the same basis.
  void reprice(double lambda) {
    PiecewiseSimplex::Basis basis = simplex_.basis();
    const auto ratio = static_cast<float>(lambda / lambda_);
    for (Eigen::Index i = 0; i < program_.rows.rows(); ++i) {
      if (program_.price[i] < kInfinity) basis.basicSlope[std::size_t(columns_ + i)] *= ratio;
    }
    setLambda(lambda);
    simplex_.restart(basis);
  }

  /// What the relaxation's point costs and violates: a line below the bound as a function of the price of
  /// violation.
  struct Support {
    double lambda;
    double violation;
    double bound;
  };
  Support support(double bound) const {
    double violation = 0.0;
    for (Eigen::Index i = 0; i < program_.rows.rows(); ++i) {
      if (!(program_.price[i] < kInfinity)) continue;
      const double activity = simplex_.value(columns_ + i);
      violation += program_.price[i] *
                   std::max({0.0, program_.rowLower[i] - activity, activity - program_.rowUpper[i]});
    }
    return {lambda_, violation, bound};
  }

  /// Re-solves at another price; nothing where the relaxation could not be solved.
  std::optional<Support> supportAt(double lambda) {
    reprice(lambda);
    if (simplex_.optimise() != PiecewiseSimplex::Outcome::Optimal) return std::nullopt;
    Eigen::VectorXd gradient;
    return support(safeBound(gradient));
  }

  [[nodiscard]] bool isBeyondBudget(const Support& at) const {
    return at.violation > stage_.budget * (1 + 1e-9) + 1e-12;
  }
  /// How much of the bound is lost only because violation is priced higher than the budget asks for.
  [[nodiscard]] bool isOverpriced(const Support& at) const {
    return at.lambda * (stage_.budget - at.violation) > 1e-9 * (1.0 + std::abs(at.bound));
  }

  /// The bound is concave in the price of violation, and its slope there is the violation beyond the budget:
  /// moves the price to where the bound is near its highest. Returns the best bound; its price stays for the
  /// children.
  double settleLambda(double bound) {
    Support best = support(bound);
    Support beyond = best;  // bracket: one price with too much violation, one with little enough
    Support within = best;
    const bool up = isBeyondBudget(best);
    if (!up && !isOverpriced(best)) return bound;
    for (int round = 0; round < kMostClimbs; ++round) {
      if (best.bound >= cutoff()) return best.bound;
      const double lambda = up ? lambda_ * kLambdaStep : lambda_ / kLambdaStep;
      if (lambda > kLambdaMost || lambda < kLambdaLeast) break;
      const std::optional<Support> next = supportAt(lambda);
      if (!next) return best.bound;
      if (next->bound > best.bound) best = *next;
      const bool isBeyond = isBeyondBudget(*next);
      (isBeyond ? beyond : within) = *next;
      if (isBeyond != up) break;
    }
    for (int round = 0; round < 2 && beyond.lambda < within.lambda && isOverpriced(within); ++round) {
      const double beyondBase = beyond.bound - beyond.lambda * (beyond.violation - stage_.budget);
      const double withinBase = within.bound - within.lambda * (within.violation - stage_.budget);
      const double meet =
          (withinBase - beyondBase) / (beyond.violation - within.violation);  // where the two lines meet
      if (!(meet > beyond.lambda && meet < within.lambda)) break;
      const std::optional<Support> next = supportAt(meet);
      if (!next) return best.bound;
      if (next->bound > best.bound) best = *next;
      (isBeyondBudget(*next) ? beyond : within) = *next;
    }
    if (lambda_ != best.lambda) static_cast<void>(supportAt(best.lambda));
    return best.bound;
  }

  double safeBound(Eigen::VectorXd& gradient) const {
    const double bound = lagrangianBound(program_.rows, simplex_.costs(), simplex_.rowSlopes(), gradient);
    return stage_.kind == Stage::Kind::ObjectiveBudget ? bound - lambda_ * stage_.budget : bound;
  }
  /// The ray of an infeasible node, followed until the bound itself proves that nothing better is here.
  bool rayProves() const {
    Eigen::VectorXd gradient;
    const double need = best_ ? cutoff() : kInfinity;
    for (double length = 1.0; length < 1e13; length *= 10) {
      const double bound =
          lagrangianBound(program_.rows, simplex_.costs(),
                          simplex_.rowSlopes() + length * simplex_.infeasibilityRay(), gradient);
      const double offset = stage_.kind == Stage::Kind::ObjectiveBudget ? lambda_ * stage_.budget : 0.0;
      if (bound - offset > need || bound - offset > mostPossible()) return true;
    }
    return false;
  }
  /// No point of the box costs more than this.
  double mostPossible() const {
    double most = 1.0;
    for (Eigen::Index j = 0; j < columns_; ++j) {
      const PiecewiseCost& cost = simplex_.costs()[std::size_t(j)];
      most += std::max(std::abs(cost.costAt(cost.first())), std::abs(cost.costAt(cost.last())));
    }
    for (Eigen::Index i = 0; i < program_.rows.rows(); ++i) {
      if (!(program_.price[i] < kInfinity) || stage_.kind == Stage::Kind::ObjectiveHard) continue;
      const double reach = program_.rows.row(i).cwiseAbs().dot(upper_.transpose());
      const double limit = (std::isfinite(program_.rowLower[i]) ? std::abs(program_.rowLower[i]) : 0.0) +
                           (std::isfinite(program_.rowUpper[i]) ? std::abs(program_.rowUpper[i]) : 0.0);
      most += lambda_ * program_.price[i] * (reach + limit);
    }
    return most;
  }

  /// Goes down from the restored node, one child at a time, until nothing better can lie below.
  void plunge(double bound) {
    while (!isOver()) {
      ++nodes_;
      const std::optional<double> own = bound_();
      if (!own) return;
      bound = std::max(bound, *own);
      if (bound >= cutoff()) return;
      if (nodes_ == 1) offer(improveOnGrid(program_, stage_, simplex_.columnValues()));
      const std::optional<Branch> branch = chooseBranch(bound);
      if (!branch) return;
      push(*branch, bound);
      take(*branch, branch->upFirst);
    }
    // out of time: what is unfinished counts with its bound
    unfinished_ = std::min(unfinished_, bound);
  }

  /// Solves the relaxation at the current limits and narrows them; nothing where the node is finished.
  std::optional<double> bound_() {
    double bound = -kInfinity;
    for (int round = 0; round < 8; ++round) {
      if (!choicesAdmit()) return std::nullopt;
      simplex_.adoptBounds();
      const auto outcome = simplex_.optimise();
      Eigen::VectorXd gradient;
      bound = std::max(bound, safeBound(gradient));
      if (outcome == PiecewiseSimplex::Outcome::Infeasible && rayProves()) return std::nullopt;
      if (bound >= cutoff()) return std::nullopt;
      if (outcome != PiecewiseSimplex::Outcome::Optimal) return bound;
      if (stage_.kind == Stage::Kind::ObjectiveBudget) {
        bound = std::max(bound, settleLambda(safeBound(gradient)));
        if (bound >= cutoff()) return std::nullopt;
        const double own = safeBound(gradient);
        if (!best_ || !narrow(gradient, cutoff() - own)) break;
        continue;
      }
      if (!best_ || !narrow(gradient, cutoff() - bound)) break;
    }
    return bound;
  }

  /// Reduced-cost narrowing: values of a column that alone would lift the bound over the cutoff. True when
  /// the current solution was cut off, so that another look pays.
  bool narrow(const Eigen::VectorXd& gradient, double slack) {
    bool cuts = false;
    for (Eigen::Index j = 0; j < columns_; ++j) {
      PiecewiseCost& cost = simplex_.costs()[std::size_t(j)];
      if (!cost.narrowToWithin(gradient[j], slack, program_.onGrid[std::size_t(j)] != 0)) continue;
      lower_[j] = std::max(lower_[j], cost.lowest());
      upper_[j] = std::min(upper_[j], cost.highest());
      respectThreshold(j);
      const double value = simplex_.value(j);
      cuts = cuts || value < lower_[j] - kWhole || value > upper_[j] + kWhole;
    }
    return cuts;
  }

  void respectThreshold(Eigen::Index j) {
    const double threshold = program_.threshold[j];
    if (threshold <= 0) return applyLimits(j);
    if (lower_[j] > 0 && lower_[j] < threshold) lower_[j] = threshold;
    if (upper_[j] < threshold) upper_[j] = 0.0;
    if (lower_[j] <= upper_[j]) applyLimits(j);
  }

  /// Counts what is used and what may be; decides the rest where the count leaves no choice.
  bool choicesAdmit() {
    for (const Choice& choice : program_.source->choices) {
      int used = 0;
      int possible = 0;
      for (const Eigen::Index j : choice.members) {
        used += lower_[j] > 0 ? 1 : 0;
        possible += upper_[j] > 0 ? 1 : 0;
      }
      if (used > choice.atMost || possible < choice.atLeast) return false;
      if (used == possible || (used < choice.atMost && possible > choice.atLeast)) continue;
      for (const Eigen::Index j : choice.members) {
        if (lower_[j] > 0 || upper_[j] <= 0) continue;
        if (used >= choice.atMost)
          upper_[j] = 0.0;
        else
          lower_[j] = std::max(program_.threshold[j], lower_[j]);
        if (lower_[j] > upper_[j]) return false;
        applyLimits(j);
      }
    }
    return (lower_.array() <= upper_.array()).all();
  }

  /// The column to branch on, or nothing when the node is finished.
  std::optional<Branch> chooseBranch(double& bound) {
    if (const auto branch = fractionalBranch()) return branch;
    Incumbent candidate = evaluate(program_, wholeValues());
    if (isAcceptable(program_, stage_, candidate)) {
      const bool news = !best_ || isBetter(stage_, candidate, *best_);
      offer(candidate);
      if (news && anyOnGrid()) offer(improveOnGrid(program_, stage_, candidate.z));
      if (bound >= cutoff()) return std::nullopt;
    }
    if (const auto branch = choiceBranch()) return branch;
    return splitWidest();
  }

  [[nodiscard]] bool anyOnGrid() const {
    return std::any_of(program_.onGrid.begin(), program_.onGrid.end(), [](char grid) { return grid != 0; });
  }

  Eigen::VectorXd wholeValues() const {
    Eigen::VectorXd z = simplex_.columnValues();
    for (Eigen::Index j = 0; j < columns_; ++j) {
      if (program_.onGrid[std::size_t(j)] != 0) z[j] = std::round(z[j]);
      z[j] = std::clamp(z[j], lower_[j], upper_[j]);
    }
    return z;
  }

  /// Values of the grid next to value: below and above; equal when it is on the grid.
  bool neighbours(Eigen::Index j, double value, double& below, double& above) const {
    const double threshold = program_.threshold[j];
    if (threshold > 0 && lower_[j] <= 0 && value > kWhole && value < threshold - kWhole) {
      below = 0.0;
      above = threshold;
      return true;
    }
    if (program_.onGrid[std::size_t(j)] == 0 || std::abs(value - std::round(value)) <= kWhole) return false;
    below = std::floor(value);
    above = below + 1;
    return true;
  }

  std::optional<Branch> fractionalBranch() {
    Branch best;
    double bestScore = -1.0;
    for (Eigen::Index j = 0; j < columns_; ++j) {
      double below = 0.0;
      double above = 0.0;
      const double value = simplex_.value(j);
      if (!simplex_.isBasic(j) || !neighbours(j, value, below, above)) continue;
      const double downGain = std::min(simplex_.firstGain(j, below), 1e12);
      const double upGain = std::min(simplex_.firstGain(j, above), 1e12);
      const double part = std::min(value - below, above - value) / (above - below);
      const double score = (downGain + 1e-9 * part) * (upGain + 1e-9 * part);
      if (score > bestScore) {
        bestScore = score;
        best = {j, below, above, upGain < downGain || (upGain == downGain && above - value < value - below)};
      }
    }
    if (best.column < 0) return std::nullopt;
    return best;
  }

  std::optional<Branch> choiceBranch() const {
    for (const Choice& choice : program_.source->choices) {
      int used = 0;
      Eigen::Index undecided = -1;
      for (const Eigen::Index j : choice.members) {
        used += simplex_.value(j) > kWhole ? 1 : 0;
        if (lower_[j] <= 0 && upper_[j] > 0 && undecided < 0) undecided = j;
      }
      if (used >= choice.atLeast && used <= choice.atMost) continue;
      if (undecided >= 0)
        return Branch{undecided, 0.0, std::max(program_.threshold[undecided], 1e-12), used < choice.atLeast};
    }
    return std::nullopt;
  }

  std::optional<Branch> splitWidest() const {
    Branch branch;
    double widest = 0.0;
    for (Eigen::Index j = 0; j < columns_; ++j) {
      if (program_.onGrid[std::size_t(j)] == 0 || upper_[j] - lower_[j] <= widest) continue;
      widest = upper_[j] - lower_[j];
      const double value = std::clamp(std::round(simplex_.value(j)), lower_[j], upper_[j]);
      const double down = value < upper_[j] ? value : value - 1;
      branch = {j, down, std::max(down + 1, down == 0 ? program_.threshold[j] : 0.0), false};
    }
    if (branch.column < 0) return std::nullopt;
    return branch;
  }

  void push(const Branch& branch, double bound) {
    auto node = std::make_unique<Node>();
    node->bound = bound;
    node->lambda = lambda_;
    node->lower = lower_;
    node->upper = upper_;
    if (branch.upFirst)
      node->upper[branch.column] = branch.down;
    else
      node->lower[branch.column] = branch.up;
    if (node->lower[branch.column] > node->upper[branch.column]) return;
    node->basis = simplex_.basis();
    node->order = ++order_;
    open_.push(std::move(node));
  }

  void take(const Branch& branch, bool up) {
    if (up)
      lower_[branch.column] = branch.up;
    else
      upper_[branch.column] = branch.down;
    if (lower_[branch.column] <= upper_[branch.column]) applyLimits(branch.column);
  }

  SearchResult finish() {
    SearchResult result;
    result.nodes = nodes_;
    result.closed = !outOfTime_ || open_.empty();
    double bound = unfinished_;
    if (!open_.empty()) bound = std::min(bound, open_.top()->bound);
    if (outOfTime_ && bound < cutoff()) result.closed = false;
    if (best_) bound = std::min(bound, valueOf(*best_));
    result.bound = bound;
    if (result.closed && best_) result.bound = valueOf(*best_);
    if (best_) {
      for (Eigen::Index j = 0; j < columns_; ++j) {
        if (program_.generous[std::size_t(j)] != 0 && best_->z[j] >= program_.upper[j] - 1)
          result.pressesGenerousLimit = true;
      }
    }
    result.best = std::move(best_);
    return result;
  }

  const ScaledProgram& program_;
  const Stage stage_;
  const Limits& limits_;
  Clock::time_point deadline_;
  Eigen::Index columns_;
  std::vector<PiecewiseCost> base_;
  PiecewiseSimplex simplex_;
  Eigen::VectorXd lower_;
  Eigen::VectorXd upper_;
  double lambda_;
  std::optional<Incumbent> best_;
  std::priority_queue<std::unique_ptr<Node>, std::vector<std::unique_ptr<Node>>, Later> open_;
  std::int64_t nodes_ = 0;
  std::int64_t order_ = 0;
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
