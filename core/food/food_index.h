// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::food {

/// What a list of foods shows of one.
struct FoodLine {
  std::int64_t id = 0;
  std::string code{};
  std::string name{};
  std::string form{};
  std::string group{};
  bool operator==(const FoodLine&) const = default;
};

/// Finds foods as a name is typed. Every typed word must occur, in any order, in the name, form, group or
/// code, whatever the case and the accents. First come foods whose name begins with a word, then those in
/// whose name a word begins, then those that have it inside the name, then elsewhere; shorter names first,
/// then by alphabet. Built once from the list; a search reads the folded names through (milliseconds for ten
/// thousand).
class FoodIndex {
 public:
  explicit FoodIndex(std::vector<FoodLine> foods);

  /// The best `most`; all in alphabetical order for an empty text.
  [[nodiscard]] std::vector<FoodLine> find(std::string_view text, std::size_t most) const;
  [[nodiscard]] std::size_t size() const { return foods_.size(); }

 private:
  std::vector<FoodLine> foods_;         // by folded name
  std::vector<std::string> names_;      // folded, a space before each word
  std::vector<std::string> elsewhere_;  // form, group and code, the same way
};

}  // namespace tarebowl::food
