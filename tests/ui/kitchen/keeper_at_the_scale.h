// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/kitchen/kitchen_at_work.h"
#include "ui/kitchen/kitchen_desk.h"
#include "ui/kitchen/kitchen_room.h"
#include "ui/kitchen/weigh_pane.h"

#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include <string>

namespace tarebowl::ui {

/// A keeper at the kitchen's scale, with number keys and Enter.
class KeeperAtTheScale : public KitchenAtWork {
 protected:
  KeeperAtTheScale() { field().setFocus(); }
  QLineEdit& field() { return room.weighPane().field(); }
  void type(const char* keys) {
    QTest::keyClicks(&field(), QString::fromUtf8(keys));
    QTest::keyClick(&field(), Qt::Key_Return);
    settle();
  }
  void press(Qt::Key key) { QTest::keyClick(&field(), key); }
  /// What is on the scale: "tenrecs kale".
  [[nodiscard]] std::string onScale() const {
    return room.desk().bowl()->bowl.key.group + ' ' + room.desk().item()->food;
  }
  [[nodiscard]] bool asks() const { return room.weighPane().question().isVisible(); }
  [[nodiscard]] std::string question() const { return room.weighPane().question().text().toStdString(); }
  [[nodiscard]] double weighed(const char* group, std::size_t item) const {
    return intake::entryThatCounts(example.bowl(group).items.at(item).weighings).value().actual.value();
  }
};

}  // namespace tarebowl::ui
