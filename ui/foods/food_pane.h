// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/composition_model.h"
#include "ui/foods/food_desk.h"
#include "ui/foods/group_strip.h"

#include <QWidget>

class QAction;
class QFrame;
class QLabel;
class QPushButton;

namespace tarebowl::ui {

class ChecksCard;
class CollectionDoubts;
class CompositionView;
class SegmentedSwitch;

/// One food: its composition on a basis, where it stands in its group, and what is doubtful about it.
class FoodPane : public QWidget {
  Q_OBJECT
 public:
  FoodPane(FoodDesk& desk, const CollectionDoubts& doubts, QWidget* parent = nullptr);

  /// A button at the right of the heading.
  void addAction(QAction* action);
  [[nodiscard]] CompositionView& view() const { return *view_; }
  [[nodiscard]] CompositionModel& model() const { return *model_; }
  [[nodiscard]] GroupStrip& strip() const { return *strip_; }
  void setBasis(CompositionBasis basis);

 signals:
  void foodEditWanted();
  void foodRemoveWanted();
  void sampleAddWanted();
  /// sample: a SampleId as Qt can carry it.
  void sampleEditWanted(qint64 sample);
  void setAsideWanted(qint64 sample);
  void setByHandWanted(tarebowl::food::NutrientId nutrient);

 private:
  void build();
  [[nodiscard]] QWidget* makeHeader();
  [[nodiscard]] QWidget* makeButtons();
  void wire();
  void showPage();
  void showStrip();
  void showChecks();
  void takeGroup(food::NutrientId nutrient, const FoodDesk::Figures& group);
  void showButtons();
  [[nodiscard]] const store::StoredSample* chosenSample() const;
  void turnSample();

  FoodDesk& desk_;
  const CollectionDoubts& doubts_;
  CompositionModel* model_;
  CompositionView* view_;
  QLabel* title_;
  QLabel* subtitle_;
  QWidget* header_ = nullptr;
  SegmentedSwitch* basis_;
  QPushButton* editSample_;
  QPushButton* setAside_;
  QPushButton* byHand_;
  QFrame* stripCard_;
  QLabel* stripTitle_ = nullptr;
  GroupStrip* strip_;
  ChecksCard* checks_;
};

}  // namespace tarebowl::ui
