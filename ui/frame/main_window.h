// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/collection_files.h"
#include "ui/collection/damage_offer.h"
#include "ui/diets/live_solver.h"
#include "ui/frame/room_hints.h"
#include "ui/frame/style_sheet_last.h"
#include "ui/shared/days.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/preferences.h"

#include <QWidget>

#include <filesystem>
#include <optional>
#include <vector>

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
class StatusLine;
class TodayRoom;

/// The one window: the rail of rooms, the room, the status line. What a room does, the room knows.
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

  [[nodiscard]] OpenCollection& collection() const { return *collection_; }
  [[nodiscard]] CollectionFiles& files() { return files_; }
  [[nodiscard]] AnimalsRoom& animals() const { return *animals_; }
  [[nodiscard]] FoodsRoom& foods() const { return *foods_; }
  [[nodiscard]] DietsRoom& diets() const { return *diets_; }
  [[nodiscard]] KitchenRoom& kitchen() const { return *kitchen_; }
  [[nodiscard]] IntakeRoom& intake() const { return *intake_; }
  [[nodiscard]] HealthRoom& health() const { return *health_; }
  [[nodiscard]] TodayRoom& today() const { return *today_; }
  [[nodiscard]] Finder& finder() const { return *finder_; }
  [[nodiscard]] Help& help() const { return *help_; }

 protected:
  void closeEvent(QCloseEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  struct Place {
    int number;
    QString name;
    Room* room;
  };
  void build();
  void addRoom(int number, const QString& name, const QString& iconName, Room& room);
  [[nodiscard]] Room& current() const;
  void showRoom();
  void openFinder();
  void openOnServer();
  void wireCollection();
  void wireStart();
  void wireHelp();
  [[nodiscard]] std::optional<EmptyRoom> hintOf(int room) const;
  void wireToday();
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
  TodayRoom* today_;
  FoodsRoom* foods_;
  AnimalsRoom* animals_;
  DietsRoom* diets_;
  KitchenRoom* kitchen_;
  IntakeRoom* intake_;
  HealthRoom* health_;
  std::vector<Place> rooms_;
  int number_ = 0;  // of the room on the rail
};

}  // namespace tarebowl::ui
