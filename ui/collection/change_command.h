// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/open_collection.h"

#include <QUndoCommand>

#include <cstdint>
#include <functional>
#include <memory>
#include <vector>

class QObject;

namespace tarebowl::ui {

/// Numbers of the change log, in the order in which the changes were made.
using ChangeNumbers = std::vector<std::int64_t>;

/// A change of the collection, or several that belong together, that was made and can be taken back. Taking
/// it back is a change of its own, so that redoing takes back that one.
class ChangeCommand : public QUndoCommand {
 public:
  ChangeCommand(OpenCollection& collection, const QObject* by, ChangeNumbers changes, const QString& what,
                std::function<void()> takenBack);
  void redo() override;
  void undo() override;

 private:
  void takeBack();

  OpenCollection& collection_;
  const QObject* by_;
  std::shared_ptr<ChangeNumbers> changes_;  // the newest; the answer to a write may outlive this command
  std::function<void()> takenBack_;
  bool first_ = true;  // pushing it calls redo(), and it is already done
};

/// A table that was imported and can be taken back as a whole; it comes back by importing the same table
/// again.
class ImportCommand : public QUndoCommand {
 public:
  ImportCommand(OpenCollection& collection, const QObject* by, TakenImport import,
                std::function<void()> takenBack);
  void redo() override;
  void undo() override;

 private:
  OpenCollection& collection_;
  const QObject* by_;
  ImportAgain again_;
  std::shared_ptr<std::int64_t> change_;  // the newest; the answer to a write may outlive this command
  std::function<void()> takenBack_;
  bool first_ = true;  // pushing it calls redo(), and it is already done
};

/// Does one verb after another, on the clerk's thread: where one fails, those before it are taken back and it
/// throws.
[[nodiscard]] std::vector<store::Written> doAll(const std::vector<CollectionVerb>& verbs,
                                                store::Collection& collection, const store::Author& author);

/// Of what was written; a verb that found nothing to change left no number.
[[nodiscard]] ChangeNumbers numbersOf(const std::vector<store::Written>& written);

}  // namespace tarebowl::ui
