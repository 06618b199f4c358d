// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/target_rows.h"

#include "ui/shared/format.h"
#include "ui/shared/nutrient_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace tarebowl::ui {
namespace {

struct Rows {
  Q_DECLARE_TR_FUNCTIONS(Rows)
};

constexpr double kPercent = 100.0;

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

std::optional<double> inPercent(std::optional<double> share) {
  return share ? std::optional(kPercent * *share) : std::nullopt;
}

QString shareUnit(quantity::Basis basis) {
  if (basis == quantity::Basis::AsFed) return Rows::tr("% as fed");
  return basis == quantity::Basis::Energy ? Rows::tr("% of energy") : Rows::tr("% of DM");
}

TargetRow rowOf(const animal::InForce<animal::ProfileTarget>& entry) {
  const animal::Target& target = entry.rule.target;
  return {.kind = RuleKind::Target,
          .id = target.id,
          .name = nutrientName(target.nutrient),
          .min = target.min,
          .preferred = entry.rule.preferred,
          .max = target.max,
          .unit = unitPerBasis(target.unit, target.basis),
          .hard = target.hard || animal::maxIsHard(entry.rule),
          .safeUpperLimit = entry.rule.safeUpperLimit,
          .lifted = entry.rule.lifted,
          .origin = target.origin,
          .note = text(entry.rule.note),
          .descent = entry.descent};
}

TargetRow rowOf(const animal::InForce<animal::ProfileRatio>& entry) {
  const animal::RatioTarget& ratio = entry.rule.target;
  return {.kind = RuleKind::Ratio,
          .id = ratio.id,
          .name = Rows::tr("%1 : %2").arg(nutrientName(ratio.of), nutrientWithin(ratio.to)),
          .min = ratio.min,
          .preferred = entry.rule.preferred,
          .max = ratio.max,
          .hard = ratio.hard,
          .origin = ratio.origin,
          .note = text(entry.rule.note),
          .descent = entry.descent};
}

TargetRow rowOf(const animal::InForce<animal::ShareRule>& entry) {
  const animal::ShareRule& share = entry.rule;
  return {.kind = RuleKind::Share,
          .id = share.id,
          .name = Rows::tr("share of %1").arg(text(share.group)),
          .min = inPercent(share.min),
          .max = inPercent(share.max),
          .unit = shareUnit(share.basis),
          .hard = share.hard,
          .origin = share.origin,
          .descent = entry.descent};
}

TargetRow rowOf(const animal::InForce<animal::ChoiceRule>& entry) {
  const animal::ChoiceRule& choice = entry.rule;
  TargetRow row{.kind = RuleKind::Choice,
                .id = animal::idOf(choice),
                .name = Rows::tr("foods of %1").arg(text(choice.group)),
                .min = choice.atLeast,
                .unit = Rows::tr("foods a day"),
                .hard = true,
                .descent = entry.descent};
  if (choice.atMost) row.max = *choice.atMost;
  if (choice.minEach.value() > 0.0)
    row.note = Rows::tr("at least %1 g of each").arg(stated(choice.minEach.value()));
  return row;
}

TargetRow rowOf(const animal::InForce<animal::Exclusion>& entry) {
  const animal::Exclusion& exclusion = entry.rule;
  return {.kind = RuleKind::Exclusion,
          .id = exclusion.id,
          .name = Rows::tr("no %1").arg(text(exclusion.group.empty() ? exclusion.food : exclusion.group)),
          .hard = true,
          .origin = exclusion.origin,
          .note = text(exclusion.reason),
          .descent = entry.descent};
}

TargetRow rowOf(const animal::InForce<animal::DroppedRule>& entry) {
  return {.kind = RuleKind::Dropped,
          .id = entry.rule.id,
          .name = Rows::tr("not taken over: %1").arg(text(entry.rule.id)),
          .note = text(entry.rule.reason),
          .descent = entry.descent};
}

template <class Rule>
const Rule* ruleOf(const std::vector<animal::InForce<Rule>>& list, const std::string& id) {
  for (const auto& entry : list) {
    if constexpr (requires { entry.rule.target.id; }) {
      if (entry.rule.target.id == id) return &entry.rule;
    } else {
      if (entry.rule.id == id) return &entry.rule;
    }
  }
  return nullptr;
}

const std::string& idOf(const animal::ProfileTarget& rule) {
  return rule.target.id;
}
const std::string& idOf(const animal::ProfileRatio& rule) {
  return rule.target.id;
}
const std::string& idOf(const animal::ShareRule& rule) {
  return rule.id;
}

/// Stated by the profile itself from now on.
template <class Rule>
void state(std::vector<Rule>& own, const Rule& rule) {
  const auto place =
      std::find_if(own.begin(), own.end(), [&](const Rule& one) { return idOf(one) == idOf(rule); });
  if (place == own.end())
    own.push_back(rule);
  else
    *place = rule;
}

/// change(bounds of the rule) on a copy of the rule in force, put into the profile.
template <class Change>
animal::TargetProfile changed(const animal::ResolvedProfile& resolved, const TargetRow& row, Change change) {
  animal::TargetProfile after = resolved.profile;
  if (const auto* target = ruleOf(resolved.targets, row.id);
      row.kind == RuleKind::Target && target != nullptr) {
    animal::ProfileTarget rule = *target;
    change(rule.target, &rule.preferred);
    state(after.targets, rule);
  } else if (const auto* ratio = ruleOf(resolved.ratios, row.id);
             row.kind == RuleKind::Ratio && ratio != nullptr) {
    animal::ProfileRatio rule = *ratio;
    change(rule.target, &rule.preferred);
    state(after.ratios, rule);
  } else if (const auto* share = ruleOf(resolved.shares, row.id);
             row.kind == RuleKind::Share && share != nullptr) {
    animal::ShareRule rule = *share;
    change(rule, nullptr);
    state(after.shares, rule);
  }
  return after;
}

void makeHouse(animal::TargetOrigin& origin) {
  if (origin.provenance == animal::Provenance::HouseRule) return;
  const std::string was = origin.source;
  origin.provenance = animal::Provenance::HouseRule;
  origin.source = was.empty() ? std::string() : "changed from: " + was;
}

bool isSound(const TargetRow& row) {
  if (!row.min && !row.max) return false;
  if (row.min && row.max && *row.min > *row.max) return false;
  if (!row.preferred) return true;
  return (!row.min || *row.preferred >= *row.min) && (!row.max || *row.preferred <= *row.max);
}

}  // namespace

