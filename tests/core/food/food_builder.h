// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"

#include <initializer_list>
#include <utility>

namespace tarebowl::food {

/// Per 100 g as fed, by tagname: foodOf({{"WATER", 89.6}, {"CA", 254.0}}).
inline Composition foodOf(std::initializer_list<std::pair<const char*, double>> amounts) {
  Composition composition;
  for (const auto& [tagname, amount] : amounts)
    composition.set(findByTagname(tagname).value(), {.amount = quantity::AsFedContent(amount)});
  return composition;
}

}  // namespace tarebowl::food
