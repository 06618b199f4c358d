// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/collection_files.h"
#include "ui/collection/damage_offer.h"
#include "ui/diets/live_solver.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/preferences.h"

#include <QWidget>

#include <filesystem>
#include <optional>
#include <vector>

class QStackedWidget;

namespace tarebowl::ui {

class AnimalsRoom;
class CollectionMenu;
class DietsRoom;
class Finder;
class FoodsRoom;
class HealthRoom;
class IntakeRoom;
class KitchenRoom;
class Rail;
class Room;
class StatusLine;
class TodayRoom;

/// The one window: the rail of rooms, the room, the status line. What a room does, the room knows.
class MainWindow : public QWidget {
  Q_OBJECT
 public:
  MainWindow(LiveSolver::Function solve, Dialogs dialogs, Preferences preferences = {},
             QWidget* parent = nullptr);
  ~MainWindow() override;

  /// Opens a collection (*.tarebowl), or a problem file beside the collection that was open last; where
  /// nothing is given that collection, and at the first start the invented sample.
  void open(const std::optional<std::filesystem::path>& file);
  /// What is dropped on the window: a collection, a problem file, or a table of foods to import.
  void take(const std::filesystem::path& dropped);
  /// The rooms by their place on the rail: Ctrl+2 is Foods.
  void goToRoom(int number);

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

 protected:
  void closeEvent(QCloseEvent* event) override;
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
  void openFinder();
  void wireCollection();
  void wireToday();
  void showState();

  Preferences preferences_;
  OpenCollection* collection_;
  CollectionFiles files_;
  DamageOffer damage_;
  Rail* rail_;
  QStackedWidget* stack_;
  StatusLine* status_;
  Finder* finder_;
  CollectionMenu* menu_;
  TodayRoom* today_;
  FoodsRoom* foods_;
  AnimalsRoom* animals_;
  DietsRoom* diets_;
  KitchenRoom* kitchen_;
  IntakeRoom* intake_;
  HealthRoom* health_;
  std::vector<Place> rooms_;
};

}  // namespace tarebowl::ui
