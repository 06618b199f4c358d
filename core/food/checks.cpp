// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/checks.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <string_view>

namespace tarebowl::food {

namespace {

struct PartsOfWhole {
  std::string_view whole;
  std::span<const std::string_view> parts;
};

constexpr std::array<std::string_view, 2> kSugarAndStarch{"SUGAR", "STARCH"};
constexpr std::array<std::string_view, 1> kAvailable{"CHOAVL"};
constexpr std::array<std::string_view, 1> kDietaryFibre{"FIBTG"};
constexpr std::array<std::string_view, 4> kSugars{"SUCS", "GLUS", "FRUS", "LACS"};
constexpr std::array<std::string_view, 2> kFibres{"FIBINS", "FIBSOL"};
constexpr std::array<std::string_view, 1> kAcidFibre{"FIBAD"};
constexpr std::array<std::string_view, 1> kLignin{"LIGN"};
constexpr std::array<std::string_view, 3> kFattyAcids{"FASAT", "FAMS", "FAPU"};
constexpr std::array<std::string_view, 2> kPolyunsaturated{"FAPUN3", "FAPUN6"};
constexpr std::array<std::string_view, 4> kOmega3{"F18D3N3", "F20D5N3", "F22D5N3", "F22D6N3"};
constexpr std::array<std::string_view, 2> kOmega6{"F18D2N6", "F20D4N6"};
constexpr std::array<std::string_view, 2> kVitaminD{"ERGCAL", "CHOCAL"};
constexpr std::array<std::string_view, 18> kAminoAcids{"ARG", "HIS", "ILE", "LEU", "LYS", "MET",
                                                       "CYS", "PHE", "TYR", "THR", "TRP", "VAL",
                                                       "ALA", "ASP", "GLU", "GLY", "PRO", "SER"};

constexpr std::array<PartsOfWhole, 13> kParts{{{"CHOCDF", kSugarAndStarch},
                                               {"CHOCDF", kAvailable},
                                               {"CHOCDF", kDietaryFibre},
                                               {"SUGAR", kSugars},
                                               {"FIBTG", kFibres},
                                               {"FIBND", kAcidFibre},
                                               {"FIBAD", kLignin},
                                               {"FAT", kFattyAcids},
                                               {"FAPU", kPolyunsaturated},
                                               {"FAPUN3", kOmega3},
                                               {"FAPUN6", kOmega6},
                                               {"VITD", kVitaminD},
                                               {"PROCNT", kAminoAcids}}};

/// Differences of decimal numbers miss a limit by rounding.
constexpr double kRounding = 1e-9;

using Findings = std::vector<Finding>;

NutrientId idOf(std::string_view tagname) {
  return findByTagname(tagname).value();
}

std::array<NutrientId, 5> proximates() {
  return {nutrients::water(), nutrients::protein(), nutrients::fat(), nutrients::ash(),
          nutrients::carbohydrateByDifference()};
}

double alcohol(const Composition& composition) {
  return composition.amountPer100g(nutrients::alcohol()).value_or(0.0);
}

void checkValues(const Composition& composition, Findings& findings) {
  for (const NutrientId id : composition.knownNutrients()) {
    const auto toGrams = quantity::conversionFactor(describe(id).unit, quantity::Unit::Gram);
    const double amount = composition.amountPer100g(id).value();
    if (toGrams && amount * *toGrams > 100.0 + kRounding)
      findings.push_back({CheckCode::ValueOverFood, Severity::Refused, {id}, amount, 100.0 / *toGrams});
  }
}

void checkProximates(const Composition& composition, const CheckLimits& limits, Findings& findings) {
  const auto all = proximates();
  const std::vector<NutrientId> ids(all.begin(), all.end());
  const double known = knownProximateSum(composition);
  if (known > limits.mostKnownProximates + kRounding)
    findings.push_back(
        {CheckCode::ProximatesOverWhole, Severity::Refused, ids, known, limits.mostKnownProximates});
  const auto sum = proximateSum(composition);
  if (!sum) return;
  const double gap = std::abs(*sum - 100.0);
  if (gap <= limits.closureWarning + kRounding) return;
  const auto severity = gap > limits.closureRefusal + kRounding ? Severity::Refused : Severity::Warning;
  findings.push_back({CheckCode::ProximatesDoNotClose, severity, ids, *sum, 100.0});
}

std::optional<double> wholeOf(const Composition& composition, NutrientId whole) {
  if (whole == nutrients::carbohydrateByDifference()) return carbohydrateByDifference(composition);
  return composition.amountPer100g(whole);
}

void checkParts(const Composition& composition, const CheckLimits& limits, Findings& findings) {
  for (const auto& [wholeTagname, parts] : kParts) {
    const NutrientId whole = idOf(wholeTagname);
    const auto amount = wholeOf(composition, whole);
    if (!amount) continue;
    Finding finding{CheckCode::PartsOverWhole, Severity::Warning, {whole}, 0.0, *amount};
    for (const auto part : parts) {
      const auto partAmount = composition.amountPer100g(idOf(part));
      if (!partAmount) continue;
      finding.nutrients.push_back(idOf(part));
      finding.found += *partAmount;
    }
    const double share = whole == nutrients::protein() ? limits.aminoAcidsShare : limits.partsShare;
    // A whole below 0 is a finding of its own.
    if (finding.found > std::max(*amount, 0.0) * (1.0 + share) + limits.partsAmount + kRounding)
      findings.push_back(std::move(finding));
  }
}

void checkCarbohydrate(const Composition& composition, Findings& findings) {
  const auto carbohydrate = carbohydrateByDifference(composition);
  const auto extract = nitrogenFreeExtract(composition);
  if (!extract || *extract >= -kRounding) return;
  const auto severity =
      *extract < kLowestCredibleCarbohydrate - kRounding ? Severity::Refused : Severity::Warning;
  Finding finding{
      CheckCode::NegativeCarbohydrate, severity, {nutrients::carbohydrateByDifference()}, *extract, 0.0};
  if (*extract < *carbohydrate) {
    const bool crude = composition.find(nutrients::crudeFibre()) != nullptr;
    finding.nutrients.push_back(crude ? nutrients::crudeFibre() : nutrients::totalDietaryFibre());
  }
  findings.push_back(std::move(finding));
}

void checkEnergy(const Composition& composition, const CheckLimits& limits, Findings& findings) {
  const auto stated = composition.amountPer100g(nutrients::energy());
  const auto estimate = atwaterEnergy(composition, kGeneralAtwaterWithAlcohol);
  if (!stated || !estimate) return;
  const double gap = std::abs(*stated - estimate->value());
  if (gap > limits.energyKilocalories && gap > limits.energyShare * std::abs(estimate->value()))
    findings.push_back(
        {CheckCode::EnergyDisagrees, Severity::Warning, {nutrients::energy()}, *stated, estimate->value()});
}

/// Amounts are not negative, so the sd of n of them is at most sqrt(n) times their mean: sum x^2 <= (sum
/// x)^2.
double widestScatter(const NutrientValue& value, const CheckLimits& limits) {
  if (!value.sampleCount || *value.sampleCount < 2) return limits.scatterFactor * value.amount.value();
  return std::sqrt(static_cast<double>(*value.sampleCount)) * value.amount.value();
}

void checkScatter(const Composition& composition, const CheckLimits& limits, Findings& findings) {
  for (const NutrientId id : composition.knownNutrients()) {
    const NutrientValue& value = *composition.find(id);
    if (!value.sd) continue;
    // A mean that is printed as 0 may be half a digit.
    NutrientValue printed = value;
    printed.amount += quantity::AsFedContent(0.5 * std::pow(10.0, -describe(id).decimals));
    const double widest = widestScatter(printed, limits);
    if (value.sd->value() > widest * (1.0 + kRounding))
      findings.push_back(
          {CheckCode::ScatterWiderThanValue, Severity::Warning, {id}, value.sd->value(), widest});
  }
}

}  // namespace

std::optional<double> proximateSum(const Composition& composition) {
  for (const NutrientId id : proximates())
    if (!composition.find(id)) return std::nullopt;
  return knownProximateSum(composition);
}

double knownProximateSum(const Composition& composition) {
  double sum = alcohol(composition);
  for (const NutrientId id : proximates()) sum += composition.amountPer100g(id).value_or(0.0);
  return sum;
}

std::vector<Finding> checkComposition(const Composition& composition, const CheckLimits& limits) {
  Findings findings;
  checkValues(composition, findings);
  checkProximates(composition, limits, findings);
  checkParts(composition, limits, findings);
  checkCarbohydrate(composition, findings);
  checkEnergy(composition, limits, findings);
  checkScatter(composition, limits, findings);
  return findings;
}

}  // namespace tarebowl::food
