// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap.h"
#include "core/diet/swap_effect.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

namespace tarebowl::ui {

/// A swap with all that a keeper is told of it, and the two amounts by hand where they may be given.
struct SwapOffer {
  diet::Swap swap;
  diet::SwapEffect effect;
  std::optional<diet::Swap> equalDryMatter{};
  std::optional<diet::Swap> equalEnergy{};
};

/// What is offered in place of what is missing, as far as is known; a snapshot.
struct SwapOffers {
  std::shared_ptr<const diet::SwapRequest> request{};
  std::vector<SwapOffer> offers{};  ///< foods, the nearest first, then pairs
  std::size_t further = 0;          ///< that would do as well, further from the approved balance
  std::vector<diet::SwapRefusal> refused{};
  bool isComplete = false;
};

[[nodiscard]] SwapOffers offersOf(std::shared_ptr<const diet::SwapRequest> request,
                                  const diet::SwapRanking& ranking, std::size_t most);

}  // namespace tarebowl::ui
