// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/version_document.h"

#include "core/store/diet_reading.h"
#include "core/store/reading.h"
#include "core/transfer/desk_sheet.h"
#include "ui/collection/change_command.h"
#include "ui/diets/diet_desk.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

/// A hand that pauses for so long is at rest.
constexpr int kRestMs = 400;

/// Of a version that was decided on, what was decided on.
DietDraft asRead(const transfer::DeskDiet& desk) {
  return draftOf({desk.version.record.version, desk.context, transfer::asDecided(desk)});
}

DietDesk::Opening openingOf(const transfer::DeskDiet& desk, bool forReadingOnly) {
  if (forReadingOnly || desk.version.record.version.state != diet::VersionState::Draft)
    return DietDesk::Opening::ToRead;
  // A diet without grams has nothing to be told of: it is worked out at once.
  return desk.made.problem.reference ? DietDesk::Opening::AsItStands : DietDesk::Opening::Solve;
}

}  // namespace

VersionDocument::VersionDocument(DietDesk& desk, OpenCollection& collection, Clock today, QObject* parent)
    : QObject(parent), desk_(desk), collection_(collection), today_(std::move(today)) {
  rest_.setSingleShot(true);
  rest_.setInterval(kRestMs);
  connect(&rest_, &QTimer::timeout, this, &VersionDocument::save);
  connect(&desk, &DietDesk::settled, this, [this] {
    if (isDirty()) rest_.start();
    emit savedChanged();
  });
  connect(&desk, &DietDesk::foodsChanged, this, &VersionDocument::savedChanged);
  connect(&desk, &DietDesk::aboutToOpen, this, &VersionDocument::saveNow);
  connect(&collection, &OpenCollection::closing, this, &VersionDocument::saveNow);
  connect(&collection, &OpenCollection::opened, this, &VersionDocument::close);
  connect(&collection, &OpenCollection::outdated, this, [this](const store::Touched& what) {
    using enum store::Part;
    const bool countsWhatIsEaten = counted_ == transfer::CountedAs::Eaten && what.any({Kitchen});
    if (countsWhatIsEaten || what.any({Foods, Animals, Targets, Diets})) readAgain();
  });
  connect(&collection, &OpenCollection::written, this, [this](const QObject* by) {
    if (by != this) readAgain();
  });
}

bool VersionDocument::isDraft() const {
  return shown_ && shown_->version.record.version.state == diet::VersionState::Draft;
}

bool VersionDocument::isDirty() const {
  return isDraft() && desk_.draft().frame && versionOf(desk_.draft()) != saved_;
}

void VersionDocument::open(store::VersionId version) {
  saveNow();
  read(version);
}

void VersionDocument::countAs(transfer::CountedAs counted) {
  if (counted == counted_) return;
  counted_ = counted;
  readAgain();
}

void VersionDocument::close() {
  rest_.stop();
  writing_ = 0;
  inConflict_ = false;
  readsAgain_ = false;
  if (!shown_) return;
  shown_.reset();
  emit opened();
}

void VersionDocument::read(store::VersionId version) {
  collection_.ask(
      store::inOneReading([version, day = today_(), counted = counted_](store::Collection& collection) {
        return transfer::readDesk(collection, version, day, counted);
      }),
      [this](std::optional<transfer::DeskDiet> desk) { take(std::move(desk)); });
}

void VersionDocument::take(std::optional<transfer::DeskDiet> desk) {
  saveNow();
  if (!desk) {
    close();
    return emit told(tr("This version is no longer in the collection."));
  }
  inConflict_ = false;
  readsAgain_ = false;
  shown_.reset();  // until the desk has it, nothing of it can be written
  desk_.open(asRead(*desk), openingOf(*desk, collection_.isReadOnly()));
  shown_ = std::move(desk);
  revision_ = std::make_shared<int>(shown_->version.revision);
  saved_ = shown_->version.record.version;
  emit opened();
  emit savedChanged();
}

