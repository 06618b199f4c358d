// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap.h"

#include <cstddef>
#include <string>

namespace tarebowl::exchange {

/// "tarebowl-swap/1" (sample-data/README.md): the nearest `most` swaps and all pairs with what each does, and
/// every refusal.
[[nodiscard]] std::string writeSwaps(const diet::SwapRequest& request, const diet::SwapRanking& ranking,
                                     std::size_t most);

}  // namespace tarebowl::exchange
