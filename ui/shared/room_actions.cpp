// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/room_actions.h"

#include "ui/shared/icons.h"
#include "ui/shared/theme.h"

#include <QAction>
#include <QEvent>
#include <QToolButton>
#include <QUndoStack>
#include <QWidget>

namespace tarebowl::ui {

RoomActions::RoomActions(QWidget& room) : QObject(&room), room_(room) {
  room.installEventFilter(this);
}

QAction* RoomActions::add(const QString& text, const QKeySequence& keys, const QString& iconName) {
  auto* action = new QAction(text, this);
  action->setShortcut(keys);
  action->setToolTip(keys.isEmpty() ? text
                                    : tr("%1 (%2)").arg(text, keys.toString(QKeySequence::NativeText)));
  action->setProperty("iconName", iconName);
  if (!iconName.isEmpty()) action->setIcon(icon(iconName, currentTheme().ink));
  room_.addAction(action);
  return action;
}

RoomActions::UndoRedo RoomActions::addUndoRedo(QUndoStack& edits) {
  const UndoRedo actions{add(tr("Undo"), QKeySequence::Undo, QStringLiteral("undo")),
                         add(tr("Redo"), QKeySequence::Redo, QStringLiteral("redo"))};
  actions.undo->setEnabled(edits.canUndo());
  actions.redo->setEnabled(edits.canRedo());
  connect(actions.undo, &QAction::triggered, &edits, &QUndoStack::undo);
  connect(actions.redo, &QAction::triggered, &edits, &QUndoStack::redo);
  connect(&edits, &QUndoStack::canUndoChanged, actions.undo, &QAction::setEnabled);
  connect(&edits, &QUndoStack::canRedoChanged, actions.redo, &QAction::setEnabled);
  connect(&edits, &QUndoStack::undoTextChanged, actions.undo, [undo = actions.undo](const QString& what) {
    undo->setToolTip(what.isEmpty() ? tr("Undo") : tr("Undo: %1 (Ctrl+Z)").arg(what));
  });
  connect(&edits, &QUndoStack::redoTextChanged, actions.redo, [redo = actions.redo](const QString& what) {
    redo->setToolTip(what.isEmpty() ? tr("Redo") : tr("Redo: %1").arg(what));
  });
  return actions;
}

bool RoomActions::eventFilter(QObject* watched, QEvent* event) {
  if (watched == &room_ && event->type() == QEvent::PaletteChange) inkIcons();
  return QObject::eventFilter(watched, event);
}

void RoomActions::inkIcons() {
  for (QAction* action : findChildren<QAction*>()) {
    const QString name = action->property("iconName").toString();
    if (!name.isEmpty()) action->setIcon(icon(name, currentTheme().ink));
  }
}

QToolButton* iconButtonFor(QAction* action) {
  auto* button = new QToolButton;
  button->setDefaultAction(action);
  button->setProperty("plain", true);
  button->setProperty("icon", true);
  button->setIconSize({18, 18});
  button->setToolButtonStyle(Qt::ToolButtonIconOnly);
  button->setFocusPolicy(Qt::StrongFocus);
  button->setAccessibleName(action->text());
  return button;
}

}  // namespace tarebowl::ui
