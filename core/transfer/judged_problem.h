// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/group_reading.h"
#include "core/transfer/intake_reader.h"

#include <vector>

namespace tarebowl::transfer {

/// As the diet estimates energy that the last of these bowls was fed by.
[[nodiscard]] food::EnergyMethod energyMethodOf(const store::Collection& collection,
                                                const IntakeReader::Stretch& read);

/// Within a job that reads together: asks ahead for what reader.read() and energyMethodOf() will ask.
void askForIntake(const store::Collection& collection, IntakeReader& reader, quantity::Date from,
                  quantity::Date to);

/// The targets that the group is fed by (none where none are in force) over these foods. Foods have no limits
/// here: it is to judge by.
[[nodiscard]] diet::BalanceProblem judgedProblem(const store::KnownGroup& group,
                                                 std::vector<diet::DietFood> foods,
                                                 food::EnergyMethod method);

/// Foods that were read and that the collection holds.
[[nodiscard]] std::vector<diet::DietFood> foodsKnown(const IntakeReader& reader);

/// All foods that were read; one that the collection does not hold has nothing known.
[[nodiscard]] std::vector<diet::DietFood> foodsKnownOrNot(const IntakeReader& reader);

}  // namespace tarebowl::transfer
