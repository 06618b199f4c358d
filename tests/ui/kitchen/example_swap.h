// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap.h"

namespace tarebowl::ui {

/// A trio of invented animals is fed 100 g greens and 50 g insects each (220 mg calcium, 200 mg phosphorus,
/// 140 kcal); at least 200 mg calcium a day and a Ca:P of 1 to 2 are asked for. The greens did not arrive.
/// There are:
///   kale     of the same group, 200 mg calcium, 50 mg phosphorus and 40 kcal per 100 g: as the greens
///   pellet   another group, 1000 mg calcium, 500 mg phosphorus, 300 kcal
///   pear     excluded by the house
[[nodiscard]] diet::SwapRequest exampleSwap();

}  // namespace tarebowl::ui
