// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/swap_offers.h"
#include "ui/shared/state_mark.h"

#include <QString>

/// Swaps in a keeper's words.
namespace tarebowl::ui {

/// "Kale (raw), 15 g" of what is missing; for a group what the bowl of all would hold.
[[nodiscard]] QString missingText(const diet::SwapRequest& request);
/// "23 g", "12 g + 0.4 g": for the whole bowl.
[[nodiscard]] QString swapGramsText(const diet::SwapRequest& request, const diet::Swap& swap);
/// "4.6 g each" where the bowl feeds several; empty for one.
[[nodiscard]] QString eachText(const diet::SwapRequest& request, const diet::Swap& swap);
[[nodiscard]] QString swapFoodsText(const diet::SwapRequest& request, const diet::Swap& swap);

/// "Ca:P 1.5 → 1.3, still in zone · energy 140 → 138 kcal · iron: met → short · eaten 90 % in 12 bowls".
[[nodiscard]] QString effectLine(const diet::SwapRequest& request, const SwapOffer& offer);
/// What the species' keepers must know of the foods; empty where nothing is known.
[[nodiscard]] QString cautionLine(const SwapOffer& offer);
/// "Keeper may decide", "Ask the nutritionist: another food group".
[[nodiscard]] QString askLine(const SwapOffer& offer);
/// How the swap stands, for its mark: lacking where a target is lost, unknown where one may be.
[[nodiscard]] Mark markOf(const SwapOffer& offer);

/// "2 not for this animal · 24 against a structure rule · and 310 more would do".
[[nodiscard]] QString othersText(const SwapOffers& offers);
/// "Equal dry matter: 17 g (D) · equal energy: 16 g (E)"; empty where neither may be given.
[[nodiscard]] QString equalText(const diet::SwapRequest& request, const SwapOffer& offer);

}  // namespace tarebowl::ui
