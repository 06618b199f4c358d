// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"
#include "ui/shared/room.h"

class QLabel;
class QStackedWidget;

namespace tarebowl::ui {

class CollectionFiles;
class ComparisonPane;
class FoodForm;
class FoodList;
class FoodPane;
class ReasonBar;
class SampleForm;
class StartPage;

/// The foods of the collection: the list at the left, the food itself at the right. It only wires.
class FoodsRoom : public Room {
  Q_OBJECT
 public:
  FoodsRoom(OpenCollection& collection, CollectionFiles& files, QWidget* parent = nullptr);

  [[nodiscard]] RoomState state() const override;
  [[nodiscard]] std::vector<FinderHit> find(const QString& partOfName, int most) const override;
  void goTo(qint64 id) override;

  [[nodiscard]] FoodDesk& desk() const { return *desk_; }
  [[nodiscard]] FoodList& list() const { return *list_; }
  [[nodiscard]] FoodPane& pane() const { return *pane_; }
  [[nodiscard]] ComparisonPane& comparison() const { return *comparison_; }
  [[nodiscard]] SampleForm& sampleForm() const { return *sampleForm_; }
  [[nodiscard]] FoodForm& foodForm() const { return *foodForm_; }
  [[nodiscard]] ReasonBar& reasonBar() const { return *reason_; }

 private:
  void build();
  void wire();
  void addActions();
  void complain(const Refusal& refusal);
  void wireEditing();
  void showRight();
  void showPane();
  void addFood();
  void editSample(SampleId id);
  void askWhySetAside(SampleId id);
  void askForValue(food::NutrientId nutrient);

  OpenCollection& collection_;
  CollectionFiles& files_;
  FoodDesk* desk_;
  FoodList* list_;
  FoodPane* pane_;
  ComparisonPane* comparison_;
  FoodForm* foodForm_;
  SampleForm* sampleForm_;
  ReasonBar* reason_;
  StartPage* start_;
  QStackedWidget* right_;
  QLabel* banner_;
};

}  // namespace tarebowl::ui
