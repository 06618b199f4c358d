// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace tarebowl::ui {

/// Control pans of the section and day: the same food, out of the animals' reach, weighed when the bowls went
/// out and when they came back. Enter goes from the food to the first weight, to the second, and keeps the
/// pan: without a second weight as one that still stands. On a pan of the list Enter changes it, or says what
/// came back; Delete takes it out. Escape goes back to the bowls.
class PanPane : public QWidget {
  Q_OBJECT
 public:
  explicit PanPane(KitchenDesk& desk, QWidget* parent = nullptr);

  /// With the first pan that still stands where bowls come back, or else with an empty form.
  void begin();
  /// What a scale has read, into the field that waits for it.
  void takeWeight(quantity::Grams read);
  [[nodiscard]] QComboBox& food() const { return *food_; }
  [[nodiscard]] QLineEdit& start() const { return *start_; }
  [[nodiscard]] QLineEdit& end() const { return *end_; }
  [[nodiscard]] QListWidget& pans() const { return *pans_; }
  [[nodiscard]] QLabel& message() const { return *message_; }

  bool eventFilter(QObject* watched, QEvent* event) override;

 signals:
  void dismissed();

 private:
  void build();
  void showSheet();
  void showEmptyForm();
  [[nodiscard]] int firstStanding() const;
  void showFoods();
  void change(int row);
  void keep();
  void takeOut();
  void showLoss();
  void say(const QString& text);
  [[nodiscard]] QString whatIsMissing() const;
  [[nodiscard]] std::optional<intake::ControlPan> typed() const;
  [[nodiscard]] std::vector<intake::ControlPan> others() const;

  KitchenDesk& desk_;
  QLabel* title_;
  QListWidget* pans_;
  QLabel* doing_;
  QComboBox* food_;
  QLineEdit* start_;
  QLineEdit* end_;
  QLabel* loss_;
  QLabel* message_;
  QPushButton* keep_;
  QPushButton* takeOut_;
  QPushButton* back_;
  std::optional<store::StoredControlPan> changed_{};  ///< which pan of the list the form changes
  bool goesOn_ = false;  ///< to the next pan that stands, once the sheet says that this one does not
  std::optional<intake::ControlPan> asked_{};  ///< what was asked about; again means yes
};

}  // namespace tarebowl::ui
