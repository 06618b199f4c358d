// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/kitchen_entry.h"

#include <algorithm>

namespace tarebowl::store {

using intake::Bowl;
using intake::BowlItem;

namespace {

SignedValue signedValue(const intake::Weighing& entry) {
  return {{.grams = entry.actual}, entry.by};
}

SignedValue signedValue(const intake::Leftover& entry) {
  return {{.kind = entry.kind, .grams = entry.left, .lost = entry.lost}, entry.by};
}

SignedValue signedValue(const intake::MixedRemainder& entry) {
  return {{.grams = entry.left}, entry.by};
}

template <class Entry>
std::optional<SignedValue> counting(const std::vector<Entry>& entries) {
  const auto entry = intake::entryThatCounts(entries);
  return entry ? std::optional(signedValue(*entry)) : std::nullopt;
}

template <class Entry>
bool holds(const std::vector<Entry>& entries, const SignedValue& what) {
  return std::ranges::any_of(entries, [&](const Entry& entry) { return signedValue(entry) == what; });
}

const BowlItem* itemOf(const Bowl& bowl, int item) {
  const auto found = std::ranges::find(bowl.items, item, &BowlItem::item);
  return found == bowl.items.end() ? nullptr : &*found;
}

}  // namespace

const std::string& KitchenEntry::food() const {
  static const std::string kNone;
  const BowlItem* const found = itemOf(bowl, item);
  return found != nullptr ? found->food : kNone;
}

std::optional<SignedValue> valueThatCounts(const Bowl& bowl, int item, Noted noted) {
  if (noted == Noted::Remainder) return counting(bowl.remainders);
  const BowlItem* const found = itemOf(bowl, item);
  if (found == nullptr) return std::nullopt;
  return noted == Noted::Weight ? counting(found->weighings) : counting(found->leftovers);
}

bool isWritten(const Bowl& bowl, int item, Noted noted, const SignedValue& what) {
  if (noted == Noted::Remainder) return holds(bowl.remainders, what);
  const BowlItem* const found = itemOf(bowl, item);
  if (found == nullptr) return false;
  return noted == Noted::Weight ? holds(found->weighings, what) : holds(found->leftovers, what);
}

Bowl asPlanned(Bowl bowl) {
  bowl.remainders.clear();
  for (BowlItem& item : bowl.items) {
    item.weighings.clear();
    item.leftovers.clear();
    item.swap.reset();
    item.swappedOut = false;
  }
  return bowl;
}

}  // namespace tarebowl::store
