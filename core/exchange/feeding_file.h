// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

/// Feeding days as tables (sample-data/README.md lists the columns). Throw FormatError (problem_json.h).
namespace tarebowl::exchange {

/// One food of one bowl of one day.
struct FeedingLine {
  quantity::Date day{};
  int bowl = 1;
  std::string meal{};
  std::string purpose{};
  std::string diet{};  ///< empty: fed as before
  int version = 0;
  int animals = 1;
  int item = 1;
  std::string food{};
  quantity::Grams planned{};
  std::optional<quantity::Grams> weighed{};
  std::optional<intake::LeftoverKind> leftover{};  ///< nothing: not yet
  std::optional<quantity::Grams> left{};
  std::optional<quantity::Grams> lost{};
  std::string by{};
};
[[nodiscard]] std::vector<FeedingLine> readFeedingLines(const std::filesystem::path& file);

struct RemainderLine {
  intake::BowlKey bowl{};
  quantity::Grams left{};
  std::string by{};
};
[[nodiscard]] std::vector<RemainderLine> readRemainders(const std::filesystem::path& file);

[[nodiscard]] std::vector<intake::ControlPan> readControlPans(const std::filesystem::path& file);

}  // namespace tarebowl::exchange
