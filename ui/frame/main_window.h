// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/collection_files.h"
#include "ui/collection/damage_offer.h"
#include "ui/diets/live_solver.h"
#include "ui/frame/style_sheet_last.h"
#include "ui/shared/days.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/preferences.h"

#include <QTimer>
#include <QWidget>

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

namespace tarebowl::ui {

class AnimalsRoom;
class CollectionMenu;
class DietsRoom;
class Finder;
class Help;
class FoodsRoom;
class HealthRoom;
class IntakeRoom;
class KitchenRoom;
class Rail;
class Room;
class RoomStage;
class Rooms;
class StatusLine;
class TodayRoom;

/// The one window: the rail of rooms, the room, the status line. What a room does, the room knows; it is
/// built when somebody goes to it, asks for it here, or once the window has nothing else to do.
class MainWindow : public QWidget {
  Q_OBJECT
 public:
  using Clock = std::function<quantity::Date()>;
  /// today: the day that the rooms look at.
  MainWindow(LiveSolver::Function solve, Dialogs dialogs, Preferences preferences = {},
             Clock today = &ui::today, QWidget* parent = nullptr);
  ~MainWindow() override;

  /// Opens a collection (*.tarebowl), or a problem file beside the collection that was open last; where
  /// nothing is given that collection in the room that was left; at the first start there are the ways in.
  void open(const std::optional<std::filesystem::path>& file);
  /// What is dropped on the window: a collection, a problem file, or a table of foods to import.
  void take(const std::filesystem::path& dropped);
  /// Where the window stood when it was closed; false where it never was.
  bool takeItsPlace();
  /// The rooms by their place on the rail: Ctrl+2 is Foods.
  void goToRoom(int number);

  void setVisible(bool visible) override;
  /// Every room is built.
  [[nodiscard]] bool isWhole() const;

  [[nodiscard]] OpenCollection& collection() const { return *collection_; }
  [[nodiscard]] CollectionFiles& files() { return files_; }
  [[nodiscard]] AnimalsRoom& animals() const;
  [[nodiscard]] FoodsRoom& foods() const;
  [[nodiscard]] DietsRoom& diets() const;
  [[nodiscard]] KitchenRoom& kitchen() const;
  [[nodiscard]] IntakeRoom& intake() const;
  [[nodiscard]] HealthRoom& health() const;
  [[nodiscard]] TodayRoom& today() const;
  [[nodiscard]] Finder& finder() const { return *finder_; }
  [[nodiscard]] Help& help() const { return *help_; }

 protected:
  void closeEvent(QCloseEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  void build();
  void takeUp(int number, Room& room);
  void buildRest();
  [[nodiscard]] Room& current();
  void showRoom();
  void openFinder();
  void openOnServer();
  void wireRooms();
  void wireMenu();
  void wireCollection();
  void wireStart();
  void wireHelp();
  void showState();

  StyleSheetLast sheet_;  // first: the window is built after it
  Preferences preferences_;
  OpenCollection* collection_;
  CollectionFiles files_;
  DamageOffer damage_;
  Rail* rail_;
  RoomStage* stage_;
  StatusLine* status_;
  Finder* finder_;
  CollectionMenu* menu_;
  Help* help_;
  std::unique_ptr<Rooms> rooms_;
  QTimer rest_;     ///< until the next room is built that nobody has asked for
  int number_ = 0;  // of the room on the rail
};

}  // namespace tarebowl::ui
