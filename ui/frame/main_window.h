// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/live_solver.h"
#include "ui/shared/dialogs.h"

#include <QWidget>

#include <filesystem>
#include <optional>

class QAction;

namespace tarebowl::ui {

class DietsRoom;
class Rail;
class StatusLine;

/// The one window: the rail of rooms, the room, the status line. What a room does, the room knows.
class MainWindow : public QWidget {
  Q_OBJECT
 public:
  MainWindow(LiveSolver::Function solve, Dialogs dialogs, QWidget* parent = nullptr);

  /// Opens the file, or the invented sample where none is given.
  void open(const std::optional<std::filesystem::path>& file);
  [[nodiscard]] DietsRoom& diets() const { return *diets_; }

 protected:
  void closeEvent(QCloseEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void build();
  void addActions();
  QAction* addAction(const QString& text, const QKeySequence& keys, const QString& iconName);
  void inkIcons();
  void showState();

  Rail* rail_;
  DietsRoom* diets_;
  StatusLine* status_;
};

}  // namespace tarebowl::ui
