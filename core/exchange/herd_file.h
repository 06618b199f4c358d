// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/body_mass.h"
#include "core/animal/condition_score.h"
#include "core/animal/energy_derivation.h"
#include "core/animal/group.h"
#include "core/animal/individual.h"
#include "core/animal/species.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

/// The animals of a collection as files: "tarebowl-herd/1" (JSON) for who lives where, tables for what was
/// measured (sample-data/README.md lists the keys and columns). Throw FormatError (problem_json.h).
namespace tarebowl::exchange {

inline constexpr std::string_view kHerdFormat = "tarebowl-herd/1";

struct HerdPlan {
  std::string group{};
  quantity::Date from{};
  animal::EnergyPlan plan{};
};

/// A target profile that the herd is fed by; without a day it is a draft.
struct HerdProfile {
  std::string code{};
  std::optional<quantity::Date> inForceFrom{};
};

struct HerdFile {
  bool invented = false;
  std::vector<animal::Species> species{};
  std::vector<animal::Individual> individuals{};
  std::vector<animal::Group> groups{};
  std::vector<animal::Membership> memberships{};
  std::vector<HerdPlan> plans{};
  std::vector<HerdProfile> profiles{};
};

[[nodiscard]] HerdFile readHerd(const std::filesystem::path& file);

/// Of an individual or, where it is empty, of a group.
struct HerdMass {
  std::string individual{};
  std::string group{};
  animal::MassReading reading{};
};
struct HerdCondition {
  std::string individual{};
  std::string group{};
  animal::ConditionReading reading{};
};

/// CSV: individual, group, date, mass_kg, method, note, excluded.
[[nodiscard]] std::vector<HerdMass> readMasses(const std::filesystem::path& file);
/// CSV: individual, group, date, scale, score, note.
[[nodiscard]] std::vector<HerdCondition> readConditions(const std::filesystem::path& file);

}  // namespace tarebowl::exchange
