// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/spelling.h"

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace tarebowl::exchange {

/// What a number may be, and how a person would say it ("a number of 0 or more").
struct NumberRange {
  double least = 0.0;
  double most = std::numeric_limits<double>::max();
  bool leastIncluded = true;
  bool mostIncluded = true;
  std::string inWords = "a number of 0 or more";
  std::string tooMuchInWords{};  ///< where what is said of a number above most differs
};

/// A place in a JSON document that knows its key path. Reading something else than what stands there throws
/// FormatError with that path. It refers to the document and the file name, which must outlive it.
class JsonReader {
 public:
  JsonReader(const nlohmann::json& value, const std::string& fileName, std::string path = {});

  /// A key that must be there, a key that may be.
  [[nodiscard]] JsonReader member(std::string_view key) const;
  [[nodiscard]] std::optional<JsonReader> find(std::string_view key) const;
  /// All of an object, all of a list.
  [[nodiscard]] std::vector<std::pair<std::string, JsonReader>> members() const;
  [[nodiscard]] std::vector<JsonReader> elements() const;
  /// Unknown keys are let pass, so that files can be extended, but not what looks like a slip of a known key.
  void refuseSlips(std::span<const std::string_view> knownKeys) const;

  [[nodiscard]] bool isText() const;
  [[nodiscard]] bool isNull() const;
  [[nodiscard]] std::string text() const;
  [[nodiscard]] std::string nonEmptyText() const;
  /// A list of texts, none of them empty.
  [[nodiscard]] std::vector<std::string> texts() const;
  [[nodiscard]] bool flag() const;
  [[nodiscard]] double number(const NumberRange& range) const;
  [[nodiscard]] int wholeNumber(int least, int most) const;

  /// One of a fixed list of words, read by parse (text -> optional value).
  template <class Parse>
  [[nodiscard]] auto word(Parse parse, std::span<const std::string_view> allowed) const {
    auto value = parse(std::string_view(nonEmptyText()));
    if (!value) refuse(inWords(allowed));
    return *value;
  }

  /// "expected …, found …" with what stands here.
  [[noreturn]] void refuse(const std::string& expected) const;
  /// "expected …" alone, where what is wrong is not the value that stands here.
  [[noreturn]] void complain(const std::string& expected) const;
  /// "expected …, found nothing" for a key that is not there.
  [[noreturn]] void refuseMissing(std::string_view key, const std::string& expected) const;
  [[nodiscard]] const std::string& path() const { return path_; }
  /// An object as JSON again: for what is kept as it stands and read by a reader of its own.
  [[nodiscard]] std::string asJson() const;

 private:
  void requireObject() const;

  const nlohmann::json* value_;
  const std::string* fileName_;
  std::string path_;
};

/// Text as a message shows it: in quotes, with escapes, cut where it is long.
[[nodiscard]] std::string inQuotes(std::string_view text);

}  // namespace tarebowl::exchange
