// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_tables.h"

/// How target profiles, energy plans and cautions stand in their tables (migrations/0002_animals.sql).
namespace tarebowl::store {

template <class Origin, class Visit>
void visitOrigin(Origin& origin, Visit visit) {
  visit("source", origin.source);
  visit("provenance", origin.provenance);
  visit("origin_species", origin.modelSpecies);
}

template <>
struct Table<animal::ProfileTarget> {
  static animal::ProfileTarget blank() {
    return {.target = {.id = {},
                       .nutrient = food::NutrientId(0),
                       .min = {},
                       .max = {},
                       .unit = quantity::Unit::Gram,
                       .basis = quantity::Basis::DryMatter,
                       .origin = {}}};
  }
  template <class Thing, class Visit>
  static void columns(Thing& rule, Visit visit) {
    visit("rule", rule.target.id);
    visit("nutrient", rule.target.nutrient);
    visit("least", rule.target.min);
    visit("most", rule.target.max);
    visit("unit", rule.target.unit);
    visit("basis", rule.target.basis);
    visit("hard", rule.target.hard);
    visit("weight", rule.target.weight);
    visit("preferred", rule.preferred);
    visit("safe_upper_limit", rule.safeUpperLimit);
    visit("lifted", rule.lifted);
    visit("note", rule.note);
    visitOrigin(rule.target.origin, visit);
  }
};

template <>
struct Table<animal::ProfileRatio> {
  static animal::ProfileRatio blank() {
    return {.target = {.id = {},
                       .of = food::NutrientId(0),
                       .to = food::NutrientId(0),
                       .min = {},
                       .max = {},
                       .origin = {}}};
  }
  template <class Thing, class Visit>
  static void columns(Thing& rule, Visit visit) {
    visit("rule", rule.target.id);
    visit("nutrient", rule.target.of);
    visit("to_nutrient", rule.target.to);
    visit("least", rule.target.min);
    visit("most", rule.target.max);
    visit("hard", rule.target.hard);
    visit("weight", rule.target.weight);
    visit("preferred", rule.preferred);
    visit("note", rule.note);
    visitOrigin(rule.target.origin, visit);
  }
};

template <>
struct Table<animal::ShareRule> {
  template <class Thing, class Visit>
  static void columns(Thing& rule, Visit visit) {
    visit("rule", rule.id);
    visit("food_group", rule.group);
    visit("least", rule.min);
    visit("most", rule.max);
    visit("basis", rule.basis);
    visit("hard", rule.hard);
    visit("weight", rule.weight);
    visitOrigin(rule.origin, visit);
  }
};

template <>
struct Table<animal::ChoiceRule> {
  template <class Thing, class Visit>
  static void columns(Thing& rule, Visit visit) {
    visit("food_group", rule.group);
    visit("at_least", rule.atLeast);
    visit("at_most", rule.atMost);
    visit("min_each_g", rule.minEach);
  }
};

template <>
struct Table<animal::Exclusion> {
  template <class Thing, class Visit>
  static void columns(Thing& rule, Visit visit) {
    visit("rule", rule.id);
    visit("food_group", rule.group);
    visit("food", rule.food);
    visit("reason", rule.reason);
    visitOrigin(rule.origin, visit);
  }
};

template <>
struct Table<animal::DroppedRule> {
  template <class Thing, class Visit>
  static void columns(Thing& dropped, Visit visit) {
    visit("rule", dropped.id);
    visit("reason", dropped.reason);
  }
};

template <>
struct Table<ProfileStep> {
  template <class Thing, class Visit>
  static void columns(Thing& step, Visit visit) {
    visit("step", step.kind);
    visit("from_day", step.from);
    visit("who", step.who);
    visit("at", step.at);
    visit("reason", step.reason);
  }
};

template <>
struct Table<ProfileRecord> {
  static constexpr const char* kName = "target_profile";
  static constexpr const char* kSubject = "target profile";
  template <class Thing, class Visit>
  static void columns(Thing& record, Visit visit) {
    auto& profile = record.profile;
    visit("code", profile.code);
    visit("version", profile.version);
    visit("name", profile.name);
    visit("parent", profile.parent);
    visit("model_species", profile.modelSpecies);
    visit("why_model", profile.whyModel);
    visit("life_stage", profile.lifeStage);
    visit("kcal_per_g_dm", profile.kcalPerGramDryMatter);
    visit("dm_fraction", profile.dryMatterFraction);
    visit("note", profile.note);
    visit("starter", profile.starter);
    visit("invented", profile.invented);
  }
  template <class Thing, class Visit>
  static void parts(Thing& record, Visit visit) {
    visit("profile_target", record.profile.targets);
    visit("profile_ratio", record.profile.ratios);
    visit("profile_share", record.profile.shares);
    visit("profile_choice", record.profile.choices);
    visit("profile_exclusion", record.profile.exclusions);
    visit("profile_dropped", record.profile.dropped);
    visit("profile_step", record.steps);
  }
};

template <>
struct Table<animal::EnergyFactor> {
  template <class Thing, class Visit>
  static void columns(Thing& factor, Visit visit) {
    visit("kind", factor.kind);
    visit("words", factor.words);
    visit("low", factor.low);
    visit("high", factor.high);
    visit("of_level", factor.of);
    visitOrigin(factor.origin, visit);
  }
};

template <>
struct Table<EnergyPlanRecord> {
  static constexpr const char* kName = "energy_plan";
  static constexpr const char* kSubject = "energy plan";
  template <class Thing, class Visit>
  static void columns(Thing& record, Visit visit) {
    visit("group_code", record.group);
    visit("from_day", record.from);
    visit("animals", record.plan.group);
    visit("level", record.plan.level);
    visit("coefficient", record.plan.coefficient);
    visit("exponent", record.plan.exponent);
    visit("validity", record.plan.validity);
    visit("lightest_kg", record.plan.lightest);
    visit("heaviest_kg", record.plan.heaviest);
    visit("follows_temperature", record.plan.followsTemperature);
    visitOrigin(record.plan.origin, visit);
    visit("note", record.note);
  }
  template <class Thing, class Visit>
  static void parts(Thing& record, Visit visit) {
    visit("energy_factor", record.plan.factors);
  }
};

template <>
struct Table<animal::FoodCaution> {
  static constexpr const char* kName = "house_caution";
  static constexpr const char* kSubject = "house caution";
  template <class Thing, class Visit>
  static void columns(Thing& caution, Visit visit) {
    visit("code", caution.id);
    visit("severity", caution.severity);
    visit("reason", caution.reason);
    visit("advice", caution.advice);
    visitOrigin(caution.origin, visit);
  }
  template <class Thing, class Visit>
  static void parts(Thing& caution, Visit visit) {
    visit("caution_word", caution.words);
    visit("caution_group", caution.groups);
    visit("caution_form", caution.forms);
    visit("caution_taxon", caution.taxa);
  }
};

}  // namespace tarebowl::store