void VersionDocument::readAgain() {
  if (!shown_ || inConflict_) return;
  if (isDirty() || writing_ > 0) {
    readsAgain_ = true;
    return saveNow();
  }
  collection_.ask(store::inOneReading([version = shown_->version.id, day = today_(),
                                       counted = counted_](store::Collection& collection) {
                    return transfer::readDesk(collection, version, day, counted);
                  }),
                  [this](std::optional<transfer::DeskDiet> desk) {
                    if (!shown_) return;
                    if (isDirty() || writing_ > 0) return readAgain();
                    if (!desk) return take(std::nullopt);
                    if (desk->version.id == shown_->version.id) takeAgain(*desk);
                  });
}

void VersionDocument::takeAgain(const transfer::DeskDiet& desk) {
  const bool isNewer = desk.version.revision != *revision_;
  if (isNewer || !isDraft()) {
    if (isNewer) emit told(tr("Another window changed this diet: it is shown as it is now."));
    return take(desk);
  }
  const bool countedOtherwise = desk.counted != shown_->counted;
  const diet::BalanceProblem before = desk_.problem();
  DietDraft now = draftOf(versionOf(desk_.draft()), desk.context);
  shown_ = desk;
  now.problem.reference = before.reference;
  if (now.problem == before) return;
  desk_.replace(std::move(now));
  if (!countedOtherwise)
    emit told(
        tr("Foods or targets of this diet changed meanwhile: the balance is worked out anew, and no gram "
           "was moved."));
  emit changed();
}

void VersionDocument::write(CollectionVerb verb, std::function<void(const store::Written&)> then,
                            std::function<void()> orElse) {
  ++writing_;
  emit savedChanged();
  collection_.ask(
      [verb = std::move(verb), author = collection_.author()](store::Collection& collection) {
        Answer answer;
        try {
          answer.written = verb(collection, author);
        } catch (const store::StoreError& error) {
          answer.refusal = refusalOf(error);
          if (error.code() != store::StoreErrorCode::Conflict) answer.refusal->theirs.clear();
        }
        return answer;
      },
      [this, then = std::move(then), orElse = std::move(orElse)](const Answer& answer) {
        writing_ = std::max(0, writing_ - 1);
        if (answer.refusal) {
          inConflict_ = !answer.refusal->mine.isEmpty();
          readsAgain_ = false;
          orElse();
          emit refused(*answer.refusal);
        } else {
          then(answer.written);
        }
        emit savedChanged();
      });
}

void VersionDocument::saveNow() {
  rest_.stop();
  save();
}

void VersionDocument::save() {
  if (!isDirty() || inConflict_) return;
  const diet::DietVersion version = versionOf(desk_.draft());
  const auto written = [this](const store::Written&) {
    if (writing_ == 0 && std::exchange(readsAgain_, false)) readAgain();
  };
  write(editOf(version), written, [this, before = saved_] { saved_ = before; });
  saved_ = version;  // on its way; what is refused is told, and is tried again with the next edit
}

/// Edits follow each other without waiting: each finds the revision that the one before it left.
CollectionVerb VersionDocument::editOf(const diet::DietVersion& version) const {
  return [id = shown_->version.id, revision = revision_, version](store::Collection& collection,
                                                                  const store::Author& author) {
    const store::Written written = store::editVersion(collection, id, *revision, version, author);
    *revision = written.revision;
    return written;
  };
}

void VersionDocument::design(const diet::NamedDiet& diet, const diet::DietVersion& first) {
  saveNow();
  const std::vector<CollectionVerb> verbs{
      [diet](store::Collection& collection, const store::Author& author) {
        return store::addDiet(collection, diet, author);
      },
      [code = diet.code, first](store::Collection& collection, const store::Author& author) {
        return store::addVersion(collection, code, first, author);
      }};
  write([verbs](store::Collection& collection,
                const store::Author& author) { return doAll(verbs, collection, author).back(); },
        [this](const store::Written& written) {
          emit listChanged();
          read(static_cast<store::VersionId>(written.id));
        });
}

