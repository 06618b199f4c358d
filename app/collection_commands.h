// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/commands.h"
#include "core/exchange/problem_json.h"

namespace tarebowl::app {

/// Where a problem's foods come from: --collection, opened for reading; nothing without it. Throws
/// store::StoreError, as the commands do.
[[nodiscard]] exchange::FoodSource foodSourceOf(const Command& command);

/// tarebowl new COLLECTION
[[nodiscard]] int makeCollection(const Command& command, const Streams& streams);
/// tarebowl foods COLLECTION --find TEXT: "tarebowl-foods/1", or a table.
[[nodiscard]] int listFoods(const Command& command, const Streams& streams);

}  // namespace tarebowl::app
