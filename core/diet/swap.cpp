// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap.h"

#include "core/diet/balance.h"
#include "core/diet/swap_best_first.h"
#include "core/diet/swap_frame.h"
#include "core/diet/swap_pairs.h"
#include "core/diet/swap_program.h"
#include "core/diet/swap_refusal.h"
#include "core/diet/swap_single.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <numeric>
#include <thread>

namespace tarebowl::diet {
namespace {

constexpr std::size_t kFirstWave = 256;  // small, so that there is something to read at once
constexpr std::size_t kWave = 4096;
constexpr std::size_t kPortion = 32;  // candidates that a thread takes at a time
constexpr double kNothingWorse = 1e-8;

/// What became of one candidate when it was looked at by itself.
struct Looked {
  std::optional<SwapRefusal> refusal;
  std::optional<OpenCandidate> open;  ///< may be given, alone or in a pair
  std::optional<Swap> single;
};

class Ranker {
 public:
  Ranker(const SwapRequest& request, const SwapOptions& options)
      : request_(request),
        options_(options),
        frame_(request),
        columns_(frame_),
        singles_(frame_, columns_),
        programs_(frame_, columns_),
        looked_(request.candidates.size()) {}

  SwapRanking run() {
    const std::vector<std::size_t> order = ownGroupFirst();
    for (std::size_t from = 0; from < order.size() && !isStopped();) {
      const std::size_t to = std::min(order.size(), from + (from == 0 ? kFirstWave : kWave));
      lookAt({order.data() + from, to - from});
      from = to;
      if (from < order.size() && !isStopped()) tell(gathered());
    }
    SwapRanking ranking = gathered();
    if (request_.move > 0.0 && !isStopped()) letOthersMove(ranking);
    if (wantsPairs(ranking) && !isStopped()) {
      tell(ranking);
      ranking.pairs = nearestPairs(frame_, columns_, opened(), options_);
    }
    ranking.isComplete = !isStopped();
    return ranking;
  }

 private:
  [[nodiscard]] bool isStopped() const { return options_.stop.stop_requested(); }

  void tell(const SwapRanking& ranking) const {
    if (options_.soFar) options_.soFar(ranking);
  }

  [[nodiscard]] std::vector<std::size_t> ownGroupFirst() const {
    std::vector<std::size_t> order(request_.candidates.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_partition(order.begin(), order.end(), [&](std::size_t candidate) {
      return std::ranges::any_of(request_.missing, [&](std::size_t food) {
        return request_.problem.foods[food].group == request_.candidates[candidate].group;
      });
    });
    return order;
  }

  /// Each candidate by itself: what it comes to does not depend on the threads.
  void lookAt(std::span<const std::size_t> candidates) {
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
      while (!isStopped()) {
        const std::size_t from = next.fetch_add(kPortion);
        if (from >= candidates.size()) return;
        const std::size_t to = std::min(from + kPortion, candidates.size());
        for (std::size_t k = from; k < to; ++k) looked_[candidates[k]] = lookAt(candidates[k]);
      }
    };
    std::vector<std::jthread> others;
    for (int thread = 1; thread < options_.threads; ++thread) others.emplace_back(work);
    work();
  }

  [[nodiscard]] Looked lookAt(std::size_t candidate) const {
    if (auto refusal = refusalOf(frame_, columns_, candidate)) return {std::move(refusal), {}, {}};
    const SwapRange range = rangeOf(frame_, columns_, candidate);
    if (range.isEmpty()) return {SwapRefusal{candidate, SwapRefusal::Why::NoAmount}, {}, {}};
    SingleSwaps::Answer answer = singles_.nearest(candidate, range);
    Looked looked{{}, OpenCandidate{candidate, range, answer.standing}, {}};
    if (auto group = brokenStructure(frame_, columns_, std::array{candidate}))
      looked.refusal = SwapRefusal{candidate, SwapRefusal::Why::Structure, std::move(*group)};
    else if (!answer.swap)
      looked.refusal = SwapRefusal{candidate, SwapRefusal::Why::HardRule, std::move(answer.brokenRule)};
    else
      looked.single = std::move(answer.swap);
    return looked;
  }

  [[nodiscard]] SwapRanking gathered() const {
    SwapRanking ranking;
    for (const Looked& looked : looked_) {
      if (looked.refusal) ranking.refused.push_back(*looked.refusal);
      if (looked.single) ranking.singles.push_back(*looked.single);
    }
    std::ranges::stable_sort(
        ranking.singles, [](const Swap& a, const Swap& b) { return isNearer(standingOf(a), standingOf(b)); });
    return ranking;
  }

  [[nodiscard]] std::vector<OpenCandidate> opened() const {
    std::vector<OpenCandidate> open;
    for (const Looked& looked : looked_)
      if (looked.open) open.push_back(*looked.open);
    return open;
  }

  [[nodiscard]] bool wantsPairs(const SwapRanking& ranking) const {
    switch (options_.pairs) {
      case SwapOptions::Pairs::Never:
        return false;
      case SwapOptions::Pairs::Always:
        return true;
      case SwapOptions::Pairs::WhereOneWillNotDo:
        break;
    }
    return !oneWillDo(ranking);
  }

  /// All candidates with amounts between the steps first, which no whole steps are nearer than; then the best
  /// of them for real.
  void letOthersMove(SwapRanking& ranking) const {
    tell(ranking);
    std::vector<OpenCandidate> open;
    for (const Looked& looked : looked_)
      if (looked.open && (!looked.refusal || looked.refusal->why == SwapRefusal::Why::HardRule))
        open.push_back(*looked.open);
    std::vector<std::size_t> candidates;
    std::vector<SwapRange> ranges;
    for (const OpenCandidate& each : open) {
      candidates.push_back(each.candidate);
      ranges.push_back(each.range);
    }
    const auto bounds = programs_.scan({}, {}, candidates, ranges, {options_.threads, options_.stop});
    std::vector<BoundedSwap> swaps;
    for (std::size_t i = 0; i < bounds.size(); ++i)
      if (bounds[i].status == solver::Status::Optimal)
        swaps.push_back({{i}, {0.0, bounds[i].violation, bounds[i].objective}});
    const auto solve = [&](const BoundedSwap& swap, const SwapPrograms::Limits& limits) {
      const std::size_t i = swap.places.front();
      return programs_.nearest({&candidates[i], 1}, {&ranges[i], 1}, limits);
    };
    ranking.singles = nearestOf(std::move(swaps), options_.most, options_, solve);
    std::erase_if(ranking.refused, [&](const SwapRefusal& refusal) {
      return std::ranges::any_of(ranking.singles, [&](const Swap& swap) {
        return swap.parts.front().candidate == refusal.candidate;
      });
    });
  }

  const SwapRequest& request_;
  const SwapOptions& options_;
  SwapFrame frame_;
  SwapColumns columns_;
  SingleSwaps singles_;
  SwapPrograms programs_;
  std::vector<Looked> looked_;
};

}  // namespace

SwapRanking rankSwaps(const SwapRequest& request, const SwapOptions& options) {
  return Ranker(request, options).run();
}

void leaveOutMissing(SwapRequest& request) {
  std::erase_if(request.candidates, [&](const DietFood& food) {
    return std::ranges::any_of(request.missing,
                               [&](std::size_t line) { return request.problem.foods[line].id == food.id; });
  });
}

bool oneWillDo(const SwapRanking& ranking) {
  return !ranking.singles.empty() && ranking.singles.front().shortfall <= kNothingWorse;
}

}  // namespace tarebowl::diet
