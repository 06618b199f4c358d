// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the kitchen writes, and the sheet as it is afterwards.
#include "core/store/feeding_verbs.h"
#include "core/store/kitchen_delivery.h"
#include "core/store/lot_verbs.h"
#include "core/store/station_outbox.h"
#include "core/store/swap_verbs.h"
#include "ui/kitchen/kitchen_desk.h"

#include <QRandomGenerator>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {

using quantity::Grams;

namespace {

void openWhereItIsNot(store::Collection& collection, const intake::PrepSheet& sheet,
                      const store::Author& author) {
  if (std::ranges::any_of(sheet.bowls, [](const intake::PrepBowl& bowl) { return !bowl.opened; }))
    transfer::openDay(collection, sheet, author);
}

/// Above 0, and the same for no other entry in the world.
std::int64_t randomId() {
  constexpr quint64 kPositive = 0x7fffffffffffffff;
  return static_cast<std::int64_t>(QRandomGenerator::system()->generate64() & kPositive) | 1;
}

}  // namespace

void KitchenDesk::write(Work work, Then then) {
  if (collection_.isOnCopy()) return emit waitsForServer();
  ++writing_;
  const SheetOf of{section_, day_};
  collection_.ask(
      [work = std::move(work), author = collection_.author(), of](store::Collection& collection) {
        Written written{.kept = work(collection, author)};
        written.sheet = readKitchenSheet(collection, of.section, of.day);
        return written;
      },
      [this, then, of](Written written) { takeWritten(std::move(written), of, then); });
}

void KitchenDesk::takeWritten(Written written, const SheetOf& of, Then then) {
  writing_ = std::max(0, writing_ - 1);
  if (of.section == section_ && of.day == day_ && written.sheet) {
    take(std::move(*written.sheet));
    if (then == Then::GoOn) goOn();
  }
  if (then == Then::GoOn) emit weighed(written.kept == store::Kept::Second);
  emit collection_.written(this);
  emit settled();
}

store::KitchenEntry KitchenDesk::entryOf(store::Noted noted, store::NotedValue value,
                                         const QString& reason) const {
  const int line = noted == store::Noted::Remainder ? 0 : item()->item;
  store::KitchenEntry entry{.id = randomId(),
                            .section = sheet_->sheet.section,
                            .bowl = store::asPlanned(bowl()->bowl),
                            .noted = noted,
                            .item = line,
                            .value = value,
                            .reason = reason.toStdString(),
                            .author = collection_.author()};
  if (const auto seen = store::valueThatCounts(bowl()->bowl, line, noted)) entry.seen = seen->value;
  // With the first weight the whole sheet is opened.
  if (noted == store::Noted::Weight)
    for (const intake::PrepBowl& beside : sheet_->sheet.bowls)
      if (!beside.opened && beside.bowl.key != bowl()->bowl.key) entry.beside.push_back(beside.bowl);
  return entry;
}

void KitchenDesk::record(store::KitchenEntry entry) {
  ++writing_;
  KitchenStation* const station = collection_.station();
  // What was written down before goes first: it may be of the same food.
  if (collection_.isOnCopy() || (station != nullptr && station->count().waiting > 0))
    return keepForLater(entry);
  const bool hasCopy = station != nullptr && station->copy();
  const SheetOf of{section_, day_};
  collection_.ask(
      [entry, of, hasCopy](store::Collection& collection) {
        Written written;
        bool isWritten = false;
        try {
          written.kept = store::writeDown(collection, entry);
          isWritten = true;
          written.sheet = readKitchenSheet(collection, of.section, of.day);
        } catch (const store::StoreError& error) {
          if (error.code() != store::StoreErrorCode::NoServer || !hasCopy) throw;
          written.reached = isWritten;
        }
        return written;
      },
      [this, entry, of](Written written) {
        const bool isGone = !written.sheet;
        if (!written.reached) {
          keepForLater(entry);
        } else {
          if (collection_.station() != nullptr) collection_.station()->follow(entry);
          takeWritten(std::move(written), of, Then::GoOn);
        }
        if (isGone) collection_.missServer();
      });
}

