// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/faeces.h"
#include "core/store/record_table.h"

/// How collected faeces stand in their tables (migrations/0009_faeces.sql).
namespace tarebowl::store {

template <>
struct Table<intake::FaecesValue> {
  template <class Thing, class Visit>
  static void columns(Thing& value, Visit visit) {
    visit("nutrient", value.nutrient);
    visit("per_100g_dm", value.per100gDryMatter);
    visit("sd", value.sd);
  }
};

template <>
struct Table<intake::FaecesCollected> {
  static constexpr const char* kName = "faeces_collected";
  static constexpr const char* kSubject = "faeces";
  template <class Thing, class Visit>
  static void columns(Thing& faeces, Visit visit) {
    visit("group_code", faeces.group);
    visit("from_day", faeces.from);
    visit("until_day", faeces.until);
    visit("fresh_g", faeces.fresh);
    visit("dry_matter", faeces.dryMatter);
    visit("dry_matter_sd", faeces.dryMatterSd);
    visit("source", faeces.source);
    visit("who", faeces.who);
    visit("note", faeces.note);
  }
  template <class Thing, class Visit>
  static void parts(Thing& faeces, Visit visit) {
    visit("faeces_value", faeces.values);
  }
};

}  // namespace tarebowl::store
