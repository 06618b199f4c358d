// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace tarebowl::health {

/// What a lab finds in serum or plasma that bears on calcium.
enum class Analyte {
  TotalCalcium,
  IonisedCalcium,
  Phosphorus,  ///< inorganic phosphate, counted as P
  Magnesium,
  VitaminD25,  ///< 25-hydroxyvitamin D3, calcifediol
  AlkalinePhosphatase
};

enum class BloodUnit {
  MilligramPerDecilitre,
  MillimolePerLitre,
  NanogramPerMillilitre,
  NanomolePerLitre,
  UnitPerLitre
};

/// One result as the lab wrote it, with the lab's own range where it gave one.
struct BloodValue {
  Analyte analyte = Analyte::TotalCalcium;
  double value = 0.0;
  BloodUnit unit = BloodUnit::MillimolePerLitre;
  std::optional<double> low{};  ///< of the lab's range, in the same unit
  std::optional<double> high{};
  bool operator==(const BloodValue&) const = default;
};

/// "mg/dl", "mmol/l", "ng/ml", "nmol/l", "U/l"; also "mg/dL" and "IU/l". Nothing for any other text.
[[nodiscard]] std::optional<BloodUnit> parseBloodUnit(std::string_view text);
[[nodiscard]] std::string_view symbolOf(BloodUnit unit);

/// The unit in which an analyte is compared: mmol/l, nmol/l for 25-OH-D3, U/l.
[[nodiscard]] BloodUnit commonUnit(Analyte analyte);

/// In grams per mole; nothing for an enzyme. Ca 40.078, P 30.973762, Mg 24.305, C27H44O2 400.647 (IUPAC
/// standard atomic masses: C 12.011, H 1.008, O 15.999).
[[nodiscard]] std::optional<double> molarMass(Analyte analyte);

/// mg/dl · 10 / M = mmol/l and ng/ml · 1000 / M = nmol/l. Nothing where the unit does not measure the
/// analyte: an enzyme in mg/dl, calcium in U/l.
[[nodiscard]] std::optional<double> inUnit(const BloodValue& value, BloodUnit unit);

enum class BloodProblem { NotAnAmount, UnitOfAnotherKind, RangeUpsideDown };
[[nodiscard]] std::optional<BloodProblem> problemWith(const BloodValue& value);

/// Why a result is asked about before it is believed.
enum class BloodDoubt {
  OtherUnit,   ///< would be ordinary in the other unit of the analyte: mg/dl written as mmol/l
  Implausible  ///< no animal was likely ever measured so
};
/// Against bounds within which nearly every result of a vertebrate lies (house rule, no source), and against
/// the lab's own range where it gave one: a value outside it that would lie inside in the other unit.
struct DoubtedBlood {
  BloodDoubt doubt = BloodDoubt::Implausible;
  std::optional<BloodUnit> likely{};  ///< the unit in which it would be ordinary
};
[[nodiscard]] std::optional<DoubtedBlood> doubtAbout(const BloodValue& value);

enum class BloodStanding { NoRange, Below, Within, Above };
/// Against the lab's range.
[[nodiscard]] BloodStanding standingOf(const BloodValue& value);

}  // namespace tarebowl::health
