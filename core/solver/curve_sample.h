// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/answer_curve.h"

#include <string>
#include <vector>

namespace tarebowl::solver {

inline constexpr double kNothing = 1e-2;  ///< of x in all: less is none, and its digits are rounding

/// Which row or limit a point lies on, misses or keeps.
using Standing = std::vector<signed char>;

/// What a curve is at one place, and what pushes there.
struct CurveSample {
  CurvePoint point;
  Status status = Status::Failed;
  std::string reason;
  Standing standing;
  [[nodiscard]] bool exists() const { return status == Status::Optimal; }
};

/// Whether every amount has a curvature of its own, so that the best bowl is one.
[[nodiscard]] bool isQuadratic(const Program& program);

/// Of bowls that are equally good one is followed all the way: that which is the best at prices that differ
/// by 1e-8, so that the answer does not jump from one to another at every step.
[[nodiscard]] Program withoutTies(Program program);

/// The verified answer of one program, put at its place on the curve.
[[nodiscard]] CurveSample sampleOf(const Program& program, double at);

}  // namespace tarebowl::solver
