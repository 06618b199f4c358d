// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/station_copy.h"
#include "core/store/station_outbox.h"
#include "tests/core/store/feeding_days.h"

#include <fmt/format.h>

namespace tarebowl::store {

/// A desk of the kitchen with a file of its own, beside a collection that several desks share.
class CutOffDesk {
 public:
  CutOffDesk(const OwnFolder& folder, const std::string& deskName)
      : name(deskName), file(folder / (deskName + ".desk")), own(openStation(file, kKeeper)) {}

  void takeCopyOf(Collection& shared, const char* today = "2026-11-25", CopyExtent extent = CopyExtent::All) {
    takeCopy(own, ServerRows::read(shared, day(today), extent, kNow));
  }
  /// As the program does when it is started again.
  void startAgain() { own = openStation(file, kKeeper); }

  /// A bowl of the sheet as the desk sees it.
  [[nodiscard]] intake::Bowl bowl(const std::string& group) const {
    return findBowl(own, {group, day("2026-11-25"), 1}).value();
  }

  /// What the keeper of this desk writes down of a food, seconds after half past seven.
  [[nodiscard]] KitchenEntry entry(const std::string& group, int item, double grams, int second) {
    const intake::Bowl there = bowl(group);
    KitchenEntry made{
        .id = ++lastId,
        .section = "Small Mammals",
        .bowl = asPlanned(there),
        .item = item,
        .value = {.grams = quantity::Grams(grams)},
        .author = {name, fmt::format("2026-11-25T07:{:02}:{:02}Z", 30 + second / 60, second % 60)}};
    if (const auto seen = valueThatCounts(there, item, Noted::Weight)) made.seen = seen->value;
    return made;
  }
  Kept weigh(const std::string& group, int item, double grams, int second) {
    return keepForLater(own, entry(group, item, grams, second));
  }
  Kept correct(const std::string& group, int item, double grams, int second) {
    KitchenEntry made = entry(group, item, grams, second);
    made.reason = "misread";
    return keepForLater(own, made);
  }
  SendReport send(Collection& shared) { return sendWaiting(own, shared, name); }

  std::string name;
  std::filesystem::path file;
  Collection own;
  std::int64_t lastId = static_cast<std::int64_t>(std::hash<std::string>{}(name) >> 20U);
};

}  // namespace tarebowl::store
