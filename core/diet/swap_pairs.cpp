// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap_pairs.h"

#include "core/diet/swap_best_first.h"
#include "core/diet/swap_refusal.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace tarebowl::diet {
namespace {

constexpr std::size_t kFirsts = 8;       // foods that are paired
constexpr std::size_t kCompanions = 24;  // nearest foods that each is paired with
constexpr std::size_t kPaidFor = 24;     // foods by price that each is paired with, in either order
constexpr double kLeastDisturbance = 1e-6;

void addFirst(std::set<std::size_t>& places, std::vector<std::pair<double, std::size_t>> ranked) {
  const std::size_t kept = std::min(kPaidFor, ranked.size());
  std::partial_sort(ranked.begin(), ranked.begin() + static_cast<std::ptrdiff_t>(kept), ranked.end());
  for (std::size_t k = 0; k < kept; ++k) places.insert(ranked[k].second);
}

class PairSearch {
 public:
  PairSearch(const SwapFrame& frame, const SwapColumns& columns, std::vector<OpenCandidate> open,
             const SwapOptions& options)
      : frame_(frame),
        columns_(columns),
        open_(std::move(open)),
        options_(options),
        programs_(frame, columns) {
    std::ranges::stable_sort(
        open_, [](const OpenCandidate& a, const OpenCandidate& b) { return isNearer(a.alone, b.alone); });
  }

  std::vector<Swap> run() {
    std::vector<BoundedSwap> tried;
    for (std::size_t first = 0; first < std::min(kFirsts, open_.size()); ++first) addPairsOf(first, tried);
    const auto solve = [&](const BoundedSwap& pair, const SwapPrograms::Limits& limits) {
      std::vector<std::size_t> candidates;
      std::vector<SwapRange> ranges;
      for (const std::size_t place : pair.places) {
        candidates.push_back(open_[place].candidate);
        ranges.push_back(open_[place].range);
      }
      return programs_.nearest(candidates, ranges, limits);
    };
    return nearestOf(std::move(tried), options_.mostPairs, options_, solve);
  }

 private:
  /// Places in open_ of what is worth trying beside the first.
  std::vector<std::size_t> companionsOf(std::size_t first) const {
    std::set<std::size_t> places;
    for (std::size_t place = 0; place < std::min(kCompanions, open_.size()); ++place) places.insert(place);
    const OpenCandidate& paired = open_[first];
    const Eigen::VectorXd prices =
        programs_.prices(paired.candidate, paired.range, paired.alone.hard > kHardSlack);
    std::vector<std::pair<double, std::size_t>> perGram;
    std::vector<std::pair<double, std::size_t>> perDisturbance;
    for (std::size_t place = 0; place < open_.size(); ++place) {
      const std::size_t candidate = open_[place].candidate;
      const double gain = -prices.dot(columns_.rows(candidate));
      if (!(gain > 0.0)) continue;
      perGram.emplace_back(-gain, place);
      perDisturbance.emplace_back(-gain / (kLeastDisturbance + columns_.kept(candidate).cwiseAbs().sum()),
                                  place);
    }
    addFirst(places, std::move(perGram));
    addFirst(places, std::move(perDisturbance));
    places.erase(first);
    return {places.begin(), places.end()};
  }

  void addPairsOf(std::size_t first, std::vector<BoundedSwap>& tried) {
    std::vector<std::size_t> places;
    std::vector<std::size_t> candidates;
    std::vector<SwapRange> ranges;
    for (const std::size_t place : companionsOf(first)) {
      const std::array pair{open_[first].candidate, open_[place].candidate};
      if (brokenStructure(frame_, columns_, pair) || !seen_.insert(std::minmax(first, place)).second)
        continue;
      places.push_back(place);
      candidates.push_back(open_[place].candidate);
      ranges.push_back(open_[place].range);
    }
    const auto bounds = programs_.scan(open_[first].candidate, open_[first].range, candidates, ranges,
                                       {options_.threads, options_.stop});
    for (std::size_t i = 0; i < bounds.size(); ++i)
      if (bounds[i].status == solver::Status::Optimal)
        tried.push_back({{first, places[i]}, {0.0, bounds[i].violation, bounds[i].objective}});
  }

  const SwapFrame& frame_;
  const SwapColumns& columns_;
  std::vector<OpenCandidate> open_;
  const SwapOptions& options_;
  SwapPrograms programs_;
  std::set<std::pair<std::size_t, std::size_t>> seen_;
};

}  // namespace

std::vector<Swap> nearestPairs(const SwapFrame& frame, const SwapColumns& columns,
                               std::vector<OpenCandidate> open, const SwapOptions& options) {
  return PairSearch(frame, columns, std::move(open), options).run();
}

}  // namespace tarebowl::diet
