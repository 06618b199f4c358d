// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/answer_curve.h"

#include <functional>

namespace tarebowl::solver {

/// The curve of whatever moves, by halving: a grid is sampled, and an interval is split until nothing pushes
/// differently at its ends; then pieces that bend get points until straight lines are near enough. from and
/// to in either order.
[[nodiscard]] AnswerCurve searchCurve(const std::function<Program(double)>& at, double from, double to,
                                      const CurveLimits& limits);

}  // namespace tarebowl::solver
