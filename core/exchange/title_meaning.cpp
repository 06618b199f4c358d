// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/title_meaning.h"

#include "core/exchange/mapping_words.h"
#include "core/exchange/plain_text.h"
#include "resources/embedded.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <stdexcept>

namespace tarebowl::exchange {

namespace {

/// Letters and digits alone, in lower case: "Std. Dev." and "std dev" are one word.
std::string essenceOf(std::string_view text) {
  std::string essence;
  for (const char c : foldedText(text)) {
    const bool counts =
        (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) > 127;
    if (counts) essence += c;
  }
  return essence;
}

/// resources/data/table_words.json: constant data, read once.
struct TableWords {
  std::map<std::string, ColumnRole, std::less<>> columns;
  std::map<std::string, ColumnRole, std::less<>> suffixes;

  TableWords() {
    const auto document = nlohmann::json::parse(resources::tableWordsJson());
    const auto enter = [](const nlohmann::json& lists, auto& index) {
      for (const auto& [role, words] : lists.items()) {
        const auto known = parseRole(role);
        if (!known) throw std::logic_error("table words: unknown role " + role);
        for (const auto& word : words) index.emplace(essenceOf(word.template get<std::string>()), *known);
      }
    };
    enter(document.at("columns"), columns);
    enter(document.at("suffixes"), suffixes);
  }
};

const TableWords& tableWords() {
  static const TableWords instance;
  return instance;
}

std::string upperCase(std::string_view text) {
  std::string upper(text);
  for (char& c : upper) c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
  return upper;
}

std::optional<NutrientMeaning> nutrientNamed(std::string_view label, std::optional<UnitText> unit) {
  label = trimmed(label);
  if (label.empty()) return std::nullopt;
  if (const auto id = food::findByTagname(upperCase(label))) return NutrientMeaning{*id, true, unit};
  if (const auto id = food::findBySynonym(label)) return NutrientMeaning{*id, false, unit};
  return std::nullopt;
}

/// "Calcium SD", "ca_e", "Calcium (SD)": the nutrient and what is said of it.
bool readSuffix(std::string_view title, TitleMeaning& meaning) {
  std::string_view text = trimmed(title);
  if (text.ends_with(')') || text.ends_with(']')) text.remove_suffix(1);
  const auto at = text.find_last_of(" _,([±");
  if (at == std::string_view::npos || at == 0) return false;
  // "Std dev" is two words.
  for (std::size_t cut = at; cut != std::string_view::npos && cut > 0;
       cut = text.find_last_of(" _,(", cut - 1)) {
    const auto place = tableWords().suffixes.find(essenceOf(text.substr(cut)));
    if (place == tableWords().suffixes.end()) continue;
    const auto nutrient = nutrientIn(text.substr(0, cut));
    if (!nutrient) continue;
    meaning.nutrient = nutrient->nutrient;
    meaning.byTagname = nutrient->byTagname;
    meaning.unit = nutrient->unit;
    meaning.ofNutrient = place->second;
    return true;
  }
  return false;
}

}  // namespace

std::optional<NutrientMeaning> nutrientIn(std::string_view text) {
  constexpr std::size_t kLongest = 300;
  if (text.size() > kLongest) return std::nullopt;
  if (auto whole = nutrientNamed(text, std::nullopt)) {
    // "ENERC_KCAL" is a synonym and names its unit too.
    const TitleParts parts = partsOfTitle(text);
    if (parts.unit && nutrientNamed(parts.label, std::nullopt)) whole->unit = parts.unit;
    return whole;
  }
  const TitleParts parts = partsOfTitle(text);
  if (auto named = nutrientNamed(parts.label, parts.unit)) return named;
  // "Calcium (Ca); ca": several names of one thing.
  const auto mark = text.find_first_of(";|\n");
  if (mark == std::string_view::npos) return std::nullopt;
  const auto last = nutrientIn(text.substr(mark + 1));
  return last ? last : nutrientIn(text.substr(0, mark));
}

TitleMeaning meaningOf(std::string_view title) {
  TitleMeaning meaning;
  constexpr std::size_t kLongest = 300;
  if (title.size() > kLongest) return meaning;
  for (std::string_view part = title;;) {
    const auto mark = part.find_first_of(";|\n");
    const auto place = tableWords().columns.find(essenceOf(part.substr(0, mark)));
    if (place != tableWords().columns.end()) meaning.word = place->second;
    if (mark == std::string_view::npos || meaning.word) break;
    part.remove_prefix(mark + 1);
  }
  // A name that ends like a suffix ("Vitamin E") is a name.
  const bool isName = nutrientNamed(title, std::nullopt).has_value();
  if (!isName && !meaning.word && readSuffix(title, meaning)) return meaning;
  if (const auto nutrient = nutrientIn(title)) {
    meaning.nutrient = nutrient->nutrient;
    meaning.byTagname = nutrient->byTagname;
    meaning.unit = nutrient->unit;
    return meaning;
  }
  if (meaning.word) return meaning;
  // "Value (mg/kg)": a word of tables with a unit.
  const TitleParts parts = partsOfTitle(title);
  const auto place = tableWords().columns.find(essenceOf(parts.label));
  if (parts.unit && place != tableWords().columns.end()) {
    meaning.word = place->second;
    meaning.unit = parts.unit;
  }
  return meaning;
}

}  // namespace tarebowl::exchange
