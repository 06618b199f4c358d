// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <optional>

namespace tarebowl::ui {

/// What the open collection has so far.
struct WhatIsThere {
  bool foods = false;
  bool animals = false;
  bool diets = false;     ///< in whatever state
  bool fedDiets = false;  ///< that were approved, once or now
  bool operator==(const WhatIsThere&) const = default;
};

/// What a room that has nothing to show is for, and what to do first.
struct EmptyRoom {
  QString heading;
  QString forWhat;
  QString first;     ///< the button to where that is done
  QString firstWhy;  ///< what is done there
  int firstRoom = 0;
  bool operator==(const EmptyRoom&) const = default;
};

/// Nothing where the room has something to show, or says itself what to do.
[[nodiscard]] std::optional<EmptyRoom> hintFor(int room, const WhatIsThere& there);

}  // namespace tarebowl::ui
