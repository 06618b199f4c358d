// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/balance.h"

#include "core/diet/measure.h"
#include "core/diet/normal.h"
#include "core/diet/supply.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

constexpr double kNearBound = 1e-6;  // relative: closer than this is "at" the bound

/// The bowl as eaten: what a coverage is a share of.
struct Bowl {
  Eigen::VectorXd grams;
  Eigen::VectorXd eatenMass;
  Eigen::VectorXd coverageWeight;  ///< eaten dry matter; eaten mass where no dry matter is known
};

Bowl bowlOf(const BalanceProblem& problem, const Diet& diet) {
  Bowl bowl;
  bowl.grams = gramsOf(problem, diet);
  bowl.eatenMass = massSupply(problem).perGram.cwiseProduct(bowl.grams);
  bowl.coverageWeight = dryMatterSupply(problem).perGram.cwiseProduct(bowl.grams);
  if (!(bowl.coverageWeight.sum() > 0.0)) bowl.coverageWeight = bowl.eatenMass;
  return bowl;
}

double coverageOf(const Bowl& bowl, const KnownMask& known) {
  const double total = bowl.coverageWeight.sum();
  if (!(total > 0.0)) return 1.0;  // nothing is eaten: nothing is missing
  const Eigen::VectorXd counted = known.select(bowl.coverageWeight.array(), 0.0).matrix();
  return counted.sum() / total;  // exactly 1 when all is known: both are the same sum
}

/// Unknown food with no dry matter to speak of does not lower a coverage, but it may still bring some of what
/// is counted.
bool holdsUnknown(const Bowl& bowl, const KnownMask& known) {
  return (!known && (bowl.eatenMass.array() > 0.0)).any();
}

/// What a measure comes to in this bowl.
struct Reading {
  double part = 0.0;
  double whole = 0.0;
  double partSd = 0.0;
  double wholeSd = 0.0;
  [[nodiscard]] bool hasValue() const { return whole > 0.0; }
  [[nodiscard]] double value() const { return part / whole; }
  /// First-order propagation for a quotient of independent amounts; exact where the whole does not scatter.
  [[nodiscard]] double valueSd() const { return std::hypot(partSd, value() * wholeSd) / whole; }
};

Reading read(const Measure& measure, const Bowl& bowl) {
  return {measure.part.at(bowl.grams), measure.whole.at(bowl.grams),
          measure.partSd.cwiseProduct(bowl.grams).norm(), measure.wholeSd.cwiseProduct(bowl.grams).norm()};
}

/// How the bowl stands against one bound. Shortfall and state both come from here.
struct Standing {
  double shortfall = 0.0;
  bool near = false;
  [[nodiscard]] bool missed() const { return shortfall > kNoShortfall && !near; }
};

Standing standAgainst(const Measure& measure, const Reading& reading, BoundSide side) {
  const std::optional<double> bound = measure.bound(side);
  if (!bound) return {};
  const double margin = measure.guard * reading.partSd;
  const double counted = side == BoundSide::Min ? reading.part - margin : reading.part + margin;
  const double allowed = *bound * reading.whole;
  const double miss = side == BoundSide::Min ? allowed - counted : counted - allowed;
  Standing standing;
  standing.shortfall = std::max(0.0, miss) / measure.shortfallUnit(*bound);
  standing.near = reading.hasValue() && std::abs(counted / reading.whole - *bound) <= kNearBound * *bound;
  return standing;
}

TargetState stateOf(const Standing& low, const Standing& high) {
  if (low.missed() && (!high.missed() || low.shortfall >= high.shortfall)) return TargetState::Short;
  if (high.missed()) return TargetState::Over;
  if (low.near) return TargetState::AtMin;
  if (high.near) return TargetState::AtMax;
  return TargetState::Met;
}

double chanceOf(const Measure& measure, const Reading& reading, double sd, bool holds) {
  if (!(sd > 0.0)) return holds ? 1.0 : 0.0;
  const double above = measure.max ? normalProbability((*measure.max - reading.value()) / sd) : 1.0;
  const double below = measure.min ? normalProbability((*measure.min - reading.value()) / sd) : 0.0;
  return std::max(0.0, above - below);
}

TargetBalance judge(const Measure& measure, const Bowl& bowl) {
  TargetBalance line;
  line.kind = measure.kind;
  line.index = measure.index;
  line.id = measure.id;
  line.min = measure.min;
  line.max = measure.max;
  for (const KnownMask& known : measure.known) {
    line.coverage = std::min(line.coverage, coverageOf(bowl, known));
    line.atLeast = line.atLeast || holdsUnknown(bowl, known);
  }
  if (!measure.defect.empty()) return line;  // stays unknown

  const Reading reading = read(measure, bowl);
  const Standing low = standAgainst(measure, reading, BoundSide::Min);
  const Standing high = standAgainst(measure, reading, BoundSide::Max);
  if (reading.hasValue()) {
    line.value = reading.value();
    line.sd = reading.valueSd();
  }
  line.shortfall = low.shortfall + high.shortfall;  // only a guarded target can miss both
  if (line.coverage > 0.0) {
    line.state = stateOf(low, high);
    line.chance = chanceOf(measure, reading, line.sd, !low.missed() && !high.missed());
  }
  return line;
}

}  // namespace

std::string_view symbolOf(TargetState state) {
  switch (state) {
    case TargetState::Met:
      return "met";
    case TargetState::AtMin:
      return "at-min";
    case TargetState::AtMax:
      return "at-max";
    case TargetState::Short:
      return "short";
    case TargetState::Over:
      return "over";
    case TargetState::Unknown:
      return "unknown";
  }
  return "unknown";
}

Balance balance(const BalanceProblem& problem, const Diet& diet) {
  const Bowl bowl = bowlOf(problem, diet);
  Balance result;
  for (const Measure& measure : measuresOf(problem)) {
    const TargetBalance& line = result.targets.emplace_back(judge(measure, bowl));
    if (!measure.hard) result.shortfall += measure.weight * line.shortfall;
  }
  return result;
}

std::vector<Contribution> contributions(const BalanceProblem& problem, const Diet& diet,
                                        food::NutrientId nutrient) {
  const Supply supply = nutrientSupply(problem, nutrient);
  const Eigen::VectorXd grams = gramsOf(problem, diet);
  const double total = supply.perGram.dot(grams);
  const bool estimated =
      nutrient == food::nutrients::energy() && problem.energyMethod != food::EnergyMethod::Given;
  std::vector<Contribution> list;
  for (std::size_t j = 0; j < problem.foods.size(); ++j) {
    const auto row = static_cast<Eigen::Index>(j);
    if (!(grams[row] > 0.0)) continue;
    Contribution& entry = list.emplace_back();
    entry.food = j;
    if (!supply.known[row]) continue;
    entry.amount = supply.perGram[row] * grams[row];
    if (total > 0.0) entry.share = *entry.amount / total;
    const food::NutrientValue* stated = problem.foods[j].composition.find(nutrient);
    if (estimated) {
      entry.source = food::symbolOf(problem.energyMethod);
    } else if (stated != nullptr) {
      entry.source = stated->source;
    }
  }
  std::ranges::stable_sort(list, std::ranges::greater{},
                           &Contribution::amount);  // nothing sorts below any amount
  return list;
}

}  // namespace tarebowl::diet
