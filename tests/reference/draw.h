// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <numeric>
#include <random>
#include <utility>
#include <vector>

namespace tarebowl::reference {

/// The same draws on every machine, which the standard distributions do not promise.
class Draw {
 public:
  explicit Draw(std::uint64_t seed) : engine_(seed) {}
  double between(double low, double high) {
    return low + (high - low) * static_cast<double>(engine_() >> 11U) * 0x1p-53;
  }
  std::size_t below(std::size_t count) { return static_cast<std::size_t>(engine_() % count); }
  bool chance(double p) { return between(0.0, 1.0) < p; }
  /// count of 0 … from - 1, each once, in random order.
  std::vector<std::size_t> some(std::size_t count, std::size_t from) {
    std::vector<std::size_t> order(from);
    std::iota(order.begin(), order.end(), std::size_t{0});
    for (std::size_t i = 0; i < count; ++i) std::swap(order[i], order[i + below(from - i)]);
    order.resize(count);
    return order;
  }

 private:
  std::mt19937_64 engine_;
};

}  // namespace tarebowl::reference
