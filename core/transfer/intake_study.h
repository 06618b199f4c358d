// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/intake_report.h"
#include "core/store/collection.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::transfer {

/// Energy, protein, calcium and phosphorus: what a report tells where nobody names others.
[[nodiscard]] std::vector<food::NutrientId> nutrientsOfReport();

/// What a group ate over some days, ready to be written. Nothing where there is no such group. Throws
/// StoreError.
[[nodiscard]] std::optional<exchange::IntakeToWrite> intakeStudy(const store::Collection& collection,
                                                                 const std::string& group,
                                                                 quantity::Date from, quantity::Date to,
                                                                 std::span<const food::NutrientId> nutrients);

}  // namespace tarebowl::transfer
