// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/measure.h"

#include "core/diet/normal.h"
#include "core/diet/solve.h"
#include "core/food/vitamin_units.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace tarebowl::diet {
namespace {

constexpr double kPerThousand = 1e-3;  // g to kg, kcal to 1000 kcal

/// Builds the measures of one problem over some foods; each supply is worked out once.
class MeasureBuilder {
 public:
  MeasureBuilder(const BalanceProblem& problem, std::span<const DietFood> foods)
      : problem_(problem),
        list_(foods, problem.energyMethod),
        guard_(problem.confidence ? std::max(0.0, normalQuantile(*problem.confidence)) : 0.0) {}

  Measure ofTarget(std::size_t index) {
    const animal::Target& target = problem_.targets[index];
    Measure measure = start(TargetKind::Nutrient, index, target);
    const Supply& nutrient = supply(target.nutrient);
    measure.known = {nutrient.known};
    const std::optional<double> factor = food::toOwnUnitFactor(target.nutrient, target.unit);
    if (!factor) measure.defect = "unit";
    if (needsBodyMass(target.basis) && !problem_.eater.bodyMass) measure.defect = "no-body-mass";
    if (!measure.defect.empty()) return measure;
    measure.part.perGram = nutrient.perGram / *factor;
    measure.partSd = nutrient.sdPerGram / *factor;
    measure.guard = guard_;
    measure.whole = basisAmount(target.basis);
    return measure;
  }

  Measure ofRatio(std::size_t index) {
    const animal::RatioTarget& ratio = problem_.ratios[index];
    Measure measure = start(TargetKind::Ratio, index, ratio);
    const Supply& of = supply(ratio.of);
    const Supply& to = supply(ratio.to);
    measure.known = {of.known, to.known};
    measure.part.perGram = of.perGram;
    measure.partSd = of.sdPerGram;
    measure.wholeSd = to.sdPerGram;
    measure.whole = Sum{to.perGram, 0.0};
    return measure;
  }

  Measure ofShare(std::size_t index) {
    const ShareRule& share = problem_.shares[index];
    Measure measure = start(TargetKind::Share, index, share);
    measure.known = {knownOf(share.basis)};
    if (needsBodyMass(share.basis) || share.basis == quantity::Basis::Day) {
      measure.defect = "unit";  // a food group has no share of a day or of a body
      return measure;
    }
    const Sum& whole = basisAmount(share.basis);
    for (Eigen::Index j = 0; j < whole.perGram.size(); ++j) {
      if (list_.foods[static_cast<std::size_t>(j)].group == share.group)
        measure.part.perGram[j] = whole.perGram[j];
    }
    measure.whole = whole;
    return measure;
  }

 private:
  static bool needsBodyMass(quantity::Basis basis) {
    return basis == quantity::Basis::BodyMass || basis == quantity::Basis::MetabolicMass;
  }

  [[nodiscard]] Eigen::VectorXd zeros() const {
    return Eigen::VectorXd::Zero(static_cast<Eigen::Index>(list_.foods.size()));
  }

  template <class Rule>
  Measure start(TargetKind kind, std::size_t index, const Rule& rule) {
    Measure measure;
    measure.kind = kind;
    measure.index = index;
    measure.id = rule.id;
    measure.min = rule.min;
    measure.max = rule.max;
    measure.hard = rule.hard;
    measure.weight = rule.weight;
    measure.part.perGram = measure.whole.perGram = measure.partSd = measure.wholeSd = zeros();
    return measure;
  }

  const Supply& supply(food::NutrientId nutrient) {
    const auto found = supplies_.find(nutrient);
    if (found != supplies_.end()) return found->second;
    return supplies_.emplace(nutrient, nutrientSupply(list_, nutrient)).first->second;
  }

  const Sum& basisAmount(quantity::Basis basis) {
    const auto found = wholes_.find(basis);
    if (found != wholes_.end()) return found->second;
    return wholes_.emplace(basis, workOutBasis(basis)).first->second;
  }

  Sum workOutBasis(quantity::Basis basis) {
    const double mass = problem_.eater.bodyMass.value_or(quantity::Kilograms(0)).value();
    switch (basis) {
      case quantity::Basis::AsFed:
        return {massSupply(list_).perGram * kPerThousand, 0.0};
      case quantity::Basis::DryMatter:
        return {dryMatterSupply(list_).perGram * kPerThousand, 0.0};
      case quantity::Basis::Energy:
        return {supply(food::nutrients::energy()).perGram * kPerThousand, 0.0};
      case quantity::Basis::Day:
        return {zeros(), 1.0};
      case quantity::Basis::BodyMass:
        return {zeros(), mass};
      case quantity::Basis::MetabolicMass:
        return {zeros(), std::pow(mass, 0.75)};
    }
    return {zeros(), 0.0};
  }

  KnownMask knownOf(quantity::Basis basis) {
    if (basis == quantity::Basis::DryMatter) return dryMatterSupply(list_).known;
    if (basis == quantity::Basis::Energy) return supply(food::nutrients::energy()).known;
    return massSupply(list_).known;
  }

  const BalanceProblem& problem_;
  FoodList list_;
  double guard_;
  std::map<food::NutrientId, Supply> supplies_;
  std::map<quantity::Basis, Sum> wholes_;
};

std::vector<Measure> build(const BalanceProblem& problem, std::span<const DietFood> foods) {
  MeasureBuilder builder(problem, foods);
  std::vector<Measure> measures;
  measures.reserve(problem.targets.size() + problem.ratios.size() + problem.shares.size());
  for (std::size_t i = 0; i < problem.targets.size(); ++i) measures.push_back(builder.ofTarget(i));
  for (std::size_t i = 0; i < problem.ratios.size(); ++i) measures.push_back(builder.ofRatio(i));
  for (std::size_t i = 0; i < problem.shares.size(); ++i) measures.push_back(builder.ofShare(i));
  return measures;
}

}  // namespace

double Measure::shortfallUnit(double bound) const {
  if (kind == TargetKind::Share || bound == 0.0) return wholeAtReference;
  return bound * wholeAtReference;
}

std::vector<Measure> measuresOf(const BalanceProblem& problem) {
  std::vector<Measure> measures = build(problem, problem.foods);
  const Eigen::VectorXd reference = gramsOf(problem, referenceDiet(problem));
  for (Measure& measure : measures) {
    if (!measure.defect.empty()) continue;
    const double atReference = measure.whole.at(reference);
    if (atReference > 0.0) measure.wholeAtReference = atReference;
  }
  return measures;
}

std::vector<Measure> measuresOver(std::span<const DietFood> foods, const BalanceProblem& problem,
                                  std::span<const Measure> measures) {
  std::vector<Measure> over = build(problem, foods);
  for (std::size_t i = 0; i < over.size(); ++i) over[i].wholeAtReference = measures[i].wholeAtReference;
  return over;
}

}  // namespace tarebowl::diet
