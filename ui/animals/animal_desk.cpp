// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/animal_desk.h"

#include "core/store/reading.h"
#include "ui/animals/change_story.h"

#include <utility>

namespace tarebowl::ui {
namespace {

/// Of the whole collection; those of the thing itself are picked out of them.
constexpr std::size_t kChangesLookedThrough = 4000;

}  // namespace

AnimalDesk::AnimalDesk(OpenCollection& collection, Clock today, QObject* parent)
    : QObject(parent), collection_(collection), today_(std::move(today)) {
  collection_.whenOpened(this, [this] { startAnew(); });
  connect(&collection_, &OpenCollection::outdated, this, [this](const store::Touched& what) {
    using enum store::Part;
    if (what.any({Animals, Targets, Diets})) refresh();
  });
  connect(&collection_, &OpenCollection::refused, this, [this] {
    reading_ = false;
    undoStack_.clear();  // it would lead to something that is no longer there
  });
  connect(&collection_, &OpenCollection::written, this, [this](const QObject* by) {
    if (by != this) refresh();
  });
}

AnimalDesk::~AnimalDesk() {
  undoStack_.disconnect();
}

void AnimalDesk::startAnew() {
  undoStack_.clear();
  herd_ = {};
  shown_.reset();
  page_.reset();
  history_.clear();
  awaited_.clear();
  if (collection_.file()) readList();
  emit opened();
  emit pageChanged();
}

void AnimalDesk::readList() {
  reading_ = true;
  // The room in sight has read what it shows before this.
  collection_.askWhenIdle(
      store::inOneReading([](store::Collection& collection) { return readHerd(collection); }),
      [this](Herd herd) { takeList(std::move(herd)); });
}

void AnimalDesk::takeList(Herd herd) {
  reading_ = false;
  herd_ = std::move(herd);
  emit listChanged();
  if (const store::StoredGroup* group = awaited_.empty() ? nullptr : herd_.groupOf(awaited_)) {
    awaited_.clear();
    return show({AnimalKind::Group, static_cast<std::int64_t>(group->id)});
  }
  if (shown_) return;
  if (!herd_.groups.empty())
    show({AnimalKind::Group, static_cast<std::int64_t>(herd_.groups.front().id)});
  else if (!herd_.species.empty())
    show({AnimalKind::Species, static_cast<std::int64_t>(herd_.species.front().id)});
}

void AnimalDesk::refresh() {
  if (!collection_.file()) return;
  readAgain();
}

void AnimalDesk::readAgain() {
  readList();
  if (shown_) show(*shown_);
}

void AnimalDesk::show(const AnimalPlace& place) {
  shown_ = place;
  collection_.ask(store::inOneReading([place, today = today_()](store::Collection& collection) {
                    return readAnimalPage(collection, place, today);
                  }),
                  [this, place](std::optional<AnimalPage> page) { takePage(place, std::move(page)); });
}

void AnimalDesk::takePage(const AnimalPlace& place, std::optional<AnimalPage> page) {
  if (shown_ != place) return;
  const bool same = page && page_ && page_->place == page->place;
  page_ = std::move(page);
  if (!same) history_.clear();
  if (!page_) shown_.reset();
  emit pageChanged();
  if (page_) readHistory();
}

void AnimalDesk::readHistory() {
  collection_.askWhenIdle(
      store::inOneReading([page = *page_](store::Collection& collection) {
        std::vector<store::Change> changes;
        for (store::Change& change : store::newestChanges(collection, kChangesLookedThrough))
          if (isAbout(change, page)) changes.push_back(std::move(change));
        return changes;
      }),
      [this, place = page_->place](std::vector<store::Change> changes) {
        if (shown_ != place) return;
        history_ = std::move(changes);
        emit historyRead();
      });
}

}  // namespace tarebowl::ui
