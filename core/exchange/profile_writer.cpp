// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/profile_json.h"
#include "core/exchange/rule_writer.h"
#include "core/exchange/safety_json.h"

namespace tarebowl::exchange {

namespace {

Json writeReference(const animal::ProfileReference& reference) {
  return {{"code", reference.code}, {"version", reference.version}};
}

Json writeProfileTarget(const animal::ProfileTarget& rule) {
  Json json = writeTarget(rule.target);
  put(json, "preferred", rule.preferred);
  if (rule.safeUpperLimit) json["safe_upper_limit"] = true;
  if (rule.lifted)
    json["lifted"] = {{"who", rule.lifted->who}, {"on", rule.lifted->on}, {"reason", rule.lifted->reason}};
  putText(json, "note", rule.note);
  return json;
}

Json writeProfileRatio(const animal::ProfileRatio& rule) {
  Json json = writeRatio(rule.target);
  put(json, "preferred", rule.preferred);
  putText(json, "note", rule.note);
  return json;
}

Json writeDropped(const animal::DroppedRule& dropped) {
  return {{"id", dropped.id}, {"reason", dropped.reason}};
}

/// A rule in force, with where it comes from.
template <class Rule, class Write>
auto withDescent(Write write) {
  return [write](const animal::InForce<Rule>& entry) {
    Json json = write(entry.rule);
    json["stated_in"] = writeReference(entry.descent.statedIn);
    if (!entry.descent.inPlaceOf.empty())
      json["in_place_of"] = writeList(entry.descent.inPlaceOf, writeReference);
    return json;
  };
}

void putFacts(Json& json, const animal::TargetProfile& profile) {
  putText(json, "model_species", profile.modelSpecies);
  putText(json, "why_model", profile.whyModel);
  putText(json, "life_stage", profile.lifeStage);
  put(json, "kcal_per_g_dm", profile.kcalPerGramDryMatter);
  put(json, "dm_fraction", profile.dryMatterFraction);
  putText(json, "note", profile.note);
  if (profile.starter) json["starter"] = true;
  if (profile.invented) json["invented"] = true;
}

template <class List, class Write>
void putList(Json& json, const char* key, const List& list, Write write) {
  if (!list.empty()) json[key] = writeList(list, write);
}

}  // namespace

std::string writeProfile(const animal::TargetProfile& profile) {
  Json json{{"format", kProfileFormat},
            {"code", profile.code},
            {"version", profile.version},
            {"name", profile.name}};
  if (profile.parent) json["parent"] = writeReference(*profile.parent);
  putFacts(json, profile);
  putList(json, "targets", profile.targets, writeProfileTarget);
  putList(json, "ratios", profile.ratios, writeProfileRatio);
  putList(json, "shares", profile.shares, writeShare);
  putList(json, "choices", profile.choices, writeChoice);
  putList(json, "exclusions", profile.exclusions, writeExclusion);
  putList(json, "dropped", profile.dropped, writeDropped);
  return toText(json);
}

std::string writeTargets(const animal::ResolvedProfile& resolved, const TargetsHead& head) {
  const animal::TargetProfile& profile = resolved.profile;
  Json json{{"format", "tarebowl-targets/1"}, {"group", head.group}, {"day", head.day}};
  Json& described = json["profile"];
  described = {{"code", profile.code}, {"version", profile.version}, {"name", profile.name}};
  putFacts(described, profile);
  json["takes_over_from"] = writeList(resolved.ancestors, writeReference);
  using animal::ChoiceRule;
  using animal::DroppedRule;
  using animal::Exclusion;
  using animal::ProfileRatio;
  using animal::ProfileTarget;
  using animal::ShareRule;
  json["targets"] = writeList(resolved.targets, withDescent<ProfileTarget>(writeProfileTarget));
  json["ratios"] = writeList(resolved.ratios, withDescent<ProfileRatio>(writeProfileRatio));
  json["shares"] = writeList(resolved.shares, withDescent<ShareRule>(writeShare));
  json["choices"] = writeList(resolved.choices, withDescent<ChoiceRule>(writeChoice));
  json["exclusions"] = writeList(resolved.exclusions, withDescent<Exclusion>(writeExclusion));
  json["dropped"] = writeList(resolved.dropped, withDescent<DroppedRule>(writeDropped));
  return toText(json);
}

}  // namespace tarebowl::exchange
