// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

namespace tarebowl::quantity {

/// Dry matter of a food as a share of the food as fed, 0 < share <= 1 (1 - water/100).
/// Constructing one outside that range throws std::domain_error: nothing can be put on a DM basis without dry
/// matter.
class DryMatterShare {
 public:
  explicit DryMatterShare(double share);
  static DryMatterShare fromWaterPer100g(double waterGrams) {
    return DryMatterShare((100.0 - waterGrams) / 100.0);
  }
  [[nodiscard]] double value() const { return share_; }

 private:
  double share_;
};

/// An amount of a nutrient (in the nutrient's own unit) per 100 g of food as fed.
using AsFedContent = Quantity<struct AsFedContentTag>;
/// The same per 100 g of dry matter.
using DryMatterContent = Quantity<struct DryMatterContentTag>;
/// The same per 1000 kcal of metabolizable energy.
using EnergyContent = Quantity<struct EnergyContentTag>;

[[nodiscard]] DryMatterContent toDryMatter(AsFedContent content, DryMatterShare dryMatter);
[[nodiscard]] AsFedContent toAsFed(DryMatterContent content, DryMatterShare dryMatter);
/// energyPer100g: ME of 100 g as fed; must be positive (std::domain_error otherwise).
[[nodiscard]] EnergyContent toPer1000Kcal(AsFedContent content, Kilocalories energyPer100g);
[[nodiscard]] AsFedContent toAsFed(EnergyContent content, Kilocalories energyPer100g);

}  // namespace tarebowl::quantity
