// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QButtonGroup;
class QVBoxLayout;

namespace tarebowl::ui {

/// The narrow rail of rooms at the left of the window. Rooms that are not built yet are absent.
class Rail : public QWidget {
  Q_OBJECT
 public:
  explicit Rail(QWidget* parent = nullptr);

  /// number: Ctrl+number goes there.
  void addRoom(int number, const QString& name, const QString& iconName);
  void setCurrent(int number);
  /// At the foot of the rail.
  void addFoot(QWidget* foot);

 signals:
  void chosen(int number);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void inkIcons();

  QVBoxLayout* layout_;
  int places_ = 0;
  QButtonGroup* rooms_;
};

}  // namespace tarebowl::ui
