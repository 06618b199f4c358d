// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/main_window.h"

#include "ui/diets/desk_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/diets_room.h"
#include "ui/diets/problem_document.h"
#include "ui/diets/problem_files.h"
#include "ui/diets/solving_text.h"
#include "ui/frame/rail.h"
#include "ui/frame/status_line.h"
#include "ui/shared/icons.h"
#include "ui/shared/theme.h"

#include <QAction>
#include <QCloseEvent>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kDietsNumber = 1;

}  // namespace

MainWindow::MainWindow(LiveSolver::Function solve, Dialogs dialogs, QWidget* parent)
    : QWidget(parent),
      rail_(new Rail),
      diets_(new DietsRoom(std::move(solve), std::move(dialogs))),
      status_(new StatusLine) {
  setWindowIcon(programIcon());
  build();
  addActions();
  inkIcons();
  connect(&diets_->desk(), &DietDesk::solvingChanged, this, &MainWindow::showState);
  connect(&diets_->document(), &ProblemDocument::savedChanged, this, &MainWindow::showState);
  connect(&diets_->document(), &ProblemDocument::fileChanged, this, &MainWindow::showState);
  showState();
}

void MainWindow::build() {
  rail_->addRoom(kDietsNumber, tr("Diets"), QStringLiteral("diets"));
  rail_->setCurrent(kDietsNumber);
  auto* roomAndStatus = new QVBoxLayout;
  roomAndStatus->setSpacing(0);
  roomAndStatus->addWidget(diets_, 1);
  roomAndStatus->addWidget(status_);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(rail_);
  layout->addLayout(roomAndStatus, 1);
  resize(1366, 768);
}

QAction* MainWindow::addAction(const QString& text, const QKeySequence& keys, const QString& iconName) {
  auto* action = new QAction(text, this);
  action->setShortcut(keys);
  action->setProperty("iconName", iconName);
  action->setToolTip(keys.isEmpty() ? text
                                    : tr("%1 (%2)").arg(text, keys.toString(QKeySequence::NativeText)));
  QWidget::addAction(action);
  return action;
}

void MainWindow::addActions() {
  ProblemDocument& document = diets_->document();
  QUndoStack& edits = diets_->desk().undoStack();
  QAction* undo = addAction(tr("Undo"), QKeySequence::Undo, QStringLiteral("undo"));
  QAction* redo = addAction(tr("Redo"), QKeySequence::Redo, QStringLiteral("redo"));
  QAction* open = addAction(tr("Open"), QKeySequence::Open, QStringLiteral("open"));
  QAction* save = addAction(tr("Save"), QKeySequence::Save, QStringLiteral("save"));
  QAction* saveAs = addAction(tr("Save as"), QKeySequence(tr("Ctrl+Shift+S")), {});
  QAction* find = addAction(tr("Find"), QKeySequence(tr("Ctrl+K")), {});
  connect(undo, &QAction::triggered, &edits, &QUndoStack::undo);
  connect(redo, &QAction::triggered, &edits, &QUndoStack::redo);
  connect(open, &QAction::triggered, &document, &ProblemDocument::openByDialog);
  connect(save, &QAction::triggered, &document, &ProblemDocument::save);
  connect(saveAs, &QAction::triggered, &document, &ProblemDocument::saveAs);
  connect(find, &QAction::triggered, diets_, &DietsRoom::focusFinder);
  undo->setEnabled(false);
  redo->setEnabled(false);
  connect(&edits, &QUndoStack::canUndoChanged, undo, &QAction::setEnabled);
  connect(&edits, &QUndoStack::canRedoChanged, redo, &QAction::setEnabled);
  connect(&edits, &QUndoStack::undoTextChanged, undo, [undo](const QString& what) {
    undo->setToolTip(what.isEmpty() ? tr("Undo") : tr("Undo: %1 (Ctrl+Z)").arg(what));
  });
  connect(&edits, &QUndoStack::redoTextChanged, redo, [redo](const QString& what) {
    redo->setToolTip(what.isEmpty() ? tr("Redo") : tr("Redo: %1").arg(what));
  });
  for (QAction* action : {undo, redo, open, save}) diets_->deskPane().addAction(action);
}

void MainWindow::open(const std::optional<std::filesystem::path>& file) {
  if (file)
    diets_->openFile(*file);
  else
    diets_->openFolder(sampleFolder());
}

void MainWindow::inkIcons() {
  const QColor ink = currentTheme().ink;
  for (QAction* action : actions()) {
    const QString name = action->property("iconName").toString();
    if (!name.isEmpty()) action->setIcon(icon(name, ink));
  }
}

void MainWindow::showState() {
  const DietDesk& desk = diets_->desk();
  const ProblemDocument& document = diets_->document();
  WindowState state;
  state.saved = document.isSaved();
  state.invented = desk.problem().invented;
  state.energyMethod = energyMethodText(desk.problem().energyMethod);
  state.solving = solvingText(desk);
  status_->show(state);
  const QString file = toText(document.file().filename());
  setWindowTitle(file.isEmpty() ? tr("Tarebowl") : tr("%1 (%2) – Tarebowl").arg(document.title(), file));
}

void MainWindow::closeEvent(QCloseEvent* event) {
  event->setAccepted(diets_->document().mayLeave());
}

void MainWindow::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) inkIcons();
}

}  // namespace tarebowl::ui
