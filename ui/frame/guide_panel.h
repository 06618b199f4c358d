// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/frame/guide.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;

namespace tarebowl::ui {

/// The guide, a step at a time, while the hands do it in the window: a small window beside it, which can be
/// put where it hides nothing.
class GuidePanel : public QWidget {
  Q_OBJECT
 public:
  explicit GuidePanel(QWidget* parent = nullptr);

  [[nodiscard]] const GuideStep& step() const;
  /// At the step where it was left.
  void begin();

 signals:
  /// The step in sight wants its room.
  void roomWanted(int number);
  /// The controls that the step speaks of are to be found; the first one in sight takes the focus.
  void shown(const QStringList& controls);
  void sampleWanted();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void go(int step);

  std::vector<GuideFlow> flows_;
  QComboBox* flow_;
  QLabel* place_;
  QLabel* text_;
  QPushButton* show_;
  QPushButton* back_;
  QPushButton* next_;
  int step_ = 0;
};

}  // namespace tarebowl::ui
