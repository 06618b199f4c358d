// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QKeySequence>
#include <QObject>
#include <QString>

class QAction;
class QToolButton;
class QUndoStack;
class QWidget;

namespace tarebowl::ui {

/// The actions of a room: their keys work while the room is in sight, and their drawings follow the theme.
class RoomActions : public QObject {
  Q_OBJECT
 public:
  explicit RoomActions(QWidget& room);

  QAction* add(const QString& text, const QKeySequence& keys, const QString& iconName = {});
  /// Undo and redo of the stack; the tool tips say what would be undone.
  struct UndoRedo {
    QAction* undo;
    QAction* redo;
  };
  UndoRedo addUndoRedo(QUndoStack& edits);

  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void inkIcons();

  QWidget& room_;
};

/// A button for an action: the drawing alone, with its name for a screen reader.
[[nodiscard]] QToolButton* iconButtonFor(QAction* action);

}  // namespace tarebowl::ui
