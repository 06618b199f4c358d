// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"
#include "core/quantity/unit.h"

#include <optional>
#include <span>
#include <string_view>

namespace tarebowl::food {

/// The substances by which the activity of vitamins A, D and E is defined. d is the natural form (RRR), dl
/// the synthetic one (all-rac). The historic carotene entries are how older tables (SR28 among them) counted
/// provitamins into IU.
enum class VitaminForm {
  Retinol,
  RetinylAcetate,
  RetinylPalmitate,
  BetaCaroteneHistoric,
  OtherProvitaminAHistoric,
  VitaminD,
  DAlphaTocopherol,
  DAlphaTocopherylAcetate,
  DlAlphaTocopherol,
  DlAlphaTocopherylAcetate
};

/// One IU of a form weighs massPerIu in massUnit (ug for A and D, mg for E).
struct ActivityFactor {
  VitaminForm form;
  double massPerIu;
  quantity::Unit massUnit;
  std::string_view source;  ///< the publication, and whether it was read or recalled
};

/// Every form, in the order of the enumerators.
[[nodiscard]] std::span<const ActivityFactor> activityFactors();
[[nodiscard]] const ActivityFactor& activityFactor(VitaminForm form);

/// IU in an amount of a form; amount in the form's massUnit. A supplement of 100 mg dl-alpha-tocopheryl
/// acetate holds 100 IU.
[[nodiscard]] double internationalUnitsOf(VitaminForm form, double amount);

/// Factor f with amount_in_the_nutrient's_own_unit = f * amount_in_unit, by which a lab's or a target's unit
/// is read. Mass and energy convert within their kind; IU converts for vitamin A (VITA_RAE, RETOL, as
/// retinol), D (VITD, ERGCAL, CHOCAL) and E (VITE, as d-alpha-tocopherol). Nothing where there is no such
/// factor: grams of energy, IU of calcium.
[[nodiscard]] std::optional<double> toOwnUnitFactor(NutrientId nutrient, quantity::Unit unit);

/// Micrograms of the substances that make vitamin A.
struct VitaminASources {
  double retinol = 0.0;
  double betaCarotene = 0.0;
  double otherProvitamins = 0.0;  ///< alpha-carotene and beta-cryptoxanthin
};

/// Retinol that an animal makes from one microgram of carotene eaten. A property of the species.
struct CaroteneConversion {
  double betaCarotene;
  double otherProvitamins;
};
/// People, food carotene: 12 and 24 ug for 1 ug (Institute of Medicine).
inline constexpr CaroteneConversion kHumanCarotene{1.0 / 12.0, 1.0 / 24.0};
/// The older retinol equivalent (RE) counted 6 and 12 (FAO/WHO; publication from memory).
inline constexpr CaroteneConversion kHistoricRetinolEquivalent{1.0 / 6.0, 1.0 / 12.0};
/// Felids make none and need preformed vitamin A (footnotes of the European pet food industry's nutritional
/// guidelines).
inline constexpr CaroteneConversion kFelidCarotene{0.0, 0.0};

/// Vitamin A in ug retinol activity equivalents (RAE) for an animal that converts carotene so.
[[nodiscard]] double retinolActivityEquivalents(const VitaminASources& sources,
                                                const CaroteneConversion& conversion = kHumanCarotene);

/// Vitamin A in IU as older food tables state it: retinol/0.3 + beta-carotene/0.6 + others/1.2.
[[nodiscard]] double historicVitaminAUnits(const VitaminASources& sources);

}  // namespace tarebowl::food
