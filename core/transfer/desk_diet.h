// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/version_problem.h"
#include "core/store/diet_reading.h"
#include "core/store/group_reading.h"
#include "core/transfer/learned_eating.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::transfer {

/// A version of a diet as it lies on the design desk, made from what the collection holds now, and what has
/// happened since the version was written. The version itself is never changed by it.
struct DeskDiet {
  store::StoredDiet diet{};
  store::StoredVersion version{};
  store::KnownGroup group{};
  diet::VersionContext context{};
  diet::ProblemOfVersion made{};
  /// The targets that the group is fed by now, where they are not those that the version names.
  std::optional<animal::ProfileReference> newerProfile{};
  /// The version names targets that are not there, or none: nothing but the energy need is judged.
  bool profileMissing = false;
  /// Of what was approved: names of foods whose values are no longer those that were decided on.
  std::vector<std::string> foodsChanged{};
  CountedAs counted = CountedAs::Offered;
  std::vector<intake::EatenFraction> eaten{};  ///< where it is counted so: what it is counted by
  bool decisionUnreadable = false;             ///< the problem that was decided on is no problem file
};

/// Nothing where there is no such version. day: for headcount, masses and energy need. Throws StoreError.
[[nodiscard]] std::optional<DeskDiet> readDesk(const store::Collection& collection, store::VersionId version,
                                               quantity::Date day, CountedAs counted = CountedAs::Offered);
/// The same of a version that the collection does not hold, or not yet; nothing where its diet or the group
/// is not there.
[[nodiscard]] std::optional<DeskDiet> readDesk(const store::Collection& collection,
                                               const store::VersionRecord& version, quantity::Date day);

/// What an approval of the version would decide on: its problem, in which locked foods keep their grams, and
/// the solver's result where that is the version's own grams, or else these grams as they stand.
[[nodiscard]] store::DecidedDiet decisionOn(const diet::ProblemOfVersion& made);

}  // namespace tarebowl::transfer
