// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/intake/eaten.h"

#include <vector>

namespace tarebowl::intake::testing {

/// From 1 September on two animals share 160 g of kale a day. Corrected for water 40, 80 and 60 g were left:
/// 120, 80 and 100 g eaten. On the third of the four days nobody weighed back.
[[nodiscard]] std::vector<EatenBowl> fourDaysOfKale();

/// At least so many mg of calcium each a day; kale holds 10 g dry matter and 200 mg in 100 g.
[[nodiscard]] diet::BalanceProblem kaleAgainstCalcium(double least);

}  // namespace tarebowl::intake::testing
