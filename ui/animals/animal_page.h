// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"
#include "core/store/animal_reading.h"
#include "core/store/profile_reading.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace tarebowl::ui {

enum class AnimalKind { Species, Group, Individual };

/// One of the things that the room shows, by the collection's own number.
struct AnimalPlace {
  AnimalKind kind = AnimalKind::Group;
  std::int64_t id = 0;
  bool operator==(const AnimalPlace&) const = default;
};

/// All species, groups and animals of a collection, and who is where.
struct Herd {
  std::vector<store::StoredSpecies> species{};
  std::vector<store::StoredGroup> groups{};
  std::vector<store::StoredIndividual> individuals{};
  std::vector<store::StoredMembership> stays{};

  [[nodiscard]] const store::StoredSpecies* speciesOf(const std::string& code) const;
  [[nodiscard]] const store::StoredGroup* groupOf(const std::string& code) const;
  [[nodiscard]] const store::StoredIndividual* individualOf(const std::string& code) const;
};

/// What was weighed and scored of one animal, or of a group as a whole.
struct MeasuredSeries {
  std::string code{};  ///< of the animal or group
  bool ofGroup = false;
  std::vector<store::StoredMass> masses{};
  std::vector<animal::DoubtedReading> doubts{};  ///< by their place in `masses`
  std::vector<store::StoredCondition> conditions{};
};

/// A version of the profile with all that it takes over, or why it does not resolve.
struct ProfileInSight {
  store::StoredProfile stored{};
  store::ProfileState state = store::ProfileState::Draft;
  std::variant<animal::ResolvedProfile, animal::CircularParents, animal::MissingParent> resolved{};
};

struct ProfileName {
  std::string code{};
  std::string name{};
};

/// Everything about the species, group or animal that is looked at, read at once.
struct AnimalPage {
  AnimalPlace place{};
  store::StoredSpecies species{};
  std::optional<store::StoredGroup> group{};
  std::optional<store::StoredIndividual> individual{};
  std::vector<store::StoredMembership> stays{};    ///< in the group, or of the animal; also ended ones
  std::vector<store::StoredIndividual> animals{};  ///< of the species
  std::vector<MeasuredSeries> series{};            ///< the animal's; or of a group its own, then its members'
  std::optional<quantity::Kilograms> expectedMass{};  ///< of its kind
  std::vector<store::StoredEnergyPlan> plans{};
  std::vector<ProfileInSight> profiles{};       ///< every version of the group's profile, the oldest first
  std::vector<ProfileName> profileNames{};      ///< all that a group can be fed by
  std::vector<animal::FoodCaution> cautions{};  ///< that concern the species
};

[[nodiscard]] Herd readHerd(const store::Collection& collection);
/// Nothing where it is no longer there. today: on which memberships and masses are looked at.
[[nodiscard]] std::optional<AnimalPage> readAnimalPage(const store::Collection& collection,
                                                       const AnimalPlace& place, quantity::Date today);

/// The mass that counts today of what the page shows: of an animal its own; of a group the mean of its
/// members that were weighed, or else what was written down for the group as a whole.
struct PageMass {
  quantity::Kilograms mass{};
  int animals = 0;  ///< whose masses are behind it; 0: of the group as a whole
  std::size_t readings = 0;
  quantity::Date newest{};
};
[[nodiscard]] std::optional<PageMass> massOf(const AnimalPage& page, quantity::Date today);
[[nodiscard]] std::optional<int> headcountOf(const AnimalPage& page, quantity::Date today);
[[nodiscard]] const MeasuredSeries* seriesOf(const AnimalPage& page, const std::string& code);
/// The version that is in force, else the newest; nothing where no profile is chosen.
[[nodiscard]] const ProfileInSight* profileToShow(const AnimalPage& page);

}  // namespace tarebowl::ui
