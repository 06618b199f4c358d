// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap.h"
#include "core/intake/prep_sheet.h"
#include "core/store/collection.h"
#include "core/transfer/swap_on_desk.h"

#include <optional>
#include <string>
#include <variant>

namespace tarebowl::transfer {

/// Why nothing can be sought for a line of a bowl.
enum class NoSwap {
  NoDiet,     ///< the bowl was made without a diet of the collection
  NotInDiet,  ///< the food came into the bowl otherwise: by another swap
  Weighed     ///< it was there after all: it is weighed in
};

/// What could be given instead of a food of a bowl, by the version of the diet that the bowl is fed by: of
/// what is on hand but the food itself, with how well the group ate it. counted: whether what is
/// offered or what is eaten stays near the approved balance. Throws StoreError.
[[nodiscard]] std::variant<diet::SwapRequest, NoSwap> swapRequestOn(const store::Collection& collection,
                                                                    const intake::PrepBowl& bowl,
                                                                    const intake::BowlItem& item,
                                                                    Candidates which = Candidates::All,
                                                                    CountedAs counted = CountedAs::Offered);

/// The swap as it is written down, in grams of the bowl. Where the keeper may not decide it waits for an
/// answer.
[[nodiscard]] intake::SwapMade swapMade(const intake::Bowl& bowl, const intake::BowlItem& item,
                                        const diet::SwapRequest& request, const diet::Swap& swap,
                                        std::string why);

}  // namespace tarebowl::transfer
