// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/calcium_dose.h"

#include "core/diet/measure.h"
#include "core/diet/scale_step.h"
#include "core/food/nutrient.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::health {

namespace {

/// What a bound is short of, as it changes with grams that are eaten: value = lack - slope · g.
struct Line {
  double lack = 0.0;
  double slope = 0.0;
};

/// A relative lack up to this is none: bounds are met to the last digit where arithmetic can.
constexpr double kNone = 1e-9;

bool isMinimumSought(const diet::BalanceProblem& problem, const diet::Measure& measure) {
  if (!measure.min || !measure.defect.empty()) return false;
  if (measure.kind == diet::TargetKind::Nutrient)
    return problem.targets[measure.index].nutrient == food::nutrients::calcium();
  if (measure.kind != diet::TargetKind::Ratio) return false;
  const animal::RatioTarget& ratio = problem.ratios[measure.index];
  return ratio.of == food::nutrients::calcium() && ratio.to == food::nutrients::phosphorus();
}

Line lineOf(const diet::Measure& measure, double bound, const Eigen::VectorXd& eaten, Eigen::Index food) {
  const double part = measure.part.at(eaten);
  const double whole = measure.whole.at(eaten);
  return {bound * whole - part, measure.part.perGram[food] - bound * measure.whole.perGram[food]};
}

double scaleOf(const diet::Measure& measure, double bound, const Eigen::VectorXd& eaten) {
  return std::max({bound * measure.whole.at(eaten), measure.part.at(eaten), 1e-12});
}

/// Whole steps that are not below so many grams; a hair above a step is that step.
double stepsUp(double grams, double step) {
  if (!(step > 0.0)) return grams;
  const double steps = std::ceil(grams / step - 1e-9);
  return diet::nearestOnScale(quantity::Grams(steps * step), quantity::Grams(step)).value();
}

class Search {
 public:
  Search(const diet::BalanceProblem& problem, const diet::Diet& eaten, const SupplementUse& use)
      : problem_(problem),
        eaten_(diet::gramsOf(problem, eaten)),
        food_(static_cast<Eigen::Index>(use.supplement)),
        bowlPerEaten_(problem.eater.count / (use.retained * use.eaten)),
        measures_(diet::measuresOf(problem)) {}

  Dose run(double step) {
    double need = 0.0;
    bool sought = false;
    bool beyond = false;
    for (const diet::Measure& measure : measures_) {
      if (!isMinimumSought(problem_, measure)) continue;
      sought = true;
      const Line line = lineOf(measure, *measure.min, eaten_, food_);
      if (line.lack <= kNone * scaleOf(measure, *measure.min, eaten_)) continue;
      if (!(line.slope > 0.0)) {
        beyond = true;
        dose_.rules.push_back({measure.id, {}, false});
        continue;
      }
      const double grams = line.lack / line.slope * bowlPerEaten_;
      dose_.rules.push_back({measure.id, grams, false});
      need = std::max(need, grams);
    }
    hold(need, step);
    dose_.answer = answer(sought, beyond, need);
    if (dose_.answer == DoseAnswer::Found || dose_.answer == DoseAnswer::CrossesALimit) {
      dose_.exact = need;
      dose_.grams = stepsUp(need, step);
    }
    return std::move(dose_);
  }

 private:
  /// The maxima: how much each allows, and which would be broken.
  void hold(double need, double step) {
    const double grams = need > 0.0 ? stepsUp(need, step) : 0.0;
    for (const diet::Measure& measure : measures_) {
      if (!measure.max || !measure.defect.empty()) continue;
      const Line line = lineOf(measure, *measure.max, eaten_, food_);
      const double slack = kNone * scaleOf(measure, *measure.max, eaten_);
      if (line.lack - line.slope * grams / bowlPerEaten_ < -slack)
        dose_.crossed.push_back(measure.id);
      else if (line.lack - line.slope * grams / problem_.eater.count < -slack)
        dose_.crossedIfAllEaten.push_back(measure.id);
      if (!(line.slope > 0.0)) continue;
      const double most = std::max(0.0, line.lack / line.slope) * bowlPerEaten_;
      dose_.rules.push_back({measure.id, most, true});
      dose_.most = std::min(most, dose_.most.value_or(most));
    }
  }

  [[nodiscard]] DoseAnswer answer(bool sought, bool beyond, double need) const {
    if (!sought) return DoseAnswer::NoTarget;
    if (beyond) return DoseAnswer::NotByThisFood;
    if (need <= 0.0) return DoseAnswer::NothingNeeded;
    return dose_.crossed.empty() ? DoseAnswer::Found : DoseAnswer::CrossesALimit;
  }

  const diet::BalanceProblem& problem_;
  Eigen::VectorXd eaten_;
  Eigen::Index food_;
  double bowlPerEaten_;  ///< grams in the bowl for a gram eaten by one animal
  std::vector<diet::Measure> measures_;
  Dose dose_;
};

}  // namespace

Dose smallestDose(const diet::BalanceProblem& problem, const diet::Diet& eaten, const SupplementUse& use) {
  const diet::DietFood& supplement = problem.foods.at(use.supplement);
  if (supplement.composition.find(food::nutrients::calcium()) == nullptr)
    return {.answer = DoseAnswer::ContentUnknown};
  return Search(problem, eaten, use).run(supplement.scaleStep.value());
}

diet::Diet withDose(const diet::BalanceProblem& problem, const diet::Diet& eaten, const SupplementUse& use,
                    double grams) {
  diet::Diet with = eaten;
  with.at(use.supplement) += quantity::Grams(grams * use.retained * use.eaten / problem.eater.count);
  return with;
}

}  // namespace tarebowl::health
