// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/change_command.h"

#include "ui/collection/open_collection.h"

#include <utility>

namespace tarebowl::ui {

ChangeCommand::ChangeCommand(OpenCollection& collection, const QObject* by, std::int64_t change,
                             const QString& what, std::function<void()> takenBack)
    : QUndoCommand(what),
      collection_(collection),
      by_(by),
      change_(std::make_shared<std::int64_t>(change)),
      takenBack_(std::move(takenBack)) {}

void ChangeCommand::redo() {
  if (!std::exchange(first_, false)) takeBack();
}

void ChangeCommand::undo() {
  takeBack();
}

void ChangeCommand::takeBack() {
  // The number is read on the clerk's thread, after an undo that is still on its way has set it: never while
  // this thread writes it, because answers and questions follow each other.
  OpenCollection& collection = collection_;
  collection.write(
      [change = change_](store::Collection& stored, const store::Author& author) {
        const store::Written written = store::undo(stored, *change, author);
        *change = written.change;
        return written;
      },
      [&collection, by = by_, then = takenBack_](const store::Written& /*written*/) {
        if (then) then();
        emit collection.written(by);
      });
}

ImportCommand::ImportCommand(OpenCollection& collection, const QObject* by, std::int64_t change,
                             const QString& what, std::function<void()> takenBack)
    : QUndoCommand(what),
      collection_(collection),
      by_(by),
      change_(change),
      takenBack_(std::move(takenBack)) {}

void ImportCommand::undo() {
  OpenCollection& collection = collection_;
  collection.write(
      [change = change_](store::Collection& stored, const store::Author& author) {
        return store::undo(stored, change, author);
      },
      [&collection, by = by_, then = takenBack_](const store::Written& /*written*/) {
        if (then) then();
        emit collection.written(by);
      });
  setObsolete(true);
}

}  // namespace tarebowl::ui
