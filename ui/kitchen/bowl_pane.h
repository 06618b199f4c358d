// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"

#include <QFrame>

class QLabel;

namespace tarebowl::ui {

class BowlModel;
class PlainTable;

/// The card of the bowl that is on the scale, readable from where the bowls stand.
class BowlPane : public QFrame {
  Q_OBJECT
 public:
  explicit BowlPane(KitchenDesk& desk, QWidget* parent = nullptr);

  [[nodiscard]] PlainTable& table() const { return *table_; }

 private:
  void showBowl();

  KitchenDesk& desk_;
  QLabel* label_;
  QLabel* facts_;
  QLabel* given_;
  BowlModel* model_;
  PlainTable* table_;
};

}  // namespace tarebowl::ui
