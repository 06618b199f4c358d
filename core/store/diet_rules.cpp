// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/diet_tables.h"
#include "core/store/record_rules.h"
#include "core/store/rotation_tables.h"
#include "core/store/rule_queries.h"
#include "core/store/structure_rules.h"

#include <fmt/format.h>

#include <cmath>

namespace tarebowl::store {

namespace {

using diet::DietVersion;
using diet::VersionProblem;
using diet::VersionState;

std::string worded(const VersionRecord& record) {
  return fmt::format("version {} of {}", record.version.number, record.diet);
}

/// After the name of the food.
std::string_view wordsFor(VersionProblem problem) {
  switch (problem) {
    case VersionProblem::NoFood:
      return "a line names no food";
    case VersionProblem::AmountNegative:
      return "its grams must be 0 or more";
    case VersionProblem::MinAboveMax:
      return "its minimum is above its maximum";
    case VersionProblem::FoodTwiceInAMeal:
      return "it stands twice in one meal";
    case VersionProblem::AllowanceTurnedRound:
      return "the low end of its allowance is above the high end";
  }
  return "it is not sound";
}

/// A draft may be wrong in many ways, but its amounts are numbers.
void refuseNoNumbers(const Collection::Inner& inner, const DietVersion& version) {
  const auto refuseNoNumber = [&](const std::string& food, quantity::Grams amount) {
    if (!std::isfinite(amount.value())) refuse(inner, food + ": its grams must be a number");
  };
  for (const diet::DietLine& line : version.lines)
    for (const quantity::Grams amount : {line.amount, line.min, line.max.value_or(line.min)})
      refuseNoNumber(line.food, amount);
  for (const diet::Allowance& allowance : version.allowances)
    for (const quantity::Grams amount : {allowance.low, allowance.high})
      refuseNoNumber(allowance.food, amount);
  for (const diet::ChangedBound& bound : version.changedBounds)
    if (!std::isfinite(bound.min.value_or(0.0)) || !std::isfinite(bound.max.value_or(0.0)))
      refuse(inner, bound.rule + ": a bound must be a number");
}

/// What nobody can weigh in or judge stays a draft.
void refuseUnjudgeable(Collection::Inner& inner, const VersionRecord& record) {
  const DietVersion& version = record.version;
  if (const auto findings = diet::problemsWith(version); !findings.empty()) {
    const std::string& food = findings.front().food;
    refuse(inner, fmt::format("{}: {}{}{}", worded(record), food, food.empty() ? "" : ": ",
                              wordsFor(findings.front().problem)));
  }
  if (version.lines.empty() && version.allowances.empty())
    refuse(inner, worded(record) + " has nothing in it");
  if (version.profile.code.empty())
    refuse(inner, worded(record) + " names no targets that it could be judged by");
}

void refuseUnknownProfile(Collection::Inner& inner, const VersionRecord& record) {
  const animal::ProfileReference& reference = record.version.profile;
  if (reference.code.empty()) return;
  const auto profile = loadRow<ProfileRecord>(inner, "WHERE code = :code AND version = :version",
                                              reference.code, reference.version);
  if (!profile)
    refuse(inner, fmt::format("there is no target profile {} {}", reference.code, reference.version));
  if (record.version.state == VersionState::Approved && profile->record.steps.empty())
    refuse(inner, fmt::format("the targets {} {} are a draft and may still change; put them in force first",
                              reference.code, reference.version));
}

/// Who brought a version where it is, and why: each step goes on from the one before.
void refuseUnsoundSteps(const Collection::Inner& inner, const VersionRecord& record) {
  VersionState state = VersionState::Draft;
  for (const diet::VersionStep& step : record.version.steps) {
    if (!diet::mayGo(state, step.to))
      refuse(inner, fmt::format("{} is {}: it cannot become {}", worded(record), symbolOf(state),
                                symbolOf(step.to)));
    if (step.reason.empty() && step.to != VersionState::Submitted)
      refuse(inner, fmt::format("say why {} becomes {}", worded(record), symbolOf(step.to)));
    state = step.to;
  }
  if (state != record.version.state)
    refuse(inner, fmt::format("{} is said to be {}, and its steps led to {}", worded(record),
                              symbolOf(record.version.state), symbolOf(state)));
}

/// What was decided on, and from which day it is fed, is known of what was approved, and of nothing else.
void refuseUnsoundDecision(const Collection::Inner& inner, const VersionRecord& record) {
  const VersionState state = record.version.state;
  const bool decided = state == VersionState::Approved || state == VersionState::Retired;
  if (decided && (!record.decided || record.decided->problem.empty() || record.decided->result.empty()))
    refuse(inner, "an approval needs what was decided on: the problem and its result");
  if (decided != record.decided.has_value() || decided != record.version.fedFrom.has_value())
    refuse(inner, worded(record) + " has a first day and a decision once it is approved, not before");
  if (record.version.phaseInDays < 0) refuse(inner, "a diet is phased in over 0 days or more");
}

}  // namespace

void refuseUnsound(Collection::Inner& inner, long long id, const diet::NamedDiet& diet) {
  if (diet.code.empty()) refuse(inner, "a diet needs a code");
  if (diet.name.empty()) refuse(inner, "a diet needs a name");
  refuseTakenCode(inner, "diet", "diet", diet.code, id);
  if (!codeIsThere(inner, "animal_group", diet.group)) refuse(inner, "there is no group " + diet.group);
}

void refuseUnsound(Collection::Inner& inner, long long id, const VersionRecord& record) {
  const DietVersion& version = record.version;
  if (!codeIsThere(inner, "diet", record.diet)) refuse(inner, "there is no diet " + record.diet);
  if (version.number < 1) refuse(inner, "the versions of a diet count from 1");
  const auto other = loadRow<VersionRecord>(inner, "WHERE diet = :diet AND number = :number AND id <> :id",
                                            record.diet, version.number, id);
  if (other) refuse(inner, "there is another " + worded(record));
  const double chance = version.confidence.value_or(0.75);
  if (!(chance > 0.5 && chance < 1.0)) refuse(inner, "a confidence is above 50 % and below 100 %");
  for (const animal::ShareRule& rule : version.shares) refuseUnsoundShare(inner, rule);
  for (const animal::ChoiceRule& rule : version.choices) refuseUnsoundChoice(inner, rule);
  refuseNoNumbers(inner, version);
  if (version.state != VersionState::Draft) refuseUnjudgeable(inner, record);
  refuseUnsoundSteps(inner, record);
  refuseUnsoundDecision(inner, record);
  refuseUnknownProfile(inner, record);
}

void refuseInUse(Collection::Inner& inner, const diet::NamedDiet& diet) {
  refuseRow(inner, "diet_version WHERE diet = :code", diet.code,
            diet.code + " has versions; drafts can be removed, and what was fed is kept");
}

void refuseInUse(Collection::Inner& inner, const VersionRecord& record) {
  const auto rotation = loadRow<diet::KeptRotation>(inner, "WHERE diet = :diet AND version = :version",
                                                    record.diet, record.version.number);
  if (rotation) refuse(inner, worded(record) + " has " + nameOf(rotation->record) + ": remove that first");
}

void refuseTakingBack(Collection::Inner& inner, const VersionRecord& record) {
  if (record.version.state == VersionState::Approved)
    refuse(inner, worded(record) + " is approved and never changes: retire it, or make a new version");
}

std::string nameOf(const diet::NamedDiet& diet) {
  return "the diet " + diet.code;
}

std::string nameOf(const VersionRecord& record) {
  return worded(record);
}

}  // namespace tarebowl::store
