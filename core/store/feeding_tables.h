// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/intake_words.h"
#include "core/intake/tolerance.h"
#include "core/store/record_table.h"

/// How swaps, control pans and the rule of weighing stand in their tables (migrations/0004_feeding.sql).
namespace tarebowl::store {

template <>
struct Table<intake::GivenInstead> {
  template <class Thing, class Visit>
  static void columns(Thing& given, Visit visit) {
    visit("food", given.food);
    visit("grams", given.amount);
  }
};

template <>
struct Table<intake::SwapMade> {
  static constexpr const char* kName = "swap_made";
  static constexpr const char* kSubject = "swap";
  template <class Thing, class Visit>
  static void columns(Thing& swap, Visit visit) {
    visit("group_code", swap.instead.bowl.group);
    visit("day", swap.instead.bowl.day);
    visit("bowl", swap.instead.bowl.bowl);
    visit("item", swap.instead.item);
    visit("food", swap.food);
    visit("why", swap.why);
    visit("who", swap.by.who);
    visit("at", swap.by.at);
    visit("approval", swap.approval);
    visit("decided_by", swap.decidedBy.who);
    visit("decided_at", swap.decidedBy.at);
    visit("decision", swap.decision);
  }
  template <class Thing, class Visit>
  static void parts(Thing& swap, Visit visit) {
    visit("swap_given", swap.given);
  }
};

template <>
struct Table<intake::ControlPan> {
  static constexpr const char* kName = "control_pan";
  static constexpr const char* kSubject = "control pan";
  template <class Thing, class Visit>
  static void columns(Thing& pan, Visit visit) {
    visit("place_name", pan.place);
    visit("day", pan.day);
    visit("food", pan.food);
    visit("food_class", pan.foodClass);
    visit("start_g", pan.start);
    visit("end_g", pan.end);
    visit("start_at", pan.startAt);
    visit("end_at", pan.endAt);
    visit("who", pan.who);
    visit("note", pan.note);
  }
};

template <>
struct Table<intake::ToleranceRule> {
  static constexpr const char* kName = "tolerance_rule";
  static constexpr const char* kSubject = "tolerance";
  template <class Thing, class Visit>
  static void columns(Thing& rule, Visit visit) {
    visit("of_step", rule.ofStep);
    visit("least_steps", rule.leastSteps);
    visit("of_bowl", rule.ofBowl);
    visit("of_body", rule.ofBody);
  }
};

}  // namespace tarebowl::store
