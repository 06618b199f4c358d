// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/swap_offers.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

SwapOffer offerOf(const diet::SwapRequest& request, const diet::Swap& swap) {
  SwapOffer offer{.swap = swap, .effect = diet::effectOf(request, swap)};
  if (swap.parts.size() != 1 || !swap.moved.empty()) return offer;
  const std::size_t candidate = swap.parts.front().candidate;
  const diet::EqualAmounts equal = diet::equalAmounts(request, candidate);
  if (equal.dryMatter) offer.equalDryMatter = diet::swapOf(request, candidate, *equal.dryMatter);
  if (equal.energy) offer.equalEnergy = diet::swapOf(request, candidate, *equal.energy);
  return offer;
}

}  // namespace

SwapOffers offersOf(std::shared_ptr<const diet::SwapRequest> request, const diet::SwapRanking& ranking,
                    std::size_t most) {
  SwapOffers offers{.refused = ranking.refused, .isComplete = ranking.isComplete};
  const std::size_t shown = std::min(most, ranking.singles.size());
  for (std::size_t i = 0; i < shown; ++i) offers.offers.push_back(offerOf(*request, ranking.singles[i]));
  for (const diet::Swap& pair : ranking.pairs) offers.offers.push_back(offerOf(*request, pair));
  offers.further = ranking.singles.size() - shown;
  offers.request = std::move(request);
  return offers;
}

}  // namespace tarebowl::ui
