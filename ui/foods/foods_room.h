// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/room.h"

class QLabel;
class QStackedWidget;

namespace tarebowl::ui {

class FoodList;
class FoodPane;
class StartPage;

/// The foods of the collection: the list at the left, the food itself at the right. It only wires.
class FoodsRoom : public Room {
  Q_OBJECT
 public:
  explicit FoodsRoom(Dialogs dialogs, QWidget* parent = nullptr);

  void openSample();
  void setPerson(const QString& name) { desk_->setPerson(name); }

  [[nodiscard]] RoomState state() const override;
  [[nodiscard]] std::vector<FinderHit> find(const QString& partOfName, int most) const override;
  void goTo(qint64 id) override;

  [[nodiscard]] FoodDesk& desk() const { return *desk_; }
  [[nodiscard]] FoodList& list() const { return *list_; }
  [[nodiscard]] FoodPane& pane() const { return *pane_; }

 private:
  void build();
  void wire();
  void addActions();
  void complain(const QString& what);
  void showRight();

  FoodDesk* desk_;
  Dialogs dialogs_;
  FoodList* list_;
  FoodPane* pane_;
  StartPage* start_;
  QStackedWidget* right_;
  QLabel* banner_;
};

}  // namespace tarebowl::ui
