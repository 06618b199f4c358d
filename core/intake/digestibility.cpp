// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/digestibility.h"

#include <cmath>

namespace tarebowl::intake {

std::optional<Digestibility> byCollection(Measured intake, Measured faeces) {
  if (!(intake.value > 0.0)) return std::nullopt;
  const double passed = faeces.value / intake.value;
  return Digestibility{1.0 - passed, std::hypot(faeces.sd, passed * intake.sd) / intake.value};
}

std::optional<Digestibility> byMarker(const MarkerTrial& trial) {
  const auto [feedMarker, faecesMarker, inFeed, inFaeces] = trial;
  if (!(faecesMarker.value > 0.0) || !(inFeed.value > 0.0)) return std::nullopt;
  const double markers = feedMarker.value / faecesMarker.value;
  const double contents = inFaeces.value / inFeed.value;
  // Each factor's own slope, so that a factor of 0 is no division by it.
  const double ofMarkers = std::hypot(feedMarker.sd, markers * faecesMarker.sd) / faecesMarker.value;
  const double ofContents = std::hypot(inFaeces.sd, contents * inFeed.sd) / inFeed.value;
  return Digestibility{1.0 - markers * contents, std::hypot(ofMarkers * contents, ofContents * markers)};
}

}  // namespace tarebowl::intake
