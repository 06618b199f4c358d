// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/swap_verbs.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::app {

/// A pan of a table, as it is to be written into a collection.
struct PanEntry {
  intake::ControlPan pan{};
  /// The pan that still stands, and that this one says what came back of; nothing: another pan.
  std::optional<store::StoredControlPan> closes{};
};

/// What of a table of pans is wrong, or to be asked about; a line each.
struct JudgedPans {
  std::vector<PanEntry> entries{};
  std::string wrong{};
  std::string asked{};
};

/// A pan with what came back closes one of the same place, day, food and weight that still stands. Throws
/// StoreError.
[[nodiscard]] JudgedPans judgePans(const store::Collection& collection,
                                   const std::vector<intake::ControlPan>& pans);

}  // namespace tarebowl::app
