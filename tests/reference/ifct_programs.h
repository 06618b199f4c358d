// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"
#include "tests/reference/ifct_table.h"

#include <cstdint>
#include <optional>

/// Seeded programs from real foods, for comparisons and benchmarks; the same on every machine.
namespace tarebowl::reference {

struct ProgramKind {
  enum class Targets {
    Met,    ///< elastic bands, 5 to 20 % wide, that a hidden diet (on the grid, if there is one) meets
    Unmet,  ///< elastic bands, a third of them moved away from the hidden diet, so that none meets all
    Hard    ///< as Met, every row hard
  };
  enum class Aim { Nearest, Cheapest, ShortfallOnly };

  Eigen::Index foods = 12;
  Eigen::Index rows = 31;
  Targets targets = Targets::Met;
  Aim aim = Aim::Nearest;
  double step = 0.0;         ///< g; 0: continuous. The hidden diet is of whole grams.
  bool twoOfSix = false;     ///< two choices, each 2 of 6 foods, at least 5 g (needs 12 foods)
  double guard = 0.0;        ///< standard deviations (of the table) that a bound must hold for; 0: no scatter
  double widestBand = 0.20;  ///< relative width; the narrowest is 0.05
};

/// The sizes that the solver's bars speak of.
inline constexpr ProgramKind kSmall{.foods = 12, .rows = 31};
inline constexpr ProgramKind kMedium{.foods = 25, .rows = 53};
inline constexpr ProgramKind kForty{.foods = 40, .rows = 60};
inline constexpr ProgramKind kLarge{.foods = 60, .rows = 69};
inline constexpr ProgramKind kLargest{.foods = 80, .rows = 120};

struct SeededProgram {
  solver::Program program;
  Eigen::VectorXd hidden;  ///< g; meets all bands, unless they are Unmet
};

/// Rows are a day's nutrients, ratios of two of them and shares of food groups in the dry matter, each over
/// what the hidden diet holds; foods from 0 to 80 g; the nearest diet is asked for as the diet's formulation
/// does, around one that differs from the hidden one.
[[nodiscard]] SeededProgram seededProgram(const IfctTable& table, const ProgramKind& kind,
                                          std::uint64_t seed);

/// seededProgram(...).program from the table where tests/run puts it; nothing where that is not there.
[[nodiscard]] std::optional<solver::Program> ifctProgram(const ProgramKind& kind, std::uint64_t seed);

}  // namespace tarebowl::reference
