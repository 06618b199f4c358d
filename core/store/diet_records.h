// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"
#include "core/store/animal_records.h"

#include <cstdint>
#include <optional>
#include <string>

namespace tarebowl::store {

enum class DietId : std::int64_t {};
enum class VersionId : std::int64_t {};

/// What was decided on, complete in itself, so that it can be shown and solved again for good whatever
/// becomes of foods and targets: a problem file and the result that was seen (tarebowl-problem/1,
/// tarebowl-result/1).
struct DecidedDiet {
  std::string problem{};
  std::string result{};
  bool operator==(const DecidedDiet&) const = default;
};

/// A version of a diet. Foods are named by their codes and need not be in the collection: a line whose food
/// is gone stays, and is told.
struct VersionRecord {
  std::string diet{};  ///< diet::NamedDiet::code
  diet::DietVersion version{};
  std::optional<DecidedDiet> decided{};  ///< since it was approved
  bool operator==(const VersionRecord&) const = default;
};

/// A version as the kitchen feeds it: of its parts the lines and the allowances alone. What it was decided on
/// is some ten kilobytes, of each diet, that no bowl asks for.
struct FedVersion {
  std::string diet{};  ///< diet::NamedDiet::code
  diet::DietVersion version{};
};

/// A version without any of its parts.
struct BareVersion {
  std::string diet{};  ///< diet::NamedDiet::code
  diet::DietVersion version{};
};

using StoredDiet = Stored<DietId, diet::NamedDiet>;
using StoredVersion = Stored<VersionId, VersionRecord>;
using StoredFedVersion = Stored<VersionId, FedVersion>;
using StoredBareVersion = Stored<VersionId, BareVersion>;

}  // namespace tarebowl::store
