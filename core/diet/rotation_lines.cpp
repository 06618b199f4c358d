// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_lines.h"

#include <algorithm>
#include <stdexcept>

namespace tarebowl::diet {

std::vector<DietLine> linesOfPlannedDay(const DietVersion& version, std::span<const PlaceInVersion> places,
                                        const Diet& day) {
  if (places.size() != day.size()) throw std::invalid_argument("one place for each food of the day");
  std::vector<DietLine> lines;
  for (std::size_t i = 0; i < day.size(); ++i) {
    const PlaceInVersion& place = places[i];
    if (place.allowance || !(day[i].value() > 0.0)) continue;
    DietLine line{.food = place.food, .purpose = place.purpose, .meal = place.meal};
    const auto own = std::ranges::find_if(version.lines, [&](const DietLine& each) {
      return each.food == place.food && each.purpose == place.purpose && each.meal == place.meal;
    });
    if (own != version.lines.end()) line = *own;
    line.amount = day[i];
    lines.push_back(std::move(line));
  }
  return lines;
}

}  // namespace tarebowl::diet