void VersionDocument::beginNewVersion() {
  if (!shown_) return;
  saveNow();
  diet::DietVersion next = desk_.draft().frame && isDraft() ? versionOf(desk_.draft()) : saved_;
  next.madeFrom = saved_.number;
  write(
      [code = shown_->diet.record.code, next](store::Collection& collection, const store::Author& author) {
        return store::addVersion(collection, code, next, author);
      },
      [this](const store::Written& written) {
        emit listChanged();
        read(static_cast<store::VersionId>(written.id));
      });
}

void VersionDocument::rename(const QString& name) {
  if (!shown_ || name.trimmed().isEmpty()) return;
  diet::NamedDiet renamed = shown_->diet.record;
  renamed.name = name.trimmed().toStdString();
  write(
      [id = shown_->diet.id, revision = shown_->diet.revision, renamed](store::Collection& collection,
                                                                        const store::Author& author) {
        return store::editDiet(collection, id, revision, renamed, author);
      },
      [this](const store::Written&) {
        emit listChanged();
        readAgain();
      });
}

/// A step is made on what is on the disk: what waits is written first.
void VersionDocument::step(CollectionVerb verb) {
  if (!shown_) return;
  write(std::move(verb), [this, id = shown_->version.id](const store::Written&) {
    emit listChanged();
    read(id);
  });
}

void VersionDocument::submit(const QString& reason) {
  if (!isDraft()) return;
  saveNow();
  step([id = shown_->version.id, revision = revision_, why = reason.toStdString()](
           store::Collection& collection, const store::Author& author) {
    return store::submitVersion(collection, id, *revision, why, author);
  });
}

void VersionDocument::sendBack(const QString& reason) {
  step([id = shown_->version.id, revision = revision_, why = reason.toStdString()](
           store::Collection& collection, const store::Author& author) {
    return store::sendBackVersion(collection, id, *revision, why, author);
  });
}

void VersionDocument::approve(const store::FeedingStart& start, const QString& reason) {
  if (!shown_) return;
  step([id = shown_->version.id, revision = revision_, made = shown_->made, start,
        why = reason.toStdString()](store::Collection& collection, const store::Author& author) {
    return store::approveVersion(collection, id, *revision, transfer::decisionOn(made), start, why, author);
  });
}

void VersionDocument::retire(const QString& reason) {
  step([id = shown_->version.id, revision = revision_, why = reason.toStdString()](
           store::Collection& collection, const store::Author& author) {
    return store::retireVersion(collection, id, *revision, why, author);
  });
}

void VersionDocument::removeDraft() {
  if (!isDraft()) return;
  rest_.stop();
  write([id = shown_->version.id, revision = revision_](
            store::Collection& collection,
            const store::Author& author) { return store::removeVersion(collection, id, *revision, author); },
        [this](const store::Written&) {
          close();
          emit listChanged();
        });
}

void VersionDocument::takeNewerTargets() {
  if (!isDraft() || !shown_->newerProfile || !desk_.draft().frame) return;
  saveNow();
  diet::DietVersion version = versionOf(desk_.draft());
  version.profile = *shown_->newerProfile;
  step(editOf(version));
}

void VersionDocument::takeTheirs() {
  if (shown_) read(shown_->version.id);
}

void VersionDocument::keepMine() {
  if (!shown_) return;
  diet::DietVersion mine = versionOf(desk_.draft());
  write(
      [code = shown_->diet.record.code, mine](store::Collection& collection, const store::Author& author) {
        return store::addVersion(collection, code, mine, author);
      },
      [this](const store::Written& written) {
        emit listChanged();
        read(static_cast<store::VersionId>(written.id));
      });
}

}  // namespace tarebowl::ui
