// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/target_profile.h"

#include <algorithm>
#include <utility>

namespace tarebowl::animal {

namespace {

const std::string& ruleId(const ProfileTarget& rule) {
  return rule.target.id;
}
const std::string& ruleId(const ProfileRatio& rule) {
  return rule.target.id;
}
std::string ruleId(const ChoiceRule& rule) {
  return idOf(rule);
}
const std::string& ruleId(const auto& rule) {
  return rule.id;
}

ProfileReference referenceTo(const TargetProfile& profile) {
  return {profile.code, profile.version};
}

/// A safe upper limit that another statement takes the place of goes on protecting.
void inherit(ProfileTarget& heir, const ProfileTarget& from) {
  if (!from.safeUpperLimit || heir.target.nutrient != from.target.nutrient) return;
  const bool sameScale = heir.target.unit == from.target.unit && heir.target.basis == from.target.basis;
  if (!heir.target.max && sameScale) heir.target.max = from.target.max;
  heir.safeUpperLimit = heir.target.max.has_value();
}

RuleDescent after(const ProfileReference& statedIn, const RuleDescent& replaced) {
  RuleDescent descent{statedIn, {replaced.statedIn}};
  descent.inPlaceOf.insert(descent.inPlaceOf.end(), replaced.inPlaceOf.begin(), replaced.inPlaceOf.end());
  return descent;
}

/// Takes profiles one on top of another, the farthest ancestor first.
class Stack {
 public:
  explicit Stack(ResolvedProfile& result) : result_(result) {}

  void lay(const TargetProfile& profile) {
    const ProfileReference here = referenceTo(profile);
    for (const DroppedRule& dropped : profile.dropped) drop(dropped, here);
    layRules(profile.targets, result_.targets, here);
    layRules(profile.ratios, result_.ratios, here);
    layRules(profile.shares, result_.shares, here);
    layRules(profile.choices, result_.choices, here);
    layRules(profile.exclusions, result_.exclusions, here);
  }

 private:
  template <class Visit>
  void forEachList(Visit visit) {
    visit(result_.targets);
    visit(result_.ratios);
    visit(result_.shares);
    visit(result_.choices);
    visit(result_.exclusions);
  }

  template <class Rule>
  static auto find(std::vector<InForce<Rule>>& list, const std::string& id) {
    return std::ranges::find_if(list, [&](const InForce<Rule>& entry) { return ruleId(entry.rule) == id; });
  }

  [[nodiscard]] bool isProtected(const std::string& id) {
    const auto place = find(result_.targets, id);
    return place != result_.targets.end() && place->rule.safeUpperLimit;
  }

  /// Removes the rule with this id, wherever it stands; its descent, if there was one.
  std::optional<RuleDescent> take(const std::string& id) {
    std::optional<RuleDescent> taken;
    forEachList([&](auto& list) {
      const auto place = find(list, id);
      if (place == list.end()) return;
      taken = std::move(place->descent);
      list.erase(place);
    });
    const auto drop = find(result_.dropped, id);
    if (drop == result_.dropped.end()) return taken;
    taken = std::move(drop->descent);
    result_.dropped.erase(drop);
    return taken;
  }

  void drop(const DroppedRule& dropped, const ProfileReference& here) {
    if (dropped.reason.empty() && isProtected(dropped.id)) return;
    const auto taken = take(dropped.id);
    result_.dropped.push_back({dropped, taken ? after(here, *taken) : RuleDescent{here, {}}});
  }

  template <class Rule>
  void layRules(const std::vector<Rule>& stated, std::vector<InForce<Rule>>& list,
                const ProfileReference& here) {
    for (const Rule& rule : stated) {
      const std::string id = ruleId(rule);
      if (const auto place = find(list, id); place != list.end()) {
        InForce<Rule> heir{rule, after(here, place->descent)};
        if constexpr (std::is_same_v<Rule, ProfileTarget>) inherit(heir.rule, place->rule);
        *place = std::move(heir);
        continue;
      }
      const auto taken = take(id);
      list.push_back({rule, taken ? after(here, *taken) : RuleDescent{here, {}}});
    }
  }

  ResolvedProfile& result_;
};

}  // namespace

std::string idOf(const ChoiceRule& choice) {
  return "choice:" + choice.group;
}

bool maxIsHard(const ProfileTarget& target) {
  if (!target.target.max) return false;
  return target.target.hard || (target.safeUpperLimit && !target.lifted);
}

std::variant<ResolvedProfile, CircularParents, MissingParent> resolve(const TargetProfile& profile,
                                                                      const ProfileLookup& lookup) {
  std::vector<TargetProfile> line{profile};
  std::vector<ProfileReference> chain{referenceTo(profile)};
  while (const auto parent = line.back().parent) {
    chain.push_back(*parent);
    const auto first = std::ranges::find(chain, *parent);
    if (first != chain.end() - 1) return CircularParents{{first, chain.end()}};
    auto found = lookup(*parent);
    if (!found) return MissingParent{referenceTo(line.back()), *parent};
    line.push_back(std::move(*found));
  }
  ResolvedProfile resolved;
  resolved.profile = profile;
  resolved.ancestors.assign(chain.begin() + 1, chain.end());
  for (const TargetProfile& level : line) {
    if (!resolved.kcalPerGramDryMatter) resolved.kcalPerGramDryMatter = level.kcalPerGramDryMatter;
    if (!resolved.dryMatterFraction) resolved.dryMatterFraction = level.dryMatterFraction;
  }
  Stack stack(resolved);
  // The views of libstdc++ 12 are beyond Clang 14.
  std::for_each(line.rbegin(), line.rend(), [&](const TargetProfile& level) { stack.lay(level); });
  return resolved;
}

}  // namespace tarebowl::animal
