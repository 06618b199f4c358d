// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/bare_chart.h"

#include <QString>

#include <optional>
#include <vector>

class QGraphicsItem;

namespace tarebowl::ui {

/// Where a food stands among the others of its group.
struct GroupStripState {
  QString title;  ///< "Calcium among insects in this collection, g/kg DM"
  struct Dot {
    QString name;
    double amount = 0.0;
  };
  std::vector<Dot> others;
  std::optional<double> thisFood;
  QString thisName;
  int unknown = 0;  ///< foods of the group without a value
  QString unit;     ///< "mg/kg DM"
};

/// A dot for every food of the group, this one marked: a strip, because groups are small.
class GroupStrip : public BareChart {
  Q_OBJECT
 public:
  explicit GroupStrip(QWidget* parent = nullptr);
  void show(GroupStripState state);
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void rebuild();
  void placeNames();
  void put(const QString& text, double amount, bool bold);

  GroupStripState state_;
  std::vector<QGraphicsItem*> names_;
};

}  // namespace tarebowl::ui
