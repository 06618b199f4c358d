// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/problem.h"
#include "core/exchange/page_tongue.h"

#include <string>

namespace tarebowl::exchange {

/// What a line of the balance speaks of, and what its numbers count.
struct LineWords {
  std::string subject;
  std::string unit;
  double scale = 1.0;  ///< shares are shown in percent
};

[[nodiscard]] LineWords wordsOf(const diet::BalanceProblem& problem, const diet::TargetBalance& line,
                                const PageTongue& tongue = {});

[[nodiscard]] bool isHard(const diet::BalanceProblem& problem, const diet::TargetBalance& line);
[[nodiscard]] const animal::TargetOrigin& originOf(const diet::BalanceProblem& problem,
                                                   const diet::TargetBalance& line);

/// The value as it is shown: "?", "22.1", "≥ 22.1". What is unknown could only add to an amount; of a ratio
/// it may be the one side or the other: "≈ 1.2".
[[nodiscard]] std::string valueText(const diet::TargetBalance& line, double scale);

/// Says which food it is where form matters: "House crickets, adult (live)".
[[nodiscard]] std::string nameOf(const diet::DietFood& food);

}  // namespace tarebowl::exchange
