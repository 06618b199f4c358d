// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/food_lot.h"
#include "core/store/record_table.h"

/// How lots stand in their table (migrations/0007_lots.sql).
namespace tarebowl::store {

template <>
struct Table<intake::FoodLot> {
  static constexpr const char* kName = "food_lot";
  static constexpr const char* kSubject = "lot";
  template <class Thing, class Visit>
  static void columns(Thing& lot, Visit visit) {
    visit("food", lot.food);
    visit("lot", lot.lot);
    visit("from_day", lot.from);
    visit("who", lot.who);
    visit("note", lot.note);
  }
};

}  // namespace tarebowl::store
