// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/explanation.h"
#include "core/diet/remedies.h"

#include <nlohmann/json_fwd.hpp>

#include <span>

namespace tarebowl::exchange {

/// The "explain" of a result: {"rates_of", "any_amounts", "binding": {"targets", "foods"}, "ranges",
/// "least_changes"}.
[[nodiscard]] nlohmann::ordered_json explanationToJson(const diet::BalanceProblem& problem,
                                                       const diet::Explanation& explanation);

/// The "remedies" of a result: food, grams and shortfall of each, and what else is known of it.
[[nodiscard]] nlohmann::ordered_json remediesToJson(const diet::BalanceProblem& problem,
                                                    std::span<const diet::Remedy> remedies,
                                                    std::span<const diet::DietFood> larder);

}  // namespace tarebowl::exchange
