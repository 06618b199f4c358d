// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/version_document.h"

#include "core/store/diet_reading.h"
#include "core/transfer/desk_sheet.h"
#include "ui/diets/diet_desk.h"

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
  connect(&collection, &OpenCollection::opened, this, &VersionDocument::close);
  connect(&collection, &OpenCollection::outdated, this, &VersionDocument::readAgain);
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

void VersionDocument::close() {
  rest_.stop();
  writing_ = false;
  inConflict_ = false;
  if (!shown_) return;
  shown_.reset();
  emit opened();
}

void VersionDocument::read(store::VersionId version) {
  collection_.ask([version, day = today_()](
                      store::Collection& collection) { return transfer::readDesk(collection, version, day); },
                  [this](std::optional<transfer::DeskDiet> desk) { take(std::move(desk)); });
}

void VersionDocument::take(std::optional<transfer::DeskDiet> desk) {
  inConflict_ = false;
  if (!desk) {
    close();
    return emit told(tr("This version is no longer in the collection."));
  }
  shown_ = std::move(desk);
  revision_ = shown_->version.revision;
  saved_ = shown_->version.record.version;
  desk_.open(asRead(*shown_), openingOf(*shown_, collection_.isReadOnly()));
  emit opened();
  emit savedChanged();
}

void VersionDocument::readAgain() {
  if (!shown_ || writing_ || inConflict_) return;
  collection_.ask([version = shown_->version.id, day = today_()](
                      store::Collection& collection) { return transfer::readDesk(collection, version, day); },
                  [this](std::optional<transfer::DeskDiet> desk) {
                    if (!shown_ || writing_) return;
                    if (!desk) return take(std::nullopt);
                    if (desk->version.id == shown_->version.id) takeAgain(*desk);
                  });
}

void VersionDocument::takeAgain(const transfer::DeskDiet& desk) {
  const bool isNewer = desk.version.revision != revision_;
  if (isNewer && isDirty()) return save();  // refused, with both versions
  if (isNewer || !isDraft()) {
    if (isNewer) emit told(tr("Another window changed this diet: it is shown as it is now."));
    return take(desk);
  }
  const diet::BalanceProblem before = desk_.problem();
  DietDraft now = draftOf(versionOf(desk_.draft()), desk.context);
  shown_ = desk;
  now.problem.reference = before.reference;
  if (now.problem == before) return;
  desk_.replace(std::move(now));
  emit told(
      tr("Foods or targets of this diet changed meanwhile: the balance is worked out anew, and no gram "
         "was moved."));
  emit changed();
}

void VersionDocument::write(Verb verb, std::function<void(const store::Written&)> then) {
  writing_ = true;
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
      [this, then = std::move(then)](const Answer& answer) {
        writing_ = false;
        if (answer.refusal) {
          inConflict_ = !answer.refusal->mine.isEmpty();
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
  if (writing_) return rest_.start();
  const diet::DietVersion version = versionOf(desk_.draft());
  write(
      [id = shown_->version.id, revision = revision_, version](store::Collection& collection,
                                                               const store::Author& author) {
        return store::editVersion(collection, id, revision, version, author);
      },
      [this, version](const store::Written& written) {
        revision_ = written.revision;
        saved_ = version;
        if (isDirty()) rest_.start();
      });
}

void VersionDocument::design(const diet::NamedDiet& diet, const diet::DietVersion& first) {
  saveNow();
  write(
      [diet, first](store::Collection& collection, const store::Author& author) {
        const store::Written added = store::addDiet(collection, diet, author);
        try {
          return store::addVersion(collection, diet.code, first, author);
        } catch (const store::StoreError&) {
          store::removeDiet(collection, static_cast<store::DietId>(added.id), added.revision, author);
          throw;
        }
      },
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
void VersionDocument::step(Verb verb) {
  if (!shown_) return;
  write(std::move(verb), [this, id = shown_->version.id](const store::Written&) {
    emit listChanged();
    read(id);
  });
}

void VersionDocument::submit(const QString& reason) {
  if (!isDraft()) return;
  const diet::DietVersion version = versionOf(desk_.draft());
  const bool isSaved = version == saved_;
  rest_.stop();
  step([id = shown_->version.id, revision = revision_, version, isSaved, why = reason.toStdString()](
           store::Collection& collection, const store::Author& author) {
    const int seen =
        isSaved ? revision : store::editVersion(collection, id, revision, version, author).revision;
    return store::submitVersion(collection, id, seen, why, author);
  });
}

void VersionDocument::sendBack(const QString& reason) {
  step([id = shown_->version.id, revision = revision_, why = reason.toStdString()](
           store::Collection& collection, const store::Author& author) {
    return store::sendBackVersion(collection, id, revision, why, author);
  });
}

void VersionDocument::approve(const store::FeedingStart& start, const QString& reason) {
  if (!shown_) return;
  step([id = shown_->version.id, revision = revision_, made = shown_->made, start,
        why = reason.toStdString()](store::Collection& collection, const store::Author& author) {
    return store::approveVersion(collection, id, revision, transfer::decisionOn(made), start, why, author);
  });
}

void VersionDocument::retire(const QString& reason) {
  step([id = shown_->version.id, revision = revision_, why = reason.toStdString()](
           store::Collection& collection, const store::Author& author) {
    return store::retireVersion(collection, id, revision, why, author);
  });
}

void VersionDocument::removeDraft() {
  if (!isDraft()) return;
  rest_.stop();
  write([id = shown_->version.id, revision = revision_](
            store::Collection& collection,
            const store::Author& author) { return store::removeVersion(collection, id, revision, author); },
        [this](const store::Written&) {
          close();
          emit listChanged();
        });
}

void VersionDocument::takeNewerTargets() {
  if (!isDraft() || !shown_->newerProfile || !desk_.draft().frame) return;
  diet::DietVersion version = versionOf(desk_.draft());
  version.profile = *shown_->newerProfile;
  rest_.stop();
  step([id = shown_->version.id, revision = revision_, version](store::Collection& collection,
                                                                const store::Author& author) {
    return store::editVersion(collection, id, revision, version, author);
  });
}

void VersionDocument::takeTheirs() {
  if (!shown_) return;
  inConflict_ = false;
  read(shown_->version.id);
}

void VersionDocument::keepMine() {
  if (!shown_) return;
  inConflict_ = false;
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
