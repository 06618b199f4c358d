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

class QVBoxLayout;

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
class StartPage;
class StatusLine;
class TodayRoom;
class WaitingBar;

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
  [[nodiscard]] Finder& finder();
  [[nodiscard]] Help& help();

 protected:
  void closeEvent(QCloseEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  /// What is around the rooms. Not before something is opened or the window is wanted: a collection is read
  /// meanwhile.
  void build();
  void layOut();
  void buildRest();
  [[nodiscard]] Room& current();
  void showRoom();
  void openFinder();
  void openOnServer();
  void wireRooms();
  void wireMenu();
  void wireCollection();
  void wireStart(const StartPage& start);
  void wireHelp();
  void wireStatus();
  void showState();
  void tellWhatWaits();

  StyleSheetLast sheet_;  // first: the window is built after it
  Preferences preferences_;
  OpenCollection* collection_;
  CollectionFiles files_;
  DamageOffer damage_;
  std::unique_ptr<Rooms> rooms_;
  // Nothing of these until build().
  Rail* rail_ = nullptr;
  RoomStage* stage_ = nullptr;
  StatusLine* status_ = nullptr;
  QVBoxLayout* column_ = nullptr;  ///< beside the rail
  WaitingBar* waiting_ = nullptr;  ///< over the status line, of a collection on a server
  Finder* finder_ = nullptr;
  CollectionMenu* menu_ = nullptr;
  Help* help_ = nullptr;
  QTimer rest_;            ///< until the next room is built that nobody has asked for
  int number_;             // of the room on the rail
  bool isInRoom_ = false;  ///< the room is shown, or what stands in its place
};

}  // namespace tarebowl::ui
