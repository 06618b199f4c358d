// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/content.h"

#include <cmath>
#include <stdexcept>

namespace tarebowl::quantity {

namespace {

double positiveEnergy(Kilocalories energyPer100g) {
  const double kcal = energyPer100g.value();
  if (!(kcal > 0.0) || !std::isfinite(kcal)) throw std::domain_error("energy of a food must be above 0 kcal");
  return kcal;
}

}  // namespace

DryMatterShare::DryMatterShare(double share) : share_(share) {
  if (!(share > 0.0 && share <= 1.0))
    throw std::domain_error("dry matter share must be above 0 and at most 1");
}

DryMatterContent toDryMatter(AsFedContent content, DryMatterShare dryMatter) {
  return DryMatterContent(content.value() / dryMatter.value());
}

AsFedContent toAsFed(DryMatterContent content, DryMatterShare dryMatter) {
  return AsFedContent(content.value() * dryMatter.value());
}

EnergyContent toPer1000Kcal(AsFedContent content, Kilocalories energyPer100g) {
  return EnergyContent(content.value() / positiveEnergy(energyPer100g) * 1000.0);
}

AsFedContent toAsFed(EnergyContent content, Kilocalories energyPer100g) {
  return AsFedContent(content.value() * positiveEnergy(energyPer100g) / 1000.0);
}

}  // namespace tarebowl::quantity
