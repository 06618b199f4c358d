// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/live_solver.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/room.h"

#include <filesystem>

class QLabel;

namespace tarebowl::ui {

class BalancePane;
class DeskPane;
class DietDesk;
class ProblemDocument;
class ProblemList;

/// The design desk: diets at the left, the one on the desk in the middle, its balance at the right. It only
/// wires.
class DietsRoom : public Room {
  Q_OBJECT
 public:
  DietsRoom(LiveSolver::Function solve, Dialogs dialogs, QWidget* parent = nullptr);

  /// Lists the folder and puts this file, or the folder's first readable one, on the desk.
  void openFolder(const std::filesystem::path& folder);
  void openFile(const std::filesystem::path& file);

  [[nodiscard]] RoomState state() const override;
  /// Diets of the folder, then foods of the diet on the desk.
  [[nodiscard]] std::vector<FinderHit> find(const QString& partOfName, int most) const override;
  void goTo(qint64 id) override;
  [[nodiscard]] bool mayLeave() override;

  [[nodiscard]] DietDesk& desk() const { return *desk_; }
  [[nodiscard]] ProblemDocument& document() const { return *document_; }
  [[nodiscard]] DeskPane& deskPane() const { return *deskPane_; }
  [[nodiscard]] BalancePane& balancePane() const { return *balancePane_; }
  [[nodiscard]] ProblemList& list() const { return *list_; }

 private:
  void build();
  void wire();
  void addActions();
  void openListed(const QString& file);
  void complain(const QString& what);
  void openFirstListed();

  DietDesk* desk_;
  ProblemDocument* document_;
  ProblemList* list_;
  DeskPane* deskPane_;
  BalancePane* balancePane_;
  QLabel* banner_;
  std::filesystem::path folder_;
};

}  // namespace tarebowl::ui
