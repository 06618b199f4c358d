// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace tarebowl::intake {

/// The t that a Student value with `freedom` degrees of freedom (above 0) stays at or below with chance p,
/// 0 < p < 1: 2.262157 for 0.975 and 9.
[[nodiscard]] double studentQuantile(double p, double freedom);

/// The half width of a mean's two-sided interval: t · sd / sqrt(n); n of at least 2.
[[nodiscard]] double meanHalfWidth(double sd, double n, double confidence);

}  // namespace tarebowl::intake
