// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/nutrient.h"

#include "resources/embedded.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <map>
#include <numeric>
#include <stdexcept>
#include <utility>

namespace tarebowl::food {

namespace {

constexpr std::array<std::pair<std::string_view, NutrientGroup>, 10> kGroups{{
    {"proximate", NutrientGroup::Proximate},
    {"fibre", NutrientGroup::Fibre},
    {"carbohydrate", NutrientGroup::Carbohydrate},
    {"energy", NutrientGroup::Energy},
    {"mineral", NutrientGroup::Mineral},
    {"trace element", NutrientGroup::TraceElement},
    {"vitamin", NutrientGroup::Vitamin},
    {"amino acid", NutrientGroup::AminoAcid},
    {"fatty acid", NutrientGroup::FattyAcid},
    {"anti-nutrient", NutrientGroup::AntiNutrient},
}};

NutrientGroup parseGroup(const std::string& text) {
  const auto* place = std::ranges::find(kGroups, text, &std::pair<std::string_view, NutrientGroup>::first);
  if (place == kGroups.end()) throw std::logic_error("nutrient list: unknown group " + text);
  return place->second;
}

Nutrient parseNutrient(const nlohmann::json& entry) {
  const auto symbol = entry.at("unit").get<std::string>();
  const auto unit = quantity::parseUnit(symbol);
  if (!unit) throw std::logic_error("nutrient list: unknown unit " + symbol);
  return {.tagname = entry.at("tagname").get<std::string>(),
          .name = entry.at("name").get<std::string>(),
          .unit = *unit,
          .group = parseGroup(entry.at("group").get<std::string>()),
          .decimals = entry.at("decimals").get<int>(),
          .synonyms = entry.at("synonyms").get<std::vector<std::string>>(),
          .otherTagnames = entry.value("other_tagnames", std::vector<std::string>{})};
}

char upperAscii(char c) {
  return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

std::string upperAscii(std::string_view text) {
  std::string result(text);
  std::ranges::transform(result, result.begin(), [](char c) { return upperAscii(c); });
  return result;
}

/// "Vitamin B-12" and "vitamin b12" are one label. Bytes of letters outside ASCII are kept.
std::string essenceOf(std::string_view label) {
  std::string result;
  for (const char c : label) {
    const char upper = upperAscii(c);
    const bool letterOrDigit = (upper >= 'A' && upper <= 'Z') || (upper >= '0' && upper <= '9');
    if (letterOrDigit || static_cast<unsigned char>(c) > 127) result.push_back(upper);
  }
  return result;
}

/// The list with its two ways to look something up.
struct Catalogue {
  std::vector<Nutrient> nutrients;
  std::map<std::string, NutrientId, std::less<>> byTagname;
  std::map<std::string, NutrientId, std::less<>> byEssence;

  Catalogue() {
    const auto document = nlohmann::json::parse(resources::nutrientsJson());
    for (const auto& entry : document.at("nutrients")) add(parseNutrient(entry));
  }

 private:
  void add(Nutrient nutrient) {
    const NutrientId id(nutrients.size());
    enter(byTagname, nutrient.tagname, id);
    enter(byEssence, essenceOf(nutrient.tagname), id);
    enter(byEssence, essenceOf(nutrient.name), id);
    for (const auto& tagname : nutrient.otherTagnames) {
      enter(byTagname, tagname, id);
      enter(byEssence, essenceOf(tagname), id);
    }
    for (const auto& synonym : nutrient.synonyms) enter(byEssence, essenceOf(synonym), id);
    nutrients.push_back(std::move(nutrient));
  }

  // Two nutrients under one label would make reading a table a matter of luck.
  static void enter(std::map<std::string, NutrientId, std::less<>>& index, const std::string& label,
                    NutrientId id) {
    if (const auto [place, isNew] = index.emplace(label, id); !isNew && place->second != id)
      throw std::logic_error("nutrient list: two nutrients are called " + label);
  }
};

const Catalogue& catalogue() {
  static const Catalogue instance;
  return instance;
}

std::optional<NutrientId> lookUp(const std::map<std::string, NutrientId, std::less<>>& index,
                                 std::string_view key) {
  const auto place = index.find(key);
  return place == index.end() ? std::nullopt : std::optional(place->second);
}

/// Levenshtein distance: letters inserted, removed or replaced.
std::size_t editDistance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 0; i < a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i + 1;
    for (std::size_t j = 0; j < b.size(); ++j) {
      const std::size_t replaced = diagonal + (a[i] == b[j] ? 0 : 1);
      diagonal = row[j + 1];
      row[j + 1] = std::min({replaced, row[j] + 1, row[j + 1] + 1});
    }
  }
  return row.back();
}

NutrientId required(std::string_view tagname) {
  if (const auto id = findByTagname(tagname)) return *id;
  throw std::logic_error("nutrient list: formulas need " + std::string(tagname));
}

}  // namespace

std::string_view symbolOf(NutrientGroup group) {
  return std::ranges::find(kGroups, group, &std::pair<std::string_view, NutrientGroup>::second)->first;
}

std::span<const Nutrient> allNutrients() {
  return catalogue().nutrients;
}

const Nutrient& describe(NutrientId id) {
  return catalogue().nutrients.at(id.index());
}

std::optional<NutrientId> findByTagname(std::string_view tagname) {
  return lookUp(catalogue().byTagname, tagname);
}

std::optional<NutrientId> findBySynonym(std::string_view label) {
  if (const auto id = findByTagname(label)) return id;
  return lookUp(catalogue().byEssence, essenceOf(label));
}

std::string_view nearestTagname(std::string_view text) {
  if (const auto id = findBySynonym(text)) return describe(*id).tagname;
  // What is longer than any label is no slip of the pen; its first letters decide.
  constexpr std::size_t kLongestCompared = 64;
  const std::string wanted = upperAscii(text.substr(0, kLongestCompared));
  const auto nutrients = allNutrients();
  return std::ranges::min_element(nutrients, {},
                                  [&](const Nutrient& n) { return editDistance(wanted, n.tagname); })
      ->tagname;
}

namespace nutrients {

NutrientId water() {
  static const NutrientId kId = required("WATER");
  return kId;
}

NutrientId protein() {
  static const NutrientId kId = required("PROCNT");
  return kId;
}

NutrientId fat() {
  static const NutrientId kId = required("FAT");
  return kId;
}

NutrientId ash() {
  static const NutrientId kId = required("ASH");
  return kId;
}

NutrientId crudeFibre() {
  static const NutrientId kId = required("FIBC");
  return kId;
}

NutrientId totalDietaryFibre() {
  static const NutrientId kId = required("FIBTG");
  return kId;
}

NutrientId carbohydrateByDifference() {
  static const NutrientId kId = required("CHOCDF");
  return kId;
}

NutrientId alcohol() {
  static const NutrientId kId = required("ALC");
  return kId;
}

NutrientId starch() {
  static const NutrientId kId = required("STARCH");
  return kId;
}

NutrientId sugar() {
  static const NutrientId kId = required("SUGAR");
  return kId;
}

NutrientId energy() {
  static const NutrientId kId = required("ENERC");
  return kId;
}

NutrientId calcium() {
  static const NutrientId kId = required("CA");
  return kId;
}

NutrientId phosphorus() {
  static const NutrientId kId = required("P");
  return kId;
}

}  // namespace nutrients

}  // namespace tarebowl::food
