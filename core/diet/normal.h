// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace tarebowl::diet {

/// Chance that a standard normal value is at most z.
[[nodiscard]] double normalProbability(double z);

/// The z that a standard normal value stays at or below with chance p: 1.959964 for 0.975.
/// p is taken into the open interval (0, 1) first, so that a chance of 1 asks for some 8 standard deviations,
/// not for infinitely many.
[[nodiscard]] double normalQuantile(double p);

}  // namespace tarebowl::diet
