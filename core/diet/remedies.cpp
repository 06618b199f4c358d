// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/remedies.h"

#include "core/diet/any_amounts.h"
#include "core/diet/food_safety.h"
#include "core/diet/larder_prices.h"
#include "core/diet/supply.h"
#include "core/diet/verification.h"
#include "core/solver/continuous.h"

#include <algorithm>
#include <optional>

namespace tarebowl::diet {
namespace {

using Clock = std::chrono::steady_clock;

constexpr double kCloses = 10 * kNoShortfall;
constexpr double kHelps = 1e-6;  // relative gain below which nothing is told
constexpr double kNextToNothing = 1e-12;
constexpr std::size_t kReplacers = 3;  // foods that are tried in place of each used one
constexpr std::size_t kMostReplacements = 2;
constexpr std::size_t kMostRaises = 2;
constexpr std::chrono::milliseconds kMostForOne{500};

/// A change to try for real, and the least shortfall that any amounts would leave with it.
struct Trial {
  Remedy remedy;
  double least = 0.0;
};

class RemedyFinder {
 public:
  RemedyFinder(const BalanceProblem& problem, const DietSolution& solution, std::span<const DietFood> larder,
               const RemedyOptions& options)
      : problem_(problem),
        solution_(solution),
        larder_(larder),
        options_(options),
        deadline_(Clock::now() + options.deadline),
        impossible_(solution.status == DietStatus::Impossible),
        measures_(measuresOf(problem)),
        reference_(referenceDiet(problem)),
        formulation_(formulate(problem, measures_, reference_)),
        columns_(problem, formulation_, measures_, larder) {}

  std::vector<Remedy> run() {
    setPrices();
    std::vector<Trial> additions = tryAdditions();
    std::vector<Trial> replacements = tryReplacements(additions);
    std::vector<Trial> raises = tryRaises();
    const std::size_t others =
        std::min(kMostReplacements, replacements.size()) + std::min(kMostRaises, raises.size());
    const std::size_t roomForAdditions = options_.count - std::min(others, options_.count / 2);
    std::vector<Remedy> found;
    solveBest(found, additions, roomForAdditions);
    solveBest(found, raises, std::min(kMostRaises, options_.count - found.size()));
    solveBest(found, replacements, std::min(kMostReplacements, options_.count - found.size()));
    std::ranges::stable_sort(found, [&](const Remedy& a, const Remedy& b) { return isBetter(a, b); });
    return found;
  }

 private:
  void setPrices() {
    const bool hasBowl = !solution_.grams.empty();
    const Eigen::VectorXd bowl = gramsOf(problem_, hasBowl ? solution_.grams : reference_);
    relaxed_ = anyAmounts(formulation_, hasBowl ? &bowl : nullptr);
    relaxed_.scatter.reset();
    relaxed_.curvature.setZero();  // only the least shortfall is asked of it
    relaxed_.cost.setZero();
    if (impossible_) {  // only the hard rows count
      for (double& price : relaxed_.price) price = price < solver::kInfinity ? kNextToNothing : 1.0;
    }
    prices_ = rowPrices(relaxed_);
    base_ = prices_.shortfall;
    if (!isOnlyOfGrid()) return;
    // Any amounts would do: only the grid (or the choices) is to blame, and what the bowl misses sets prices.
    const solver::Program& program = formulation_.program;
    for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
      const double activity = program.rows.row(i).dot(bowl);
      const double price = program.price[i] < solver::kInfinity ? program.price[i] : 1.0;
      if (activity > program.rowUpper[i] + kNoShortfall) prices_.perRow[i] = price;
      if (activity < program.rowLower[i] - kNoShortfall) prices_.perRow[i] = -price;
    }
  }

  [[nodiscard]] bool isOnlyOfGrid() const { return base_ <= kCloses; }

  [[nodiscard]] bool isOver() const { return options_.stop.stop_requested() || Clock::now() >= deadline_; }

  /// Nothing where it cannot be said.
  [[nodiscard]] static std::optional<double> leastShortfall(const solver::Program& program) {
    const solver::ScaledProgram scaled(program);
    const solver::ContinuousAnswer answer = solver::leastViolation(scaled, {scaled.lower, scaled.upper});
    return answer.status == solver::Status::Optimal ? std::optional(answer.violation) : std::nullopt;
  }

