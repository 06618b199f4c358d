// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation.h"
#include "core/diet/solve.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

std::optional<double> widthOf(const Zones& zones, const std::string& id) {
  const auto own = std::ranges::find(zones.of, id, &ZoneWidth::target);
  return own == zones.of.end() ? std::optional(zones.widen) : own->widen;
}

/// Rules without a zone go; the others get theirs.
template <class Rule>
void widen(std::vector<Rule>& rules, const Zones& zones) {
  std::vector<Rule> zoned;
  for (Rule& rule : rules) {
    const std::optional<double> width = widthOf(zones, rule.id);
    if (!width) continue;
    if (rule.min) *rule.min *= std::max(0.0, 1.0 - *width);
    if (rule.max) *rule.max *= 1.0 + *width;
    zoned.push_back(std::move(rule));
  }
  rules = std::move(zoned);
}

}  // namespace

BalanceProblem zonedProblem(const BalanceProblem& base, const Zones& zones) {
  BalanceProblem zoned = base;
  zoned.reference = referenceDiet(base);  // what shortfalls are counted against does not move with the zones
  zoned.confidence = std::nullopt;
  zoned.choices.clear();
  widen(zoned.targets, zones);
  widen(zoned.ratios, zones);
  widen(zoned.shares, zones);
  return zoned;
}

}  // namespace tarebowl::diet
