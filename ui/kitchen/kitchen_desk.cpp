// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/kitchen_desk.h"

#include "core/store/feeding_verbs.h"
#include "core/store/swap_verbs.h"

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

KitchenDesk::KitchenDesk(OpenCollection& collection, Clock today, QObject* parent)
    : QObject(parent), collection_(collection), today_(std::move(today)), day_(today_()) {
  connect(&collection_, &OpenCollection::opened, this, &KitchenDesk::startAnew);
  connect(&collection_, &OpenCollection::outdated, this, &KitchenDesk::refresh);
  connect(&collection_, &OpenCollection::refused, this, [this] { reading_ = false; });
  connect(&collection_, &OpenCollection::written, this, [this](const QObject* by) {
    if (by != this) refresh();
  });
}

void KitchenDesk::startAnew() {
  day_ = today_();
  task_ = Task::WeighIn;
  section_.clear();
  sheet_.reset();
  place_.reset();
  refresh();
  emit opened();
  emit taskChanged();
  emit sheetChanged();
}

void KitchenDesk::showSection(const QString& section) {
  if (section.toStdString() == section_) return;
  section_ = section.toStdString();
  place_.reset();
  refresh();
}

void KitchenDesk::showDay(quantity::Date day) {
  if (day == day_) return;
  day_ = day;
  place_.reset();
  refresh();
}

void KitchenDesk::refresh() {
  old_ = collection_.file().has_value();
  if (old_ && inSight_) read();
}

void KitchenDesk::setInSight(bool inSight) {
  inSight_ = inSight;
  if (inSight_ && old_) read();
}

void KitchenDesk::read() {
  reading_ = true;
  old_ = false;
  collection_.ask([section = section_, day = day_](
                      store::Collection& collection) { return readKitchenSheet(collection, section, day); },
                  [this, section = section_, day = day_](KitchenSheet sheet) {
                    if (section == section_ && day == day_) take(std::move(sheet));
                  });
}

void KitchenDesk::take(KitchenSheet sheet) {
  reading_ = false;
  const std::optional<intake::ItemKey> held =
      item() != nullptr ? std::optional(intake::ItemKey{bowl()->bowl.key, item()->item}) : std::nullopt;
  sheet_ = std::move(sheet);
  section_ = sheet_->sheet.section;
  place_.reset();
  for (const SheetLine& line : linesToWeigh(sheet_->sheet)) {
    const intake::PrepBowl& there = sheet_->sheet.bowls[line.bowl];
    if (held && there.bowl.key == held->bowl && there.bowl.items[line.item].item == held->item) place_ = line;
  }
  if (!place_) goOn();
  emit sheetChanged();
  emit placeChanged();
}

const intake::PrepBowl* KitchenDesk::bowl() const {
  return sheet_ && place_ ? &sheet_->sheet.bowls.at(place_->bowl) : nullptr;
}

const intake::BowlItem* KitchenDesk::item() const {
  return bowl() != nullptr ? &bowl()->bowl.items.at(place_->item) : nullptr;
}

Grams KitchenDesk::tolerance() const {
  return item() != nullptr ? transfer::toleranceIn(*bowl(), item()->food, sheet_->judgedBy()) : Grams(0);
}

void KitchenDesk::goTo(SheetLine place) {
  place_ = place;
  emit placeChanged();
}

void KitchenDesk::step(int lines) {
  if (!sheet_ || !place_) return;
  const auto all = linesToWeigh(sheet_->sheet);
  const auto at = std::ranges::find(all, *place_) - all.begin() + lines;
  if (at >= 0 && at < static_cast<std::ptrdiff_t>(all.size())) goTo(all[static_cast<std::size_t>(at)]);
}

void KitchenDesk::stepBowl(int bowls) {
  if (!sheet_ || !place_) return;
  const auto wanted = static_cast<std::ptrdiff_t>(place_->bowl) + bowls;
  for (const SheetLine& line : linesToWeigh(sheet_->sheet))
    if (static_cast<std::ptrdiff_t>(line.bowl) == wanted) return goTo(line);
}

bool KitchenDesk::moveBy(int key) {
  switch (key) {
    case Qt::Key_Down:
      step(1);
      return true;
    case Qt::Key_Up:
      step(-1);
      return true;
    case Qt::Key_PageDown:
      stepBowl(1);
      return true;
    case Qt::Key_PageUp:
      stepBowl(-1);
      return true;
    default:
      return false;
  }
}

bool KitchenDesk::isDone(const SheetLine& line) const {
  const intake::Bowl& bowl = sheet_->sheet.bowls[line.bowl].bowl;
  if (task_ == Task::WeighIn) return isWeighed(bowl.items[line.item]);
  return !bowl.remainders.empty() || !bowl.items[line.item].leftovers.empty();
}

void KitchenDesk::setTask(Task task) {
  if (task == task_) return;
  task_ = task;
  emit taskChanged();
  place_.reset();
  goOn();
  emit placeChanged();
}

void KitchenDesk::goOn() {
  if (!sheet_) return;
  const auto all = linesToWeigh(sheet_->sheet);
  if (all.empty()) return place_.reset();
  const auto isOpen = [&](const SheetLine& line) { return !isDone(line); };
  const auto here = place_ ? std::ranges::upper_bound(all, *place_) : all.begin();
  auto next = std::find_if(here, all.end(), isOpen);
  if (next == all.end()) next = std::find_if(all.begin(), here, isOpen);
  if (next != all.end())
    goTo(*next);
  else if (!place_)
    goTo(all.front());
}

std::optional<intake::WeightBefore> KitchenDesk::weightBefore() const {
  std::optional<intake::WeightBefore> before;
  for (const intake::PrepBowl& there : sheet_->sheet.bowls)
    for (const intake::BowlItem& item : there.bowl.items)
      for (const intake::Weighing& entry : item.weighings)
        if (!before || entry.by.at >= before->at)
          before = intake::WeightBefore{entry.actual, entry.by.at, there.bowl.key != bowl()->bowl.key};
  return before;
}

std::vector<intake::WeighingDoubt> KitchenDesk::doubtsAbout(Grams actual) const {
  if (item() == nullptr) return {};
  return transfer::doubtsIn(*bowl(), *item(), actual, collection_.author().at, sheet_->judgedBy(),
                            weightBefore());
}

void KitchenDesk::write(std::function<store::Kept(store::Collection&, const store::Author&)> work) {
  struct Written {
    store::Kept kept = store::Kept::First;
    KitchenSheet sheet{};
  };
  collection_.ask(
      [work = std::move(work), author = collection_.author(), section = section_,
       day = day_](store::Collection& collection) {
        Written written{.kept = work(collection, author)};
        written.sheet = readKitchenSheet(collection, section, day);
        return written;
      },
      [this, section = section_, day = day_](Written written) {
        if (section == section_ && day == day_) {
          take(std::move(written.sheet));
          goOn();
        }
        emit weighed(written.kept == store::Kept::Second);
        emit collection_.written(this);
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

void KitchenDesk::noteLeft(intake::LeftoverKind kind, std::optional<Grams> left) {
  if (item() == nullptr) return;
  const store::LeftoverFound found{{bowl()->bowl.key, item()->item}, kind, left, {}};
  write([found](store::Collection& collection, const store::Author& author) {
    return store::noteLeftovers(collection, {&found, 1}, author).at(0);
  });
}

void KitchenDesk::correctLeft(intake::LeftoverKind kind, std::optional<Grams> left, const QString& reason) {
  if (item() == nullptr) return;
  const store::LeftoverFound found{{bowl()->bowl.key, item()->item}, kind, left, {}};
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

}  // namespace tarebowl::ui
