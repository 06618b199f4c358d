// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"

#include <string>

namespace tarebowl::animal {

/// A target per kg dry matter in mg, as tests of profiles need them.
inline ProfileTarget perKg(const std::string& id, const char* tagname, std::optional<double> min,
                           std::optional<double> max) {
  return {.target = {.id = id,
                     .nutrient = food::findByTagname(tagname).value(),
                     .min = min,
                     .max = max,
                     .unit = quantity::Unit::Milligram,
                     .basis = quantity::Basis::DryMatter,
                     .origin = {}}};
}

inline TargetProfile profileOf(const std::string& code, int version = 1) {
  TargetProfile profile;
  profile.code = code;
  profile.version = version;
  return profile;
}

/// Profiles to be looked up by code and version.
class Shelf {
 public:
  Shelf(std::initializer_list<TargetProfile> profiles) : profiles_(profiles) {}

  [[nodiscard]] ProfileLookup lookup() const {
    return [this](const ProfileReference& wanted) -> std::optional<TargetProfile> {
      for (const TargetProfile& profile : profiles_)
        if (profile.code == wanted.code && profile.version == wanted.version) return profile;
      return std::nullopt;
    };
  }

 private:
  std::vector<TargetProfile> profiles_;
};

}  // namespace tarebowl::animal
