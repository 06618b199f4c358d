// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"

#include <QScrollArea>

class QLabel;
class QVBoxLayout;

namespace tarebowl::ui {

/// What stands on the sheet beside the bowls: what the kitchen needs, what is done today for tomorrow, who
/// has no bowl, cautions, hygiene.
class SheetSide : public QScrollArea {
  Q_OBJECT
 public:
  explicit SheetSide(KitchenDesk& desk, QWidget* parent = nullptr);
  /// All that is said, for tests and screen readers.
  [[nodiscard]] QString text() const;

 private:
  QLabel* addCard(QVBoxLayout& layout, const QString& heading);
  void showSheet();

  KitchenDesk& desk_;
  QLabel* totals_ = nullptr;
  QLabel* thaw_ = nullptr;
  QLabel* gutLoad_ = nullptr;
  QLabel* without_ = nullptr;
  QLabel* cautions_ = nullptr;
  QLabel* hygiene_ = nullptr;
  QStringList portions_{};  ///< what the first three say, without their marks
};

}  // namespace tarebowl::ui
