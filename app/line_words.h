// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/problem.h"

#include <string>

namespace tarebowl::app {

/// What a line of the balance speaks of, and what its numbers count.
struct LineWords {
  std::string subject;
  std::string unit;
  double scale = 1.0;  ///< shares are shown in percent
};

[[nodiscard]] LineWords wordsOf(const diet::BalanceProblem& problem, const diet::TargetBalance& line);

/// Says which food it is where form matters: "House crickets, adult (live)".
[[nodiscard]] std::string nameOf(const diet::DietFood& food);

}  // namespace tarebowl::app
