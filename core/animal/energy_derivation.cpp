// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/energy_derivation.h"

#include "core/food/folding.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <stdexcept>

namespace tarebowl::animal {

namespace {

using Kind = EnergyStep::Kind;
using FactorKind = EnergyFactor::Kind;

constexpr std::array<std::string_view, 12> kFollowTemperature{"reptile", "reptiles", "lizard",     "lizards",
                                                              "snake",   "snakes",   "turtle",     "turtles",
                                                              "frog",    "tortoise", "amphibians", "fish"};

bool namesColdBlood(std::string_view group) {
  const auto words = food::wordsOf(food::folded(group));
  return std::ranges::any_of(words, [](const std::string& word) {
    return std::ranges::find(kFollowTemperature, word) != kFollowTemperature.end();
  });
}

Provenance lessCertain(Provenance a, Provenance b) {
  using enum Provenance;
  constexpr std::array kByCertainty{Seen, Derived, FromMemory, HouseRule, Invented, Unstated};
  return *std::max(std::ranges::find(kByCertainty, a), std::ranges::find(kByCertainty, b));
}

bool isWithin(double value, double most) {
  return value > 0.0 && value <= most;  // false for what is no number
}

void requireSound(const EnergyPlan& plan, quantity::Kilograms bodyMass, std::optional<int> headcount) {
  constexpr double kLargest = 1e9;
  if (!isWithin(bodyMass.value(), kLargest)) throw std::domain_error("body mass must be above 0 kg");
  if (!isWithin(plan.coefficient, kLargest)) throw std::domain_error("the coefficient must be above 0");
  if (!isWithin(plan.exponent, 1.5)) throw std::domain_error("the exponent must be above 0, at most 1.5");
  for (const EnergyFactor& factor : plan.factors)
    if (!isWithin(factor.low, factor.high) || !isWithin(factor.high, kLargest))
      throw std::domain_error("a factor must be above 0, its low at most its high");
  if (headcount && *headcount < 1) throw std::domain_error("a group must have an animal");
}

/// The level that is reached below the factors so far.
EnergyLevel levelAfter(const EnergyFactor& factor, EnergyLevel level) {
  const bool leadsUp = factor.kind == FactorKind::Maintenance || factor.of == EnergyLevel::Resting;
  return leadsUp ? std::max(level, EnergyLevel::Maintenance) : level;
}

bool countsTwice(const EnergyPlan& plan) {
  std::set<FactorKind> kinds;
  EnergyLevel level = plan.level;
  for (const EnergyFactor& factor : plan.factors) {
    if (factor.kind != FactorKind::House && !kinds.insert(factor.kind).second) return true;
    const EnergyLevel of =
        factor.of.value_or(factor.kind == FactorKind::Maintenance ? EnergyLevel::Resting : level);
    if (level > of || level == EnergyLevel::FreeLiving) return true;
    level = levelAfter(factor, level);
  }
  return false;
}

bool isFromMemory(const EnergyPlan& plan) {
  return plan.origin.provenance == Provenance::FromMemory ||
         std::ranges::any_of(plan.factors, [](const EnergyFactor& factor) {
           return factor.origin.provenance == Provenance::FromMemory;
         });
}

std::vector<EnergyCaution> cautionsOf(const EnergyPlan& plan, quantity::Kilograms bodyMass) {
  using enum EnergyCaution;
  std::vector<EnergyCaution> cautions;
  if (plan.followsTemperature || namesColdBlood(plan.group)) cautions.push_back(NotAFeedingRate);
  if (plan.level == EnergyLevel::FreeLiving) cautions.push_back(FreeLivingLevel);
  const bool isOutside =
      (plan.lightest && bodyMass < *plan.lightest) || (plan.heaviest && bodyMass > *plan.heaviest);
  if (isOutside) cautions.push_back(OutsideValidity);
  if (isFromMemory(plan)) cautions.push_back(SourceFromMemory);
  if (countsTwice(plan)) cautions.push_back(FactorsDoubleCount);
  return cautions;
}

class Steps {
 public:
  explicit Steps(EnergyDerivation& derivation) : steps_(derivation.steps) {}

