// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/from_profile.h"

#include "core/animal/target_conversion.h"
#include "core/food/energy.h"

#include <algorithm>
#include <utility>

namespace tarebowl::diet {

namespace {

using animal::ProfileTarget;
using animal::Target;
using quantity::Basis;

class Builder {
 public:
  Builder(const animal::ResolvedProfile& profile, const EaterFacts& facts, std::vector<DietFood> foods,
          food::EnergyMethod method)
      : profile_(profile), facts_(facts) {
    result_.problem.title = profile.profile.name;
    result_.problem.invented = profile.profile.invented;
    result_.problem.eater = facts.eater;
    result_.problem.energyMethod = method;
    result_.problem.foods = std::move(foods);
  }

  ProblemOfProfile run() {
    for (const auto& entry : profile_.targets) addTarget(entry.rule);
    addEnergy();
    for (const auto& entry : profile_.ratios) addRatio(entry.rule.target);
    for (const auto& entry : profile_.shares)
      if (hasGroup(entry.rule.group, entry.rule.id)) result_.problem.shares.push_back(entry.rule);
    for (const auto& entry : profile_.choices)
      if (hasGroup(entry.rule.group, animal::idOf(entry.rule))) result_.problem.choices.push_back(entry.rule);
    for (const auto& entry : profile_.exclusions) result_.problem.exclusions.push_back(entry.rule);
    return std::move(result_);
  }

 private:
  bool leaveOut(const std::string& id, NotCounted why) {
    result_.notCounted.push_back({id, why});
    return false;
  }

  [[nodiscard]] bool isKnown(food::NutrientId nutrient) const {
    const food::EnergyMethod method = result_.problem.energyMethod;
    return std::ranges::any_of(result_.problem.foods, [&](const DietFood& food) {
      if (nutrient == food::nutrients::energy())
        return food::estimateEnergy(method, food.composition).per100g.has_value();
      return food.composition.find(nutrient) != nullptr;
    });
  }

  bool hasGroup(const std::string& group, const std::string& id) {
    const bool has =
        std::ranges::any_of(result_.problem.foods, [&](const DietFood& food) { return food.group == group; });
    return has || leaveOut(id, NotCounted::NoFoodOfGroup);
  }

  bool canBeCounted(const Target& target) {
    if (!isKnown(target.nutrient)) return leaveOut(target.id, NotCounted::NoFoodKnowsNutrient);
    const bool perMass = target.basis == Basis::BodyMass || target.basis == Basis::MetabolicMass;
    if (perMass && !facts_.eater.bodyMass) return leaveOut(target.id, NotCounted::BodyMassUnknown);
    const bool isWholeKnown = (target.basis != Basis::DryMatter || isKnown(food::nutrients::water())) &&
                              (target.basis != Basis::Energy || isKnown(food::nutrients::energy()));
    return isWholeKnown || leaveOut(target.id, NotCounted::NoFoodKnowsNutrient);
  }

  /// "As fed" of a profile speaks of a dry feed. Energy by body mass is what the bowl is scaled by, and that
  /// is read off a target per day (referenceDiet).
  [[nodiscard]] std::optional<Target> onBowl(const Target& target) const {
    animal::TargetScale scale;
    const bool isPerMass = target.basis == Basis::BodyMass || target.basis == Basis::MetabolicMass;
    if (isPerMass && target.nutrient == food::nutrients::energy() && facts_.eater.bodyMass) {
      scale.bodyMass = facts_.eater.bodyMass;
      return animal::onBasis(target, Basis::Day, scale);
    }
    if (target.basis != Basis::AsFed) return target;
    scale.dryMatterFraction = profile_.dryMatterFraction;
    return animal::onBasis(target, Basis::DryMatter, scale);
  }

  void addTarget(const ProfileTarget& rule) {
    const auto target = onBowl(rule.target);
    if (!target) {
      leaveOut(rule.target.id, NotCounted::DryMatterUnknown);
      return;
    }
    if (!canBeCounted(*target)) return;
    auto& targets = result_.problem.targets;
    targets.push_back(*target);
    if (!animal::maxIsHard(rule)) return;
    if (!target->min || target->hard) {
      targets.back().hard = true;
      return;
    }
    targets.back().max.reset();
    Target limit = *target;
    limit.id = upperLimitId(target->id);
    limit.min.reset();
    limit.hard = true;
    targets.push_back(std::move(limit));
  }

  void addEnergy() {
    if (!facts_.energyLow && !facts_.energyHigh) return;
    const Target energy = energyTarget();
    const bool isStated = std::ranges::any_of(
        profile_.targets, [&](const auto& entry) { return entry.rule.target.id == energy.id; });
    if (isStated) return;
    if (facts_.energyFollowsTemperature) {
      leaveOut(energy.id, NotCounted::EnergyIsNoFeedingRate);
    } else if (canBeCounted(energy)) {
      result_.problem.targets.push_back(energy);
    }
  }

  [[nodiscard]] Target energyTarget() const {
    const auto value = [](const std::optional<quantity::Kilocalories>& energy) {
      return energy ? std::optional(energy->value()) : std::nullopt;
    };
    Target energy{.id = "energy",
                  .nutrient = food::nutrients::energy(),
                  .min = value(facts_.energyLow),
                  .max = value(facts_.energyHigh),
                  .unit = quantity::Unit::Kilocalorie,
                  .basis = Basis::Day,
                  .hard = true,  // or a smaller bowl would be the way to miss other targets by less
                  .origin = facts_.energyOrigin};
    if (energy.min && energy.max && *energy.max <= *energy.min * (1.0 + kEnergyTolerance)) {
      const double middle = (*energy.min + *energy.max) / 2.0;
      energy.min = middle * (1.0 - kEnergyTolerance);
      energy.max = middle * (1.0 + kEnergyTolerance);
    }
    return energy;
  }

  void addRatio(const animal::RatioTarget& ratio) {
    if (isKnown(ratio.of) && isKnown(ratio.to)) {
      result_.problem.ratios.push_back(ratio);
    } else {
      leaveOut(ratio.id, NotCounted::NoFoodKnowsNutrient);
    }
  }

  const animal::ResolvedProfile& profile_;
  const EaterFacts& facts_;
  ProblemOfProfile result_;
};

}  // namespace

std::string upperLimitId(const std::string& targetId) {
  return targetId + "-safe-limit";
}

ProblemOfProfile profileProblem(const animal::ResolvedProfile& profile, const EaterFacts& facts,
                                std::vector<DietFood> foods, food::EnergyMethod method) {
  return Builder(profile, facts, std::move(foods), method).run();
}

}  // namespace tarebowl::diet
