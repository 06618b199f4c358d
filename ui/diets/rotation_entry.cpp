// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_entry.h"

#include "ui/diets/rotation_pane.h"
#include "ui/diets/version_document.h"

namespace tarebowl::ui {

RotationEntry::RotationEntry(VersionDocument& version, RotationPlanner& planner, RotationPane& pane,
                             QObject* parent)
    : QObject(parent), version_(version), planner_(planner), pane_(pane) {}

void RotationEntry::open() {
  if (!version_.isOpen())
    return emit refused(tr("Days are planned for a diet of a collection: choose one at the left."));
  version_.saveNow();
  const transfer::DeskDiet& shown = *version_.shown();
  const int number = shown.version.record.version.number;
  pane_.setTitle(QString::fromStdString(shown.context.title));
  planner_.open(shown.diet.record.code, shown.version.id, number);
  emit opened();
}

}  // namespace tarebowl::ui
