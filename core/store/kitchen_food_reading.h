// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/prep_sheet.h"
#include "core/store/collection.h"

#include <optional>
#include <string>

namespace tarebowl::store {

/// What the kitchen must know of a food, and no more of it, in one question. Throws StoreError.
[[nodiscard]] std::optional<intake::KitchenFood> findKitchenFood(const Collection& collection,
                                                                 const std::string& code);

}  // namespace tarebowl::store
