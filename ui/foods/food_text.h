// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"
#include "core/food/food.h"
#include "core/food/sample.h"
#include "core/food/stated_value.h"
#include "core/store/food_reading.h"
#include "ui/shared/days.h"
#include "ui/shared/energy_unit.h"
#include "ui/shared/nutrient_text.h"

#include <QString>

#include <optional>
#include <span>
#include <string>

/// How foods and their values read.
namespace tarebowl::ui {

/// The bases on which a composition can be looked at.
enum class CompositionBasis { AsFed100g, DryMatterKg, Energy1000Kcal };

/// "per 100 g as fed", "per kg DM", "per 1000 kcal ME".
[[nodiscard]] QString textOf(CompositionBasis basis, EnergyUnit energy = EnergyUnit::Kilocalorie);

/// What must be known of a food to put its values on a basis. Energy is the stated one, else that of the
/// modified Atwater method.
[[nodiscard]] food::BasisFacts factsOf(const food::Composition& composition);
/// An amount in the nutrient's own unit on the basis; nothing where the food cannot be put on it.
[[nodiscard]] std::optional<double> amountOn(CompositionBasis basis, quantity::AsFedContent content,
                                             const food::BasisFacts& facts);

/// "69.2 g", "< 100 µg", "≥ 33.0 g", "trace", "? mg".
[[nodiscard]] QString valueText(food::NutrientId nutrient, std::optional<double> amount,
                                food::Qualifier qualifier, EnergyUnit energy = EnergyUnit::Kilocalorie);
/// A nutrient's own unit, energy as it is read.
[[nodiscard]] QString shownUnit(food::NutrientId nutrient, EnergyUnit energy);
/// amountOn() for a person: energy, and what is per 1000 of it, in the unit in which it is read.
[[nodiscard]] std::optional<double> shownAmount(food::NutrientId nutrient, CompositionBasis basis,
                                                quantity::AsFedContent content, const food::BasisFacts& facts,
                                                EnergyUnit energy);
/// "± 1.1 (n 5)", "± 1.1", "(n 5)", empty.
[[nodiscard]] QString scatterText(std::optional<double> sd, std::optional<int> count);

/// "own laboratory", "publication", "label", "estimate".
[[nodiscard]] QString textOf(food::SampleOrigin origin);
/// "own laboratory, 5 samples, newest 3 Oct 2026", "Finke 2002", "set by hand: …", "never measured".
[[nodiscard]] QString originText(const food::DerivedValue& value,
                                 std::span<const store::StoredSample> samples);
/// "Field report 2026-114 · 3 Oct 2026 · batch 7".
[[nodiscard]] QString sampleText(const food::Sample& sample);
/// Why a sample's statement does not count: "set aside: dusted by mistake", "passed over: a better origin
/// goes first" …
[[nodiscard]] QString leftOutText(food::LeftOutBecause because, const food::Sample& sample);

/// "live", "dry (invented)".
[[nodiscard]] QString remarkOf(const std::string& form, bool invented);
[[nodiscard]] QString nameOf(const food::Food& food);

}  // namespace tarebowl::ui
