// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/kept_rotation.h"
#include "core/exchange/rotation_json.h"
#include "core/store/rotation_verbs.h"
#include "core/transfer/desk_diet.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::transfer {

/// A rotation of a version of a diet with everything it rests on: a snapshot of the collection.
struct RotationDesk {
  DeskDiet diet{};
  std::string rules{};  ///< the file that problem.rules were read from
  quantity::Date from{};
  /// The version's foods, and after them those that were fed in place of them, of which no more is given.
  diet::RotationProblem problem{};
  std::vector<diet::PlaceInVersion> places{};  ///< one for each food of the problem
  std::vector<std::string> unknownFed{};       ///< codes of foods that were fed and nobody knows
  bool asEaten = false;                        ///< days that are over count as eaten, where that is known
  [[nodiscard]] quantity::Date until() const;
};

/// What the collection knows of the edible part of the problem's foods, whose codes are these, in their
/// order; losses that the rules state go before.
void addEdibleParts(const store::Collection& collection, const std::vector<std::string>& codes,
                    diet::RotationProblem& problem);

/// The rules (a file of exchange/rotation_json.h) on a version. Where neither `asked` nor the rules say a
/// first day it is today. Locked lines of the version keep their grams on each day. Throws FormatError and
/// StoreError.
[[nodiscard]] RotationDesk layOutRotation(const store::Collection& collection, DeskDiet diet,
                                          const std::string& rules, const exchange::RotationPeriod& asked,
                                          quantity::Date today);

/// The days of a kept rotation in the order of the problem's foods: those that were fed as they were fed.
[[nodiscard]] std::vector<diet::Diet> daysOf(const RotationDesk& desk, const diet::KeptRotation& kept);
/// Allowances are no cells: they are given on each day on which anything is.
void giveAllowances(const RotationDesk& desk, diet::Diet& day);

/// Days before `until` that are in the period: as their bowls were fed by this diet, or else as `planned` has
/// them; what is neither fed nor planned was not fed.
void takeFedDays(const store::Collection& collection, const diet::KeptRotation& planned, quantity::Date until,
                 RotationDesk& desk);

/// A rotation as it is kept, and how it stands now.
struct RotationOnDesk {
  store::StoredRotation kept{};
  RotationDesk desk{};
  std::vector<diet::Diet> days{};  ///< in the order of the problem's foods
};
/// With its locks, and with what was fed on the days that are over. Nothing where there is no such rotation.
[[nodiscard]] std::optional<RotationOnDesk> readRotation(const store::Collection& collection,
                                                         store::RotationId id, quantity::Date today);

/// The plan that it is, with how its days stand now.
[[nodiscard]] diet::RotationPlan planOf(const RotationOnDesk& rotation);

/// The rotation that a plan has become. Cells that the rules lock are locked, allowances are left out: they
/// stand in the version.
[[nodiscard]] diet::KeptRotation keptRotation(const RotationDesk& desk, const diet::RotationPlan& plan,
                                              std::uint64_t seed, quantity::Date plannedFrom);

}  // namespace tarebowl::transfer
