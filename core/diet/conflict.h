// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/formulation.h"
#include "core/diet/measure.h"
#include "core/solver/conflict.h"

#include <span>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// A conflict between rows and choices in the trade's words: the ids of the targets, ratios and shares, in
/// the problem's order and each once though both its bounds may take part, then "choice:GROUP".
[[nodiscard]] std::vector<std::string> conflictIds(const Formulation& formulation,
                                                   std::span<const Measure> measures,
                                                   const solver::Conflict& conflict);

}  // namespace tarebowl::diet
