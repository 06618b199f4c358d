// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"
#include "core/quantity/date.h"

#include <optional>
#include <string>

namespace tarebowl::app {

/// A rotation for people: how good it is and what nothing betters, grams of each food on each day, the
/// period's ladder, what each day lacks that the period makes up, and what to buy each week.
[[nodiscard]] std::string rotationTable(const diet::RotationProblem& problem, const diet::RotationPlan& plan,
                                        std::optional<quantity::Date> from);

}  // namespace tarebowl::app
