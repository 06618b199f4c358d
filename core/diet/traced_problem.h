// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/explore.h"
#include "core/diet/formulation.h"
#include "core/solver/answer_curve.h"

#include <span>

namespace tarebowl::diet {

/// What explore() and tradeOff() have in common: a problem in the solver's words, with any amounts, and the
/// way back from the solver's curve.
class TracedProblem {
 public:
  TracedProblem(const BalanceProblem& problem, const TraceOptions& options);

  /// Why nothing can be traced, as a code word and facts.
  [[nodiscard]] const std::optional<std::string>& defect() const { return defect_; }
  [[nodiscard]] const solver::Program& program() const { return program_; }
  [[nodiscard]] const std::vector<Measure>& measures() const { return measures_; }
  [[nodiscard]] const std::vector<RowOrigin>& rows() const { return formulation_.rows; }
  [[nodiscard]] solver::CurveLimits limits() const { return limits_; }

  /// The program with another value for a bound of a measure.
  [[nodiscard]] solver::Program withBound(std::size_t row, double bound) const;
  /// Row of the program; nothing where the bound is none, or binds nothing.
  [[nodiscard]] std::optional<std::size_t> rowOf(std::size_t measure, BoundSide side) const;

  /// at: the program at each point, whose rows are those of this problem or begin with them.
  [[nodiscard]] Trace traceOf(const solver::AnswerCurve& curve,
                              const std::function<solver::Program(double)>& at) const;

 private:
  BalanceProblem problem_;
  Diet reference_;
  std::vector<Measure> measures_;
  Formulation formulation_;
  solver::Program program_;
  solver::CurveLimits limits_;
  std::optional<std::string> defect_;
};

}  // namespace tarebowl::diet
