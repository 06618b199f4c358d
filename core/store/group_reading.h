// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_reading.h"
#include "core/store/profile_reading.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::store {

/// Everything that is known of a group on a day, from the herd to the numbers that a diet must meet.
struct KnownGroup {
  StoredGroup group{};
  animal::Species species{};
  std::vector<std::string> members{};  ///< codes; empty where the animals are not told apart
  std::vector<std::optional<quantity::Kilograms>> memberMasses{};  ///< of each of them, where it was weighed
  std::optional<int> headcount{};
  std::optional<quantity::Kilograms> bodyMass{};  ///< per animal: mean of the members, or of the group
  std::size_t weighed = 0;                        ///< members behind the mean; 0 where the group was weighed
  std::optional<StoredProfile> version{};         ///< in force on the day
  std::optional<animal::ResolvedProfile> profile{};
  std::optional<StoredEnergyPlan> energyPlan{};
  std::optional<animal::EnergyDerivation> energy{};  ///< where there is a plan and a body mass
};

/// Nothing where there is no such group. Throws StoreError.
[[nodiscard]] std::optional<KnownGroup> knowGroup(const Collection& collection, const std::string& code,
                                                  quantity::Date day);

}  // namespace tarebowl::store
