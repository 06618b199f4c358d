// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/fed_bowl.h"
#include "core/intake/water_pans.h"

#include <random>
#include <string>
#include <vector>

/// Feeding whose truth is known: what an invented group really ate, and what a keeper would have read off the
/// scale the next morning. The same seed feeds the same way.
namespace tarebowl::intake::testing {

struct TrueFood {
  std::string name{};
  std::string foodClass = "greens";
  double offered = 100.0;  ///< g; a little more or less each day
  double appetite = 1.0;   ///< a: of it remains exp(-intensity · a · scatter)
};

struct World {
  std::vector<TrueFood> foods{};
  double intensity = 1.0;         ///< how hungry a day is, on average
  double intensityScatter = 0.3;  ///< log standard deviation from day to day
  double appetiteScatter = 0.3;   ///< the same of each food's own
  double loss = 0.15;             ///< water
  double lossDayToDay = 0.04;     ///< sd of the day's L
  double lossWithinDay = 0.02;    ///< sd of a pan, and of a bowl, about it
  double step = 1.0;              ///< of the scale
  int pansADay = 2;
  double panMissing = 0.0;  ///< chance that a day has no pan
};

struct SimulatedDay {
  FedBowl bowl{};
  std::vector<WaterPan> pans{};
  std::vector<double> eaten{};  ///< the truth
};

[[nodiscard]] std::vector<SimulatedDay> feed(const World& world, int days, std::mt19937& random);
[[nodiscard]] std::vector<WaterPan> pansOf(const std::vector<SimulatedDay>& days);

}  // namespace tarebowl::intake::testing
