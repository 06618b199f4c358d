// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/blood.h"

#include <array>
#include <cmath>
#include <utility>

namespace tarebowl::health {

namespace {

constexpr std::array<std::pair<std::string_view, BloodUnit>, 7> kUnits{
    {{"mg/dl", BloodUnit::MilligramPerDecilitre},
     {"mmol/l", BloodUnit::MillimolePerLitre},
     {"ng/ml", BloodUnit::NanogramPerMillilitre},
     {"nmol/l", BloodUnit::NanomolePerLitre},
     {"U/l", BloodUnit::UnitPerLitre},
     {"mg/dL", BloodUnit::MilligramPerDecilitre},
     {"IU/l", BloodUnit::UnitPerLitre}}};

/// Amounts of substance in nmol/l per unit; per mole where the unit weighs.
double nanomoles(double value, BloodUnit unit, double gramsPerMole) {
  switch (unit) {
    case BloodUnit::MilligramPerDecilitre:
      return value * 1e7 / gramsPerMole;
    case BloodUnit::MillimolePerLitre:
      return value * 1e6;
    case BloodUnit::NanogramPerMillilitre:
      return value * 1e3 / gramsPerMole;
    case BloodUnit::NanomolePerLitre:
    case BloodUnit::UnitPerLitre:
      break;
  }
  return value;
}

struct Bounds {
  double low;
  double high;
};

/// In the common unit.
Bounds plausible(Analyte analyte) {
  switch (analyte) {
    case Analyte::TotalCalcium:
      return {0.8, 6.5};
    case Analyte::IonisedCalcium:
      return {0.4, 2.5};
    case Analyte::Phosphorus:
      return {0.2, 7.0};
    case Analyte::Magnesium:
      return {0.2, 4.0};
    case Analyte::VitaminD25:
      return {2.0, 1500.0};
    case Analyte::AlkalinePhosphatase:
      return {1.0, 10000.0};
  }
  return {0.0, 0.0};
}

bool isPlausible(const BloodValue& value) {
  const auto common = inUnit(value, commonUnit(value.analyte));
  const Bounds bounds = plausible(value.analyte);
  return common && *common >= bounds.low && *common <= bounds.high;
}

std::optional<BloodUnit> otherUnit(BloodUnit unit) {
  switch (unit) {
    case BloodUnit::MilligramPerDecilitre:
      return BloodUnit::MillimolePerLitre;
    case BloodUnit::MillimolePerLitre:
      return BloodUnit::MilligramPerDecilitre;
    case BloodUnit::NanogramPerMillilitre:
      return BloodUnit::NanomolePerLitre;
    case BloodUnit::NanomolePerLitre:
      return BloodUnit::NanogramPerMillilitre;
    case BloodUnit::UnitPerLitre:
      break;
  }
  return std::nullopt;
}

/// The value as if it had been read in another unit than the one written beside it; the range stays.
std::optional<BloodValue> readInOtherUnit(const BloodValue& value) {
  const auto other = otherUnit(value.unit);
  if (!other) return std::nullopt;
  const auto converted = inUnit({value.analyte, value.value, *other, {}, {}}, value.unit);
  if (!converted) return std::nullopt;
  BloodValue read = value;
  read.value = *converted;
  return read;
}

}  // namespace

std::optional<BloodUnit> parseBloodUnit(std::string_view text) {
  for (const auto& [symbol, unit] : kUnits)
    if (symbol == text) return unit;
  return std::nullopt;
}

std::string_view symbolOf(BloodUnit unit) {
  for (const auto& [symbol, known] : kUnits)
    if (known == unit) return symbol;
  return "";
}

BloodUnit commonUnit(Analyte analyte) {
  switch (analyte) {
    case Analyte::VitaminD25:
      return BloodUnit::NanomolePerLitre;
    case Analyte::AlkalinePhosphatase:
      return BloodUnit::UnitPerLitre;
    default:
      return BloodUnit::MillimolePerLitre;
  }
}

std::optional<double> molarMass(Analyte analyte) {
  constexpr double kCalcium = 40.078;
  constexpr double kPhosphorus = 30.973762;
  constexpr double kMagnesium = 24.305;
  constexpr double kCalcifediol = 27 * 12.011 + 44 * 1.008 + 2 * 15.999;
  switch (analyte) {
    case Analyte::TotalCalcium:
    case Analyte::IonisedCalcium:
      return kCalcium;
    case Analyte::Phosphorus:
      return kPhosphorus;
    case Analyte::Magnesium:
      return kMagnesium;
    case Analyte::VitaminD25:
      return kCalcifediol;
    case Analyte::AlkalinePhosphatase:
      break;
  }
  return std::nullopt;
}

std::optional<double> inUnit(const BloodValue& value, BloodUnit unit) {
  const auto gramsPerMole = molarMass(value.analyte);
  if (gramsPerMole.has_value() == (unit == BloodUnit::UnitPerLitre) ||
      gramsPerMole.has_value() == (value.unit == BloodUnit::UnitPerLitre))
    return std::nullopt;
  if (unit == value.unit) return value.value;
  return nanomoles(value.value, value.unit, *gramsPerMole) / nanomoles(1.0, unit, *gramsPerMole);
}

std::optional<BloodProblem> problemWith(const BloodValue& value) {
  if (!std::isfinite(value.value) || value.value < 0.0) return BloodProblem::NotAnAmount;
  if (!inUnit(value, commonUnit(value.analyte))) return BloodProblem::UnitOfAnotherKind;
  if (value.low && value.high && !(*value.low <= *value.high)) return BloodProblem::RangeUpsideDown;
  return std::nullopt;
}

std::optional<DoubtedBlood> doubtAbout(const BloodValue& value) {
  const auto read = readInOtherUnit(value);
  const bool plausibleSo = isPlausible(value);
  const bool plausibleOtherwise = read && isPlausible(*read);
  if (!plausibleSo)
    return plausibleOtherwise ? DoubtedBlood{BloodDoubt::OtherUnit, otherUnit(value.unit)}
                              : DoubtedBlood{BloodDoubt::Implausible, {}};
  const BloodStanding standing = standingOf(value);
  if ((standing == BloodStanding::Below || standing == BloodStanding::Above) && plausibleOtherwise &&
      standingOf(*read) == BloodStanding::Within)
    return DoubtedBlood{BloodDoubt::OtherUnit, otherUnit(value.unit)};
  return std::nullopt;
}

BloodStanding standingOf(const BloodValue& value) {
  if (!value.low && !value.high) return BloodStanding::NoRange;
  if (value.low && value.value < *value.low) return BloodStanding::Below;
  if (value.high && value.value > *value.high) return BloodStanding::Above;
  return BloodStanding::Within;
}

}  // namespace tarebowl::health
