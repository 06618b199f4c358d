// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/new_species.h"

#include <QWidget>

class QLineEdit;
class QPushButton;

namespace tarebowl::ui {

class ModelPicker;

/// For a group that is fed by no profile yet: choosing a model species, and why it stands in.
class ModelStart : public QWidget {
  Q_OBJECT
 public:
  explicit ModelStart(Starters starters, QWidget* parent = nullptr);

  void clear();
  [[nodiscard]] ModelPicker& picker() const { return *picker_; }

 signals:
  /// The published profile, what it takes over from (the farthest first, itself the last), and why.
  void chosen(const tarebowl::ui::ModelChoice& choice);

 private:
  [[nodiscard]] ModelChoice told() const;
  void showReady();

  animal::ProfileLookup lookup_;
  ModelPicker* picker_;
  QLineEdit* why_;
  QPushButton* start_;
};

}  // namespace tarebowl::ui
