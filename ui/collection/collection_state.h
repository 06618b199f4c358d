// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/room.h"

namespace tarebowl::ui {

class OpenCollection;

/// What the window says of the open collection while a room of it is in sight; the room adds its units and
/// what it is doing.
[[nodiscard]] RoomState stateOf(const OpenCollection& collection);

/// What a collection that is open for reading only means for whoever sits before it; a banner of its rooms.
[[nodiscard]] QString readOnlyText();

}  // namespace tarebowl::ui
