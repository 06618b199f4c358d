// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/choice.h"
#include "core/intake/digestion_trial.h"
#include "core/intake/eaten_fraction.h"
#include "core/intake/study_report.h"

#include <optional>
#include <string>
#include <vector>

/// What a group ate over some days, as a file or a table (sample-data/README.md lists the keys).
namespace tarebowl::exchange {

inline constexpr std::string_view kIntakeFormat = "tarebowl-intake/1";

struct IntakeToWrite {
  std::string group{};
  std::string groupName{};
  quantity::Date from{};
  quantity::Date to{};
  bool invented = false;
  std::size_t pans = 0;
  std::vector<std::string> unknownFoods{};
  diet::BalanceProblem problem{};
  intake::StudyReport report{};
  std::vector<intake::EatenFraction> fractions{};
  std::vector<intake::BowlChoice> choices{};
  std::vector<intake::DayRatio> calciumToPhosphorus{};
  std::vector<intake::DigestionTrial> digestion{};  ///< of faeces that were collected within these days
  std::vector<intake::EatenBowl> bowls{};           ///< for the findings
};

[[nodiscard]] std::string intakeAsJson(const IntakeToWrite& intake);
/// A row for each day and nutrient: day, nutrient, unit, animals, offered, eaten, sd, at_least, at_most,
/// coverage. What is not known is empty.
[[nodiscard]] std::string intakeAsCsv(const IntakeToWrite& intake);

/// What is to be known of a digestibility, or why there is none; empty where all is well.
[[nodiscard]] std::string digestionNote(const intake::DigestionTrial& trial,
                                        const intake::DigestedLine& line);

/// The word of a finding: "leftover-above-offered".
[[nodiscard]] std::string_view symbolOf(intake::FindingKind kind);
/// The word of what stands in alpha's place: "all-eaten".
[[nodiscard]] std::string_view symbolOf(intake::ChoiceState state);

}  // namespace tarebowl::exchange
