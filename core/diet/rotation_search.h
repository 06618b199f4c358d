// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_model.h"

#include <array>
#include <chrono>
#include <cstdint>
#include <optional>

namespace tarebowl::diet {

/// What a search over a model has come to.
struct SearchedPlan {
  bool isImpossible = false;               ///< proven: the hard rules contradict each other
  std::optional<solver::RowMatrix> grams;  ///< the best plan that keeps every hard rule
  PlanValue value;
  std::array<double, 4> bound{};  ///< of each question, in their order
  std::int64_t nodes = 0;
  std::chrono::steady_clock::duration firstPlan{0};
};

/// How a rotation is searched:
///   1. All days taken together say how much of each food the period wants and on how many days: a bound.
///   2. Foods are spread over the days to come as often as that.
///   3. With who is fed when settled, the period's sums are solved in whole steps and laid out over the days.
///   4. Other patterns are tried where their sums, in any amounts, promise more than the best plan has.
///   5. Single days, and pairs of them, are planned anew by branch and bound while the others stay.
///   6. Where days fall short, or all that has bettered nothing for long, all days are planned one after
///      another, each beside all that are to come (rotation_day_after_day.h).
///   7. Where 4 has bettered nothing for some time, the sums are asked in whole steps: a bound, and the days
///      on which foods are spread, at once and from then on. The bound goes on by days that can be fed by
///      themselves (rotation_day_bound.h).
/// Of 4 and 5 some are tried at a time on two threads, from the same best plan, and 7 goes on beside them and
/// beside 6, a fixed piece of it at a time; what they find is kept in the order in which it was asked. The
/// answer thus depends on the seed alone, whichever thread was faster, unless time runs out or someone stops
/// the search. A rotation of few cells is then solved as it
/// is, by branch and bound. From a plan that was there before, its days adapt first (rotation_adapt.h); all
/// are planned anew only where those leave more short than need be.
[[nodiscard]] SearchedPlan searchRotation(const RotationModel& model, const RotationOptions& options);

}  // namespace tarebowl::diet
