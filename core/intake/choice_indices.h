// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

/// Indices of selection from one set of foods: p the share offered, r the share of what was eaten. Both are
/// above 0 in all but the edge cases told; E, D and the forage ratio depend on what else is offered
/// (Jacobs 1974 says so of E), and alpha with a constant offer is inflated for rare foods.
namespace tarebowl::intake {

/// r / p. Nothing where p is not above 0. Jacobs 1974, Oecologia 14:413-417.
[[nodiscard]] std::optional<double> forageRatio(double r, double p);
/// Ivlev's E = (r - p) / (r + p), -1 … 1. Nothing where both are 0. Jacobs 1974.
[[nodiscard]] std::optional<double> ivlevE(double r, double p);
/// Jacobs's D = (r - p) / (r + p - 2 r p). Nothing where the divisor is 0. Jacobs 1974, from memory.
[[nodiscard]] std::optional<double> jacobsD(double r, double p);
/// Strauss's L = r - p. Strauss 1979, from memory.
[[nodiscard]] double straussL(double r, double p);
/// Manly and Chesson's alpha where the offer stays as it is: (r / p) / sum of (r / p); neutral 1 / m. Nothing
/// where any p is not above 0 or nothing is eaten.
[[nodiscard]] std::optional<std::vector<double>> alphaOfConstantOffer(std::span<const double> r,
                                                                      std::span<const double> p);
/// Chesson's epsilon = (m alpha - 1) / ((m - 2) alpha + 1), m foods. Chesson 1983, from memory.
[[nodiscard]] double chessonEpsilon(double alpha, std::size_t m);
/// Vanderploeg and Scavia's E* = (alpha - 1 / m) / (alpha + 1 / m). From memory.
[[nodiscard]] double relativizedE(double alpha, std::size_t m);

}  // namespace tarebowl::intake
