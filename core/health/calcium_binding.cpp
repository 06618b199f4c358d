// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/calcium_binding.h"

#include "core/food/nutrient.h"
#include "core/intake/contents.h"

#include <algorithm>

namespace tarebowl::health {

namespace {

constexpr double kCalcium = 40.078;
constexpr double kOxalicAcid = 90.034;
constexpr double kPhosphorus = 30.973762;
constexpr double kPhyticAcid = 6 * 12.011 + 18 * 1.008 + 24 * 15.999 + 6 * kPhosphorus;

/// Minerals and binders do not depend on how energy is estimated.
intake::Contents contentsOf(std::span<const diet::DietFood> foods, food::NutrientId nutrient) {
  return intake::Contents::ofNutrient(foods, food::EnergyMethod::ModifiedAtwater, nutrient);
}

/// Adds up over foods: all of a mineral, that of foods whose binder is known, and what of it is bound.
struct Bound {
  double all = 0.0;
  double known = 0.0;
  double bound = 0.0;

  template <class BoundOf>
  static Bound over(std::span<const diet::DietFood> foods, std::span<const FoodGrams> eaten,
                    food::NutrientId mineral, const char* binder, BoundOf boundOf) {
    Bound sum;
    const auto minerals = contentsOf(foods, mineral);
    const auto binders = contentsOf(foods, food::findByTagname(binder).value());
    for (const FoodGrams& one : eaten) {
      const intake::Content* amount = minerals.find(one.food);
      if (amount == nullptr || !amount->perGram || !(one.grams > 0.0)) continue;
      const double here = *amount->perGram * one.grams;
      sum.all += here;
      const intake::Content* binds = binders.find(one.food);
      if (!binds->perGram) continue;
      sum.known += here;
      sum.bound += std::min(here, boundOf(*binds->perGram * one.grams));
    }
    return sum;
  }
};

}  // namespace

double oxalateRatio(double oxalicAcid, double calcium) {
  return (oxalicAcid / kOxalicAcid) / (calcium / kCalcium);
}

OxalateShare oxalateShare(std::span<const diet::DietFood> foods, std::span<const FoodGrams> eaten) {
  const Bound sum = Bound::over(foods, eaten, food::nutrients::calcium(), "OXALAC",
                                [](double oxalicAcid) { return oxalicAcid / kOxalicAcid * kCalcium; });
  OxalateShare share;
  if (sum.known > 0.0) share.couldBind = sum.bound / sum.known;
  if (sum.all > 0.0) share.known = sum.known / sum.all;
  return share;
}

PhytateShare phytateShare(std::span<const diet::DietFood> foods, std::span<const FoodGrams> eaten) {
  const Bound sum = Bound::over(foods, eaten, food::nutrients::phosphorus(), "PHYTAC",
                                [](double phyticAcid) { return phyticAcid / kPhyticAcid * 6 * kPhosphorus; });
  PhytateShare share;
  if (sum.known > 0.0) share.ofPhosphorus = sum.bound / sum.known;
  if (sum.all > 0.0) share.known = sum.known / sum.all;
  return share;
}

}  // namespace tarebowl::health
