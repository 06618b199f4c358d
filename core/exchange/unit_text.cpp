// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/unit_text.h"

#include "core/exchange/plain_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cstddef>
#include <vector>

namespace tarebowl::exchange {

namespace {

using quantity::Basis;
using quantity::Unit;

struct UnitWord {
  std::string_view word;
  Unit unit;
  double factor;
};
constexpr std::array<UnitWord, 22> kUnitNames{{{"g", Unit::Gram, 1.0},
                                               {"gm", Unit::Gram, 1.0},
                                               {"gram", Unit::Gram, 1.0},
                                               {"grams", Unit::Gram, 1.0},
                                               {"kg", Unit::Gram, 1000.0},
                                               {"mg", Unit::Milligram, 1.0},
                                               {"milligram", Unit::Milligram, 1.0},
                                               {"milligrams", Unit::Milligram, 1.0},
                                               {"ug", Unit::Microgram, 1.0},
                                               {"\u00b5g", Unit::Microgram, 1.0},
                                               {"mcg", Unit::Microgram, 1.0},
                                               {"microgram", Unit::Microgram, 1.0},
                                               {"micrograms", Unit::Microgram, 1.0},
                                               {"ng", Unit::Microgram, 0.001},
                                               {"kcal", Unit::Kilocalorie, 1.0},
                                               {"kilocalories", Unit::Kilocalorie, 1.0},
                                               {"mcal", Unit::Kilocalorie, 1000.0},
                                               {"kj", Unit::Kilojoule, 1.0},
                                               {"kilojoules", Unit::Kilojoule, 1.0},
                                               {"mj", Unit::Kilojoule, 1000.0},
                                               {"iu", Unit::InternationalUnit, 1.0},
                                               {"i.u.", Unit::InternationalUnit, 1.0}}};

/// Shares of a whole: the unit and what it is per.
struct ShareWord {
  std::string_view word;
  Unit unit;
  double per;
};
constexpr std::array<ShareWord, 4> kShares{{{"%", Unit::Gram, 100.0},
                                            {"percent", Unit::Gram, 100.0},
                                            {"ppm", Unit::Milligram, 1000.0},
                                            {"ppb", Unit::Microgram, 1000.0}}};

struct BasisWord {
  std::string_view word;
  Basis basis;
};
constexpr std::array<BasisWord, 15> kBases{{{"dm", Basis::DryMatter},
                                            {"d.m.", Basis::DryMatter},
                                            {"dry matter", Basis::DryMatter},
                                            {"dry-matter", Basis::DryMatter},
                                            {"dry weight", Basis::DryMatter},
                                            {"dw", Basis::DryMatter},
                                            {"as fed", Basis::AsFed},
                                            {"as-fed", Basis::AsFed},
                                            {"fresh weight", Basis::AsFed},
                                            {"fresh matter", Basis::AsFed},
                                            {"fw", Basis::AsFed},
                                            {"fm", Basis::AsFed},
                                            {"wet weight", Basis::AsFed},
                                            {"edible portion", Basis::AsFed},
                                            {"ep", Basis::AsFed}}};

/// The text of a unit, eaten from the front word by word.
class UnitScanner {
 public:
  explicit UnitScanner(std::string_view text) : text_(text) {}

  [[nodiscard]] bool atEnd() const { return text_.empty(); }

  bool take(std::string_view word) {
    if (!text_.starts_with(word)) return false;
    const std::string_view rest = text_.substr(word.size());
    const auto isWordLetter = [](char c) {
      return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) > 127;
    };
    if (!rest.empty() && isWordLetter(word.back()) && isWordLetter(rest.front())) return false;
    text_ = trimmed(rest);
    return true;
  }

  std::optional<double> takeNumber() {
    double number = 0.0;
    const auto [end, error] = std::from_chars(text_.data(), text_.data() + text_.size(), number);
    if (error != std::errc() || !(number > 0.0)) return std::nullopt;
    text_ = trimmed(text_.substr(static_cast<std::size_t>(end - text_.data())));
    return number;
  }

  template <class Words>
  auto takeOneOf(const Words& words) -> decltype(&words[0]) {
    for (const auto& entry : words)
      if (take(entry.word)) return &entry;
    return nullptr;
  }

