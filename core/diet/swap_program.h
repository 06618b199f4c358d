// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap_frame.h"
#include "core/solver/program.h"
#include "core/solver/scan.h"

#include <chrono>
#include <optional>
#include <span>
#include <stop_token>
#include <vector>

namespace tarebowl::diet {

/// Swaps as elastic programs: the first stage is what gets worse, the second the difference, written as what
/// each kept nutrient has more or less of than approved. Columns: the lines of the diet, one for each
/// candidate that is no line of it, then "more" and "less" of each kept nutrient.
class SwapPrograms {
 public:
  SwapPrograms(const SwapFrame& frame, const SwapColumns& columns);

  /// The program of these candidates; ranges are theirs.
  [[nodiscard]] solver::Program of(std::span<const std::size_t> candidates,
                                   std::span<const SwapRange> ranges) const;

  struct Limits {
    std::chrono::milliseconds deadline{2000};
    int threads = 2;
    std::stop_token stop{};
  };
  /// The nearest grams in whole steps; nothing where a hard rule cannot be kept or time ran out before any
  /// answer was found.
  [[nodiscard]] std::optional<Swap> nearest(std::span<const std::size_t> candidates,
                                            std::span<const SwapRange> ranges, const Limits& limits) const;

  /// What the best amounts between the steps would come to, for each of `candidates` beside `first` (none: by
  /// itself): no whole steps are nearer than that.
  [[nodiscard]] std::vector<solver::ScanResult> scan(std::optional<std::size_t> first,
                                                     std::optional<SwapRange> firstRange,
                                                     std::span<const std::size_t> candidates,
                                                     std::span<const SwapRange> ranges,
                                                     const solver::ScanLimits& limits) const;

  /// What the bounds would pay for a little of something beside `first`: by the shortfall, or where `first`
  /// cannot keep the hard rules by what it misses of those.
  [[nodiscard]] Eigen::VectorXd prices(std::size_t first, const SwapRange& range, bool ofHardRules) const;

 private:
  [[nodiscard]] solver::Program base(Eigen::Index places) const;
  void boundLines(solver::Program& program) const;
  [[nodiscard]] Swap read(std::span<const std::size_t> candidates, std::span<const SwapRange> ranges,
                          const Eigen::VectorXd& x) const;

  const SwapFrame& frame_;
  const SwapColumns& columns_;
};

/// Where these grams stand, added up anew: what an answer of the solver is checked against.
[[nodiscard]] Swap judgedSwap(const SwapFrame& frame, const SwapColumns& columns, Swap swap);

}  // namespace tarebowl::diet
