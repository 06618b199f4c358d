// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/change_command.h"

#include <QObject>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

/// The newest first, as they must be taken back.
std::vector<CollectionVerb> verbsThatTakeBack(ChangeNumbers changes) {
  std::reverse(changes.begin(), changes.end());
  std::vector<CollectionVerb> verbs;
  for (const std::int64_t change : changes)
    verbs.emplace_back([change](store::Collection& collection, const store::Author& author) {
      return store::undo(collection, change, author);
    });
  return verbs;
}

}  // namespace

std::vector<store::Written> doAll(const std::vector<CollectionVerb>& verbs, store::Collection& collection,
                                  const store::Author& author) {
  std::vector<store::Written> done;
  try {
    for (const CollectionVerb& verb : verbs) done.push_back(verb(collection, author));
  } catch (...) {
    for (const CollectionVerb& verb : verbsThatTakeBack(numbersOf(done))) verb(collection, author);
    throw;
  }
  return done;
}

ChangeNumbers numbersOf(const std::vector<store::Written>& written) {
  ChangeNumbers numbers;
  for (const store::Written& one : written)
    if (one.change != 0) numbers.push_back(one.change);
  return numbers;
}

ChangeCommand::ChangeCommand(OpenCollection& collection, const QObject* by, ChangeNumbers changes,
                             const QString& what, std::function<void()> takenBack)
    : QUndoCommand(what),
      collection_(collection),
      by_(by),
      changes_(std::make_shared<ChangeNumbers>(std::move(changes))),
      takenBack_(std::move(takenBack)) {}

void ChangeCommand::redo() {
  if (!std::exchange(first_, false)) takeBack();
}

void ChangeCommand::undo() {
  takeBack();
}

void ChangeCommand::takeBack() {
  // The numbers are read on the clerk's thread, after an undo that is still on its way has set them: never
  // while this thread writes them, because answers and questions follow each other.
  OpenCollection& collection = collection_;
  collection.ask(
      [changes = changes_, author = collection.author()](store::Collection& stored) {
        *changes = numbersOf(doAll(verbsThatTakeBack(*changes), stored, author));
        return true;
      },
      [&collection, by = by_, then = takenBack_](bool /*done*/) {
        if (then) then();
        emit collection.written(by);
      });
}

ImportCommand::ImportCommand(OpenCollection& collection, const QObject* by, TakenImport import,
                             std::function<void()> takenBack)
    : QUndoCommand(import.what),
      collection_(collection),
      by_(by),
      again_(std::move(import.again)),
      change_(std::make_shared<std::int64_t>(import.change)),
      takenBack_(std::move(takenBack)) {}

void ImportCommand::redo() {
  if (std::exchange(first_, false)) return;
  OpenCollection& collection = collection_;
  collection.ask(
      [change = change_, again = again_, author = collection.author()](store::Collection& stored) {
        *change = again(stored, author);
        return true;
      },
      [&collection, by = by_, then = takenBack_](bool /*done*/) {
        if (then) then();
        emit collection.written(by);
      });
}

void ImportCommand::undo() {
  OpenCollection& collection = collection_;
  collection.ask([change = change_, author = collection.author()](
                     store::Collection& stored) { return store::undo(stored, *change, author); },
                 [&collection, by = by_, then = takenBack_](const store::Written& /*written*/) {
                   if (then) then();
                   emit collection.written(by);
                 });
}

}  // namespace tarebowl::ui
