// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/exchange/json_reader.h"

namespace tarebowl::exchange {

/// What only the whole of a problem shows: ids used twice, targets that no food can be judged by, groups
/// without foods, a body mass or a price that is needed and missing, proximates that the energy method cannot
/// use. root is where the problem was read from, so that each complaint names its key. Throws FormatError.
void checkProblem(const diet::BalanceProblem& problem, const JsonReader& root);

}  // namespace tarebowl::exchange
