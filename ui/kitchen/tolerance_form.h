// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"

#include <QFrame>

#include <array>

class QLabel;

namespace tarebowl::ui {

class NumberField;

/// The rule of weighing of the house, and what it comes to for the line on the scale, in the room itself.
class ToleranceForm : public QFrame {
  Q_OBJECT
 public:
  explicit ToleranceForm(KitchenDesk& desk, QWidget* parent = nullptr);

  void open();
  /// As it is typed.
  [[nodiscard]] intake::ToleranceRule rule() const;
  /// Scale steps always allowed; then scale steps, % of the bowl, % of body mass.
  [[nodiscard]] NumberField& field(std::size_t which) const { return *fields_.at(which); }
  [[nodiscard]] QLabel& example() const { return *example_; }

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void build();
  void show(const intake::ToleranceRule& rule);
  void showExample();
  void keep();

  KitchenDesk& desk_;
  std::array<NumberField*, 4> fields_;
  QLabel* example_;
};

}  // namespace tarebowl::ui
