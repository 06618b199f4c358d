// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/food_safety.h"
#include "core/exchange/json_reader.h"

#include <nlohmann/json_fwd.hpp>

namespace tarebowl::exchange {

/// One entry of a problem's "exclusions", "house_cautions" or "lifted". Throw FormatError.
[[nodiscard]] animal::Exclusion readExclusion(const JsonReader& reader);
[[nodiscard]] nlohmann::ordered_json writeExclusion(const animal::Exclusion& exclusion);
[[nodiscard]] animal::FoodCaution readCaution(const JsonReader& reader);
[[nodiscard]] diet::LiftedBan readLifted(const JsonReader& reader);
[[nodiscard]] nlohmann::ordered_json writeLifted(const diet::LiftedBan& lifted);

/// The same three lists, each left out where it is empty.
void writeSafety(const diet::BalanceProblem& problem, nlohmann::ordered_json& json);

/// The "cautions" of a result: what the foods of the bowl fall under, and those kept out of it.
[[nodiscard]] nlohmann::ordered_json findingsToJson(const diet::BalanceProblem& problem,
                                                    const diet::Diet& diet);

}  // namespace tarebowl::exchange
