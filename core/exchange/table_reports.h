// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/exchange/mapping_guess.h"
#include "core/food/collection_checks.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Imports and checks as JSON, for programs.
namespace tarebowl::exchange {

/// What became of an import: only planned, or kept.
enum class ImportStage { Planned, Imported };

/// "tarebowl-import/1": the counts of the plan, its remarks by kind, what a guess was unsure of, and the
/// mapping.
[[nodiscard]] std::string writeImportPlan(const ImportPlan& plan, ImportStage stage,
                                          const TableMapping& mapping, const std::vector<GuessNote>& notes);

/// A checked food as the report names it.
struct CheckedName {
  std::string code;
  std::string name;
  std::string form;
};

/// "tarebowl-check/1". names: by the findings' food.
[[nodiscard]] std::string writeFindings(std::span<const food::FoodFinding> findings,
                                        std::span<const CheckedName> names);

/// The word for it in reports: "unit-slip".
[[nodiscard]] std::string_view symbolOf(food::CheckCode code);
[[nodiscard]] std::string_view symbolOf(ImportIssue issue);
[[nodiscard]] std::string_view symbolOf(GuessDoubt doubt);

}  // namespace tarebowl::exchange
