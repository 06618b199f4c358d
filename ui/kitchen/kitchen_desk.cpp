// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/kitchen_desk.h"

#include "core/store/reading.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {

using quantity::Grams;

KitchenDesk::KitchenDesk(OpenCollection& collection, Clock today, QObject* parent)
    : QObject(parent), collection_(collection), today_(std::move(today)), day_(today_()) {
  collection_.setToday(today_);
  collection_.whenOpened(this, [this] { startAnew(); });
  connect(&collection_, &OpenCollection::cutOffChanged, this, &KitchenDesk::refresh);
  connect(&collection_, &OpenCollection::waitingChanged, this, [this] {
    if (collection_.isOnCopy() && !sheet_ && !reading_) refresh();  // the copy is known by now
  });
  connect(&collection_, &OpenCollection::outdated, this, [this](const store::Touched& what) {
    using enum store::Part;
    if (what.any({Foods, Animals, Targets, Diets, Kitchen})) refresh();
  });
  connect(&collection_, &OpenCollection::refused, this, [this] {
    reading_ = false;
    writing_ = 0;
  });
  connect(&collection_, &OpenCollection::written, this, [this](const QObject* by) {
    if (by != this) refresh();
  });
}

void KitchenDesk::startAnew() {
  day_ = today_();
  task_ = Task::WeighIn;
  section_.clear();
  writing_ = 0;
  sheet_.reset();
  place_.reset();
  refresh();
  collection_.readAhead(this, [this] {
    if (old_ && !inSight_) read();
  });
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
  if (collection_.isOnCopy() && !collection_.station()->copy()->has(day_)) return showNothing();
  reading_ = true;
  old_ = false;
  const bool isOfAnother = !sheet_ || sheet_->sheet.section != section_ || sheet_->sheet.day != day_;
  if (isOfAnother) emit placeChanged();  // nothing of it is on the scale any more
  collection_.askForKitchen(
      store::inOneReading([section = section_, day = day_](store::Collection& collection) {
        return readKitchenSheet(collection, section, day);
      }),
      [this, section = section_, day = day_](KitchenSheet sheet) {
        if (section != section_ || day != day_) return;
        take(std::move(sheet));
        emit settled();
      });
}

/// A bowl that was opened on the server would look as if it were not.
void KitchenDesk::showNothing() {
  reading_ = false;
  old_ = false;
  sheet_.reset();
  place_.reset();
  emit sheetChanged();
  emit placeChanged();
  emit dayNotOnCopy();
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

}  // namespace tarebowl::ui
