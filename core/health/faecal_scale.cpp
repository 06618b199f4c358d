// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/faecal_scale.h"

#include <algorithm>
#include <array>

namespace tarebowl::health {

namespace {

constexpr std::string_view kSource =
    "scales of 1 to 5 and 1 to 7 as they are in general use; which end is liquid differs between published "
    "scales";

constexpr std::array<FaecalScale, 4> kScales{{
    {.id = "faeces-7",
     .name = "Faeces, 7 points, 1 hard, 7 liquid",
     .lowest = 1.0,
     .highest = 7.0,
     .ideal = 4.0,
     .softer = Softer::Higher,
     .source = kSource,
     .provenance = animal::Provenance::FromMemory},
    {.id = "faeces-7-liquid-first",
     .name = "Faeces, 7 points, 1 liquid, 7 hard",
     .lowest = 1.0,
     .highest = 7.0,
     .ideal = 4.0,
     .softer = Softer::Lower,
     .source = kSource,
     .provenance = animal::Provenance::FromMemory},
    {.id = "faeces-5",
     .name = "Faeces, 5 points, 1 hard, 5 liquid",
     .lowest = 1.0,
     .highest = 5.0,
     .ideal = 3.0,
     .softer = Softer::Higher,
     .source = kSource,
     .provenance = animal::Provenance::FromMemory},
    {.id = "faeces-5-liquid-first",
     .name = "Faeces, 5 points, 1 liquid, 5 hard",
     .lowest = 1.0,
     .highest = 5.0,
     .ideal = 3.0,
     .softer = Softer::Lower,
     .source = kSource,
     .provenance = animal::Provenance::FromMemory},
}};

/// Steps from the ideal towards liquid.
double stepsSofter(const FaecalScore& score) {
  const double steps = score.score - score.ideal;
  return score.softer == Softer::Higher ? steps : -steps;
}

}  // namespace

double softness(const FaecalScore& score) {
  const double steps = stepsSofter(score);
  const bool upwards = (steps >= 0.0) == (score.softer == Softer::Higher);
  const double way = upwards ? score.highest - score.ideal : score.ideal - score.lowest;
  return way > 0.0 ? steps / way : 0.0;
}

bool isSoft(const FaecalScore& score) {
  return stepsSofter(score) > 1.0;
}

std::optional<ScoreProblem> problemWith(const FaecalScore& score) {
  if (score.scale.empty()) return ScoreProblem::NoScale;
  if (!(score.highest > score.lowest)) return ScoreProblem::ScaleUpsideDown;
  if (!(score.score >= score.lowest && score.score <= score.highest)) return ScoreProblem::OffTheScale;
  if (!(score.ideal >= score.lowest && score.ideal <= score.highest)) return ScoreProblem::IdealOffTheScale;
  return std::nullopt;
}

std::span<const FaecalScale> faecalScales() {
  return kScales;
}

const FaecalScale* findFaecalScale(std::string_view id) {
  const auto* const found = std::ranges::find(kScales, id, &FaecalScale::id);
  return found == kScales.end() ? nullptr : found;
}

FaecalScore scoreOn(const FaecalScale& scale, double score) {
  return {std::string(scale.id), score, scale.lowest, scale.highest, scale.ideal, scale.softer};
}

}  // namespace tarebowl::health
