// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::animal {

/// A row of a published table as it is printed, and the rule that it was read as.
struct PrintedRow {
  std::string nutrient{};            ///< the table's own word: "crude_protein"
  std::string min{};                 ///< digits as printed; empty where none are
  std::string max{};                 ///< likewise
  std::string unit{};                ///< "%", "IU/kg"
  std::string basis{};               ///< "DM (4.0 kcal ME/g)"
  std::string seenOrMemory{};        ///< how the value was come by, in full
  std::string note{};                ///< of the table
  TargetOrigin origin{};             ///< of the value
  std::vector<std::string> rules{};  ///< ids of targets or ratios; none: kept as a remark
  std::string remark{};              ///< why it is no target: "no amount is printed"
};

/// A profile that comes with the program, with the rows behind it.
struct StarterProfile {
  TargetProfile profile;
  std::vector<PrintedRow> rows{};
};

/// Published targets, resources/data/starter_profiles.json: to derive from, never to edit. What is from
/// memory says so in its origin and is no citation.
[[nodiscard]] std::span<const StarterProfile> starterProfiles();
[[nodiscard]] const StarterProfile* findStarterProfile(std::string_view code);

/// A starter by code and version.
[[nodiscard]] ProfileLookup shippedProfiles();

/// Reads "tarebowl-profiles/1". Throws std::runtime_error where the text is no such list: it is compiled in,
/// and a person does not write it.
[[nodiscard]] std::vector<StarterProfile> parseProfiles(std::string_view json);

}  // namespace tarebowl::animal
