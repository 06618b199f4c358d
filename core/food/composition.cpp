// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/composition.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace tarebowl::food {

namespace {

bool isAmount(double value) {
  return std::isfinite(value) && value >= 0.0;
}

}  // namespace

void Composition::set(NutrientId nutrient, NutrientValue value) {
  if (!isAmount(value.amount.value())) throw std::domain_error("an amount must be finite and not negative");
  if (value.sd && !isAmount(value.sd->value()))
    throw std::domain_error("an sd must be finite and not negative");
  const auto place = std::ranges::lower_bound(entries_, nutrient, {}, &Entry::nutrient);
  if (place != entries_.end() && place->nutrient == nutrient) {
    place->value = std::move(value);
  } else {
    entries_.insert(place, Entry{nutrient, std::move(value)});
  }
}

void Composition::set(NutrientId nutrient, quantity::DryMatterContent amount,
                      quantity::DryMatterShare dryMatter, std::string source) {
  NutrientValue value;
  value.amount = quantity::toAsFed(amount, dryMatter);
  value.source = std::move(source);
  set(nutrient, std::move(value));
}

void Composition::set(NutrientId nutrient, quantity::EnergyContent amount,
                      quantity::Kilocalories energyPer100g, std::string source) {
  NutrientValue value;
  value.amount = quantity::toAsFed(amount, energyPer100g);
  value.source = std::move(source);
  set(nutrient, std::move(value));
}

void Composition::erase(NutrientId nutrient) {
  std::erase_if(entries_, [nutrient](const Entry& entry) { return entry.nutrient == nutrient; });
}

const NutrientValue* Composition::find(NutrientId nutrient) const {
  const auto place = std::ranges::lower_bound(entries_, nutrient, {}, &Entry::nutrient);
  return place != entries_.end() && place->nutrient == nutrient ? &place->value : nullptr;
}

std::optional<double> Composition::amountPer100g(NutrientId nutrient) const {
  const NutrientValue* value = find(nutrient);
  return value ? std::optional(value->amount.value()) : std::nullopt;
}

std::optional<double> Composition::sdPer100g(NutrientId nutrient) const {
  const NutrientValue* value = find(nutrient);
  return value && value->sd ? std::optional(value->sd->value()) : std::nullopt;
}

std::optional<quantity::DryMatterShare> Composition::dryMatter() const {
  const auto water = amountPer100g(nutrients::water());
  if (!water || *water >= 100.0) return std::nullopt;
  return quantity::DryMatterShare::fromWaterPer100g(*water);
}

std::vector<NutrientId> Composition::knownNutrients() const {
  std::vector<NutrientId> known;
  known.reserve(entries_.size());
  for (const Entry& entry : entries_) known.push_back(entry.nutrient);
  return known;
}

}  // namespace tarebowl::food
