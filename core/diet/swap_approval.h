// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap_effect.h"

#include <vector>

namespace tarebowl::diet {

[[nodiscard]] SwapApproval approvalOf(const SwapRequest& request, const Swap& swap,
                                      const std::vector<RungChange>& rungs,
                                      const std::vector<FoodFinding>& cautions);

}  // namespace tarebowl::diet
