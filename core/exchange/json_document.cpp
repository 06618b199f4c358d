// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_document.h"

#include "core/exchange/problem_json.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <utility>
#include <vector>

namespace tarebowl::exchange {

namespace {

using nlohmann::json;

/// "line 3, column 14" of the byte at this offset; columns count characters, not bytes.
std::string placeOf(std::string_view text, std::size_t offset) {
  const std::string_view before = text.substr(0, std::min(offset, text.size()));
  const auto lines = std::count(before.begin(), before.end(), '\n');
  const std::size_t lineStart = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
  const std::string_view line = before.substr(lineStart);
  const auto characters = std::count_if(
      line.begin(), line.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; });
  return fmt::format("line {}, column {}", lines + 1, characters + 1);
}

/// The telling part of the parser's message: "unexpected end of input; expected '}'", without the text it
/// last read, which may be long or not even text.
std::string reasonOf(std::string message) {
  if (const auto start = message.find(" - "); start != std::string::npos) message.erase(0, start + 3);
  const auto quoted = message.find("; last read: ");
  if (quoted == std::string::npos) return message;
  const auto hint = message.rfind("'; expected ");
  message.erase(quoted, hint == std::string::npos || hint < quoted ? std::string::npos : hint + 1 - quoted);
  return message;
}

/// Builds the document and knows at each moment where it stands, so that every complaint can name the key.
class DocumentBuilder final : public nlohmann::json_sax<json> {
 public:
  DocumentBuilder(std::string_view text, const std::string& fileName) : text_(text), fileName_(fileName) {}

  json take() { return std::move(root_); }

  bool null() override { return add(nullptr); }
  bool boolean(bool value) override { return add(value); }
  bool number_integer(number_integer_t value) override { return add(value); }
  bool number_unsigned(number_unsigned_t value) override { return add(value); }
  bool number_float(number_float_t value, const string_t&) override { return add(value); }
  bool string(string_t& value) override { return add(std::move(value)); }
  bool binary(binary_t&) override { return false; }
  bool start_object(std::size_t) override { return open(json::object()); }
  bool start_array(std::size_t) override { return open(json::array()); }
  bool end_object() override { return close(); }
  bool end_array() override { return close(); }

  bool key(string_t& name) override {
    Level& level = levels_.back();
    level.key = name;
    level.inMember = true;
    if (level.container->contains(name))
      refuse(currentPath(), "this key once, found it twice in the same object");
    return true;
  }

  bool parse_error(std::size_t position, const std::string& token, const json::exception& error) override {
    constexpr int kNumberOverflow = 406;
    const std::string place = placeOf(text_, position == 0 ? 0 : position - 1);
    if (error.id == kNumberOverflow) {
      refuse(currentPath(), fmt::format("a finite number, found {} at {}", token.substr(0, 40), place));
    }
    const std::string reason = reasonOf(error.what());
    const char culprit = position == 0 ? '\0' : text_[std::min(position, text_.size()) - 1];
    const bool isValue = reason.starts_with("invalid literal") || reason.starts_with("invalid number");
    if (isValue && (culprit == 'N' || culprit == 'I')) {
      refuse(currentPath(), fmt::format("a finite number, found NaN or Infinity at {}", place));
    }
    if (isValue && culprit == '/') {
      refuse(currentPath(), fmt::format("plain JSON, which has no comments, found one at {}", place));
    }
    refuse(currentPath(), fmt::format("valid JSON, found an error at {}: {}", place, reason));
  }

 private:
  struct Level {
    json* container = nullptr;
    std::string key;
    bool inMember = false;
  };

  bool add(json value) {
    place(std::move(value));
    return true;
  }

  json* place(json value) {
    if (levels_.empty()) {
      root_ = std::move(value);
      return &root_;
    }
    Level& level = levels_.back();
    if (level.container->is_array()) {
      level.container->push_back(std::move(value));
      return &level.container->back();
    }
    level.inMember = false;
    json& member = (*level.container)[level.key];
    member = std::move(value);
    return &member;
  }

  bool open(json container) {
    if (levels_.size() == kDeepestNesting) {
      refuse(currentPath(), fmt::format("at most {} lists and objects inside each other", kDeepestNesting));
    }
    levels_.push_back({place(std::move(container)), {}, false});
    return true;
  }

  bool close() {
    levels_.pop_back();
    return true;
  }

  /// The value that comes next: the member whose key was just read, or the next element of a list.
  [[nodiscard]] std::string currentPath() const {
    std::string path;
    for (std::size_t i = 0; i < levels_.size(); ++i) {
      const Level& level = levels_[i];
      const bool innermost = i + 1 == levels_.size();
      if (level.container->is_array()) {
        path = elementPath(path, level.container->size() - (innermost ? 0 : 1));
      } else if (!innermost || level.inMember) {
        path = memberPath(path, level.key);
      }
    }
    return path;
  }

  [[noreturn]] void refuse(std::string path, std::string expected) const {
    throw FormatError(fileName_, std::move(path), std::move(expected));
  }

  std::string_view text_;
  const std::string& fileName_;
  json root_;
  std::vector<Level> levels_;
};

bool isPlainWord(std::string_view key) {
  return !key.empty() && std::all_of(key.begin(), key.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-';
  });
}

}  // namespace

nlohmann::json parseDocument(std::string_view text, const std::string& fileName) {
  if (text.size() > kLargestFile) {
    throw FormatError(fileName, "", fmt::format("at most 64 MB, found {} MB", text.size() >> 20U));
  }
  if (const auto nul = text.find('\0'); nul != std::string_view::npos) {
    // The parser takes it for the end of the file and would ignore what follows.
    throw FormatError(fileName, "", "text, found a zero byte at " + placeOf(text, nul));
  }
  const auto content = text.find_first_not_of(" \t\r\n");
  if (content == std::string_view::npos || text.substr(content) == "\xEF\xBB\xBF") {
    throw FormatError(fileName, "", "a problem in JSON, found an empty file");
  }
  DocumentBuilder builder(text, fileName);
  json::sax_parse(text.begin(), text.end(), &builder);
  return builder.take();
}

std::string memberPath(const std::string& path, std::string_view key) {
  constexpr std::size_t kLongestShown = 60;
  if (isPlainWord(key) && key.size() <= kLongestShown) {
    return path.empty() ? std::string(key) : fmt::format("{}.{}", path, key);
  }
  // ASCII only: whatever the key holds, the path stays readable on one line and can be cut anywhere.
  std::string shown = json(std::string(key)).dump(-1, ' ', true);
  if (shown.size() > kLongestShown) shown = shown.substr(0, kLongestShown) + "...\"";
  return fmt::format("{}[{}]", path, shown);
}

std::string elementPath(const std::string& path, std::size_t index) {
  return fmt::format("{}[{}]", path, index);
}

}  // namespace tarebowl::exchange
