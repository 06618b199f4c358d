// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"

#include <QWidget>

class QLabel;

namespace tarebowl::ui {

class BowlList;
class LeftoverPane;
class ReasonBar;

/// Yesterday's bowls as a list to fill, in the order of the sheet and by keys alone: what came back of each
/// food. The same entry as in the kitchen, where dirty bowls go.
class YesterdayPage : public QWidget {
  Q_OBJECT
 public:
  YesterdayPage(OpenCollection& collection, KitchenDesk::Clock today, QWidget* parent = nullptr);

  [[nodiscard]] KitchenDesk& desk() const { return *desk_; }
  [[nodiscard]] LeftoverPane& pane() const { return *pane_; }
  void showSection(const QString& section);

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void startWithYesterday();
  void sayHowMany();

  KitchenDesk* desk_;
  ReasonBar* reason_;
  BowlList* list_;
  LeftoverPane* pane_;
  QLabel* left_;
};

}  // namespace tarebowl::ui
