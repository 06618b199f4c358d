// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <variant>
#include <vector>

namespace tarebowl::exchange {

/// What a line of a plan is about. Noted: a value is taken, under the table's own name or without its
/// scatter.
enum class PlanLineKind { NewFood, ChangedFood, UnchangedFood, Noted, LeftOut, Problem };
inline constexpr std::size_t kPlanLineKinds = 6;

/// A remark with the kind of its issue.
struct PlannedRemark {
  ImportIssue issue = ImportIssue::BadNumber;
  Remark remark{};
};

/// What an import will do, line by line, in the order of the table: each food with what becomes of its
/// values, and each remark. Made for tables of a million lines: a line takes 32 bytes, and texts that repeat
/// are kept once.
class PlanLines {
 public:
  /// Lines beyond this many are counted and not kept.
  static constexpr std::size_t kMostLines = 1'000'000;

  void add(const PlannedFood& food);
  void add(ImportIssue issue, const Remark& remark);
  /// Puts them in the order of the table; call it once, when all are in.
  void finish();

  [[nodiscard]] std::size_t size() const { return lines_.size(); }
  [[nodiscard]] std::size_t notKept() const { return notKept_; }
  [[nodiscard]] PlanLineKind kindOf(std::size_t place) const;
  /// Places of the lines of a kind, in order.
  [[nodiscard]] const std::vector<std::uint32_t>& of(PlanLineKind kind) const {
    return byKind_.at(static_cast<std::size_t>(kind));
  }
  [[nodiscard]] std::variant<PlannedFood, PlannedRemark> at(std::size_t place) const;
  /// The different things that remarks of a kind found, with how often: names of nutrients not known here.
  [[nodiscard]] std::vector<std::pair<std::string, std::size_t>> foundIn(ImportIssue issue) const;

 private:
  struct Line {
    std::uint32_t line = 0;
    std::uint32_t name = 0;   // a food's name, a remark's title
    std::uint32_t other = 0;  // a food's code, what a remark found
    std::uint32_t extra = 0;  // values as they were; the earlier line
    std::uint16_t column = 0;
    std::uint16_t valuesNew = 0;
    std::uint16_t valuesChanged = 0;
    std::uint8_t kind = 0;  // FoodChange, or kFirstIssue + ImportIssue
    std::uint8_t fault = 0;
  };
  [[nodiscard]] std::uint32_t numberOf(std::string_view text);
  void keep(const Line& line);
  [[nodiscard]] static PlanLineKind kindOf(const Line& line);

  std::vector<Line> lines_;
  std::vector<std::string> texts_{std::string()};
  std::unordered_map<std::string, std::uint32_t> numbers_{{std::string(), 0}};
  std::array<std::vector<std::uint32_t>, kPlanLineKinds> byKind_{};
  std::size_t notKept_ = 0;
};

}  // namespace tarebowl::exchange
