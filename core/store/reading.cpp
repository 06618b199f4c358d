// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/reading.h"

#include "core/store/opening.h"

namespace tarebowl::store {

Reading::Reading(const Collection& collection)
    : collection_(collection), gathers_(collection.inner().connection.beginGathering()) {}

Reading::~Reading() {
  if (gathers_) collection_.inner().connection.endGathering();
}

void Reading::fetch() {
  guarded(collection_.file(), [&] { collection_.inner().connection.fetchAnswers(); });
}

bool gathers(const Collection& collection) {
  return collection.inner().connection.gathers();
}

}  // namespace tarebowl::store
