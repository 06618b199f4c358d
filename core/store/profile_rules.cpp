// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/profile_tables.h"
#include "core/store/record_rules.h"
#include "core/store/rule_queries.h"
#include "core/store/structure_rules.h"

#include <fmt/format.h>

#include <cmath>
#include <variant>

namespace tarebowl::store {

namespace {

using animal::ProfileProblem;
using animal::ProfileReference;

std::string worded(const ProfileReference& reference) {
  return fmt::format("{} {}", reference.code, reference.version);
}

bool isAbove0(double value) {
  return std::isfinite(value) && value > 0.0;
}

/// After the rule's id, or of the profile itself.
std::string_view wordsFor(ProfileProblem problem) {
  switch (problem) {
    case ProfileProblem::NoCode:
      return "it needs a code";
    case ProfileProblem::VersionBelowOne:
      return "versions count from 1";
    case ProfileProblem::OwnParent:
      return "it cannot take over from itself";
    case ProfileProblem::NoId:
      return "each of its rules needs an id or a food group";
    case ProfileProblem::SameIdTwice:
      return "is stated twice";
    case ProfileProblem::NeitherBound:
      return "needs a minimum or a maximum";
    case ProfileProblem::BoundNotAnAmount:
      return "must be a number of 0 or more";
    case ProfileProblem::MinAboveMax:
      return "has a minimum above its maximum";
    case ProfileProblem::PreferredOutsideBounds:
      return "prefers a value outside its bounds";
    case ProfileProblem::UnitOfAnotherKind:
      return "is in a unit that does not measure this nutrient";
    case ProfileProblem::UpperLimitWithoutMax:
      return "is a safe upper limit without a maximum";
    case ProfileProblem::LiftedWithoutReason:
      return "is a safe upper limit, and lifting it needs a reason";
    case ProfileProblem::DroppedWithoutReason:
      return "is not taken over, which needs a reason";
    case ProfileProblem::ExclusionOfNothing:
      return "leaves out one food group or one food";
  }
  return "is not sound";
}

void refuseUnsoundRules(const Collection::Inner& inner, const animal::TargetProfile& profile) {
  if (const auto faults = animal::problemsWith(profile); !faults.empty()) {
    const std::string& rule = faults.front().rule;
    refuse(inner, fmt::format("target profile {}: {}{}{}", profile.code, rule, rule.empty() ? "" : " ",
                              wordsFor(faults.front().problem)));
  }
  for (const auto& rule : profile.targets) refuseUnsoundWeight(inner, rule.target.id, rule.target.weight);
  for (const auto& rule : profile.ratios) refuseUnsoundWeight(inner, rule.target.id, rule.target.weight);
  for (const animal::ShareRule& rule : profile.shares) refuseUnsoundShare(inner, rule);
  for (const animal::ChoiceRule& rule : profile.choices) refuseUnsoundChoice(inner, rule);
}

std::optional<Row<ProfileRecord>> versionOf(Collection::Inner& inner, const ProfileReference& reference) {
  return loadRow<ProfileRecord>(inner, "WHERE code = :code AND version = :version", reference.code,
                                reference.version);
}

std::string chained(const std::vector<ProfileReference>& chain) {
  std::string text;
  for (const ProfileReference& reference : chain) text += (text.empty() ? "" : " → ") + worded(reference);
  return text;
}

/// Every ancestor is there and none of them is the profile itself; those of a version in force are in force.
void refuseUnsoundParents(Collection::Inner& inner, const ProfileRecord& record) {
  const ProfileReference self{record.profile.code, record.profile.version};
  const auto lookup = [&](const ProfileReference& reference) -> std::optional<animal::TargetProfile> {
    if (reference == self) return record.profile;  // as it is to be, not as it is
    const auto row = versionOf(inner, reference);
    return row ? std::optional(row->record.profile) : std::nullopt;
  };
  const auto resolved = animal::resolve(record.profile, lookup);
  if (const auto* circle = std::get_if<animal::CircularParents>(&resolved))
    refuse(inner, "a profile cannot take over from itself: " + chained(circle->chain));
  if (const auto* missing = std::get_if<animal::MissingParent>(&resolved))
    refuse(inner, "there is no target profile " + worded(missing->parent));
  if (record.steps.empty()) return;
  for (const ProfileReference& ancestor : std::get<animal::ResolvedProfile>(resolved).ancestors)
    if (versionOf(inner, ancestor).value().record.steps.empty())
      refuse(inner, worded(ancestor) + ", which it takes over from, is a draft; put that in force first");
}

void refuseUnsoundSteps(Collection::Inner& inner, const ProfileRecord& record) {
  const ProfileReference self{record.profile.code, record.profile.version};
  for (std::size_t i = 0; i < record.steps.size(); ++i) {
    const ProfileStep& step = record.steps[i];
    if (step.reason.empty()) refuse(inner, "say why " + worded(self) + " is put in force or retired");
    const bool comesFirst = step.kind == ProfileStepKind::PutInForce;
    if (comesFirst != (i == 0) || i > 1)
      refuse(inner, worded(self) + ": a version is put in force once and then retired once");
    if (i > 0 && step.from < record.steps.front().from)
      refuse(inner, worded(self) + " cannot be retired before it is in force");
  }
}

/// A version never takes the place of a later one.
void refuseOutOfOrder(Collection::Inner& inner, long long id, const ProfileRecord& record) {
  if (record.steps.empty()) return;
  for (const Row<ProfileRecord>& other :
       loadRows<ProfileRecord>(inner, "WHERE code = :code AND id <> :id", record.profile.code, id)) {
    if (other.record.steps.empty()) continue;
    const bool earlier = other.record.profile.version < record.profile.version;
    const quantity::Date theirs = other.record.steps.front().from;
    const quantity::Date mine = record.steps.front().from;
    if (earlier ? mine < theirs : theirs < mine)
      refuse(inner, fmt::format("version {} is in force from {}: versions follow each other",
                                other.record.profile.version, quantity::isoDate(theirs)));
  }
}

/// A draft may still change: nothing that is in force takes over from it, and no approved diet is judged by
/// it.
void refuseDraftInUse(Collection::Inner& inner, const ProfileRecord& record) {
  if (!record.steps.empty()) return;
  const ProfileReference self{record.profile.code, record.profile.version};
  refuseRow(inner, "diet_version WHERE state = 'approved' AND profile = :profile", worded(self),
            "an approved diet is judged by " + worded(self));
  for (const auto& child : loadRows<ProfileRecord>(inner, "WHERE parent = :parent", self))
    if (!child.record.steps.empty())
      refuse(inner, fmt::format("{} {} takes over from {} and is in force", child.record.profile.code,
                                child.record.profile.version, worded(self)));
}

void refuseUnsoundPlan(const Collection::Inner& inner, const animal::EnergyPlan& plan) {
  constexpr double kSteepest = 1.5;
  if (!isAbove0(plan.coefficient)) refuse(inner, "the energy at 1 kg must be above 0 kcal per day");
  if (!isAbove0(plan.exponent) || plan.exponent > kSteepest)
    refuse(inner, "the exponent of body mass must be above 0 and at most 1.5");
  for (const animal::EnergyFactor& factor : plan.factors)
    if (!isAbove0(factor.low) || !isAbove0(factor.high) || factor.low > factor.high)
      refuse(inner, fmt::format("the factor {} must be above 0, its low at most its high", factor.words));
}

}  // namespace

void refuseUnsound(Collection::Inner& inner, long long id, const ProfileRecord& record) {
  const animal::TargetProfile& profile = record.profile;
  if (profile.name.empty()) refuse(inner, "a target profile needs a name");
  if (const auto other = versionOf(inner, {profile.code, profile.version}); other && other->id != id)
    refuse(inner, fmt::format("there is a version {} of {}", profile.version, profile.code));
  if (!isAbove0(profile.kcalPerGramDryMatter.value_or(1.0)))
    refuse(inner, "the energy density must be above 0 kcal per g of dry matter");
  const double dryMatter = profile.dryMatterFraction.value_or(1.0);
  if (!isAbove0(dryMatter) || dryMatter > 1.0)
    refuse(inner, "the share of dry matter must be above 0 and at most 1");
  refuseUnsoundRules(inner, profile);
  refuseUnsoundSteps(inner, record);
  refuseUnsoundParents(inner, record);
  refuseOutOfOrder(inner, id, record);
  refuseDraftInUse(inner, record);
}

void refuseUnsound(Collection::Inner& inner, long long id, const EnergyPlanRecord& record) {
  if (!codeIsThere(inner, "animal_group", record.group)) refuse(inner, "there is no group " + record.group);
  const auto other = loadRow<EnergyPlanRecord>(
      inner, "WHERE group_code = :code AND from_day = :day AND id <> :id", record.group, record.from, id);
  if (other)
    refuse(inner, fmt::format("{} has an energy plan from {} already", record.group,
                              quantity::isoDate(record.from)));
  refuseUnsoundPlan(inner, record.plan);
}

void refuseUnsound(Collection::Inner& inner, long long id, const animal::FoodCaution& caution) {
  if (caution.id.empty()) refuse(inner, "a caution needs a code");
  if (caution.reason.empty()) refuse(inner, "a caution needs a reason");
  refuseTakenCode(inner, "house_caution", "caution", caution.id, id);
}

void refuseInUse(Collection::Inner& inner, const ProfileRecord& record) {
  const ProfileReference self{record.profile.code, record.profile.version};
  refuseRow(inner, "diet_version WHERE profile = :profile", worded(self),
            "a diet is judged by " + worded(self));
  refuseRow(inner, "target_profile WHERE parent = :parent", worded(self),
            "another profile takes over from " + worded(self));
  const bool isLast = loadRows<ProfileRecord>(inner, "WHERE code = :code", record.profile.code).size() == 1;
  if (isLast)
    refuseRow(inner, "animal_group WHERE profile = :code", record.profile.code,
              "a group is fed by " + record.profile.code);
}

std::string nameOf(const ProfileRecord& record) {
  return fmt::format("the target profile {} {}", record.profile.code, record.profile.version);
}

std::string nameOf(const EnergyPlanRecord& record) {
  return fmt::format("the energy plan of {} from {}", record.group, quantity::isoDate(record.from));
}

std::string nameOf(const animal::FoodCaution& caution) {
  return "the caution " + caution.id;
}

}  // namespace tarebowl::store
