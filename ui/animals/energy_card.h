// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QFrame>

class QComboBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tarebowl::ui {

class EnergyModel;
class PlainTable;

/// The energy need of a group, worked out step by step: each number can be edited, published choices are
/// offered with their sources, and what the number is not is said beside it.
class EnergyCard : public QFrame {
  Q_OBJECT
 public:
  explicit EnergyCard(AnimalDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] EnergyModel& model() const { return *model_; }
  [[nodiscard]] PlainTable& table() const { return *table_; }

 private:
  void build();
  [[nodiscard]] QWidget* makeChoices();
  void showPage();
  void showCautions();
  void showButtons();
  void choosePlan();
  void addFactor();
  void removeFactor();
  void keep(const animal::EnergyPlan& plan);
  [[nodiscard]] std::optional<animal::EnergyPlan> plan() const;

  AnimalDesk& desk_;
  EnergyModel* model_;
  PlainTable* table_;
  QComboBox* plans_;
  QComboBox* factors_;
  QPushButton* add_;
  QPushButton* remove_;
  QLabel* about_;
  QWidget* cautions_;
  QVBoxLayout* cautionLines_;
};

}  // namespace tarebowl::ui
