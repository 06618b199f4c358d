// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/from_profile.h"

#include <iosfwd>
#include <vector>

namespace tarebowl::app {

/// A line for each rule of a profile that the problem cannot hold, and why.
void tellNotCounted(const std::vector<diet::RuleNotCounted>& rules, std::ostream& out);

/// A line for each food that these animals may not be given, and why.
void tellNotGiven(const diet::BalanceProblem& problem, std::ostream& out);

}  // namespace tarebowl::app
