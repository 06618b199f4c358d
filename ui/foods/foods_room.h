// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/room.h"

class QLabel;
class QStackedWidget;

namespace tarebowl::ui {

class CollectionFiles;
class CollectionDoubts;
class ComparisonPane;
class DoubtList;
class FoodForm;
class FoodList;
class FoodPane;
class ImportDesk;
class ImportPage;
class ReasonBar;
class SampleForm;

/// The foods of the collection: the list at the left, the food itself at the right. It only wires.
class FoodsRoom : public Room {
  Q_OBJECT
 public:
  FoodsRoom(OpenCollection& collection, CollectionFiles& files, Dialogs dialogs = {},
            QWidget* parent = nullptr);

  /// Shows what importing a table would do; where no collection is open, asks where the new one is to be
  /// kept.
  void importTable(const std::filesystem::path& table);
  void importByDialog();

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
  [[nodiscard]] CollectionDoubts& doubts() const { return *doubts_; }
  [[nodiscard]] DoubtList& doubtList() const { return *doubtList_; }
  [[nodiscard]] ImportDesk& importDesk() const { return *importDesk_; }
  [[nodiscard]] ImportPage& importPage() const { return *importPage_; }

 private:
  void build();
  void wire();
  void addActions();
  void complain(const Refusal& refusal);
  void wireEditing();
  [[nodiscard]] QWidget* makeHint();
  void wireImport();
  void wireDoubts();
  void showRight();
  void showPane();
  void showFoods();
  void addFood();
  void editSample(SampleId id);
  void askWhySetAside(SampleId id);
  void askForValue(food::NutrientId nutrient);

  OpenCollection& collection_;
  CollectionFiles& files_;
  Dialogs dialogs_;
  FoodDesk* desk_;
  CollectionDoubts* doubts_;
  ImportDesk* importDesk_;
  FoodList* list_;
  DoubtList* doubtList_;
  FoodPane* pane_;
  ComparisonPane* comparison_;
  FoodForm* foodForm_;
  SampleForm* sampleForm_;
  ReasonBar* reason_;
  QWidget* start_;  // where there is no food yet
  ImportPage* importPage_;
  QStackedWidget* whole_;  ///< the foods, or a table on its way in
  QStackedWidget* left_;   ///< all foods, or what is doubted about them
  QStackedWidget* right_;
  QLabel* banner_;
};

}  // namespace tarebowl::ui
