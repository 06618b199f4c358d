// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/energy_derivation.h"

#include <nlohmann/json_fwd.hpp>

#include <string>

/// How an energy need came about, so that a person can check each line by hand.
namespace tarebowl::app {

[[nodiscard]] nlohmann::ordered_json energyJson(const animal::EnergyPlan& plan,
                                                const animal::EnergyDerivation& energy);
[[nodiscard]] std::string energyText(const animal::EnergyPlan& plan, const animal::EnergyDerivation& energy);

}  // namespace tarebowl::app
