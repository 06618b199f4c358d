// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_reading.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// What a kitchen must know of many groups at once, in as many queries for a hundred of them as for one.
/// Every call throws StoreError; what a call returns is a snapshot.
namespace tarebowl::store {

/// A group on a day: of KnownGroup (group_reading.h) what needs no weighing and no targets.
struct HousedGroup {
  StoredGroup group{};
  animal::Species species{};
  std::vector<std::string> members{};  ///< codes; empty where the animals are not told apart
  std::optional<int> headcount{};
};

/// The groups of a section, or of all where none is named, by their codes.
[[nodiscard]] std::vector<HousedGroup> groupsHousedOn(const Collection& collection, quantity::Date day,
                                                      const std::optional<std::string>& section = {});

/// What one animal of each group weighs on a day, as KnownGroup::bodyMass, by the groups' codes; one of which
/// nothing was weighed is not in it. groups: those that are housed in the section on the day, or in all.
[[nodiscard]] std::map<std::string, quantity::Kilograms> bodyMassesOn(
    const Collection& collection, std::span<const HousedGroup> groups, quantity::Date day,
    const std::optional<std::string>& section = {});

}  // namespace tarebowl::store
