// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/house_rule.h"
#include "core/animal/target.h"

#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace tarebowl::animal {

/// Why a safe upper limit, hard by default, was made soft or dropped. Kept for good.
struct LiftedLimit {
  std::string who{};
  std::string on{};  ///< ISO day
  std::string reason{};
  bool operator==(const LiftedLimit&) const = default;
};

struct ProfileTarget {
  Target target;
  std::optional<double> preferred{};  ///< between min and max, in the target's unit
  bool safeUpperLimit = false;        ///< the max protects from harm: hard unless lifted
  std::optional<LiftedLimit> lifted{};
  std::string note{};  ///< as the source prints it: "allows for phytate P"
  bool operator==(const ProfileTarget&) const = default;
};

struct ProfileRatio {
  RatioTarget target;
  std::optional<double> preferred{};
  std::string note{};
  bool operator==(const ProfileRatio&) const = default;
};

struct ProfileReference {
  std::string code{};
  int version = 1;
  bool operator==(const ProfileReference&) const = default;
};

/// What is not taken over from the parent.
struct DroppedRule {
  std::string id{};
  std::string reason{};
  bool operator==(const DroppedRule&) const = default;
};

/// A versioned set of targets and house rules. It states its own and takes the rest over from a parent; what
/// has the id of a rule of the parent stands in its place, whatever kind of rule either is. A choice has the
/// id "choice:GROUP", as where rules fight (diet/conflict.h).
///
/// A safe upper limit is not lost on the way: what stands in its place keeps its flag, and its max where it
/// states none in the same unit and basis; it is dropped only with a reason.
struct TargetProfile {
  std::string code{};
  int version = 1;
  std::string name{};
  std::optional<ProfileReference> parent{};
  std::string modelSpecies{};  ///< who stands in for the species; empty: it was measured itself
  std::string whyModel{};      ///< a sentence on why that one
  std::string lifeStage{};     ///< as the source says it: "adult maintenance"
  std::optional<double> kcalPerGramDryMatter{};  ///< the energy density that its numbers presume
  std::optional<double> dryMatterFraction{};     ///< of the feed that "as fed" numbers presume, 0 … 1
  std::vector<ProfileTarget> targets{};
  std::vector<ProfileRatio> ratios{};
  std::vector<ShareRule> shares{};
  std::vector<ChoiceRule> choices{};
  std::vector<Exclusion> exclusions{};
  std::vector<DroppedRule> dropped{};
  std::string note{};
  bool starter = false;  ///< came with the program, from publications; it is derived from, never edited
  bool invented = false;
  bool operator==(const TargetProfile&) const = default;
};

/// Where a rule in force was stated, and what it stands in the place of.
struct RuleDescent {
  ProfileReference statedIn{};
  std::vector<ProfileReference> inPlaceOf{};  ///< the nearest ancestor first
  bool operator==(const RuleDescent&) const = default;
};

template <class Rule>
struct InForce {
  Rule rule;
  RuleDescent descent{};
  bool operator==(const InForce&) const = default;
};

/// A profile with all that it takes over.
struct ResolvedProfile {
  TargetProfile profile{};                    ///< as stated
  std::vector<ProfileReference> ancestors{};  ///< parent, its parent …
  /// What its numbers presume: its own, or else the nearest ancestor's.
  std::optional<double> kcalPerGramDryMatter{};
  std::optional<double> dryMatterFraction{};
  std::vector<InForce<ProfileTarget>> targets{};
  std::vector<InForce<ProfileRatio>> ratios{};
  std::vector<InForce<ShareRule>> shares{};
  std::vector<InForce<ChoiceRule>> choices{};
  std::vector<InForce<Exclusion>> exclusions{};
  std::vector<InForce<DroppedRule>> dropped{};
};

/// The chain that leads back to its own beginning: "a 1", "b 2", "a 1".
struct CircularParents {
  std::vector<ProfileReference> chain{};
};
struct MissingParent {
  ProfileReference child{};
  ProfileReference parent{};
};

using ProfileLookup = std::function<std::optional<TargetProfile>(const ProfileReference&)>;

/// Rules come in the order of the farthest ancestor, what stands in a rule's place at its place, and what a
/// descendant adds after them.
[[nodiscard]] std::variant<ResolvedProfile, CircularParents, MissingParent> resolve(
    const TargetProfile& profile, const ProfileLookup& lookup);

/// The id by which a choice is overridden, dropped and named in a conflict: "choice:GROUP".
[[nodiscard]] std::string idOf(const ChoiceRule& choice);

/// Whether the max of a target must hold whatever it costs: asked for, or a safe upper limit not lifted.
[[nodiscard]] bool maxIsHard(const ProfileTarget& target);

/// What is wrong with a profile as it is stated. Targets that cannot hold together are no fault of this kind:
/// they are explained when a diet is sought.
enum class ProfileProblem {
  NoCode,
  VersionBelowOne,
  OwnParent,
  NoId,
  SameIdTwice,
  NeitherBound,
  BoundNotAnAmount,  ///< below 0 or not finite
  MinAboveMax,
  PreferredOutsideBounds,
  UnitOfAnotherKind,  ///< grams of energy, IU of calcium
  UpperLimitWithoutMax,
  LiftedWithoutReason,
  DroppedWithoutReason,
  ExclusionOfNothing  ///< not exactly one of group and food
};

struct ProfileFault {
  ProfileProblem problem = ProfileProblem::NoCode;
  std::string rule{};  ///< id of the rule it is about; empty: of the profile
  bool operator==(const ProfileFault&) const = default;
};

[[nodiscard]] std::vector<ProfileFault> problemsWith(const TargetProfile& profile);

/// The next version of a profile, to be edited: no starter any more.
[[nodiscard]] TargetProfile nextVersionOf(const TargetProfile& profile);

}  // namespace tarebowl::animal
