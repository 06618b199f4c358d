// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_draft.h"

#include <QWidget>

class QFrame;
class QLabel;
class QTabWidget;
class QTimer;
class QVBoxLayout;

namespace tarebowl::ui {

class DietDesk;
class IngredientModel;
class IngredientTable;
class LinePane;
class SegmentedSwitch;
class SoughtButton;
class SureButton;
class WhyCard;

/// The middle of the room: what the diet is for, what is asked of it, its foods, and why it stands as it
/// does.
class DeskPane : public QWidget {
  Q_OBJECT
 public:
  explicit DeskPane(DietDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] IngredientTable& table() const { return *table_; }
  /// Buttons of the window, at the right of the title.
  void addAction(QAction* action);
  /// Between the title and the switches.
  void addBar(QWidget& bar);
  /// Beside the reasons, below the table: chosen by its name.
  void addSheet(const QString& name, QWidget& sheet);
  void showSheet(const QWidget& sheet);
  [[nodiscard]] WhyCard& why() const { return *why_; }
  [[nodiscard]] LinePane& line() const { return *line_; }
  /// Right below the table.
  void addBelowTable(QWidget& widget);

 signals:
  void rungChosen(const tarebowl::ui::RungRef& rung);

 private:
  void build();
  void buildHeader();
  void buildSwitches();
  void buildMoveBar();
  void wire();
  void showProblem();
  void showSwitches();
  void showHeading();
  void showWhy();
  void fitTable();

  DietDesk& desk_;
  IngredientModel* model_;
  IngredientTable* table_;
  QLabel* title_;
  QLabel* subtitle_;
  QWidget* header_;
  QWidget* switches_;
  SegmentedSwitch* perGroup_;
  SegmentedSwitch* hold_;
  SoughtButton* sought_;
  SureButton* sure_;
  WhyCard* why_;
  QTimer* whyLater_;
  QTabWidget* lower_;
  QFrame* moveBar_;
  QVBoxLayout* tableLayout_ = nullptr;
  LinePane* line_;
  QLabel* caution_;
  diet::Objective shownObjective_;
  std::optional<double> shownConfidence_;
};

}  // namespace tarebowl::ui
