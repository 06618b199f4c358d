// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/basis.h"

#include <gtest/gtest.h>

#include <array>
#include <utility>

namespace tarebowl::quantity {
namespace {

constexpr std::array<std::pair<const char*, Basis>, 6> kNames{{
    {"as-fed", Basis::AsFed},
    {"dry-matter", Basis::DryMatter},
    {"energy", Basis::Energy},
    {"day", Basis::Day},
    {"body-mass", Basis::BodyMass},
    {"metabolic-mass", Basis::MetabolicMass},
}};

TEST(Bases, AreReadAndWrittenByTheNamesOfTheProblemFormat) {
  for (const auto& [name, basis] : kNames) {
    EXPECT_EQ(parseBasis(name), basis) << name;
    EXPECT_EQ(symbolOf(basis), name);
  }
}

TEST(Bases, NothingElseIsABasis) {
  for (const auto* text : {"", "dm", "DM", "Dry-matter", "dry matter", "per-day"})
    EXPECT_FALSE(parseBasis(text)) << text;
}

}  // namespace
}  // namespace tarebowl::quantity
