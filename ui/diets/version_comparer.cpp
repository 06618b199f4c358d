// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/version_comparer.h"

#include "core/store/reading.h"
#include "ui/collection/open_collection.h"
#include "ui/diets/compare_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/diet_shelf.h"
#include "ui/diets/version_document.h"

#include <algorithm>

namespace tarebowl::ui {

VersionComparer::VersionComparer(Parts parts, OpenCollection& collection, QObject* parent)
    : QObject(parent), parts_(parts), collection_(collection) {
  connect(&parts_.desk, &DietDesk::settled, this, &VersionComparer::show);
  connect(&parts_.version, &VersionDocument::opened, this, [this] {
    other_.reset();
    parts_.pane.clear();
  });
}

void VersionComparer::compareWith(int number) {
  if (!parts_.version.isOpen()) return;
  const ShelvedDiet* diet = parts_.shelf.find(parts_.version.shown()->diet.record.code);
  if (diet == nullptr) return;
  const auto other = std::ranges::find(diet->versions, number, &store::VersionLine::number);
  if (other == diet->versions.end()) return;
  collection_.ask(
      store::inOneReading([id = other->id, day = parts_.version.today()](store::Collection& collection) {
        return transfer::readDesk(collection, id, day);
      }),
      [this](const std::optional<transfer::DeskDiet>& before) {
        if (!before || !parts_.version.isOpen()) return;
        other_ = comparedVersion(*before);
        show();
        emit compared();
      });
}

/// The older one first. Follows the desk.
void VersionComparer::show() {
  if (!other_ || !parts_.version.isOpen()) return;
  const ComparedVersion onDesk = comparedVersion(parts_.desk.draft());
  const bool inOrder = other_->version.number <= onDesk.version.number;
  parts_.pane.show(inOrder ? *other_ : onDesk, inOrder ? onDesk : *other_);
}

}  // namespace tarebowl::ui
