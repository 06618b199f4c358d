// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// What one version says otherwise than another.
enum class DifferenceKind {
  LineAdded,
  LineRemoved,
  Amount,
  Min,
  Max,
  Locked,
  PurposeOf,
  Preparation,
  AllowanceAdded,
  AllowanceRemoved,
  AllowanceLow,
  AllowanceHigh,
  BoundMin,  ///< of a rule whose bound the diet sets itself; before or after is missing where the profile's
             ///< holds
  BoundMax,
  ProfileOf,
  ObjectiveOf,
  Confidence,
  EnergyMethodOf,
  WholeSteps,
  Shares,
  Choices,
  Lifted,  ///< a caution or an exclusion is set aside that held before; the reason as text
  BackInForce,
  LiftedReason,
  FedFrom,  ///< ISO days as text
  PhaseInDays
};

/// A fact, not a sentence; numbers are grams, bounds in the rule's unit, a chance 0 … 1, or 0 and 1 for no
/// and yes.
struct VersionDifference {
  DifferenceKind kind = DifferenceKind::Amount;
  std::string subject{};  ///< the food, the rule or the ban; empty where it concerns the whole diet
  std::string meal{};     ///< of a line
  std::string food{};     ///< for which alone a ban is lifted; empty: for all
  std::optional<double> before{};
  std::optional<double> after{};
  std::string textBefore{};
  std::string textAfter{};
  bool operator==(const VersionDifference&) const = default;
};

/// Lines first, in the order of `before` and then of what is new, then allowances, bounds and the rest. Empty
/// where both say the same; numbers, states and steps of the versions do not count.
[[nodiscard]] std::vector<VersionDifference> differences(const DietVersion& before, const DietVersion& after);

}  // namespace tarebowl::diet
