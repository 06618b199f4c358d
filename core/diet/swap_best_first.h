// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap_program.h"
#include "core/diet/swap_single.h"

#include <functional>
#include <optional>
#include <vector>

namespace tarebowl::diet {

/// Which of two is nearer; shortfalls that only rounding parts count as equal.
[[nodiscard]] bool isNearer(const SwapStanding& a, const SwapStanding& b);
[[nodiscard]] SwapStanding standingOf(const Swap& swap);

/// A swap that is not worked out yet, and the standing that no whole steps of it are nearer than.
struct BoundedSwap {
  std::vector<std::size_t> places{};  ///< whatever the one who solves it knows it by
  SwapStanding bound{};
};

using SolveSwap = std::function<std::optional<Swap>(const BoundedSwap&, const SwapPrograms::Limits&)>;

/// The nearest `most`, each solved in whole steps: in the order of their bounds, until those that are left
/// cannot be nearer than what was found, or time is over.
[[nodiscard]] std::vector<Swap> nearestOf(std::vector<BoundedSwap> swaps, std::size_t most,
                                          const SwapOptions& options, const SolveSwap& solve,
                                          const std::function<void(const std::vector<Swap>&)>& soFar = {});

}  // namespace tarebowl::diet
