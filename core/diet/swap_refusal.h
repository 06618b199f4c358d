// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap_frame.h"

#include <optional>
#include <span>

namespace tarebowl::diet {

/// Why a candidate will not do whatever its grams, alone or as one of a pair: a ban, unknown water.
[[nodiscard]] std::optional<SwapRefusal> refusalOf(const SwapFrame& frame, const SwapColumns& columns,
                                                   std::size_t candidate);

/// The group whose structure rule these candidates together would break, going by how many foods of it are
/// used; nothing where every rule stands no worse than in the approved diet.
[[nodiscard]] std::optional<std::string> brokenStructure(const SwapFrame& frame, const SwapColumns& columns,
                                                         std::span<const std::size_t> candidates);

}  // namespace tarebowl::diet
