// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/contents.h"
#include "core/intake/eaten.h"
#include "core/quantity/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// A shared bowl does not say who ate what. Shares are an assumption, never a measurement; bounds are what is
/// certain.
namespace tarebowl::intake {

enum class ShareBy { Equal, BodyMass, MetabolicMass };

/// What share of the bowl each animal is taken to eat, in the order given; they sum to 1. By mass
/// (mass^0.75): nothing where any mass is unknown or not above 0. There must be at least one animal.
[[nodiscard]] std::optional<std::vector<double>> headShares(
    ShareBy by, std::span<const std::optional<quantity::Kilograms>> masses);

/// What one animal can have eaten of something, from all of the bowl down to nothing.
struct HeadBounds {
  double low = 0.0;
  double high = 0.0;
};

/// A ceiling on what one animal eats, as a share of its body mass in dry matter a day: 0.05 is 5 %.
/// Somebody must state it; there is none of ours.
struct Ceiling {
  double dryMatterPerBodyMass = 0.0;
};

/// Why the bounds do not fit together: the group ate more than all ceilings allow. Then no ceiling is used.
enum class BoundsDefect { CeilingsTooLow, MassUnknown, DryMatterUnknown };

struct GroupBounds {
  std::vector<HeadBounds> heads{};  ///< in the order of the animals
  std::optional<BoundsDefect> defect{};
};

/// Nobody can have eaten more of a thing than the bowl held of it, nor less than what the others cannot have
/// eaten. Without a ceiling and with two animals or more that is 0 … all. With one, each animal holds at most
/// its ceiling of dry matter and picks as it likes: its most is the ceiling filled with the foods richest in
/// the thing per dry matter, its least is what is left when the others, their ceilings together, do so.
/// (Fractional knapsack, filled greedily: Dantzig 1957, Operations Research 5:266-277, from memory.)
/// eaten: what the group ate of each food (grams as fed, below 0 counts as 0).
[[nodiscard]] GroupBounds headBounds(std::span<const EatenItem> eaten, const Contents& thing,
                                     const Contents& dryMatter,
                                     std::span<const std::optional<quantity::Kilograms>> masses,
                                     std::optional<Ceiling> ceiling = std::nullopt);

}  // namespace tarebowl::intake
