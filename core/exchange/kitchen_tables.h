// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"

#include <cstddef>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

/// Tables by which weights and leftovers come in: CSV with exactly these titles in the first line. Throws
/// FormatError.
namespace tarebowl::exchange {

/// group,bowl,food,g,reason: food by its code or its number in the bowl; a reason makes it a correction.
struct WeightLine {
  std::size_t line = 0;
  std::string group{};
  int bowl = 1;
  std::string food{};
  quantity::Grams actual{};
  std::string reason{};
};
[[nodiscard]] std::vector<WeightLine> readWeights(std::istream& table, const std::string& name);

/// group,bowl,food,how,left_g,lost_g,reason: how is a word of intake_words.h; food "*" is what is left of all
/// together, and then how is weighed.
struct LeftoverLine {
  std::size_t line = 0;
  std::string group{};
  int bowl = 1;
  std::string food{};
  intake::LeftoverKind kind = intake::LeftoverKind::Weighed;
  std::optional<quantity::Grams> left{};
  std::optional<quantity::Grams> lost{};
  std::string reason{};
};
[[nodiscard]] std::vector<LeftoverLine> readLeftovers(std::istream& table, const std::string& name);

}  // namespace tarebowl::exchange
