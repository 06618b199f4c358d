// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/basis.h"

#include <array>
#include <cstddef>

namespace tarebowl::quantity {

namespace {

// In the order of the enumerators.
constexpr std::array<std::string_view, 6> kSymbols{"as-fed", "dry-matter", "energy",
                                                   "day",    "body-mass",  "metabolic-mass"};

}  // namespace

std::optional<Basis> parseBasis(std::string_view text) {
  for (std::size_t i = 0; i < kSymbols.size(); ++i)
    if (kSymbols[i] == text) return static_cast<Basis>(i);
  return std::nullopt;
}

std::string_view symbolOf(Basis basis) {
  return kSymbols[static_cast<std::size_t>(basis)];
}

}  // namespace tarebowl::quantity
