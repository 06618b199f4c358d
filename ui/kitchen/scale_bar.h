// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/scale_port.h"

#include <QFrame>

class QComboBox;
class QLabel;
class QPushButton;

namespace tarebowl::ui {

/// The scale of this bench: what it shows now, and where it is plugged in.
class ScaleBar : public QFrame {
  Q_OBJECT
 public:
  explicit ScaleBar(QWidget* parent = nullptr, ScalePatience patience = {});

  /// The scale that was in use here the last time.
  void use(const ScaleSettings& settings);
  [[nodiscard]] QString state() const;

 signals:
  /// A weight that stands still.
  void weightRead(double grams);
  void chosen(const tarebowl::ui::ScaleSettings& settings);

 private:
  void build();
  void wire();
  void listPorts();
  void toggle();
  void showChoice();
  void showWeight(double grams, bool settled);
  [[nodiscard]] ScaleSettings typed() const;

  ScalePort port_;
  bool choosing_ = false;
  QLabel* state_;
  QComboBox* ports_;
  QComboBox* units_;
  QComboBox* speeds_;
  QPushButton* connect_;
};

}  // namespace tarebowl::ui
