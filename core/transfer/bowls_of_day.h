// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/prep_sheet.h"
#include "core/store/section_reading.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// The bowls of a day from the diets in force, of a section or of the whole zoo. What is read is read for all
/// groups at once, but for diets that are phased in or follow a rotation: of those what was fed before, or
/// the day's cells, is read one by one. Throws StoreError.
namespace tarebowl::transfer {

/// A group on a day, what it is fed, and the bowls of that.
struct GroupsDay {
  store::HousedGroup group{};
  intake::GroupOfDay fed{};
  std::vector<intake::PrepBowl> bowls{};
};

/// What a group's animals weigh is needed to judge weights, not to count bowls.
enum class BodyMass { Read, LeftOut };

/// The groups by their names, of a section or of all where none is named.
[[nodiscard]] std::vector<GroupsDay> bowlsPlannedOn(const store::Collection& collection, quantity::Date day,
                                                    const intake::FoodLookup& foodOf, BodyMass bodyMass,
                                                    const std::optional<std::string>& section = {});

using BowlsByGroup = std::map<std::string, std::vector<intake::Bowl>>;
/// Those that were written down for the day, by their groups' codes.
[[nodiscard]] BowlsByGroup bowlsOpenedOn(const store::Collection& collection, quantity::Date day,
                                         const std::optional<std::string>& section = {});

/// Bowls as they were opened go in the place of those that the diets ask for.
void takeOpened(const BowlsByGroup& opened, GroupsDay& group);

}  // namespace tarebowl::transfer