  [[nodiscard]] bool helps(double least) const { return isOnlyOfGrid() || least < base_ * (1.0 - kHelps); }

  [[nodiscard]] std::vector<PricedFood> candidates() const {
    std::vector<PricedFood> foods = columns_.promising(prices_, options_.candidates);
    return foods.empty() ? columns_.ofGroups(formulation_.choices, options_.candidates) : foods;
  }

  /// No food that the animal may not have, not one of the problem's own foods, and no food without a price
  /// where the cheapest bowl is sought: it would count as free.
  [[nodiscard]] bool mayJoin(const DietFood& joining) const {
    const bool needsPrice = problem_.objective.kind == Objective::Kind::LowestCost;
    if (needsPrice && !joining.costPerKg) return false;
    if (isBanned(problem_, joining)) return false;
    return std::ranges::none_of(problem_.foods, [&](const DietFood& food) { return food.id == joining.id; });
  }

  std::vector<Trial> tryAdditions() {
    std::vector<Trial> trials;
    for (const PricedFood& priced : candidates()) {
      if (isOver()) break;
      if (!mayJoin(larder_[priced.food])) continue;
      const std::optional<double> least = leastShortfall(columns_.with(relaxed_, priced.food));
      if (!least || !helps(*least)) continue;
      Remedy remedy;
      remedy.food = priced.food;
      remedy.known = priced.known;
      trials.push_back({remedy, *least});
    }
    sortByPromise(trials);
    return trials;
  }

  /// The best additions, each in place of the food that can best be spared: of the same group where it makes
  /// no difference.
  std::vector<Trial> tryReplacements(const std::vector<Trial>& additions) {
    std::vector<Trial> trials;
    for (std::size_t k = 0; k < std::min(kReplacers, additions.size()) && !isOver(); ++k) {
      const Trial& addition = additions[k];
      std::optional<Trial> best;
      for (std::size_t j = 0; j < problem_.foods.size(); ++j) {
        if (!canBeSpared(j)) continue;
        solver::Program program = columns_.with(relaxed_, addition.remedy.food);
        program.upper[static_cast<Eigen::Index>(j)] = 0.0;
        const std::optional<double> least = leastShortfall(program);
        if (!least || !helps(*least)) continue;
        Trial trial = addition;
        trial.remedy.kind = Remedy::Kind::Replace;
        trial.remedy.inPlaceOf = j;
        trial.least = *least;
        if (!best || isBetterSwap(trial, *best)) best = trial;
      }
      if (best) trials.push_back(*best);
    }
    sortByPromise(trials);
    return trials;
  }

  [[nodiscard]] bool canBeSpared(std::size_t food) const {
    return !solution_.grams.empty() && solution_.grams[food].value() > 0.0 &&
           problem_.foods[food].min.value() <= 0.0;
  }

  [[nodiscard]] bool isBetterSwap(const Trial& a, const Trial& b) const {
    if (!agree(a.least, b.least)) return a.least < b.least;
    const auto sameGroup = [&](const Trial& trial) {
      return problem_.foods[trial.remedy.inPlaceOf].group == larder_[trial.remedy.food].group;
    };
    if (sameGroup(a) != sameGroup(b)) return sameGroup(a);
    return solution_.grams[a.remedy.inPlaceOf] < solution_.grams[b.remedy.inPlaceOf];
  }

  /// Foods of the problem that would help if their maximum let them.
  std::vector<Trial> tryRaises() {
    std::vector<Trial> trials;
    const Eigen::VectorXd rate = formulation_.program.rows.transpose() * prices_.perRow;
    for (std::size_t j = 0; j < problem_.foods.size() && !isOver(); ++j) {
      const auto column = static_cast<Eigen::Index>(j);
      if (!problem_.foods[j].max || !(rate[column] < 0.0)) continue;
      if (isBanned(problem_, problem_.foods[j])) continue;
      solver::Program program = relaxed_;
      program.upper[column] = solver::kInfinity;
      const std::optional<double> least = leastShortfall(program);
      if (!least || !helps(*least)) continue;
      Remedy remedy;
      remedy.kind = Remedy::Kind::Raise;
      remedy.food = j;
      trials.push_back({remedy, *least});
    }
    sortByPromise(trials);
    return trials;
  }

