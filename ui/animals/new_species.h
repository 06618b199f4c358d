// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/energy_derivation.h"
#include "core/animal/group.h"
#include "core/animal/species.h"
#include "core/animal/target_profile.h"
#include "core/store/animal_reading.h"
#include "ui/collection/open_collection.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::ui {

/// Published profiles to choose a model species from, and what they take over from.
struct Starters {
  std::vector<animal::TargetProfile> profiles{};
  animal::ProfileLookup lookup{};
};

/// A model species and why it stands in.
struct ModelChoice {
  /// The starter that stands in, the last, and what it takes over from, the farthest first.
  std::vector<animal::TargetProfile> model{};
  std::string why{};
};

/// A species new to the collection, as far as it was told: what ends in a profile that a diet can be designed
/// for.
struct NewSpecies {
  animal::Species species{};
  animal::Group group{};
  std::optional<int> headcount{};
  std::optional<quantity::Kilograms> mass{};  ///< of one animal
  animal::TargetProfile profile{};            ///< derives from the model; its own rules and limits
  /// The starter that stands in, and what it takes over from, the farthest first.
  std::vector<animal::TargetProfile> model{};
  std::optional<animal::EnergyPlan> energy{};
};

/// What is still missing before it can be made, a sentence each; empty: nothing.
[[nodiscard]] QStringList missingOf(const NewSpecies& told);

/// Everything that is written, in one step of undo.
[[nodiscard]] CollectionEdit editThatMakes(const NewSpecies& told, quantity::Date today);

/// A profile of its own for a group that has none: derived from the model, in force from today, in one step
/// of undo. code: of the profile, not taken yet.
[[nodiscard]] CollectionEdit editThatFeeds(const store::StoredGroup& group, const ModelChoice& choice,
                                           const std::string& code, quantity::Date today);

/// A profile that takes over everything from the model.
[[nodiscard]] animal::TargetProfile profileFrom(const animal::TargetProfile& model);

/// A starter profile and all that it takes over from, the farthest first; empty where one is missing.
[[nodiscard]] std::vector<animal::TargetProfile> lineOf(const animal::TargetProfile& starter,
                                                        const animal::ProfileLookup& lookup);

}  // namespace tarebowl::ui
