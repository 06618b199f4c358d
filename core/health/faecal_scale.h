// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace tarebowl::health {

/// Which end of a scale is liquid: published scales of faeces differ in it.
enum class Softer { Higher, Lower };

/// A score with the scale that it was given on: without it nobody can say later whether 2 was hard or liquid.
struct FaecalScore {
  std::string scale{};  ///< id of the scale, of a known one or of the house's own
  double score = 0.0;
  double lowest = 0.0;
  double highest = 0.0;
  double ideal = 0.0;  ///< formed and moist
  Softer softer = Softer::Higher;
  bool operator==(const FaecalScore&) const = default;
};

/// How far a score lies from the ideal towards liquid, as a share of the way there: 0 ideal, 1 liquid, below
/// 0 towards hard (-1). It makes scores of different scales comparable in their direction, not in their
/// steps.
[[nodiscard]] double softness(const FaecalScore& score);

/// Softer than the ideal by more than one step of a scale that is counted in whole steps. House rule, no
/// source: scores of one step either way are everyday scatter.
[[nodiscard]] bool isSoft(const FaecalScore& score);

enum class ScoreProblem {
  NoScale,          ///< a score without the name of its scale
  ScaleUpsideDown,  ///< its highest is not above its lowest
  OffTheScale,
  IdealOffTheScale
};
[[nodiscard]] std::optional<ScoreProblem> problemWith(const FaecalScore& score);

/// A scale that is known here, to enter scores by.
struct FaecalScale {
  std::string_view id;
  std::string_view name;
  double lowest;
  double highest;
  double ideal;
  Softer softer;
  std::string_view source;
  animal::Provenance provenance;
};
[[nodiscard]] std::span<const FaecalScale> faecalScales();
[[nodiscard]] const FaecalScale* findFaecalScale(std::string_view id);
/// The score with all that its scale says.
[[nodiscard]] FaecalScore scoreOn(const FaecalScale& scale, double score);

}  // namespace tarebowl::health
