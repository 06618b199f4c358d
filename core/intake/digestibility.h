// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

namespace tarebowl::intake {

/// A number that was measured, and its standard deviation (0: not known).
struct Measured {
  double value = 0.0;
  double sd = 0.0;
};

/// An apparent digestibility, as a share: 0.72. It may be below 0 (more came out than went in).
struct Digestibility {
  double share = 0.0;
  double sd = 0.0;  ///< to first order, of independent errors
};

/// Apparent digestibility by total collection: (intake - faeces) / intake, both of the same thing (dry
/// matter, a nutrient) over the same days, in the same unit. Nothing where the intake is not above 0.
/// Standard formula of digestion trials (from memory). sd² = (sd_F / I)² + (F sd_I / I²)².
[[nodiscard]] std::optional<Digestibility> byCollection(Measured intake, Measured faeces);

/// By a marker that is not digested, acid-insoluble ash: 1 - (A_feed / A_faeces) (N_faeces / N_feed), all as
/// concentrations on dry matter; feed is what was eaten, not what was offered. For dry matter itself the two
/// N are 1. Nothing where a concentration that is divided by is not above 0.
/// Van Keulen and Young 1977, Journal of Animal Science 44:282-287, from memory. The relative variances add.
struct MarkerTrial {
  Measured markerInFeed{};
  Measured markerInFaeces{};
  Measured inFeed{1.0, 0.0};
  Measured inFaeces{1.0, 0.0};
};
[[nodiscard]] std::optional<Digestibility> byMarker(const MarkerTrial& trial);

}  // namespace tarebowl::intake
