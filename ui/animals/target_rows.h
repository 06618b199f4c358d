// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::ui {

enum class RuleKind { Target, Ratio, Share, Choice, Exclusion, Dropped };

/// One rule in force of a profile, ready to be shown and read aloud. Shares are in per cent.
struct TargetRow {
  RuleKind kind = RuleKind::Target;
  std::string id{};
  QString name{};
  std::optional<double> min{};
  std::optional<double> preferred{};
  std::optional<double> max{};
  QString unit{};  ///< "g/kg DM", "% of DM"
  bool hard = false;
  bool safeUpperLimit = false;
  std::optional<animal::LiftedLimit> lifted{};
  animal::TargetOrigin origin{};
  QString note{};  ///< of the source, or the reason of an exclusion
  animal::RuleDescent descent{};
};

/// In the order of the profile: targets, ratios, shares, choices, exclusions, what was dropped.
[[nodiscard]] std::vector<TargetRow> targetRows(const animal::ResolvedProfile& profile);

/// What is edited of a rule.
enum class RuleField { Min, Preferred, Max };

/// The profile with a rule of this id changed: stated by itself from now on, also where it was taken over.
/// Its origin becomes the house's. Nothing where it would be unsound (a minimum above the maximum, neither).
[[nodiscard]] std::optional<animal::TargetProfile> withBound(const animal::ResolvedProfile& profile,
                                                             const TargetRow& row, RuleField field,
                                                             std::optional<double> value);
[[nodiscard]] animal::TargetProfile withHardness(const animal::ResolvedProfile& profile, const TargetRow& row,
                                                 bool hard);
/// The same, with why a safe upper limit no longer holds as it was.
[[nodiscard]] animal::TargetProfile withLifted(animal::TargetProfile profile, const std::string& id,
                                               const animal::LiftedLimit& lifted);
/// Without the rule: its own is taken away, one that was taken over is dropped for a reason.
[[nodiscard]] animal::TargetProfile without(const animal::ResolvedProfile& profile, const TargetRow& row,
                                            const std::string& reason);
/// Whether changing the row so needs a reason that is kept: a safe upper limit is raised or made soft.
[[nodiscard]] bool liftsLimit(const TargetRow& row, RuleField field, std::optional<double> value);

}  // namespace tarebowl::ui
