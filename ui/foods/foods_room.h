// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/room.h"

class QLabel;
class QStackedWidget;

namespace tarebowl::ui {

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
  explicit FoodsRoom(Dialogs dialogs, QWidget* parent = nullptr);

  /// The invented sample, made anew where its file is not there yet.
  void openSample();
  void openCollection(const std::filesystem::path& file, bool invented = false);
  void openByDialog();
  void createByDialog();
  /// Puts a backup in the place of the open collection; what is there is backed up first.
  void restore(const std::filesystem::path& backup);
  void setPerson(const QString& name) { desk_->setPerson(name); }

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
  void open(const std::filesystem::path& file, bool invented, CollectionOpener opener);
  void wireEditing();
  void showRight();
  void showPane();
  void addFood();
  void editSample(SampleId id);
  void askWhySetAside(SampleId id);
  void askForValue(food::NutrientId nutrient);

  FoodDesk* desk_;
  Dialogs dialogs_;
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
