// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/food/food.h"
#include "core/food/sample.h"

#include <span>
#include <vector>

namespace tarebowl::exchange {

/// A food of problem files as a collection keeps it: what it is, and a sample for every source that its
/// values name.
struct ProblemFood {
  food::Food food{};
  std::vector<food::Sample> samples{};
};

/// The foods of problems, each once by its id, in the order in which they are first named. Of two problems
/// that have the same food the first says what it is; values of later ones fill what is still unknown. A
/// guarantee (>=, <=) is a label's; a source that calls itself invented, estimated or calculated is an
/// estimate; all else is a publication.
[[nodiscard]] std::vector<ProblemFood> foodsOf(std::span<const diet::BalanceProblem> problems);

}  // namespace tarebowl::exchange
