// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"
#include "ui/kitchen/portion_list.h"

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
  template <class Content>
  Content* addCard(QVBoxLayout& layout, const QString& heading, Content* content);
  void showSheet();

  KitchenDesk& desk_;
  PortionList* totals_ = nullptr;
  PortionList* thaw_ = nullptr;
  PortionList* gutLoad_ = nullptr;
  QLabel* without_ = nullptr;
  QLabel* cautions_ = nullptr;
  QLabel* hygiene_ = nullptr;
};

}  // namespace tarebowl::ui
