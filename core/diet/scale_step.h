// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

namespace tarebowl::diet {

/// The nearest amount that the scale can show: a whole number of steps, as the decimal number a person would
/// write (3 steps of 0.1 g are 0.3 g, not 0.30000000000000004). Where step is not above 0 any amount can be
/// weighed and it is returned as it is.
[[nodiscard]] quantity::Grams nearestOnScale(quantity::Grams amount, quantity::Grams step);

/// Whether it is a whole number of steps, up to what rounding makes of a decimal number.
[[nodiscard]] bool isOnScale(quantity::Grams amount, quantity::Grams step);

}  // namespace tarebowl::diet
