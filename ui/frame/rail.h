// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QButtonGroup;
class QLabel;
class QToolButton;
class QVBoxLayout;

namespace tarebowl::ui {

/// The narrow rail of rooms at the left of the window. Where it is not high enough for all of them they draw
/// closer together.
class Rail : public QWidget {
  Q_OBJECT
 public:
  explicit Rail(QWidget* parent = nullptr);

  /// number: Ctrl+number goes there.
  void addRoom(int number, const QString& name, const QString& iconName);
  void setCurrent(int number);
  /// At the foot of the rail.
  void addFoot(QWidget* foot);
  [[nodiscard]] QSize minimumSizeHint() const override;

 signals:
  void chosen(int number);

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void inkIcons();
  void makeRoomFor(const QToolButton& button);
  void fit();

  QVBoxLayout* layout_;
  QLabel* mark_;
  int places_ = 0;
  bool isTight_ = false;
  QButtonGroup* rooms_;
};

}  // namespace tarebowl::ui