  EnergyStep& add(Kind kind, double by, double low, double high) {
    return steps_.emplace_back(EnergyStep{.kind = kind, .by = by, .byHigh = by, .low = low, .high = high});
  }

  EnergyStep& times(Kind kind, double low, double high) {
    const EnergyStep above = steps_.back();
    EnergyStep& step = add(kind, low, above.low * low, above.high * high);
    step.byHigh = high;
    return step;
  }

 private:
  std::vector<EnergyStep>& steps_;
};

}  // namespace

EnergyPlan planFrom(const Allometry& allometry) {
  const auto toKilocalories = quantity::conversionFactor(allometry.energyUnit, quantity::Unit::Kilocalorie);
  if (!toKilocalories) throw std::domain_error("an allometry must be in a unit of energy");
  EnergyPlan plan;
  plan.group = allometry.group;
  plan.level = allometry.level;
  plan.coefficient =
      allometry.coefficient * *toKilocalories / std::pow(allometry.massUnit.value(), allometry.exponent);
  plan.exponent = allometry.exponent;
  plan.validity = allometry.validity;
  plan.followsTemperature = namesColdBlood(allometry.group);
  plan.origin = {std::string(allometry.source), allometry.provenance, {}};
  return plan;
}

EnergyFactor factorFrom(const EnergyMultiplier& multiplier, FactorKind kind) {
  return {.kind = kind,
          .words = std::string(multiplier.condition),
          .low = multiplier.low,
          .high = multiplier.high,
          .of = multiplier.of,
          .origin = {std::string(multiplier.source), multiplier.provenance, std::string(multiplier.group)}};
}

TargetOrigin originOf(const EnergyPlan& plan) {
  TargetOrigin origin{
      .source = plan.origin.source, .provenance = plan.origin.provenance, .modelSpecies = plan.group};
  for (const EnergyFactor& factor : plan.factors) {
    if (!factor.origin.source.empty() && origin.source.find(factor.origin.source) == std::string::npos)
      origin.source += (origin.source.empty() ? "" : "; ") + factor.words + ": " + factor.origin.source;
    origin.provenance = lessCertain(origin.provenance, factor.origin.provenance);
  }
  return origin;
}

EnergyDerivation deriveEnergy(const EnergyPlan& plan, quantity::Kilograms bodyMass,
                              std::optional<int> headcount) {
  requireSound(plan, bodyMass, headcount);
  EnergyDerivation derivation;
  Steps steps(derivation);
  const double mass = bodyMass.value();
  const double metabolic = std::pow(mass, plan.exponent);
  steps.add(Kind::BodyMass, 1.0, mass, mass);
  steps.add(Kind::MetabolicMass, plan.exponent, metabolic, metabolic);
  EnergyStep& level = steps.times(Kind::Level, plan.coefficient, plan.coefficient);
  level.words = plan.group;
  level.origin = plan.origin;
  for (const EnergyFactor& factor : plan.factors) {
    EnergyStep& step = steps.times(Kind::Factor, factor.low, factor.high);
    step.words = factor.words;
    step.origin = factor.origin;
  }
  const EnergyStep& perAnimal = steps.times(Kind::PerAnimal, 1.0, 1.0);
  derivation.low = quantity::Kilocalories(perAnimal.low);
  derivation.high = quantity::Kilocalories(perAnimal.high);
  if (headcount) {
    const double animals = *headcount;
    steps.add(Kind::Headcount, animals, animals, animals);
    steps.add(Kind::Group, animals, derivation.low.value() * animals, derivation.high.value() * animals);
  }
  derivation.cautions = cautionsOf(plan, bodyMass);
  return derivation;
}

}  // namespace tarebowl::animal