  /// What is left of the shortfall when the gain counts only for what is known.
  [[nodiscard]] double cautious(double shortfall, double known) const {
    const double before = impossible_ ? base_ : std::max(base_, solution_.shortfall);
    return shortfall + (1.0 - known) * std::max(0.0, before - shortfall);
  }

  void sortByPromise(std::vector<Trial>& trials) const {
    std::ranges::stable_sort(trials, [&](const Trial& a, const Trial& b) {
      return cautious(a.least, a.remedy.known) < cautious(b.least, b.remedy.known);
    });
  }

  [[nodiscard]] bool isBetter(const Remedy& a, const Remedy& b) const {
    if (a.possible != b.possible) return a.possible;
    const double left = cautious(a.shortfall, a.known);
    const double right = cautious(b.shortfall, b.known);
    return agree(left, right) ? a.objective < b.objective : left < right;
  }

  [[nodiscard]] BalanceProblem changed(const Remedy& remedy) const {
    BalanceProblem problem = problem_;
    problem.reference = reference_;
    if (remedy.kind == Remedy::Kind::Raise) {
      problem.foods[remedy.food].max.reset();
      return problem;
    }
    problem.foods.push_back(larder_[remedy.food]);
    problem.reference->emplace_back(0.0);
    if (remedy.kind == Remedy::Kind::Replace) problem.foods[remedy.inPlaceOf].max = quantity::Grams(0);
    return problem;
  }

  /// Solves the change for real. False: no answer, or none that helps.
  bool solveFor(Trial& trial) const {
    Remedy& remedy = trial.remedy;
    SolveOptions options;
    options.stop = options_.stop;
    options.findConflict = false;
    options.deadline = std::min(
        kMostForOne, std::chrono::duration_cast<std::chrono::milliseconds>(deadline_ - Clock::now()));
    const DietSolution answer = solve(changed(remedy), options);
    if (answer.status == DietStatus::Impossible && impossible_) {
      remedy.possible = false;
      remedy.shortfall = trial.least;
      return true;
    }
    if (answer.grams.empty()) return false;
    const std::size_t column = remedy.kind == Remedy::Kind::Raise ? remedy.food : problem_.foods.size();
    remedy.grams = answer.grams[column];
    remedy.shortfall = answer.shortfall;
    remedy.provenGap = answer.provenGap;
    remedy.objective = answer.objective;
    const bool isUsed = remedy.grams.value() > 0.0;
    return isUsed && (impossible_ || remedy.shortfall < solution_.shortfall * (1.0 - kHelps));
  }

  void solveBest(std::vector<Remedy>& found, std::vector<Trial>& trials, std::size_t most) const {
    const std::size_t enough = found.size() + most;
    for (Trial& trial : trials) {
      if (found.size() >= enough || isOver()) return;
      if (solveFor(trial)) found.push_back(trial.remedy);
    }
  }

  const BalanceProblem& problem_;
  const DietSolution& solution_;
  std::span<const DietFood> larder_;
  const RemedyOptions& options_;
  Clock::time_point deadline_;
  bool impossible_;
  std::vector<Measure> measures_;
  Diet reference_;
  Formulation formulation_;
  LarderColumns columns_;
  solver::Program relaxed_;
  RowPrices prices_;
  double base_ = 0.0;
};

}  // namespace

bool Remedy::closes() const {
  return possible && shortfall <= kCloses;
}

std::vector<Remedy> findRemedies(const BalanceProblem& problem, const DietSolution& solution,
                                 std::span<const DietFood> larder, const RemedyOptions& options) {
  const bool isShort = solution.status == DietStatus::Compromise || solution.status == DietStatus::Impossible;
  if (!isShort || options.count == 0 || unsolvable(problem)) return {};
  if (!bansAnything(problem)) return RemedyFinder(problem, solution, larder, options).run();
  const BalanceProblem safe = withoutBanned(problem);
  return RemedyFinder(safe, solution, larder, options).run();
}

}  // namespace tarebowl::diet
