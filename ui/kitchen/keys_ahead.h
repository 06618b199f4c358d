// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"

#include <QObject>
#include <QString>

#include <deque>

class QKeyEvent;
class QLineEdit;

namespace tarebowl::ui {

/// Keys that are faster than the disk: what is typed into a weight's field while the desk still reads the
/// sheet or writes the weight before is held, and stands in the field, in order, when the food that it is
/// meant for is on the scale. Enter decides only about a food that was in sight when it was pressed, and
/// about nothing that the pane asks a person to look at first: what was typed after such an Enter is not
/// taken.
class KeysAhead : public QObject {
 public:
  /// Comes before all filters that the field has already.
  KeysAhead(KitchenDesk& desk, QLineEdit& field);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Key {
    int key = 0;
    Qt::KeyboardModifiers modifiers{};
    QString text{};
    bool isBlind = false;  ///< pressed when no food was on the scale
  };
  [[nodiscard]] bool holds(const QKeyEvent& pressed) const;
  void handOn();
  void press(const Key& key);

  KitchenDesk& desk_;
  QLineEdit& field_;
  std::deque<Key> held_;
  bool handsOn_ = false;
};

}  // namespace tarebowl::ui
