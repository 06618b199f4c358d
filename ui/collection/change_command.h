// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QUndoCommand>

#include <cstdint>
#include <functional>
#include <memory>

class QObject;

namespace tarebowl::ui {

class OpenCollection;

/// A change of the collection that was made and can be taken back. Taking it back is a change of its own, so
/// that redoing takes back that one.
class ChangeCommand : public QUndoCommand {
 public:
  ChangeCommand(OpenCollection& collection, const QObject* by, std::int64_t change, const QString& what,
                std::function<void()> takenBack);
  void redo() override;
  void undo() override;

 private:
  void takeBack();

  OpenCollection& collection_;
  const QObject* by_;
  std::shared_ptr<std::int64_t> change_;  // the newest; the answer to a write may outlive this command
  std::function<void()> takenBack_;
  bool first_ = true;  // pushing it calls redo(), and it is already done
};

/// A table that was imported and can be taken back as a whole. It does not come back by redo but by importing
/// the table again, which may be another by then.
class ImportCommand : public QUndoCommand {
 public:
  ImportCommand(OpenCollection& collection, const QObject* by, std::int64_t change, const QString& what,
                std::function<void()> takenBack);
  void undo() override;

 private:
  OpenCollection& collection_;
  const QObject* by_;
  std::int64_t change_;
  std::function<void()> takenBack_;
};

}  // namespace tarebowl::ui
