// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/vitamin_units.h"

#include <array>

namespace tarebowl::food {

namespace {

using quantity::Unit;

constexpr std::array<ActivityFactor, 10> kFactors{{
    {VitaminForm::Retinol, 0.3, Unit::Microgram, "1 IU = 0.3 ug retinol; agrees with the IU column of SR28"},
    {VitaminForm::RetinylAcetate, 0.344, Unit::Microgram,
     "WHO/USP, from memory; molar masses 328.5/286.46 give 0.3440"},
    {VitaminForm::RetinylPalmitate, 0.55, Unit::Microgram,
     "WHO/USP, from memory; molar masses 524.9/286.46 give 0.5497"},
    {VitaminForm::BetaCaroteneHistoric, 0.6, Unit::Microgram,
     "historic definition; agrees with the IU column of SR28"},
    {VitaminForm::OtherProvitaminAHistoric, 1.2, Unit::Microgram,
     "historic definition; agrees with the IU column of SR28"},
    {VitaminForm::VitaminD, 0.025, Unit::Microgram, "40 IU = 1 ug; agrees with both columns of SR28"},
    {VitaminForm::DAlphaTocopherol, 1.0 / 1.49, Unit::Milligram, "1 mg = 1.49 IU, the feed and label unit"},
    {VitaminForm::DAlphaTocopherylAcetate, 1.0 / 1.36, Unit::Milligram, "USP, 1 mg = 1.36 IU, from memory"},
    {VitaminForm::DlAlphaTocopherol, 1.0 / 1.1, Unit::Milligram, "1 mg = 1.1 IU, the feed and label unit"},
    {VitaminForm::DlAlphaTocopherylAcetate, 1.0, Unit::Milligram, "USP, 1 mg = 1 IU, from memory"},
}};

struct ActiveNutrient {
  std::string_view tagname;
  VitaminForm form;  // the substance in which the nutrient's own unit counts
};
constexpr std::array<ActiveNutrient, 6> kActiveNutrients{{
    {"VITA_RAE", VitaminForm::Retinol},
    {"RETOL", VitaminForm::Retinol},
    {"VITD", VitaminForm::VitaminD},
    {"ERGCAL", VitaminForm::VitaminD},
    {"CHOCAL", VitaminForm::VitaminD},
    {"VITE", VitaminForm::DAlphaTocopherol},
}};

std::optional<double> massPerIu(const Nutrient& nutrient) {
  for (const auto& [tagname, form] : kActiveNutrients) {
    if (tagname != nutrient.tagname) continue;
    const ActivityFactor& factor = activityFactor(form);
    const auto toOwn = quantity::conversionFactor(factor.massUnit, nutrient.unit);
    return toOwn ? std::optional(factor.massPerIu * *toOwn) : std::nullopt;
  }
  return std::nullopt;
}

}  // namespace

std::span<const ActivityFactor> activityFactors() {
  return kFactors;
}

const ActivityFactor& activityFactor(VitaminForm form) {
  return kFactors[static_cast<std::size_t>(form)];
}

double internationalUnitsOf(VitaminForm form, double amount) {
  return amount / activityFactor(form).massPerIu;
}

std::optional<double> toOwnUnitFactor(NutrientId nutrient, Unit unit) {
  const Nutrient& described = describe(nutrient);
  if (unit == Unit::InternationalUnit) return massPerIu(described);
  return quantity::conversionFactor(unit, described.unit);
}

double retinolActivityEquivalents(const VitaminASources& sources, const CaroteneConversion& conversion) {
  return sources.retinol + sources.betaCarotene * conversion.betaCarotene +
         sources.otherProvitamins * conversion.otherProvitamins;
}

double historicVitaminAUnits(const VitaminASources& sources) {
  return internationalUnitsOf(VitaminForm::Retinol, sources.retinol) +
         internationalUnitsOf(VitaminForm::BetaCaroteneHistoric, sources.betaCarotene) +
         internationalUnitsOf(VitaminForm::OtherProvitaminAHistoric, sources.otherProvitamins);
}

}  // namespace tarebowl::food
