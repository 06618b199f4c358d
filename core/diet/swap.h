// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <chrono>
#include <cstddef>
#include <functional>
#include <map>
#include <stop_token>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// How well a group ate a food in bowls that were weighed back.
struct EatenBefore {
  double fraction = 0.0;  ///< of what was offered, 0 … 1
  int bowls = 0;          ///< that this was weighed in
  bool operator==(const EatenBefore&) const = default;
};

/// "This did not arrive: what instead?" A plain snapshot, complete in itself.
struct SwapRequest {
  BalanceProblem problem;            ///< of the approved diet; a line that must not move has min = max
  Diet approved;                     ///< its grams, one per food of the problem
  std::vector<std::size_t> missing;  ///< positions in the problem's foods
  std::vector<DietFood> candidates;  ///< what there is; one that the diet has already means more of it
  double move = 0.0;                 ///< 0 … 1: the share by which every other line may move; 0 holds them
  std::map<std::string, EatenBefore> eatenBefore{};  ///< by food id; what is not in it is unknown
};

struct SwapPart {
  std::size_t candidate = 0;  ///< position in the request's candidates
  quantity::Grams grams;      ///< per animal and day, in steps of its scale, beside what the diet has of it
  bool operator==(const SwapPart&) const = default;
};

/// Another line of the diet that the swap moves.
struct MovedLine {
  std::size_t food = 0;  ///< position in the problem's foods
  quantity::Grams grams;
  bool operator==(const MovedLine&) const = default;
};

/// How far the energy of a bowl may be from the approved one before that counts as worse: a choice of ours.
inline constexpr double kEnergyBand = 0.05;

/// Candidates in place of what is missing, and how near the approved balance that stays. Nearest is
///   1. the least sum of weight · max(0, s(x) − s(a)) over all bounds that are not hard, s being the relative
///      shortfall of the problem format at the bowl x and at the approved bowl a: what gets worse. The energy
///      of the approved bowl, within kEnergyBand of it, counts among them with weight 1;
///   2. among those (within the slack of the problem format), the least difference, the mean over the
///      nutrients k of all targets and ratios, and energy, of
///         weight_k · |N_k(x) − N_k(a)| / u_k,    u_k the more of N_k(a) and of what the bounds on k ask for.
/// A hard bound is never missed by more than the approved bowl misses it. What is unknown of a food brings
/// nothing, so that it counts as lacking.
struct Swap {
  std::vector<SwapPart> parts{};   ///< one food, or a pair
  std::vector<MovedLine> moved{};  ///< only lines whose grams are not those approved
  double shortfall = 0.0;          ///< 1.
  double difference = 0.0;         ///< 2., relative: 0.06 is 6 % on average
  bool isProven = true;            ///< no other grams of these foods are nearer
  bool operator==(const Swap&) const = default;
};

/// A candidate that will not do, and why.
struct SwapRefusal {
  enum class Why {
    Banned,     ///< a caution or an exclusion (rule) forbids it for this animal
    Structure,  ///< a structure rule of the group `rule` would not hold: a cooked vegetable for a cooked one
    NoAmount,   ///< its own limits leave no amount
    HardRule,   ///< no amount of it keeps the hard rule that is named
    NoWater     ///< nobody knows its water, so that its dry matter cannot be counted
  };
  std::size_t candidate = 0;
  Why why = Why::Banned;
  std::string rule{};    ///< id of the ban or of the target, ratio or share; the group of a structure rule
  std::string reason{};  ///< of a ban, as it is written there
  bool operator==(const SwapRefusal&) const = default;
};

struct SwapRanking {
  std::vector<Swap> singles;  ///< the nearest first; while others may move, only as many as were asked for
  std::vector<Swap> pairs;    ///< the nearest first, of the promising ones that were tried
  std::vector<SwapRefusal> refused;  ///< in the order of the candidates
  bool isComplete = false;           ///< false: more is to come, or it was cancelled
};

struct SwapOptions {
  enum class Pairs { Never, WhereOneWillNotDo, Always };
  Pairs pairs = Pairs::WhereOneWillNotDo;
  std::size_t most = 20;      ///< swaps that are worked out to the end where other lines may move
  std::size_t mostPairs = 5;  ///< pairs that are given
  std::chrono::milliseconds deadline{10'000};
  int threads = 2;  ///< >= 1; the answer does not depend on it
  std::stop_token stop{};
  /// Called on the calling thread with what is known so far: the missing food's own group first.
  std::function<void(const SwapRanking&)> soFar{};
};

/// Ranks every candidate. Throws std::invalid_argument where the request is no request: a diet without one
/// entry per food, nothing missing, a position that is not there, a share to move outside 0 … 1, or a problem
/// that cannot be solved as it is written.
[[nodiscard]] SwapRanking rankSwaps(const SwapRequest& request, const SwapOptions& options = {});

/// Leaves out candidates that are what is missing.
void leaveOutMissing(SwapRequest& request);

/// One will do: nothing gets worse with the nearest single swap.
[[nodiscard]] bool oneWillDo(const SwapRanking& ranking);

}  // namespace tarebowl::diet
