// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/body_mass.h"
#include "core/animal/caution.h"
#include "core/animal/condition_score.h"
#include "core/animal/energy_derivation.h"
#include "core/animal/group.h"
#include "core/animal/individual.h"
#include "core/animal/species.h"
#include "core/animal/target_profile.h"
#include "core/quantity/date.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::store {

enum class SpeciesId : std::int64_t {};
enum class IndividualId : std::int64_t {};
enum class GroupId : std::int64_t {};
enum class MembershipId : std::int64_t {};
enum class MassId : std::int64_t {};
enum class ConditionId : std::int64_t {};
enum class ProfileId : std::int64_t {};
enum class EnergyPlanId : std::int64_t {};
enum class HouseCautionId : std::int64_t {};

/// A thing of the collection. revision grows with every edit; an edit names the one it saw, so that no update
/// is lost.
template <class Id, class Record>
struct Stored {
  Id id{};
  int revision = 0;
  Record record{};
};

/// A reading as it was written down before it was put right, and why it was.
struct FormerEntry {
  quantity::Date on{};
  quantity::Kilograms mass{};
  std::string correction{};
  bool operator==(const FormerEntry&) const = default;
};

/// A weighing of an individual, or the mean of a group whose animals are not told apart: exactly one is
/// named, by its code.
struct MassRecord {
  std::optional<std::string> individual{};
  std::optional<std::string> group{};
  animal::MassReading reading{};
  std::vector<FormerEntry> former{};  ///< what it was before each correction, the first entry first
  bool operator==(const MassRecord&) const = default;
};

/// A score of an individual or of a group as a whole: exactly one is named, by its code.
struct ConditionRecord {
  std::optional<std::string> individual{};
  std::optional<std::string> group{};
  animal::ConditionReading reading{};
  bool operator==(const ConditionRecord&) const = default;
};

enum class ProfileStepKind { PutInForce, Retired };

/// What became of a version of a profile: from which day, by whom, when it was written down, why.
struct ProfileStep {
  ProfileStepKind kind = ProfileStepKind::PutInForce;
  quantity::Date from{};
  std::string who{};
  std::string at{};
  std::string reason{};
  bool operator==(const ProfileStep&) const = default;
};

/// One version of a target profile. Without a step it is a draft.
struct ProfileRecord {
  animal::TargetProfile profile{};
  std::vector<ProfileStep> steps{};  ///< in their order; written by the verbs alone
  bool operator==(const ProfileRecord&) const = default;
};

/// How the energy need of a group is worked out from a day on, until the group's next plan.
struct EnergyPlanRecord {
  std::string group{};
  quantity::Date from{};
  animal::EnergyPlan plan{};
  std::string note{};
  bool operator==(const EnergyPlanRecord&) const = default;
};

using StoredSpecies = Stored<SpeciesId, animal::Species>;
using StoredIndividual = Stored<IndividualId, animal::Individual>;
using StoredGroup = Stored<GroupId, animal::Group>;
using StoredMembership = Stored<MembershipId, animal::Membership>;
using StoredMass = Stored<MassId, MassRecord>;
using StoredCondition = Stored<ConditionId, ConditionRecord>;
using StoredProfile = Stored<ProfileId, ProfileRecord>;
using StoredEnergyPlan = Stored<EnergyPlanId, EnergyPlanRecord>;
using StoredHouseCaution = Stored<HouseCautionId, animal::FoodCaution>;

}  // namespace tarebowl::store
