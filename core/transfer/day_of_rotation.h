// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/desk_diet.h"

#include <optional>
#include <string>
#include <vector>

/// What a kept rotation gives on one day, where one has the day. Throws StoreError.
namespace tarebowl::transfer {

/// The lines that the kitchen prepares in place of the version's own; nothing where no rotation has the day.
[[nodiscard]] std::optional<std::vector<diet::DietLine>> linesOfDay(const store::Collection& collection,
                                                                    const std::string& dietCode,
                                                                    const diet::DietVersion& version,
                                                                    quantity::Date day);

/// Grams per animal of each food of the version's problem: as planned for the day, or else the version's own.
[[nodiscard]] diet::Diet amountsOn(const store::Collection& collection, const DeskDiet& diet,
                                   quantity::Date day);

}  // namespace tarebowl::transfer
