// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/rotation_planner.h"

#include <QObject>
#include <QString>

#include <string>

namespace tarebowl::ui {

class RotationPane;
class VersionDocument;

/// From the version on the design desk to the calendar of its days.
class RotationEntry : public QObject {
  Q_OBJECT
 public:
  RotationEntry(VersionDocument& version, RotationPlanner& planner, RotationPane& pane,
                QObject* parent = nullptr);
  /// What waits for a hand to rest is written first: days are planned for what stands on the desk.
  void open();

 signals:
  void opened();
  void refused(const QString& why);

 private:
  VersionDocument& version_;
  RotationPlanner& planner_;
  RotationPane& pane_;
};

}  // namespace tarebowl::ui
