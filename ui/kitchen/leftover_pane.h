// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"

#include <QFrame>

class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace tarebowl::ui {

class ReasonBar;

/// What came back in a bowl, food by food, where dirty bowls go. Enter keeps the grams that were typed; one
/// letter says what needs none: A all eaten, N not weighed; S spilled and T stolen, with what was left and,
/// after a +, what was lost, where they were typed ("3 + 4"); M the grams of all foods together, E the part
/// of them that this food is, by eye; P leads to the control pans.
class LeftoverPane : public QFrame {
  Q_OBJECT
 public:
  LeftoverPane(KitchenDesk& desk, ReasonBar& reason, QWidget* parent = nullptr);

  void takeWeight(quantity::Grams left);
  [[nodiscard]] QLineEdit& field() const { return *field_; }
  [[nodiscard]] QLabel& message() const { return *message_; }

 signals:
  /// The control pans of the section are wanted.
  void pansWanted();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void build();
  void addWord(QLayout& row, const QString& word, int key);
  void showPlace();
  void finish();
  void say(const QString& text);
  bool sayByLetter(int key);
  [[nodiscard]] bool mayNote() const;
  void note(const KitchenDesk::LeftInBowl& what);
  void noteLost(intake::LeftoverKind kind);
  void noteTogether();
  void noteByEye();
  [[nodiscard]] std::optional<quantity::Grams> typed() const;

  KitchenDesk& desk_;
  ReasonBar& reason_;
  QLabel* food_;
  QLabel* offered_;
  QLineEdit* field_;
  QLabel* message_;
  std::optional<intake::ItemKey> shown_;
};

}  // namespace tarebowl::ui
