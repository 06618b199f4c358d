// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/target_profile.h"
#include "core/food/vitamin_units.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tarebowl::animal {

namespace {

using enum ProfileProblem;

bool isAmount(const std::optional<double>& bound) {
  return !bound || (*bound >= 0.0 && std::isfinite(*bound));
}

class Checks {
 public:
  std::vector<ProfileFault> of(const TargetProfile& profile) {
    note(profile.code.empty(), NoCode, {});
    note(profile.version < 1, VersionBelowOne, {});
    note(profile.parent == ProfileReference{profile.code, profile.version}, OwnParent, {});
    for (const ProfileTarget& target : profile.targets) check(target);
    for (const ProfileRatio& ratio : profile.ratios) {
      checkBounds(ratio.target, ratio.target.id);
      checkPreferred(ratio, ratio.target.id);
    }
    for (const ShareRule& share : profile.shares) checkBounds(share, share.id);
    for (const ChoiceRule& choice : profile.choices) checkId(choice.group.empty() ? "" : idOf(choice));
    for (const Exclusion& exclusion : profile.exclusions) {
      checkId(exclusion.id);
      note(exclusion.group.empty() == exclusion.food.empty(), ExclusionOfNothing, exclusion.id);
    }
    for (const DroppedRule& dropped : profile.dropped) {
      note(dropped.id.empty(), NoId, {});
      note(dropped.reason.empty(), DroppedWithoutReason, dropped.id);
    }
    return std::move(faults_);
  }

 private:
  void note(bool isWrong, ProfileProblem problem, const std::string& rule) {
    if (isWrong) faults_.push_back({problem, rule});
  }

  void checkId(const std::string& id) {
    note(id.empty(), NoId, {});
    note(!id.empty() && !ids_.insert(id).second, SameIdTwice, id);
  }

  void checkBounds(const auto& rule, const std::string& id) {
    checkId(id);
    note(!rule.min && !rule.max, NeitherBound, id);
    note(!isAmount(rule.min) || !isAmount(rule.max), BoundNotAnAmount, id);
    note(rule.min && rule.max && *rule.min > *rule.max, MinAboveMax, id);
  }

  void checkPreferred(const auto& rule, const std::string& id) {
    if (!rule.preferred) return;
    const bool isOutside = (rule.target.min && *rule.preferred < *rule.target.min) ||
                           (rule.target.max && *rule.preferred > *rule.target.max) ||
                           !isAmount(rule.preferred);
    note(isOutside, PreferredOutsideBounds, id);
  }

  void check(const ProfileTarget& rule) {
    const std::string& id = rule.target.id;
    checkBounds(rule.target, id);
    checkPreferred(rule, id);
    note(!food::toOwnUnitFactor(rule.target.nutrient, rule.target.unit), UnitOfAnotherKind, id);
    note(rule.safeUpperLimit && !rule.target.max, UpperLimitWithoutMax, id);
    note(rule.lifted && rule.lifted->reason.empty(), LiftedWithoutReason, id);
  }

  std::vector<ProfileFault> faults_;
  std::set<std::string> ids_;
};

}  // namespace

std::vector<ProfileFault> problemsWith(const TargetProfile& profile) {
  return Checks().of(profile);
}

TargetProfile nextVersionOf(const TargetProfile& profile) {
  TargetProfile next = profile;
  ++next.version;
  next.starter = false;
  return next;
}

}  // namespace tarebowl::animal
