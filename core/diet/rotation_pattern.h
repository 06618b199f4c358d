// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_model.h"

#include <Eigen/Core>
#include <optional>
#include <random>

namespace tarebowl::diet {

/// Which food is fed on which day: days x foods.
using FedPattern = Eigen::Array<bool, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// What is fed in any case: locked cells, days that are over, foods with a least amount a day.
[[nodiscard]] FedPattern givenPattern(const RotationModel& model);

/// Whether a food that is not in the pattern may be fed on the day: it is to be had, and neither runs, nor
/// days of the period, nor the day's counts are too many with it.
[[nodiscard]] bool canAdd(const RotationModel& model, const FedPattern& pattern, Eigen::Index day,
                          Eigen::Index food);
/// Whether a food of the pattern may be left out on the day.
[[nodiscard]] bool canRemove(const RotationModel& model, const FedPattern& pattern, Eigen::Index day,
                             Eigen::Index food);

/// Of a rule's foods so many are fed on the day.
[[nodiscard]] int countOn(const DayCount& count, const FedPattern& pattern, Eigen::Index day);
[[nodiscard]] int daysFed(const FedPattern& pattern, Eigen::Index food);
/// How many days running the food would be fed around this one.
[[nodiscard]] int runThrough(const FedPattern& pattern, Eigen::Index day, Eigen::Index food);

/// Foods spread over the days so that each comes as often as is wanted of it, as evenly as the rules let it:
/// every day those that are most overdue. disorder > 0 varies the order. Nothing where the rules were not met
/// this way.
[[nodiscard]] std::optional<FedPattern> spreadOverDays(const RotationModel& model,
                                                       const Eigen::VectorXd& wantedDays, double disorder,
                                                       std::mt19937_64& random);

}  // namespace tarebowl::diet
