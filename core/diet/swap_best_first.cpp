// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap_best_first.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace tarebowl::diet {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::chrono::milliseconds kMostForOne{300};
constexpr double kSameShortfall = 1e-8;

/// In whole numbers, so that being equal carries over from one to the next.
double graded(double shortfall) {
  return std::round(shortfall / kSameShortfall);
}

}  // namespace

bool isNearer(const SwapStanding& a, const SwapStanding& b) {
  if (graded(a.hard) != graded(b.hard)) return a.hard < b.hard;
  if (graded(a.shortfall) != graded(b.shortfall)) return a.shortfall < b.shortfall;
  return a.difference < b.difference;
}

SwapStanding standingOf(const Swap& swap) {
  return {0.0, swap.shortfall, swap.difference};
}

std::vector<Swap> nearestOf(std::vector<BoundedSwap> swaps, std::size_t most, const SwapOptions& options,
                            const SolveSwap& solve,
                            const std::function<void(const std::vector<Swap>&)>& soFar) {
  const Clock::time_point end = Clock::now() + options.deadline;
  std::ranges::stable_sort(
      swaps, [](const BoundedSwap& a, const BoundedSwap& b) { return isNearer(a.bound, b.bound); });
  std::vector<Swap> found;
  for (const BoundedSwap& swap : swaps) {
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(end - Clock::now());
    if (left.count() <= 0 || options.stop.stop_requested() || most == 0) break;
    if (found.size() >= most && !isNearer(swap.bound, standingOf(found[most - 1]))) break;
    auto solved = solve(swap, {std::min(left, kMostForOne), options.threads, options.stop});
    if (!solved) continue;
    const auto place = std::ranges::upper_bound(
        found, standingOf(*solved),
        [](const SwapStanding& a, const SwapStanding& b) { return isNearer(a, b); }, standingOf);
    found.insert(place, std::move(*solved));
    if (soFar) soFar(found);
  }
  if (found.size() > most) found.resize(most);
  return found;
}

}  // namespace tarebowl::diet
