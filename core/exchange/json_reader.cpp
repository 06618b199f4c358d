// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_reader.h"

#include "core/exchange/json_document.h"
#include "core/exchange/problem_json.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cmath>

namespace tarebowl::exchange {

namespace {

using nlohmann::json;

/// What stands in the file, short enough for one line.
std::string describe(const json& value) {
  if (value.is_object()) return "an object";
  if (value.is_array()) return "a list";
  if (value.is_number_float()) return fmt::format("{}", value.get<double>());
  if (value.is_string()) return inQuotes(value.get_ref<const std::string&>());
  return value.dump();
}

bool isWithin(double number, const NumberRange& range) {
  const bool enough = range.leastIncluded ? number >= range.least : number > range.least;
  const bool notTooMuch = range.mostIncluded ? number <= range.most : number < range.most;
  return std::isfinite(number) && enough && notTooMuch;
}

}  // namespace

JsonReader::JsonReader(const json& value, const std::string& fileName, std::string path)
    : value_(&value), fileName_(&fileName), path_(std::move(path)) {}

JsonReader JsonReader::member(std::string_view key) const {
  auto found = find(key);
  if (!found) refuseMissing(key, "this key");
  return *std::move(found);
}

std::optional<JsonReader> JsonReader::find(std::string_view key) const {
  requireObject();
  const auto found = value_->find(key);
  if (found == value_->end()) return std::nullopt;
  return JsonReader(*found, *fileName_, memberPath(path_, key));
}

std::vector<std::pair<std::string, JsonReader>> JsonReader::members() const {
  requireObject();
  std::vector<std::pair<std::string, JsonReader>> members;
  members.reserve(value_->size());
  for (const auto& [key, value] : value_->items()) {
    members.emplace_back(key, JsonReader(value, *fileName_, memberPath(path_, key)));
  }
  return members;
}

std::vector<JsonReader> JsonReader::elements() const {
  if (!value_->is_array()) refuse("a list");
  std::vector<JsonReader> elements;
  elements.reserve(value_->size());
  for (const json& value : *value_)
    elements.emplace_back(value, *fileName_, elementPath(path_, elements.size()));
  return elements;
}

void JsonReader::refuseSlips(std::span<const std::string_view> knownKeys) const {
  requireObject();
  for (const auto& item : value_->items()) {
    const auto meant = likelyMeant(item.key(), knownKeys);
    if (!meant) continue;
    throw FormatError(*fileName_, memberPath(path_, item.key()),
                      fmt::format("a known key; did you mean {}?", *meant));
  }
}

bool JsonReader::isText() const {
  return value_->is_string();
}

bool JsonReader::isNull() const {
  return value_->is_null();
}

std::string JsonReader::text() const {
  if (!value_->is_string()) refuse("a text in quotes");
  return value_->get<std::string>();
}

std::string JsonReader::nonEmptyText() const {
  std::string value = text();
  if (value.empty()) refuse("a text that is not empty");
  return value;
}

std::vector<std::string> JsonReader::texts() const {
  std::vector<std::string> list;
  for (const JsonReader& element : elements()) list.push_back(element.nonEmptyText());
  return list;
}

std::string JsonReader::asJson() const {
  requireObject();
  return value_->dump();
}

bool JsonReader::flag() const {
  if (!value_->is_boolean()) refuse("true or false");
  return value_->get<bool>();
}

double JsonReader::number(const NumberRange& range) const {
  if (!value_->is_number()) refuse(range.inWords);
  const double number = value_->get<double>();
  if (number > range.most && !range.tooMuchInWords.empty()) refuse(range.tooMuchInWords);
  if (!isWithin(number, range)) refuse(range.inWords);
  return number + 0.0;  // -0.0 becomes 0
}

int JsonReader::wholeNumber(int least, int most) const {
  const auto expected = fmt::format("a whole number from {} to {}", least, most);
  if (!value_->is_number()) refuse(expected);
  const double number = value_->get<double>();
  const bool fits = number >= least && number <= most && number == std::floor(number);
  if (!fits) refuse(expected);
  return static_cast<int>(number);
}

void JsonReader::refuse(const std::string& expected) const {
  throw FormatError(*fileName_, path_, fmt::format("{}, found {}", expected, describe(*value_)));
}

void JsonReader::complain(const std::string& expected) const {
  throw FormatError(*fileName_, path_, expected);
}

void JsonReader::refuseMissing(std::string_view key, const std::string& expected) const {
  throw FormatError(*fileName_, memberPath(path_, key), fmt::format("{}, found nothing", expected));
}

void JsonReader::requireObject() const {
  if (!value_->is_object()) refuse("an object in braces");
}

std::string inQuotes(std::string_view text) {
  constexpr std::size_t kLongestShown = 48;
  std::string shown = json(std::string(text)).dump();
  if (shown.size() <= kLongestShown) return shown;
  std::size_t end = kLongestShown;
  while (end > 0 && (static_cast<unsigned char>(shown[end]) & 0xC0U) == 0x80U) --end;
  return shown.substr(0, end) + "…\"";
}

}  // namespace tarebowl::exchange
