// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap_program.h"
#include "core/diet/swap_single.h"

#include <vector>

namespace tarebowl::diet {

/// A candidate that may be given, what its limits leave, and where its nearest grams would stand by
/// themselves.
struct OpenCandidate {
  std::size_t candidate = 0;
  SwapRange range{};
  SwapStanding alone{};
};

/// Pairs in place of what is missing. Tried are the foods that are nearest by themselves, each with the
/// others of them and with the foods that its shortfall would pay most for; given are the nearest pairs of
/// those, each with the nearest grams it has. Structure rules hold for the pair.
[[nodiscard]] std::vector<Swap> nearestPairs(const SwapFrame& frame, const SwapColumns& columns,
                                             std::vector<OpenCandidate> open, const SwapOptions& options);

}  // namespace tarebowl::diet
