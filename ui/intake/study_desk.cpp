// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/study_desk.h"

#include "core/store/reading.h"
#include "ui/shared/days.h"

#include <utility>

namespace tarebowl::ui {

StudyDesk::StudyDesk(IntakeDesk& intake, OpenCollection& collection, IntakeDesk::Clock today, QObject* parent)
    : QObject(parent), intake_(intake), collection_(collection), today_(std::move(today)) {
  connect(&intake_, &IntakeDesk::groupsChanged, this, &StudyDesk::showGroup);
  connect(&collection_, &OpenCollection::written, this, &StudyDesk::readFaeces);
  connect(&collection_, &OpenCollection::outdated, this, [this](const store::Touched& what) {
    if (what.any({store::Part::Animals, store::Part::Health})) readFaeces();
  });
}

const exchange::StudyPlanToWrite* StudyDesk::plan() const {
  return answer_ ? std::get_if<exchange::StudyPlanToWrite>(&*answer_) : nullptr;
}

QDate StudyDesk::tomorrow() const {
  return toQDate(today_()).addDays(1);
}

void StudyDesk::showGroup() {
  const std::string group = intake_.group() != nullptr ? intake_.group()->code : std::string();
  if (group == shown_) return;
  shown_ = group;
  answer_.reset();
  faeces_.clear();
  emit faecesChanged();
  emit answered();
  readFaeces();
  if (asked_) workOut(*asked_);
}

void StudyDesk::workOut(transfer::StudyAsked asked) {
  asked_ = asked;
  if (shown_.empty() || !collection_.file()) return;
  asked.group = shown_;
  collection_.ask(store::inOneReading([asked](store::Collection& collection) {
                    return transfer::planIntakeStudy(collection, asked);
                  }),
                  [this, group = shown_, first = asked.first](Answer answer) {
                    if (group != shown_ || !asked_ || asked_->first != first) return;
                    answer_ = std::move(answer);
                    emit answered();
                  });
}

void StudyDesk::readFaeces() {
  if (shown_.empty() || !collection_.file()) return;
  collection_.ask(store::inOneReading([group = shown_](store::Collection& collection) {
                    return store::faecesOfGroup(collection, group);
                  }),
                  [this, group = shown_](std::vector<store::StoredFaeces> faeces) {
                    if (group != shown_) return;
                    faeces_ = std::move(faeces);
                    emit faecesChanged();
                  });
}

void StudyDesk::keep(intake::FaecesCollected faeces) {
  if (shown_.empty()) return;
  faeces.group = shown_;
  faeces.who = collection_.author().who;
  collection_.ask([faeces = std::move(faeces), author = collection_.author()](
                      store::Collection& collection) { return store::addFaeces(collection, faeces, author); },
                  [this](const store::Written& /*written*/) {
                    emit kept();
                    emit collection_.written(this);
                  });
}

void StudyDesk::takeOut(const store::StoredFaeces& faeces) {
  collection_.ask(
      [id = faeces.id, revision = faeces.revision, author = collection_.author()](
          store::Collection& collection) { return store::removeFaeces(collection, id, revision, author); },
      [this](const store::Written& /*written*/) { emit collection_.written(this); });
}

}  // namespace tarebowl::ui
