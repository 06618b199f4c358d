// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/energy.h"

#include <algorithm>
#include <array>

namespace tarebowl::food {

namespace {

using quantity::Kilocalories;

constexpr std::array<std::string_view, 6> kSymbols{"given",    "atwater",  "modified-atwater",
                                                   "dog-2006", "cat-2006", "poultry-amen"};

/// Differences of decimal numbers miss zero by rounding; nothing is weighed to this many grams.
constexpr double kRounding = 1e-9;

/// Reads terms of a formula and remembers which ones are unknown.
class Terms {
 public:
  explicit Terms(const Composition& composition) : composition_(composition) {}

  double require(NutrientId nutrient) {
    if (const auto amount = composition_.amountPer100g(nutrient)) return *amount;
    if (std::ranges::find(missing_, nutrient) == missing_.end()) missing_.push_back(nutrient);
    return 0.0;
  }
  double requireCarbohydrate() {
    if (const auto stated = composition_.amountPer100g(nutrients::carbohydrateByDifference())) return *stated;
    return 100.0 - require(nutrients::water()) - require(nutrients::protein()) - require(nutrients::fat()) -
           require(nutrients::ash());
  }
  [[nodiscard]] bool complete() const { return missing_.empty(); }
  [[nodiscard]] std::vector<NutrientId> takeMissing() { return std::move(missing_); }

 private:
  const Composition& composition_;
  std::vector<NutrientId> missing_;
};

/// FIBC, or FIBTG where it is unknown; nothing where both are.
std::optional<double> fibre(const Composition& composition) {
  const auto crude = composition.amountPer100g(nutrients::crudeFibre());
  return crude ? crude : composition.amountPer100g(nutrients::totalDietaryFibre());
}

void judgeCarbohydrate(EnergyEstimate& estimate, double grams) {
  estimate.negativeCarbohydrate = estimate.negativeCarbohydrate || grams < -kRounding;
  estimate.implausibleCarbohydrate =
      estimate.implausibleCarbohydrate || grams < kLowestCredibleCarbohydrate - kRounding;
}

struct SpeciesDigestibility {
  double intercept;   // energy digestibility of a food without fibre, %
  double perFibre;    // lost per % crude fibre in DM
  double perProtein;  // kcal lost in urine per g crude protein
};
// National Research Council 2006, Nutrient Requirements of Dogs and Cats; as printed in the European pet food
// industry's nutritional guidelines, pages 118-119.
constexpr SpeciesDigestibility kDog{91.2, 1.43, 1.04};
constexpr SpeciesDigestibility kCat{87.9, 0.88, 0.77};

double fourSteps(const SpeciesDigestibility& species, double protein, double fat, double nfe, double fibre,
                 double dryMatter) {
  const double grossEnergy = 5.7 * protein + 9.4 * fat + 4.1 * (nfe + fibre);
  const double fibreInDryMatter = dryMatter > 0.0 ? 100.0 * fibre / dryMatter : 0.0;
  const double digestibility = species.intercept - species.perFibre * fibreInDryMatter;
  return grossEnergy * digestibility / 100.0 - species.perProtein * protein;
}

double atwater(Terms& terms, EnergyEstimate& estimate) {
  const double carbohydrate = terms.requireCarbohydrate();
  if (terms.complete()) judgeCarbohydrate(estimate, carbohydrate);
  return 4.0 * terms.require(nutrients::protein()) + 9.0 * terms.require(nutrients::fat()) +
         4.0 * carbohydrate;
}

/// The methods that split carbohydrate into fibre and NFE.
double fromExtract(EnergyMethod method, Terms& terms, const Composition& composition,
                   EnergyEstimate& estimate) {
  const double protein = terms.require(nutrients::protein());
  const double fat = terms.require(nutrients::fat());
  const double carbohydrate = terms.requireCarbohydrate();
  const auto knownFibre = fibre(composition);
  const double nfe = carbohydrate - knownFibre.value_or(0.0);
  const bool needsWater = method != EnergyMethod::ModifiedAtwater;
  const double dryMatter = needsWater ? 100.0 - terms.require(nutrients::water()) : 0.0;
  if (terms.complete()) {
    estimate.nitrogenFreeExtract = nfe;
    estimate.fibreTakenAsZero = !knownFibre;
    judgeCarbohydrate(estimate, carbohydrate);
    judgeCarbohydrate(estimate, nfe);
  }
  if (method == EnergyMethod::ModifiedAtwater) return 3.5 * protein + 8.5 * fat + 3.5 * nfe;
  const auto& species = method == EnergyMethod::Dog2006 ? kDog : kCat;
  return fourSteps(species, protein, fat, nfe, knownFibre.value_or(0.0), dryMatter);
}

double poultry(Terms& terms) {
  const double megajoulesPerKg =
      0.1551 * terms.require(nutrients::protein()) + 0.3431 * terms.require(nutrients::fat()) +
      0.1669 * terms.require(nutrients::starch()) + 0.1301 * terms.require(nutrients::sugar());
  return megajoulesPerKg * 100.0 / quantity::kKilojoulesPerKilocalorie;  // 1 MJ/kg is 100 kJ per 100 g
}

double per100g(EnergyMethod method, Terms& terms, const Composition& composition, EnergyEstimate& estimate) {
  switch (method) {
    case EnergyMethod::Given:
      return terms.require(nutrients::energy());
    case EnergyMethod::Atwater:
      return atwater(terms, estimate);
    case EnergyMethod::PoultryAmen:
      return poultry(terms);
    case EnergyMethod::ModifiedAtwater:
    case EnergyMethod::Dog2006:
    case EnergyMethod::Cat2006:
      break;
  }
  return fromExtract(method, terms, composition, estimate);
}

}  // namespace

std::optional<EnergyMethod> parseEnergyMethod(std::string_view text) {
  for (std::size_t i = 0; i < kSymbols.size(); ++i)
    if (kSymbols[i] == text) return static_cast<EnergyMethod>(i);
  return std::nullopt;
}

std::string_view symbolOf(EnergyMethod method) {
  return kSymbols[static_cast<std::size_t>(method)];
}

EnergyEstimate estimateEnergy(EnergyMethod method, const Composition& composition) {
  EnergyEstimate estimate;
  Terms terms(composition);
  const double kilocalories = per100g(method, terms, composition, estimate);
  if (terms.complete()) estimate.per100g = Kilocalories(kilocalories);
  estimate.missing = terms.takeMissing();
  std::ranges::sort(estimate.missing);
  return estimate;
}

std::optional<Kilocalories> atwaterEnergy(const Composition& composition, const AtwaterFactors& factors) {
  Terms terms(composition);
  const double kilocalories = factors.protein * terms.require(nutrients::protein()) +
                              factors.fat * terms.require(nutrients::fat()) +
                              factors.carbohydrate * terms.requireCarbohydrate();
  if (!terms.complete()) return std::nullopt;
  const double alcohol = composition.amountPer100g(nutrients::alcohol()).value_or(0.0);
  return Kilocalories(kilocalories + factors.alcohol * alcohol);
}

std::optional<double> carbohydrateByDifference(const Composition& composition) {
  Terms terms(composition);
  const double grams = terms.requireCarbohydrate();
  return terms.complete() ? std::optional(grams) : std::nullopt;
}

std::optional<double> nitrogenFreeExtract(const Composition& composition) {
  const auto carbohydrate = carbohydrateByDifference(composition);
  if (!carbohydrate) return std::nullopt;
  return *carbohydrate - fibre(composition).value_or(0.0);
}

}  // namespace tarebowl::food
