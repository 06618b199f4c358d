// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_page.h"
#include "ui/shared/room.h"

#include <QString>

#include <vector>

namespace tarebowl::ui {

/// Groups, species and animals with the text in their names: groups first, for a bowl is theirs.
[[nodiscard]] std::vector<FinderHit> findAnimals(const Herd& herd, const QString& partOfName, int most);

/// A place as one number that the finder can carry, and back.
[[nodiscard]] qint64 hitOf(const AnimalPlace& place);
[[nodiscard]] AnimalPlace placeOfHit(qint64 id);

}  // namespace tarebowl::ui
