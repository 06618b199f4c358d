// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"

#include <QFrame>

class QLabel;
class QLineEdit;
class QPushButton;

namespace tarebowl::ui {

class ReasonBar;
class ToleranceBar;

/// What is on the scale, in big type. Number keys and Enter do everything: Enter keeps the weight and goes
/// on, an empty Enter goes on to the next food that is not weighed; a weight that is doubtful is asked about,
/// and Enter again keeps it. Up and down, page up and page down move through foods and bowls;
/// the asterisk says that the food is not there.
class WeighPane : public QFrame {
  Q_OBJECT
 public:
  WeighPane(KitchenDesk& desk, ReasonBar& reason, QWidget* parent = nullptr);

  /// A weight that a scale has read: it stands in the field, and a person keeps it with Enter.
  void takeWeight(quantity::Grams actual);
  [[nodiscard]] QPushButton& lot() const { return *lot_; }
  [[nodiscard]] QLineEdit& lotField() const { return *lotField_; }
  [[nodiscard]] QLineEdit& field() const { return *field_; }
  [[nodiscard]] const ToleranceBar& bar() const { return *bar_; }
  [[nodiscard]] QLabel& question() const { return *question_; }

 signals:
  /// What is to be weighed is not there.
  void notAvailable();
  /// Control pans, which are put out when bowls are.
  void pansWanted();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void build();
  void showPlace();
  void startAnew();
  void showTyped();
  void finish();
  void keep(quantity::Grams actual);
  void askWhy(quantity::Grams actual);
  void say(const QString& text);
  void askLot();
  void keepLot();

  KitchenDesk& desk_;
  ReasonBar& reason_;
  QLabel* food_;
  QLabel* planned_;
  QLabel* entries_;
  QLineEdit* field_;
  ToleranceBar* bar_;
  QLabel* question_;
  QPushButton* missing_;
  QPushButton* lot_;  ///< says the lot; a press opens the field for another one
  QLineEdit* lotField_;
  std::optional<intake::ItemKey> shown_;
  QString asked_;  ///< the text that was asked about: Enter again keeps it
};

}  // namespace tarebowl::ui
