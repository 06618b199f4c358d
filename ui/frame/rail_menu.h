// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QToolButton>

namespace tarebowl::ui {

/// A button at the foot of the rail that opens a menu.
class RailMenu : public QToolButton {
  Q_OBJECT
 public:
  RailMenu(const QString& name, const QString& iconName, QWidget* parent);

 protected:
  [[nodiscard]] QMenu& entries() const { return *menu(); }
  void changeEvent(QEvent* event) override;

 private:
  void inkIcon();

  QString iconName_;
};

}  // namespace tarebowl::ui
