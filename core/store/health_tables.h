// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/health/health_words.h"
#include "core/store/record_table.h"

// SOCI gives the functions their names.
// NOLINTBEGIN(readability-identifier-naming)
template <>
struct soci::type_conversion<tarebowl::health::BloodUnit>
    : soci::symbol_conversion<tarebowl::health::BloodUnit, tarebowl::health::parseBloodUnit> {};
// NOLINTEND(readability-identifier-naming)

/// How observations stand in their tables (migrations/0005_health.sql).
namespace tarebowl::store {

template <>
struct Table<health::FaecalScore> {
  template <class Thing, class Visit>
  static void columns(Thing& score, Visit visit) {
    visit("scale", score.scale);
    visit("score", score.score);
    visit("lowest", score.lowest);
    visit("highest", score.highest);
    visit("ideal", score.ideal);
    visit("softer", score.softer);
  }
};

template <>
struct Table<health::BloodValue> {
  template <class Thing, class Visit>
  static void columns(Thing& value, Visit visit) {
    visit("analyte", value.analyte);
    visit("amount", value.value);
    visit("unit", value.unit);
    visit("low", value.low);
    visit("high", value.high);
  }
};

template <>
struct Table<health::Attachment> {
  template <class Thing, class Visit>
  static void columns(Thing& attachment, Visit visit) {
    visit("path", attachment.path);
    visit("words", attachment.words);
  }
};

template <>
struct Table<health::Observation> {
  static constexpr const char* kName = "observation";
  static constexpr const char* kSubject = "observation";
  template <class Thing, class Visit>
  static void columns(Thing& observation, Visit visit) {
    visit("individual", observation.individual);
    visit("group_code", observation.group);
    visit("on_day", observation.on);
    visit("at_time", observation.time);
    visit("kind", observation.kind);
    visit("appetite", observation.appetite);
    visit("note", observation.note);
    visit("who", observation.who);
  }
  template <class Thing, class Visit>
  static void parts(Thing& observation, Visit visit) {
    visit("observation_score", observation.faeces);
    visit("observation_blood", observation.blood);
    visit("observation_file", observation.attachments);
  }
};

}  // namespace tarebowl::store