void KitchenDesk::keepForLater(const store::KitchenEntry& entry) {
  const SheetOf of{section_, day_};
  collection_.station()->ask(
      [entry, of](store::Collection& copy) {
        Written written{.kept = store::keepForLater(copy, entry)};
        written.sheet = readKitchenSheet(copy, of.section, of.day);
        return written;
      },
      [this, of](Written written) {
        takeWritten(std::move(written), of, Then::GoOn);
        if (collection_.station() == nullptr) return;
        collection_.station()->look();
        if (!collection_.isCutOff()) collection_.station()->send(collection_.author());
      });
}

void KitchenDesk::weigh(Grams actual) {
  if (item() != nullptr) record(entryOf(store::Noted::Weight, {.grams = actual}));
}

void KitchenDesk::swapFood(intake::SwapMade made) {
  if (!sheet_) return;
  write([made = std::move(made), sheet = sheet_->sheet](store::Collection& collection,
                                                        const store::Author& author) {
    openWhereItIsNot(collection, sheet, author);
    (void)store::addSwap(collection, made, author);
    return store::Kept::First;
  });
}

void KitchenDesk::correct(Grams actual, const QString& reason) {
  if (item() != nullptr) record(entryOf(store::Noted::Weight, {.grams = actual}, reason));
}

void KitchenDesk::noteLeft(const LeftInBowl& what) {
  if (item() != nullptr) record(entryOf(store::Noted::Leftover, {what.kind, what.left, what.lost}));
}

void KitchenDesk::correctLeft(const LeftInBowl& what, const QString& reason) {
  if (item() != nullptr) record(entryOf(store::Noted::Leftover, {what.kind, what.left, what.lost}, reason));
}

void KitchenDesk::noteRemainder(Grams left) {
  if (bowl() != nullptr) record(entryOf(store::Noted::Remainder, {.grams = left}));
}

void KitchenDesk::correctRemainder(Grams left, const QString& reason) {
  if (bowl() != nullptr) record(entryOf(store::Noted::Remainder, {.grams = left}, reason));
}

void KitchenDesk::addPan(intake::ControlPan pan) {
  write(
      [pan = std::move(pan)](store::Collection& collection, const store::Author& author) {
        (void)store::addControlPan(collection, pan, author);
        return store::Kept::First;
      },
      Then::Stay);
}

void KitchenDesk::changePan(const store::StoredControlPan& seen, intake::ControlPan changed) {
  write(
      [id = seen.id, revision = seen.revision, changed = std::move(changed)](store::Collection& collection,
                                                                             const store::Author& author) {
        (void)store::editControlPan(collection, id, revision, changed, author);
        return store::Kept::First;
      },
      Then::Stay);
}

void KitchenDesk::removePan(const store::StoredControlPan& seen) {
  write(
      [id = seen.id, revision = seen.revision](store::Collection& collection, const store::Author& author) {
        (void)store::removeControlPan(collection, id, revision, author);
        return store::Kept::First;
      },
      Then::Stay);
}

void KitchenDesk::beginLot(const QString& lot) {
  if (item() == nullptr) return;
  const std::optional<store::StoredLot> now = sheet_->lotOf(item()->food);
  const bool beginsToday = now && now->record.from == day_;
  intake::FoodLot begun = beginsToday ? now->record : intake::FoodLot{.food = item()->food, .from = day_};
  begun.lot = lot.trimmed().toStdString();
  begun.who = collection_.author().who;
  write(
      [begun = std::move(begun), seen = beginsToday ? now : std::nullopt](store::Collection& collection,
                                                                          const store::Author& author) {
        if (seen)
          (void)store::editLot(collection, seen->id, seen->revision, begun, author);
        else
          (void)store::addLot(collection, begun, author);
        return store::Kept::First;
      },
      Then::Stay);
}

void KitchenDesk::setRule(const intake::ToleranceRule& rule) {
  write(
      [rule](store::Collection& collection, const store::Author& author) {
        (void)store::setToleranceRule(collection, rule, author);
        return store::Kept::First;
      },
      Then::Stay);
}

}  // namespace tarebowl::ui
