// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/larder_json.h"

#include "core/exchange/food_reader.h"
#include "core/exchange/json_document.h"
#include "core/exchange/json_reader.h"
#include "core/exchange/problem_words.h"
#include "core/exchange/text_file.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>
#include <set>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 5> kLarderKeys{"format", "title", "notes", "invented", "foods"};

std::vector<diet::DietFood> readFoods(const JsonReader& list) {
  const std::vector<JsonReader> entries = list.elements();
  if (entries.empty()) list.complain("at least one food, found none");
  if (entries.size() > kMostLarderFoods)
    list.complain(fmt::format("at most {} entries, found {}", kMostLarderFoods, entries.size()));
  std::vector<diet::DietFood> foods;
  foods.reserve(entries.size());
  std::set<std::string> ids;
  for (const JsonReader& entry : entries) {
    foods.push_back(readFood(entry, {}));
    if (!ids.insert(foods.back().id).second)
      entry.member("id").complain(fmt::format("each id once, found {} again", inQuotes(foods.back().id)));
  }
  return foods;
}

}  // namespace

Larder parseLarder(std::string_view text, const std::string& fileName) {
  const nlohmann::json document = parseDocument(text, fileName);
  const JsonReader root(document, fileName);
  root.refuseSlips(kLarderKeys);
  const JsonReader format = root.member("format");
  if (format.text() != kLarderFormat) format.refuse(inQuotes(kLarderFormat));
  Larder larder;
  if (const auto title = root.find("title")) larder.title = title->text();
  if (const auto notes = root.find("notes")) static_cast<void>(notes->text());
  if (const auto invented = root.find("invented")) larder.invented = invented->flag();
  larder.foods = readFoods(root.member("foods"));
  return larder;
}

Larder readLarder(const std::filesystem::path& file) {
  return parseLarder(readText(file), file.string());
}

}  // namespace tarebowl::exchange
