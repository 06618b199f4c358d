// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/continuous.h"

#include <chrono>
#include <cstdint>
#include <functional>

namespace tarebowl::solver {

/// What is asked of a place in the search, where no choice stands but the limits that it has come to.
enum class Question {
  AllHold,  ///< the best objective with every row holding
  LeastViolation,
  WithinBudget  ///< the best objective within the budget of a least violation
};

/// Answers a question over a box; the number is the least violation that a budget is for. Optimal, or
/// Infeasible where there is no such point.
using Asker = std::function<ContinuousAnswer(Question, const Box&, double)>;

/// The asker of a program without scatter: a quadratic objective by one solver that goes on from its last
/// active set, a linear one anew each time. program must outlive it.
[[nodiscard]] Asker continuousAsker(const ScaledProgram& program);

struct ChoiceAnswer {
  ContinuousAnswer best;
  double gap = 0.0;  ///< relative, of the question that was not closed; 0 when proven
  std::int64_t nodes = 0;
};

/// Continuous amounts with choices: who is used and who is left out by branch and bound, the place of the
/// least bound first and from there down to an answer. First the best objective with every row holding; where
/// there is none the least violation, then the objective within its budget.
[[nodiscard]] ChoiceAnswer searchChoices(const ScaledProgram& program, const Asker& ask, const Limits& limits,
                                         std::chrono::steady_clock::time_point deadline);

}  // namespace tarebowl::solver
