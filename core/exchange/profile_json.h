// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"

#include <filesystem>
#include <string>
#include <string_view>

/// One version of a target profile as a file, "tarebowl-profile/1": what it states itself and what its parent
/// is called (sample-data/README.md lists the keys).
namespace tarebowl::exchange {

inline constexpr std::string_view kProfileFormat = "tarebowl-profile/1";

/// Whose targets, and when.
struct TargetsHead {
  std::string group{};
  std::string day{};  ///< ISO
};

/// fileName is only used in messages. Throws FormatError (problem_json.h), also for what
/// animal::problemsWith finds.
[[nodiscard]] animal::TargetProfile parseProfile(std::string_view json, const std::string& fileName);
[[nodiscard]] animal::TargetProfile readProfile(const std::filesystem::path& file);

/// Reads back as the same profile.
[[nodiscard]] std::string writeProfile(const animal::TargetProfile& profile);

/// "tarebowl-targets/1": a profile with all that it takes over, each rule with where it was stated and what
/// it stands in the place of.
[[nodiscard]] std::string writeTargets(const animal::ResolvedProfile& profile, const TargetsHead& head);

}  // namespace tarebowl::exchange
