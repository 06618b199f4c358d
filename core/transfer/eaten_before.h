// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap.h"
#include "core/quantity/date.h"
#include "core/store/collection.h"

#include <map>
#include <string>

namespace tarebowl::transfer {

/// How well the group ate each food in the days before one, by food code: eaten / offered over the bowls
/// whose leftovers are known. A food without such a bowl is not in it. Throws StoreError.
[[nodiscard]] std::map<std::string, diet::EatenBefore> eatenBefore(const store::Collection& collection,
                                                                   const std::string& group,
                                                                   quantity::Date day);

}  // namespace tarebowl::transfer
