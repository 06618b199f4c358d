// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <chrono>
#include <functional>

/// Desks that share a collection write when something was done; their clocks may disagree. The server's is
/// the one that all of them can ask.
namespace tarebowl::store {

using Instant = std::chrono::system_clock::time_point;

/// How far this machine's clock is ahead of the server's, to what the way there takes; behind it: negative.
/// Of a file: not at all. clock: of this machine. Throws StoreError.
[[nodiscard]] std::chrono::seconds aheadOfServer(const Collection& collection,
                                                 const std::function<Instant()>& clock);

/// Up to here nobody is told: clocks that nobody sets drift so far within weeks.
inline constexpr std::chrono::minutes kClocksAgree{2};

/// Throws StoreError (Refused), with what to do, where the clocks disagree by more: what would be written
/// then stood at a wrong time.
void refuseOtherTime(const Collection& collection, const std::function<Instant()>& clock);

}  // namespace tarebowl::store
