// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/long_meanings.h"

#include "core/exchange/plain_text.h"
#include "core/exchange/title_meaning.h"

namespace tarebowl::exchange {

namespace {

bool mayBeKept(const std::string& name, const std::optional<UnitText>& unit) {
  return unit && !name.empty() && name.size() <= kLongestName && name.front() != '=';
}

std::optional<quantity::Basis> basisIn(std::string_view text) {
  const std::string folded = foldedText(trimmed(text));
  const auto word = quantity::parseBasis(folded);
  if (word && *word <= quantity::Basis::Energy) return word;
  const auto unit = parseUnitText("g/g " + folded);
  return unit ? unit->basis : std::nullopt;
}

}  // namespace

LongMeanings::LongMeanings(const TableMapping& mapping, Places places) : mapping_(mapping), places_(places) {}

const LongMeanings::Meaning& LongMeanings::of(const TableRow& row) {
  key_.assign(row[places_.nutrient]);
  for (const auto place : {places_.unit, places_.basis})
    if (place) (key_ += '\x1f') += row[*place];
  auto known = meanings_.find(key_);
  if (known == meanings_.end()) {
    constexpr std::size_t kMostMeanings = 100'000;
    if (meanings_.size() > kMostMeanings) meanings_.clear();
    known = meanings_.emplace(key_, read(row)).first;
  }
  return known->second;
}

LongMeanings::Meaning LongMeanings::read(const TableRow& row) const {
  const std::string name = onOneLine(row[places_.nutrient]);
  const auto refuse = [](ImportIssue issue, std::size_t column, std::string_view found) {
    return Meaning{std::nullopt, issue, column, std::string(found)};
  };
  std::optional<UnitText> unit = places_.valueUnit;
  std::optional<food::NutrientId> nutrient;
  std::string otherName;
  if (const auto coded = mapping_.nutrients.find(name); coded != mapping_.nutrients.end()) {
    if (!coded->second.nutrient)
      return refuse(ImportIssue::LeftOut, places_.nutrient, name + ": " + coded->second.reason);
    nutrient = coded->second.nutrient;
    if (coded->second.unit) unit = coded->second.unit;
  } else if (const auto named = nutrientIn(name)) {
    nutrient = named->nutrient;
    if (named->unit) unit = named->unit;
  } else {
    const TitleParts parts = partsOfTitle(name);
    otherName = parts.unit ? parts.label : name;
    if (parts.unit) unit = parts.unit;
  }
  if (name.empty()) return refuse(ImportIssue::BadWord, places_.nutrient, name);
  if (places_.unit && !trimmed(row[*places_.unit]).empty()) {
    unit = parseUnitText(row[*places_.unit]);
    // What has no name here may well have no unit of ours: a pH, a count.
    if (!unit && nutrient) return refuse(ImportIssue::UnknownUnit, *places_.unit, row[*places_.unit]);
  }
  if (!nutrient && !mayBeKept(otherName, unit))
    return refuse(ImportIssue::UnknownNutrient, places_.nutrient, name);
  if (places_.basis && !trimmed(row[*places_.basis]).empty()) {
    const auto basis = basisIn(row[*places_.basis]);
    if (!basis) return refuse(ImportIssue::BadWord, *places_.basis, row[*places_.basis]);
    if (!unit) unit = UnitText{.unit = food::describe(*nutrient).unit};
    unit->basis = basis;
  }
  if (nutrient) return {readingOf(*nutrient, unit, mapping_), std::nullopt, 0, {}};
  return {readingOf(*unit, mapping_), ImportIssue::KeptByName, places_.nutrient, name, otherName};
}

}  // namespace tarebowl::exchange
