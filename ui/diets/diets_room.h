// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_draft.h"
#include "ui/diets/live_solver.h"
#include "ui/diets/version_document.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/room.h"

#include <filesystem>

class QLabel;
class QStackedWidget;

namespace tarebowl::ui {

class ApprovalForm;
class BalancePane;
class ComparePane;
class DeskPane;
class DietChooser;
class DietDesk;
class DietList;
class DietPapers;
class DietShelf;
class ExplorePane;
class FoodBench;
class Larder;
class ProblemDocument;
class ReasonBar;
class RotationEntry;
class RotationPane;
class RotationPlanner;
class RulesPane;
class StandingBar;
class Suggestions;
class SwapEntry;
class SwapPane;
class VersionBar;
class VersionComparer;

/// The design desk: diets at the left, the one on the desk in the middle, its balance at the right. It only
/// wires.
class DietsRoom : public Room {
  Q_OBJECT
 public:
  DietsRoom(LiveSolver::Function solve, OpenCollection& collection, Dialogs dialogs,
            VersionDocument::Clock today, QWidget* parent = nullptr);

  /// Lists the folder and puts this file, or the folder's first readable one, on the desk.
  void openFolder(const std::filesystem::path& folder);
  void openFile(const std::filesystem::path& file);
  /// Begins the first diet of a group, judged by the targets that the group is fed by.
  void designFor(const QString& groupCode);
  /// Shows what differs between the version on the desk and another of its diet.
  void compareWith(int number);

  void setEnergy(EnergyUnit energy);

  [[nodiscard]] RoomState state() const override;
  /// Diets of the folder, then foods of the diet on the desk.
  [[nodiscard]] std::vector<FinderHit> find(const QString& partOfName, int most) const override;
  void goTo(qint64 id) override;
  [[nodiscard]] bool hasOwnFile() const override;
  [[nodiscard]] bool mayLeave() override;

  [[nodiscard]] DietDesk& desk() const { return *desk_; }
  [[nodiscard]] ProblemDocument& document() const { return *document_; }
  [[nodiscard]] VersionDocument& version() const { return *version_; }
  [[nodiscard]] const DietShelf& shelf() const { return *shelf_; }
  [[nodiscard]] Suggestions& suggestions() const { return *suggestions_; }
  [[nodiscard]] ExplorePane& explorePane() const { return *explore_; }
  [[nodiscard]] ComparePane& comparePane() const { return *compare_; }
  [[nodiscard]] DeskPane& deskPane() const { return *deskPane_; }
  [[nodiscard]] BalancePane& balancePane() const { return *balancePane_; }
  [[nodiscard]] DietList& list() const { return *list_; }
  [[nodiscard]] SwapPane& swapPane() const { return *swap_; }
  [[nodiscard]] RotationPane& rotationPane() const { return *rotation_; }
  [[nodiscard]] RotationPlanner& planner() const { return *planner_; }
  /// The calendar of the version on the desk.
  void showRotation();

 private:
  void build();
  QWidget* buildDeskPage();
  void wire();
  void wireDesk();
  void wireCollection();
  void wirePages();
  void addActions();
  void notAvailable();
  void exploreHere();
  void exploreRung(const RungRef& rung);
  void exploreFood(qint64 food);
  void showPage(QWidget& page);
  void backToTheDesk();
  void complain(const QString& what);
  /// What was done, in the status line until the next edit.
  void tell(const QString& what);

  OpenCollection& collection_;
  DietDesk* desk_;
  ProblemDocument* document_;
  VersionDocument* version_;
  DietShelf* shelf_;
  Larder* larder_;
  Suggestions* suggestions_;
  DietList* list_;
  DeskPane* deskPane_;
  BalancePane* balancePane_;
  FoodBench* bench_;
  ReasonBar* reason_;
  ApprovalForm* approval_;
  VersionBar* versionBar_;
  StandingBar* standing_;
  RulesPane* rules_;
  ComparePane* compare_;
  SwapPane* swap_;
  SwapEntry* swapEntry_;
  RotationPlanner* planner_;
  RotationPane* rotation_;
  RotationEntry* rotationEntry_;
  ExplorePane* explore_;
  DietChooser* chooser_;
  DietPapers* papers_;
  VersionComparer* comparer_;
  QStackedWidget* pages_;  // the desk, what to give instead of a food, the calendar of a rotation
  QWidget* deskPage_ = nullptr;
  QLabel* banner_;
  QString told_;
};

}  // namespace tarebowl::ui
