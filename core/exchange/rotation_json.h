// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"
#include "core/quantity/date.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The rules of a rotation ("tarebowl-rotation-rules/1") and a plan ("tarebowl-rotation/1") as files;
/// sample-data/README.md lists the keys. A day is its number in the period (1 is the first), a date where the
/// first day's date is known, or in lists of days a day of the week ("mon" … "sun") likewise.
namespace tarebowl::exchange {

inline constexpr std::string_view kRotationRulesFormat = "tarebowl-rotation-rules/1";
inline constexpr std::string_view kRotationFormat = "tarebowl-rotation/1";
inline constexpr int kMostRotationDays = 28;

/// The days of a period; what a file says of them gives way to what was asked for.
struct RotationPeriod {
  std::optional<int> days;
  std::optional<quantity::Date> from;
};

struct RotationRulesFile {
  diet::RotationRules rules;
  std::optional<quantity::Date> from;  ///< of the first day, where it is known
};

/// Rules for the foods of base. Throws FormatError (problem_json.h) for foods, targets and days that are not
/// there.
[[nodiscard]] RotationRulesFile parseRotationRules(std::string_view json, const std::string& fileName,
                                                   const diet::BalanceProblem& base,
                                                   const RotationPeriod& asked);
[[nodiscard]] RotationRulesFile readRotationRules(const std::filesystem::path& file,
                                                  const diet::BalanceProblem& base,
                                                  const RotationPeriod& asked);

/// The "days" of a plan or of a file that says what was fed: those before `before` (a number of days from the
/// first; nothing: all).
[[nodiscard]] std::vector<diet::FedDay> readFedDays(const std::filesystem::path& file,
                                                    const diet::BalanceProblem& base,
                                                    const RotationPeriod& period, std::optional<int> before);

/// "tarebowl-rotation/1", indented.
[[nodiscard]] std::string writeRotation(const diet::RotationProblem& problem, const diet::RotationPlan& plan,
                                        std::optional<quantity::Date> from);

/// The date of a day of a period.
[[nodiscard]] quantity::Date dateOfDay(quantity::Date from, int day);

}  // namespace tarebowl::exchange
