// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace tarebowl::food {

/// Protein is 16 % nitrogen on average, 100/16 = 6.25: by definition the factor of crude protein.
inline constexpr double kCrudeProteinFactor = 6.25;

/// Grams of protein per gram of nitrogen in a material. Where part of the nitrogen is not protein (chitin in
/// insects) the factor is smaller. Requirements stated as N x 6.25 must be compared with contents stated as N
/// x 6.25.
struct NitrogenFactor {
  std::string_view material;
  double factor;
  std::optional<double> plusMinus;  ///< as published
  std::string_view source;
};

[[nodiscard]] std::span<const NitrogenFactor> publishedNitrogenFactors();

/// Grams per 100 g in, grams per 100 g out. Throws std::domain_error when a factor is not above 0 and finite.
[[nodiscard]] double proteinOf(double nitrogen, double factor);
[[nodiscard]] double nitrogenOf(double protein, double factor);
/// The same nitrogen as protein by another factor: 18.7 g crude protein is 14.24 g by the 4.76 of whole
/// insect larvae.
[[nodiscard]] double restateProtein(double protein, double statedFactor, double wantedFactor);

}  // namespace tarebowl::food