std::vector<TargetRow> targetRows(const animal::ResolvedProfile& profile) {
  std::vector<TargetRow> rows;
  const auto add = [&](const auto& list) {
    for (const auto& entry : list) rows.push_back(rowOf(entry));
  };
  add(profile.targets);
  add(profile.ratios);
  add(profile.shares);
  add(profile.choices);
  add(profile.exclusions);
  add(profile.dropped);
  return rows;
}

std::optional<animal::TargetProfile> withBound(const animal::ResolvedProfile& profile, const TargetRow& row,
                                               RuleField field, std::optional<double> value) {
  TargetRow after = row;
  (field == RuleField::Min ? after.min : field == RuleField::Max ? after.max : after.preferred) = value;
  if (!isSound(after) || (row.safeUpperLimit && !after.max)) return std::nullopt;
  const double scale = row.kind == RuleKind::Share ? kPercent : 1.0;
  const auto scaled = [&](std::optional<double> bound) {
    return bound ? std::optional(*bound / scale) : std::nullopt;
  };
  return changed(profile, row, [&](auto& rule, std::optional<double>* preferred) {
    rule.min = scaled(after.min);
    rule.max = scaled(after.max);
    if (preferred != nullptr) *preferred = after.preferred;
    makeHouse(rule.origin);
  });
}

animal::TargetProfile withHardness(const animal::ResolvedProfile& profile, const TargetRow& row, bool hard) {
  return changed(profile, row, [&](auto& rule, std::optional<double>* /*preferred*/) { rule.hard = hard; });
}

animal::TargetProfile withLifted(animal::TargetProfile profile, const std::string& id,
                                 const animal::LiftedLimit& lifted) {
  for (animal::ProfileTarget& rule : profile.targets)
    if (rule.target.id == id) rule.lifted = lifted;
  return profile;
}

animal::TargetProfile without(const animal::ResolvedProfile& profile, const TargetRow& row,
                              const std::string& reason) {
  animal::TargetProfile after = profile.profile;
  const auto isIt = [&](const auto& rule) { return idOf(rule) == row.id; };
  std::erase_if(after.targets, isIt);
  std::erase_if(after.ratios, isIt);
  std::erase_if(after.shares, isIt);
  std::erase_if(after.choices,
                [&](const animal::ChoiceRule& choice) { return animal::idOf(choice) == row.id; });
  std::erase_if(after.exclusions, [&](const animal::Exclusion& one) { return one.id == row.id; });
  std::erase_if(after.dropped, [&](const animal::DroppedRule& one) { return one.id == row.id; });
  const animal::ProfileReference self{after.code, after.version};
  const bool inherited = row.descent.statedIn != self || !row.descent.inPlaceOf.empty();
  if (inherited && row.kind != RuleKind::Dropped) after.dropped.push_back({row.id, reason});
  return after;
}

bool liftsLimit(const TargetRow& row, RuleField field, std::optional<double> value) {
  return row.safeUpperLimit && field == RuleField::Max && row.max && value && *value > *row.max;
}

}  // namespace tarebowl::ui
