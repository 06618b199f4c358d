// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/parametric.h"
#include "core/solver/solve.h"

#include <chrono>
#include <functional>
#include <stop_token>
#include <string>
#include <vector>

namespace tarebowl::solver {

/// The answer of any amounts at one value of what moves.
struct CurvePoint {
  double at = 0.0;
  Eigen::VectorXd x;
  double violation = 0.0;
  double objective = 0.0;
  bool isBreakpoint = false;  ///< what pushes is another before than after
};

/// How the answer of a program changes while something in it moves. Between neighbours the same rows and
/// limits push, so that the curve is smooth; where it is also straight there is no point between. Where it
/// bends, points lie so close that a straight line between them errs by less than 1/1000 of what the curve
/// spans. Every point is an answer that was verified.
struct AnswerCurve {
  Status status = Status::Failed;  ///< Infeasible: nowhere an answer
  std::string reason;
  std::vector<CurvePoint> points;  ///< rising; two at one place where the answer jumps
  bool endsLow = false;            ///< below the first point the hard rows contradict each other
  bool endsHigh = false;
};

struct CurveLimits {
  std::chrono::steady_clock::time_point deadline = std::chrono::steady_clock::time_point::max();
  std::stop_token stop{};
};

/// The program's grid and choices are not looked at. Breakpoints lie within 1e-8 of the span from where they
/// are: an interval is split until nothing pushes differently at its ends.
[[nodiscard]] AnswerCurve curveOf(const std::function<Program(double)>& at, double from, double to,
                                  const CurveLimits& limits = {});

/// The same where no more than one bound moves: breakpoints by ratio tests (parametric.h). start: where in
/// [from, to] an answer is most likely. Programs without scatter only.
[[nodiscard]] AnswerCurve curveOf(const Program& program, MovingBound moving, double from, double to,
                                  double start);

}  // namespace tarebowl::solver
