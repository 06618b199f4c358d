// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/measure.h"
#include "core/diet/solve.h"

#include <chrono>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

/// "What if": how the answer of a diet changes while one bound of a target or one limit of a food moves, or
/// while one thing that is sought is traded for another. Exact, and of any amounts: on a scale's grid there
/// is no margin between one step and the next.
namespace tarebowl::diet {

/// A bound of a target, ratio or share, or a limit of a food, as it is and as it may become.
struct TracedBound {
  enum class Of { Rule, Food };
  Of of = Of::Rule;
  std::size_t index = 0;  ///< Rule: position in Balance::targets; Food: in the problem's foods
  BoundSide side = BoundSide::Min;
  bool operator==(const TracedBound&) const = default;
};

/// The answer at one value of what is traced.
struct TracePoint {
  /// The bound: in the target's own unit per basis, of a share 0 … 1, of a food's limit in grams. Of a
  /// trade-off: the value of the other thing that is sought.
  double at = 0.0;
  Diet grams;
  double shortfall = 0.0;          ///< sum of weight times relative shortfall
  double objective = 0.0;          ///< as objectiveOf() has it
  std::vector<double> shortfalls;  ///< relative, beside Balance::targets
  bool isBreakpoint = false;       ///< here something else begins to give
};

struct Trace {
  enum class Status {
    Traced,
    Impossible,  ///< the hard rules contradict each other over the whole range
    Unbounded,   ///< nothing limits what is sought
    Stopped,
    Failed  ///< see reason
  };
  Status status = Status::Failed;
  std::string reason;
  /// Rising in `at`; two at one place where the answer jumps. Between neighbours it is a straight line, or
  /// differs from one by less than 1/1000 of what is drawn.
  std::vector<TracePoint> points;
  bool endsLow = false;  ///< below the first point the hard rules contradict each other
  bool endsHigh = false;
  bool ofAnyAmounts = false;  ///< the problem has whole steps or choices, and the trace has none
};

struct TraceOptions {
  /// Whose choices are kept: what it leaves out of a group stays out, what it uses stays in. Without one the
  /// choices are left aside.
  std::optional<Diet> bowl{};
  std::chrono::milliseconds deadline{10'000};
  std::stop_token stop{};
};

/// The bound moves from one value to another; everything else, the reference bowl too, stays as it is. The
/// answer to a limit is a straight line between breakpoints, found by ratio tests; a bound per dry matter,
/// energy or as fed bends it. With a confidence it bends everywhere.
[[nodiscard]] Trace explore(const BalanceProblem& problem, const TracedBound& moved, double from, double to,
                            const TraceOptions& options = {});

/// The value that the bound has now; nothing where there is none.
[[nodiscard]] std::optional<double> boundNow(const BalanceProblem& problem, const TracedBound& moved);

/// A range worth looking at: from nothing, or half, to twice what the bound or the food's amount is now.
struct TraceRange {
  double from = 0.0;
  double to = 1.0;
};
[[nodiscard]] TraceRange rangeWorthTracing(const BalanceProblem& problem, const TracedBound& moved,
                                           const Diet& now);

/// What the problem seeks against another thing that could be sought, among the bowls of the least shortfall:
/// every bowl on it is the best in the one for what it gives in the other. Rising in the other's value. One
/// of the two may be "closest"; the other is a cost or an amount.
[[nodiscard]] Trace tradeOff(const BalanceProblem& problem, const Objective& other,
                             const TraceOptions& options = {});

/// The point nearest to this value.
[[nodiscard]] const TracePoint* pointNear(const Trace& trace, double at);
/// The answer at a value within the trace, on the straight line between its neighbours.
[[nodiscard]] std::optional<TracePoint> readAt(const Trace& trace, double at);

}  // namespace tarebowl::diet
