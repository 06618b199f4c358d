// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/live_solver.h"
#include "ui/frame/room_hints.h"
#include "ui/shared/days.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/energy_unit.h"
#include "ui/shared/preferences.h"
#include "ui/shared/room.h"

#include <QObject>
#include <QString>

#include <functional>
#include <optional>
#include <vector>

namespace tarebowl::ui {

class AnimalsRoom;
class CollectionFiles;
class DietsRoom;
class FoodsRoom;
class HealthRoom;
class IntakeRoom;
class KitchenRoom;
class OpenCollection;
class TodayRoom;

/// A room's place on the rail.
struct RoomPlace {
  int number;  ///< Ctrl and it go there
  QString name;
  QString iconName;
};

/// What the rooms are built with.
struct RoomParts {
  OpenCollection& collection;
  CollectionFiles& files;
  Preferences preferences;
  LiveSolver::Function solve;
  Dialogs dialogs;
  std::function<quantity::Date()> today;
};

/// The rooms of the window, and what leads from one to another. Each is built when it is asked for, or by
/// `buildNext` once the window has nothing else to do: a start waits for the room in sight alone. A room
/// belongs to whoever takes it up at `built`.
class Rooms : public QObject {
  Q_OBJECT
 public:
  explicit Rooms(RoomParts parts, QObject* parent = nullptr);
  /// Of the rooms those go with it that nobody took.
  ~Rooms() override;

  [[nodiscard]] const std::vector<RoomPlace>& places() const { return places_; }
  [[nodiscard]] bool has(int number) const;
  /// number: a place's.
  [[nodiscard]] Room& at(int number);
  /// The next one that nobody has asked for yet; false where all are there.
  bool buildNext();
  [[nodiscard]] const std::vector<Room*>& allBuilt() const { return built_; }
  [[nodiscard]] bool areAllBuilt() const { return built_.size() == places_.size(); }

  [[nodiscard]] TodayRoom& today();
  [[nodiscard]] FoodsRoom& foods();
  [[nodiscard]] AnimalsRoom& animals();
  [[nodiscard]] DietsRoom& diets();
  [[nodiscard]] KitchenRoom& kitchen();
  [[nodiscard]] IntakeRoom& intake();
  [[nodiscard]] HealthRoom& health();

  /// What is said in the place of an empty room; nothing where it has something to show, or where that is
  /// not known yet.
  [[nodiscard]] std::optional<EmptyRoom> hintOf(int number) const;
  /// True once nothing would be lost by closing the window.
  [[nodiscard]] bool mayLeave() const;
  void setEnergy(EnergyUnit energy);

 signals:
  /// Before anybody else has the room.
  void built(int number, tarebowl::ui::Room* room);
  void stateChanged(int number);
  /// Something came or went that a hint depends on.
  void contentsChanged();
  void roomWanted(int number);

 private:
  template <class RoomType>
  RoomType& take(int number, RoomType*& place, RoomType* (Rooms::*build)());
  TodayRoom* buildToday();
  FoodsRoom* buildFoods();
  AnimalsRoom* buildAnimals();
  DietsRoom* buildDiets();
  KitchenRoom* buildKitchen();
  IntakeRoom* buildIntake();
  HealthRoom* buildHealth();

  RoomParts parts_;
  std::vector<RoomPlace> places_;
  std::vector<Room*> built_;
  TodayRoom* today_ = nullptr;
  FoodsRoom* foods_ = nullptr;
  AnimalsRoom* animals_ = nullptr;
  DietsRoom* diets_ = nullptr;
  KitchenRoom* kitchen_ = nullptr;
  IntakeRoom* intake_ = nullptr;
  HealthRoom* health_ = nullptr;
};

}  // namespace tarebowl::ui
