// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/head_shares.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tarebowl::intake {

namespace {

double weightOf(ShareBy by, double mass) {
  return by == ShareBy::MetabolicMass ? std::pow(mass, 0.75) : mass;
}

/// A food of the bowl: so much dry matter of it, so much of the thing in it.
struct Heap {
  double dryMatter = 0.0;
  double thing = 0.0;
};

struct Heaps {
  std::vector<Heap> heaps{};  ///< richest first
  double dryMatter = 0.0;
  double thing = 0.0;
  bool dryMatterKnown = true;

  /// The most of the thing in so much dry matter.
  [[nodiscard]] double richest(double most) const {
    double sum = 0.0;
    for (const Heap& heap : heaps) {
      if (!(heap.dryMatter > 0.0)) {
        sum += heap.thing;  // no dry matter to speak of: nothing stands against eating it all
        continue;
      }
      const double taken = std::clamp(most, 0.0, heap.dryMatter);
      sum += heap.thing * (taken / heap.dryMatter);
      most -= taken;
    }
    return sum;
  }
};

Heaps heapsOf(std::span<const EatenItem> eaten, const Contents& thing, const Contents& dryMatter) {
  Heaps all;
  for (const EatenItem& item : eaten) {
    const double grams = std::max(0.0, item.atMost);
    const Content* content = thing.find(item.food);
    const Content* dry = dryMatter.find(item.food);
    if (grams > 0.0 && (dry == nullptr || !dry->perGram)) all.dryMatterKnown = false;
    Heap heap;
    heap.dryMatter = grams * (dry == nullptr ? 0.0 : dry->perGram.value_or(0.0));
    heap.thing = grams * (content == nullptr ? 0.0 : content->perGram.value_or(0.0));
    all.dryMatter += heap.dryMatter;
    all.thing += heap.thing;
    all.heaps.push_back(heap);
  }
  std::ranges::stable_sort(
      all.heaps, [](const Heap& a, const Heap& b) { return a.thing * b.dryMatter > b.thing * a.dryMatter; });
  return all;
}

std::optional<BoundsDefect> defectOf(const Heaps& heaps, const Ceiling& ceiling,
                                     std::span<const std::optional<quantity::Kilograms>> masses) {
  double together = 0.0;
  for (const auto& mass : masses) {
    if (!mass) return BoundsDefect::MassUnknown;
    together += quantity::toGrams(*mass).value() * ceiling.dryMatterPerBodyMass;
  }
  if (!heaps.dryMatterKnown) return BoundsDefect::DryMatterUnknown;
  if (together < heaps.dryMatter) return BoundsDefect::CeilingsTooLow;
  return std::nullopt;
}

}  // namespace

std::optional<std::vector<double>> headShares(ShareBy by,
                                              std::span<const std::optional<quantity::Kilograms>> masses) {
  std::vector<double> shares;
  shares.reserve(masses.size());
  for (const auto& mass : masses) {
    if (by == ShareBy::Equal) {
      shares.push_back(1.0);
      continue;
    }
    if (!mass || !(mass->value() > 0.0)) return std::nullopt;
    shares.push_back(weightOf(by, mass->value()));
  }
  const double sum = std::accumulate(shares.begin(), shares.end(), 0.0);
  for (double& share : shares) share /= sum;
  return shares;
}

GroupBounds headBounds(std::span<const EatenItem> eaten, const Contents& thing, const Contents& dryMatter,
                       std::span<const std::optional<quantity::Kilograms>> masses,
                       std::optional<Ceiling> ceiling) {
  const Heaps heaps = heapsOf(eaten, thing, dryMatter);
  GroupBounds bounds;
  bounds.heads.assign(masses.size(), {masses.size() == 1 ? heaps.thing : 0.0, heaps.thing});
  if (!ceiling || masses.size() == 1) return bounds;
  bounds.defect = defectOf(heaps, *ceiling, masses);
  if (bounds.defect) return bounds;
  double together = 0.0;
  for (const auto& mass : masses)
    together += quantity::toGrams(*mass).value() * ceiling->dryMatterPerBodyMass;
  for (std::size_t i = 0; i < masses.size(); ++i) {
    const double own = quantity::toGrams(*masses[i]).value() * ceiling->dryMatterPerBodyMass;
    bounds.heads[i] = {heaps.thing - heaps.richest(together - own), heaps.richest(own)};
  }
  return bounds;
}

}  // namespace tarebowl::intake
