// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/open_collection.h"

#include "core/store/backup.h"
#include "ui/collection/change_command.h"

#include <QDateTime>
#include <QPointer>
#include <QTimer>
#include <QUndoStack>

namespace tarebowl::ui {
namespace {

constexpr int kLookAroundMs = 1500;

/// What a verb wrote, or why the rules do not allow it.
struct Tried {
  std::optional<store::Written> written{};
  Refusal refusal{};
};

Tried triedBy(const CollectionVerb& verb, store::Collection& collection, const store::Author& author) {
  try {
    return {.written = verb(collection, author)};
  } catch (const store::StoreError& error) {
    if (error.code() != store::StoreErrorCode::Refused) throw;
    return {.refusal = refusalOf(error)};
  }
}

}  // namespace

OpenCollection::OpenCollection(QObject* parent) : QObject(parent) {
  auto* timer = new QTimer(this);
  connect(timer, &QTimer::timeout, this, &OpenCollection::lookAround);
  timer->start(kLookAroundMs);
}

OpenCollection::~OpenCollection() {
  clerk_.reset();
}

void OpenCollection::lookAround() {
  if (!file_ || !clerk_ || !clerk_->isIdle()) return;
  clerk_->askWhenIdle([](store::Collection& collection) { return collection.changedElsewhere(); },
                      [this](bool changed) {
                        if (changed) emit outdated();
                      });
}

store::Author OpenCollection::author() const {
  return {.who = person_.toStdString(),
          .at = QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString()};
}

void OpenCollection::open(CollectionFile what, CollectionOpener opener) {
  file_ = std::move(what);
  clerk_ = std::make_unique<Clerk>(std::move(opener));
  connect(clerk_.get(), &Clerk::busyChanged, this, &OpenCollection::busyChanged);
  connect(clerk_.get(), &Clerk::refused, this, &OpenCollection::take);
  emit opened();
  clerk_->askWhenIdle(
      [file = file_->file, at = author().at](store::Collection& /*collection*/) {
        return store::makeDailyBackup(file, at).has_value();
      },
      [](bool /*made*/) {});
}

void OpenCollection::take(const Refusal& refusal) {
  emit refused(refusal);
  if (!refusal.cannotOpen) return emit outdated();
  file_.reset();
  emit opened();
}

void OpenCollection::write(CollectionVerb verb, std::function<void(const store::Written&)> then) {
  ask([verb = std::move(verb),
       author = author()](store::Collection& collection) { return verb(collection, author); },
      std::move(then));
}

void OpenCollection::perform(QUndoStack& wayBack, const QObject* by, CollectionEdit edit) {
  ask([verb = std::move(edit.verb),
       author = author()](store::Collection& collection) { return triedBy(verb, collection, author); },
      [this, stack = QPointer(&wayBack), by, what = edit.what, done = edit.done,
       takenBack = edit.takenBack](const Tried& tried) {
        if (!tried.written) return emit hindered(tried.refusal);
        if (!stack) return;
        stack->push(new ChangeCommand(*this, by, tried.written->change, what, takenBack));
        if (done) done(*tried.written);
        emit written(by);
      });
}

void OpenCollection::takeImport(QUndoStack& wayBack, const QObject* by, std::int64_t change,
                                const QString& what, std::function<void()> takenBack) {
  wayBack.push(new ImportCommand(*this, by, change, what, std::move(takenBack)));
  emit written(by);
}

void OpenCollection::restore(const std::filesystem::path& backup) {
  if (!file_) return;
  ask([file = file_->file, backup,
       author = author()](store::Collection& /*collection*/) { return store::restore(file, backup, author); },
      [this](const std::filesystem::path& /*before*/) {
        emit opened();  // no step of any room's way back leads there
      });
}

}  // namespace tarebowl::ui
