// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/energy_need.h"

#include <array>
#include <cmath>
#include <stdexcept>

namespace tarebowl::animal {

namespace {

using enum EnergyLevel;
using enum Provenance;
using quantity::Kilograms;
using quantity::Unit;

constexpr std::string_view kClinicalNutrition = "Small Animal Clinical Nutrition, 5th ed., p. 61";
constexpr std::string_view kTeachingTable = "teaching table of metabolic constants";
constexpr std::string_view kCompendium = "Compendium (veterinary continuing education), August 1999";
constexpr std::string_view kSteller = "Steller 1986, Australian Journal of Zoology 34:339-349, abstract";
constexpr std::string_view kNagy = "Nagy 1999; exponents from the abstract, coefficients from memory";
constexpr std::string_view kReptileNote =
    "at a body temperature of 37 C; scale for temperature, no feeding rate for a cool animal";

constexpr Allometry steller(EnergyLevel level, double kilojoules) {
  return {"grey-headed flying fox", level,          kilojoules, 0.75, kSteller, Seen,
          "Pteropus poliocephalus", Unit::Kilojoule};
}

constexpr Allometry nagy(std::string_view group, double kilojoules, double exponent) {
  return {group,      FreeLiving,    kilojoules,      exponent,        kNagy,
          FromMemory, "free-living", Unit::Kilojoule, Kilograms(0.001)};
}

constexpr std::array<Allometry, 17> kAllometries{{
    {"placental mammals", Resting, 70.0, 0.75, kClinicalNutrition, Seen},
    {"placental mammals", Resting, 72.0, 0.75, kTeachingTable, Seen},
    {"marsupials", Resting, 49.0, 0.75, kTeachingTable, Seen},
    {"marsupials", Resting, 48.6, 0.737, "Dawson and Hulbert", FromMemory},
    {"non-passerine birds", Resting, 78.0, 0.75, kCompendium, Seen},
    {"passerine birds", Resting, 129.0, 0.75, kCompendium, Seen},
    {"birds", Resting, 175.0, 0.75, "teaching flashcards", Seen, "far above the other published values"},
    {"reptiles", Resting, 10.0, 0.75, kTeachingTable, Seen, kReptileNote},
    {"reptiles", Resting, 10.0, 0.77, "Bennett and Dawson 1976", FromMemory, kReptileNote},
    steller(Resting, 225.0),
    steller(Maintenance, 667.0),
    steller(FreeLiving, 944.0),
    nagy("mammals", 4.82, 0.734),
    nagy("placental mammals", 4.21, 0.772),
    nagy("marsupials", 10.1, 0.590),
    nagy("birds", 10.5, 0.681),
    nagy("reptiles", 0.196, 0.889),
}};

constexpr std::string_view kQuesenberry = "avian medicine page quoting Quesenberry 1989";
constexpr std::string_view kCourseNotes = "small animal nutrition course notes";

constexpr EnergyMultiplier avian(std::string_view condition, double low, double high) {
  return {"birds", condition, Maintenance, low, high, kQuesenberry, Seen};
}

constexpr EnergyMultiplier small(std::string_view group, std::string_view condition, double low,
                                 double high) {
  return {group, condition, Resting, low, high, kCourseNotes, Seen};
}

constexpr std::array<EnergyMultiplier, 19> kMultipliers{{
    {"birds", "maintenance", Resting, 1.5, 1.5, kCompendium, Seen},
    {"birds", "growth, stress or trauma", Maintenance, 1.0, 5.0, kCompendium, Seen},
    avian("starvation", 0.5, 0.7),
    avian("elective surgery", 1.0, 1.2),
    avian("mild trauma", 1.0, 1.2),
    avian("severe trauma", 1.1, 2.0),
    avian("growth", 1.5, 3.0),
    avian("sepsis", 1.2, 1.5),
    avian("burn", 1.2, 2.0),
    small("cats", "typical adult", 1.4, 1.4),
    small("cats", "neutered adult", 1.2, 1.2),
    small("cats", "active adult", 1.6, 1.6),
    small("cats", "kitten", 2.5, 2.5),
    small("cats", "lactation", 2.0, 6.0),
    small("dogs", "typical adult", 2.0, 2.0),
    small("dogs", "neutered adult", 1.6, 1.6),
    small("dogs", "pregnancy", 3.0, 3.0),
    small("dogs", "active adult", 3.0, 8.0),
    {"zoo mammals", "maintenance", Resting, 1.5, 2.0, "common practice", FromMemory},
}};

double positiveMass(Kilograms bodyMass) {
  if (!(bodyMass.value() > 0.0) || !std::isfinite(bodyMass.value()))
    throw std::domain_error("body mass must be above 0 kg");
  return bodyMass.value();
}

}  // namespace

std::span<const Allometry> publishedAllometries() {
  return kAllometries;
}

quantity::Kilocalories dailyEnergy(const Allometry& allometry, Kilograms bodyMass) {
  const double mass = positiveMass(bodyMass) / allometry.massUnit.value();
  const double energy = allometry.coefficient * std::pow(mass, allometry.exponent);
  const auto toKilocalories = quantity::conversionFactor(allometry.energyUnit, Unit::Kilocalorie);
  if (!toKilocalories) throw std::domain_error("an allometry must be in a unit of energy");
  return quantity::Kilocalories(energy * *toKilocalories);
}

std::optional<quantity::Kilocalories> linearRestingEnergy(Kilograms bodyMass) {
  constexpr Kilograms kLightest(2.0);
  constexpr Kilograms kHeaviest(45.0);
  if (!(bodyMass >= kLightest && bodyMass <= kHeaviest)) return std::nullopt;
  return quantity::Kilocalories(30.0 * bodyMass.value() + 70.0);
}

std::span<const EnergyMultiplier> publishedMultipliers() {
  return kMultipliers;
}

}  // namespace tarebowl::animal
