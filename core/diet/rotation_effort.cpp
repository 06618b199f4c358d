// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_effort.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {

using Clock = std::chrono::steady_clock;

RotationEffort::RotationEffort(const RotationOptions& options)
    : start_(Clock::now()), deadline_(start_ + options.deadline), most_(options.nodes), stop_(options.stop) {}

bool RotationEffort::isOver() const {
  return Clock::now() >= deadline_ || stop_.stop_requested() || nodes_ >= most_;
}

Clock::duration RotationEffort::time() const {
  return Clock::now() - start_;
}

solver::Limits RotationEffort::limits(std::int64_t nodes, double ofTime) const {
  solver::Limits limits;
  limits.threads = 1;
  limits.nodes = std::max<std::int64_t>(1, std::min(nodes, most_ - nodes_));
  const std::chrono::duration<double, std::milli> left = deadline_ - Clock::now();
  limits.deadline = std::chrono::milliseconds(std::max<std::int64_t>(1, std::llround(ofTime * left.count())));
  limits.stop = stop_;
  return limits;
}

}  // namespace tarebowl::diet
