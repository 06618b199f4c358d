// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/explore.h"

#include <string>

namespace tarebowl::exchange {

/// A trace as a file (tarebowl-trace/1): {"format", "of": {"rule" | "food", "bound": "min" | "max", "unit",
/// "basis", "now"}, "status", "any_amounts", "ends_low", "ends_high", "points": [{"at", "grams": {id: g},
/// "shortfall", "objective", "missed": {id: relative shortfall}, "breakpoint"}]}. Points as in diet::Trace:
/// between two of them the answer is a straight line, or as good as one.
[[nodiscard]] std::string writeTrace(const diet::BalanceProblem& problem, const diet::TracedBound& moved,
                                     const diet::Trace& trace);

/// The same of a trade-off: "of" is {"objective", "against"}, each as in a problem file, and "at" is the
/// value of the other.
[[nodiscard]] std::string writeTradeOff(const diet::BalanceProblem& problem, const diet::Objective& against,
                                        const diet::Trace& trace);

/// "traced", "impossible", "unbounded", "stopped", "failed".
[[nodiscard]] std::string_view symbolOf(diet::Trace::Status status);

}  // namespace tarebowl::exchange
