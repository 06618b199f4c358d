// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"
#include "core/store/diet_records.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// Reading diets. Every call throws StoreError; what a call returns is a snapshot.
namespace tarebowl::store {

/// By group, then by name.
[[nodiscard]] std::vector<StoredDiet> listDiets(const Collection& collection);
[[nodiscard]] std::optional<StoredDiet> findDiet(const Collection& collection, const std::string& code);

/// A version as a list shows it, without what is in it.
struct VersionLine {
  VersionId id{};
  std::string diet{};
  int number = 1;
  diet::VersionState state = diet::VersionState::Draft;
  std::optional<quantity::Date> fedFrom{};
};
/// Of all diets, by diet and number.
[[nodiscard]] std::vector<VersionLine> listVersions(const Collection& collection);
/// Those that wait for a decision: a few of what may be thousands.
[[nodiscard]] std::vector<VersionLine> submittedVersions(const Collection& collection);
/// The oldest first.
[[nodiscard]] std::vector<StoredVersion> versionsOfDiet(const Collection& collection,
                                                        const std::string& dietCode);
[[nodiscard]] std::optional<StoredVersion> findVersion(const Collection& collection, VersionId id);

/// The version of a diet that is fed on a day: of those approved whose first day has come the one that began
/// last, the newer of two that began on one day. One that was retired later was fed until then.
[[nodiscard]] std::optional<StoredVersion> fedOn(const Collection& collection, const std::string& dietCode,
                                                 quantity::Date day);
/// How energy is estimated in the version that is fed on a day.
[[nodiscard]] std::optional<food::EnergyMethod> energyMethodFed(const Collection& collection,
                                                                const std::string& dietCode,
                                                                quantity::Date day);
/// The same of every diet that is fed on the day to a group of the section, or to any where none is named, by
/// the diets' codes; of their parts at least the lines and the allowances (FedVersion).
[[nodiscard]] std::map<std::string, diet::DietVersion> everyDietFedOn(
    const Collection& collection, quantity::Date day, const std::optional<std::string>& section = {});

}  // namespace tarebowl::store