 private:
  std::string_view text_;
};

/// "/100 g", "per kg", "per 1000 kcal", "/mj".
bool takePer(UnitScanner& scanner, UnitText& result) {
  const double count = scanner.takeNumber().value_or(1.0);
  const UnitWord* const whole = scanner.takeOneOf(kUnitNames);
  if (whole == nullptr || whole->unit == Unit::InternationalUnit) return false;
  const auto inGrams = quantity::conversionFactor(whole->unit, Unit::Gram);
  const auto inKilocalories = quantity::conversionFactor(whole->unit, Unit::Kilocalorie);
  result.per = count * whole->factor * inGrams.value_or(inKilocalories.value_or(1.0));
  if (!inGrams) result.basis = Basis::Energy;
  return true;
}

bool takeBasis(UnitScanner& scanner, UnitText& result) {
  scanner.take("of") || scanner.take("in") || scanner.take("on") || scanner.take(",");
  scanner.take("a") || scanner.take("the");
  const BasisWord* const word = scanner.takeOneOf(kBases);
  if (word == nullptr || result.basis == Basis::Energy) return false;
  scanner.take("basis");
  result.basis = word->basis;
  return true;
}

std::optional<UnitText> parsePlain(std::string_view text) {
  UnitScanner scanner(text);
  UnitText result;
  if (const ShareWord* const share = scanner.takeOneOf(kShares)) {
    result.unit = share->unit;
    result.per = share->per;
  } else if (const UnitWord* const unit = scanner.takeOneOf(kUnitNames)) {
    result.unit = unit->unit;
    result.factor = unit->factor;
    if ((scanner.take("/") || scanner.take("per")) && !takePer(scanner, result)) return std::nullopt;
  } else {
    return std::nullopt;
  }
  if (!scanner.atEnd() && !takeBasis(scanner, result)) return std::nullopt;
  return scanner.atEnd() ? std::optional(result) : std::nullopt;
}

bool isSpaceOrUnderscore(char c) {
  return c == ' ' || c == '_';
}

/// "calcium (mg)" and "calcium [mg]": the text in the last brackets.
std::optional<TitleParts> partsByBrackets(std::string_view title) {
  if (!title.ends_with(')') && !title.ends_with(']')) return std::nullopt;
  const char opening = title.back() == ')' ? '(' : '[';
  const auto open = title.rfind(opening);
  if (open == std::string_view::npos) return std::nullopt;
  const auto unit = parseUnitText(title.substr(open + 1, title.size() - open - 2));
  if (!unit) return std::nullopt;
  return TitleParts{std::string(trimmed(title.substr(0, open))), unit};
}

std::string withoutTail(std::string_view label) {
  while (!label.empty() && (isSpaceOrUnderscore(label.back()) || label.back() == ',' || label.back() == ':' ||
                            label.back() == '-'))
    label.remove_suffix(1);
  return std::string(label);
}

}  // namespace

std::optional<UnitText> parseUnitText(std::string_view text) {
  const std::string folded = foldedText(text);
  const std::string_view plain = trimmed(folded);
  constexpr std::size_t kLongest = 60;
  if (plain.size() > kLongest) return std::nullopt;
  if (const auto unit = parsePlain(plain)) return unit;
  // "g kg-1" and "mg_kg" say per.
  std::string slashed(plain);
  if (const auto power = slashed.find("-1"); power != std::string::npos && power + 2 == slashed.size())
    slashed.resize(power);
  const auto gap = slashed.find_first_of(" _");
  if (gap == std::string::npos) return std::nullopt;
  slashed[gap] = '/';
  std::ranges::replace(slashed, '_', ' ');
  return parsePlain(slashed);
}

std::string unitText(const UnitText& unit) {
  const auto* const known = std::ranges::find_if(
      kUnitNames, [&](const UnitWord& word) { return word.unit == unit.unit && word.factor == unit.factor; });
  std::string text(known == kUnitNames.end() || unit.factor == 1.0 ? symbolOf(unit.unit) : known->word);
  if (unit.per && unit.basis == Basis::Energy) return fmt::format("{}/{:g} kcal", text, *unit.per);
  if (unit.per) text += fmt::format("/{:g} g", *unit.per);
  if (unit.basis == Basis::DryMatter) text += " dry matter";
  if (unit.basis == Basis::AsFed) text += " as fed";
  return text;
}

TitleParts partsOfTitle(std::string_view title) {
  title = trimmed(title);
  constexpr std::size_t kLongest = 300;
  if (title.size() > kLongest) return {std::string(title), std::nullopt};
  if (auto parts = partsByBrackets(title)) return *parts;
  // The longest ending that is a unit: "CA mg/100g", "Protein, % DM", "Ca_mg_kg".
  for (std::size_t at = 1; at < title.size(); ++at) {
    if (!isSpaceOrUnderscore(title[at]) && title[at] != ',') continue;
    const auto unit = parseUnitText(title.substr(at + 1));
    const std::string label = withoutTail(title.substr(0, at));
    if (unit && !label.empty()) return {label, unit};
  }
  return {std::string(title), std::nullopt};
}

}  // namespace tarebowl::exchange
