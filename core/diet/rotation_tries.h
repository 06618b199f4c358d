// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_best.h"
#include "core/diet/rotation_pattern.h"

#include <functional>
#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace tarebowl::diet {

/// These days are planned anew by branch and bound, while the others stay as the best plan has them.
struct DaysAnew {
  std::vector<Eigen::Index> days;
  int times = 1;  ///< as many nodes as one such try has
};

/// All open days are planned anew, one after another in this order, each of them to reach what is proved that
/// no plan betters on the days.
struct DaysInTurn {
  std::vector<Eigen::Index> order;
};

/// What may better a plan: foods of each day, whose grams follow, or days that are planned anew.
using RotationTry = std::variant<FedPattern, DaysAnew, DaysInTurn>;

struct Tried {
  std::optional<ValuedPlan> plan;  ///< keeps every hard rule; it may be worse than the best
  std::int64_t nodes = 0;
  bool hasPromised = false;  ///< by a look at it that is soon over
};

/// One try. It depends on what it is given alone, where neither time nor a wish to stop cuts it short. A
/// pattern's grams are worked out only where its sums, in any amounts, promise more than the best plan has.
[[nodiscard]] Tried tried(const RotationModel& model, const RotationTry& what, const SearchedPlan& best,
                          const RotationEffort& effort);

/// All of them on two threads, from the same best plan, and before them what goes beside, where there is
/// such; in the order of what was asked, whichever was ready first.
[[nodiscard]] std::vector<Tried> triedTogether(const RotationModel& model, std::span<const RotationTry> tries,
                                               const SearchedPlan& best, const RotationEffort& effort,
                                               const std::function<void()>& beside = {});

}  // namespace tarebowl::diet
