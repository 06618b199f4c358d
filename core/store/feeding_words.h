// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/store/opening.h"
#include "core/store/prepared_statement.h"

#include <optional>
#include <string>
#include <unordered_map>

/// Small numbers for what a feeding line would otherwise spell out. Inside guarded(); one for one verb or one
/// reading.
namespace tarebowl::store {

/// Words that come again on every sheet.
class FeedingWords {
 public:
  explicit FeedingWords(Collection::Inner& inner);
  /// Adds the word where it is new; for verbs only.
  [[nodiscard]] long long numberOf(const std::string& word);
  [[nodiscard]] const std::string& wordOf(long long number);
  /// Asks for all of them without reading them (reading.h).
  void ask();

 private:
  Collection::Inner& inner_;
  PreparedStatement find_, add_, read_;
  std::unordered_map<std::string, long long> numbers_;
  std::unordered_map<long long, std::string> words_;
};

/// Foods of sheets by their codes, also those that the collection does not hold.
class FedFoods {
 public:
  explicit FedFoods(Collection::Inner& inner);
  [[nodiscard]] long long numberOf(const std::string& code);  ///< adds it where it is new
  [[nodiscard]] const std::string& codeOf(long long number);
  void ask();  ///< as for words

 private:
  Collection::Inner& inner_;
  PreparedStatement findFood_, find_, findGone_, add_, read_;
  std::unordered_map<std::string, long long> numbers_;
  std::unordered_map<long long, std::string> codes_;
};

/// Nothing where there is no such group.
[[nodiscard]] std::optional<long long> groupNumber(Collection::Inner& inner, const std::string& code);

/// To the nearest milligram.
[[nodiscard]] long long milligrams(quantity::Grams mass);
[[nodiscard]] quantity::Grams gramsOf(long long milligrams);

}  // namespace tarebowl::store
