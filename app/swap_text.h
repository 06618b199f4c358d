// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap.h"
#include "core/diet/swap_effect.h"

#include <cstddef>
#include <string>

namespace tarebowl::app {

/// What a swap does, in one line: "Ca:P 1.5 → 1.3, still in zone; energy 140 → 138 kcal; iron ● met → ▼
/// short".
[[nodiscard]] std::string effectText(const diet::SwapEffect& effect);

/// Who must be asked, and why: "keeper", "nutritionist: another food group; iron no longer met".
[[nodiscard]] std::string approvalText(const diet::SwapEffect& effect);

/// A line for each of the nearest `most` swaps and for each pair, and how many will not do.
[[nodiscard]] std::string swapTable(const diet::SwapRequest& request, const diet::SwapRanking& ranking,
                                    std::size_t most);

}  // namespace tarebowl::app
