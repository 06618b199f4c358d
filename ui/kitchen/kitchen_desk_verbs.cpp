// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the kitchen writes, and the sheet as it is afterwards.
#include "core/store/feeding_verbs.h"
#include "core/store/lot_verbs.h"
#include "core/store/swap_verbs.h"
#include "ui/kitchen/kitchen_desk.h"

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

}  // namespace

void KitchenDesk::write(Work work, Then then) {
  struct Written {
    store::Kept kept = store::Kept::First;
    KitchenSheet sheet{};
  };
  ++writing_;
  collection_.ask(
      [work = std::move(work), author = collection_.author(), section = section_,
       day = day_](store::Collection& collection) {
        Written written{.kept = work(collection, author)};
        written.sheet = readKitchenSheet(collection, section, day);
        return written;
      },
      [this, then, section = section_, day = day_](Written written) {
        writing_ = std::max(0, writing_ - 1);
        if (section == section_ && day == day_) {
          take(std::move(written.sheet));
          if (then == Then::GoOn) goOn();
        }
        if (then == Then::GoOn) emit weighed(written.kept == store::Kept::Second);
        emit collection_.written(this);
        emit settled();
      });
}

void KitchenDesk::weigh(Grams actual) {
  if (item() == nullptr) return;
  const store::WeightRead weight{{bowl()->bowl.key, item()->item}, actual};
  write([weight, sheet = sheet_->sheet](store::Collection& collection, const store::Author& author) {
    openWhereItIsNot(collection, sheet, author);
    return store::weighIn(collection, {&weight, 1}, author).at(0);
  });
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
  if (item() == nullptr) return;
  const store::WeightRead weight{{bowl()->bowl.key, item()->item}, actual};
  write([weight, reason = reason.toStdString()](store::Collection& collection, const store::Author& author) {
    (void)store::correctWeight(collection, weight, reason, author);
    return store::Kept::First;
  });
}

void KitchenDesk::noteLeft(const LeftInBowl& what) {
  if (item() == nullptr) return;
  const store::LeftoverFound found{{bowl()->bowl.key, item()->item}, what.kind, what.left, what.lost};
  write([found](store::Collection& collection, const store::Author& author) {
    return store::noteLeftovers(collection, {&found, 1}, author).at(0);
  });
}

void KitchenDesk::correctLeft(const LeftInBowl& what, const QString& reason) {
  if (item() == nullptr) return;
  const store::LeftoverFound found{{bowl()->bowl.key, item()->item}, what.kind, what.left, what.lost};
  write([found, reason = reason.toStdString()](store::Collection& collection, const store::Author& author) {
    (void)store::correctLeftover(collection, found, reason, author);
    return store::Kept::First;
  });
}

void KitchenDesk::noteRemainder(Grams left) {
  if (bowl() == nullptr) return;
  write([key = bowl()->bowl.key, left](store::Collection& collection, const store::Author& author) {
    return store::noteRemainder(collection, key, left, author);
  });
}

void KitchenDesk::correctRemainder(Grams left, const QString& reason) {
  if (bowl() == nullptr) return;
  write([key = bowl()->bowl.key, left, reason = reason.toStdString()](store::Collection& collection,
                                                                      const store::Author& author) {
    (void)store::correctRemainder(collection, key, left, reason, author);
    return store::Kept::First;
  });
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
