// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/column_mapping.h"
#include "core/exchange/json_document.h"
#include "core/exchange/json_reader.h"
#include "core/exchange/mapping_words.h"
#include "core/exchange/problem_json.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

namespace {

using quantity::Basis;

constexpr std::array<std::string_view, 17> kMappingKeys{
    "format", "layout", "encoding", "delimiter", "quote",     "decimal", "header_line", "units_line", "basis",
    "per",    "zero",   "source",   "columns",   "nutrients", "groups",  "sources",     "foods_file"};
constexpr std::array<std::string_view, 5> kColumnKeys{"column", "number", "is", "nutrient", "unit"};
constexpr std::array<std::string_view, 3> kCodeKeys{"nutrient", "unit", "left_out"};
constexpr std::array<std::string_view, 6> kFoodListKeys{"file",  "encoding",    "delimiter",
                                                        "quote", "header_line", "columns"};
constexpr int kLastLine = 1'000'000;
constexpr double kMostPer = 1e6;

food::NutrientId readNutrient(const JsonReader& reader) {
  const std::string tagname = reader.nonEmptyText();
  if (const auto id = food::findByTagname(tagname)) return *id;
  reader.refuse("an INFOODS tagname such as " + std::string(food::nearestTagname(tagname)));
}

UnitText readUnit(const JsonReader& reader) {
  const auto unit = parseUnitText(reader.nonEmptyText());
  if (!unit) reader.refuse("a unit such as \"mg\", \"g/kg\" or \"% dry matter\"");
  return *unit;
}

/// One ASCII character that is no letter, digit or line break; "tab" for that.
char readMark(const JsonReader& reader, bool mayBeNone) {
  const std::string text = reader.text();
  if (text == "tab") return '\t';
  if (mayBeNone && text == "none") return '\0';
  const bool fits = text.size() == 1 && text[0] > ' ' && text[0] < 0x7F &&
                    std::isalnum(static_cast<unsigned char>(text[0])) == 0;
  if (!fits && text != "\t" && text != " ")
    reader.refuse(mayBeNone ? "one mark such as \"'\", or none" : "one mark such as \";\", or tab");
  return text[0];
}

TextTableForm readForm(const JsonReader& reader) {
  TextTableForm form;
  if (const auto encoding = reader.find("encoding"))
    form.encoding = encoding->word(parseEncoding, kEncodingWords);
  if (const auto delimiter = reader.find("delimiter")) form.delimiter = readMark(*delimiter, false);
  if (const auto quote = reader.find("quote")) {
    form.quote = readMark(*quote, true);
    if (form.quote == form.delimiter) quote->refuse("another mark than the delimiter");
  }
  return form;
}

ColumnUse readColumn(const JsonReader& reader) {
  reader.refuseSlips(kColumnKeys);
  ColumnUse column;
  if (const auto title = reader.find("column")) column.title = title->text();
  if (const auto number = reader.find("number"))
    column.number = static_cast<std::size_t>(number->wholeNumber(1, static_cast<int>(kMostColumns)));
  if (column.title.empty() && !column.number) reader.complain("column (its title) or number, found neither");
  column.role = reader.member("is").word(parseRole, kRoleWords);
  if (const auto nutrient = reader.find("nutrient")) column.nutrient = readNutrient(*nutrient);
  if (const auto unit = reader.find("unit")) column.unit = readUnit(*unit);
  return column;
}

std::vector<ColumnUse> readColumns(const JsonReader& reader) {
  std::vector<ColumnUse> columns;
  for (const JsonReader& element : reader.member("columns").elements())
    columns.push_back(readColumn(element));
  return columns;
}

CodedNutrient readCode(const JsonReader& reader) {
  reader.refuseSlips(kCodeKeys);
  CodedNutrient code;
  if (const auto reason = reader.find("left_out")) {
    code.reason = reason->nonEmptyText();
    return code;
  }
  code.nutrient = readNutrient(reader.member("nutrient"));
  if (const auto unit = reader.find("unit")) code.unit = readUnit(*unit);
  return code;
}

FoodList readFoodList(const JsonReader& reader) {
  reader.refuseSlips(kFoodListKeys);
  FoodList list{
      .file = reader.member("file").nonEmptyText(), .form = readForm(reader), .columns = readColumns(reader)};
  if (const auto line = reader.find("header_line"))
    list.headerLine = static_cast<std::size_t>(line->wholeNumber(0, kLastLine));
  return list;
}

void readDefaults(const JsonReader& reader, TableMapping& mapping) {
  if (const auto decimal = reader.find("decimal"))
    mapping.decimalMark = decimal->word(parseDecimalMark, kDecimalWords);
  if (const auto line = reader.find("header_line"))
    mapping.headerLine = static_cast<std::size_t>(line->wholeNumber(0, kLastLine));
  if (const auto units = reader.find("units_line")) mapping.unitsLine = units->flag();
  if (const auto basis = reader.find("basis")) mapping.basis = basis->word(parseFoodBasis, kFoodBasisWords);
  if (const auto per = reader.find("per"))
    mapping.per = per->number({.most = kMostPer, .leastIncluded = false, .inWords = "a number above 0"});
  if (const auto zero = reader.find("zero"))
    mapping.zeroIsUnknown = zero->word(parseZero, kZeroWords) == ZeroMeans::Unknown;
  if (const auto source = reader.find("source")) mapping.source = source->text();
}

}  // namespace

TableMapping parseMapping(std::string_view text, const std::string& fileName) {
  const nlohmann::json document = parseDocument(text, fileName);
  const JsonReader reader(document, fileName);
  const JsonReader format = reader.member("format");
  if (format.text() != kMappingFormat) format.refuse("\"" + std::string(kMappingFormat) + "\"");
  reader.refuseSlips(kMappingKeys);
  TableMapping mapping;
  mapping.form = readForm(reader);
  mapping.isLong = reader.member("layout").word(parseLayout, kLayoutWords) == Layout::Long;
  readDefaults(reader, mapping);
  mapping.columns = readColumns(reader);
  if (const auto nutrients = reader.find("nutrients"))
    for (const auto& [code, entry] : nutrients->members()) mapping.nutrients.emplace(code, readCode(entry));
  if (const auto groups = reader.find("groups"))
    for (const auto& [code, entry] : groups->members()) mapping.groups.emplace(code, entry.nonEmptyText());
  if (const auto sources = reader.find("sources"))
    for (const auto& [code, entry] : sources->members()) mapping.sources.emplace(code, entry.nonEmptyText());
  if (const auto foods = reader.find("foods_file")) mapping.foods = readFoodList(*foods);
  return mapping;
}

}  // namespace tarebowl::exchange
