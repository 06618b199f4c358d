// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

namespace tarebowl::food {

/// What one report says of a nutrient: the mean of `count` determinations and their sample standard
/// deviation.
struct ReportedMean {
  double mean = 0.0;
  std::optional<double> sd{};
  std::optional<int> count{};  ///< where it is missing the mean weighs as one determination
};

/// The mean and the sample standard deviation that all determinations together would have:
///   mean = sum(n m) / N          sd^2 = [ sum((n - 1) s^2) + sum(n (m - mean)^2) ] / (N - 1)
/// (combining groups' means and variances, as in the Cochrane Handbook for Systematic Reviews, "Combining
/// groups"; publication from memory, identity proved in the test). The sd is missing where a report of
/// several determinations, or of an unstated number, does not give what is needed. One report stays as it is.
/// `reports` must not be empty.
[[nodiscard]] ReportedMean pool(std::span<const ReportedMean> reports);

}  // namespace tarebowl::food
