// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/column_mapping.h"
#include "core/exchange/mapping_words.h"
#include "core/exchange/numbers.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;

std::string markText(char mark) {
  if (mark == '\t') return "tab";
  return mark == '\0' ? "none" : std::string(1, mark);
}

void writeForm(const TextTableForm& form, Json& json) {
  if (form.encoding) json["encoding"] = symbolOf(*form.encoding);
  json["delimiter"] = markText(form.delimiter);
  json["quote"] = markText(form.quote);
}

Json columnJson(const ColumnUse& column) {
  Json json = Json::object();
  if (!column.title.empty()) json["column"] = column.title;
  if (column.number) json["number"] = *column.number;
  json["is"] = kRoleWords.at(static_cast<std::size_t>(column.role));
  if (column.nutrient) json["nutrient"] = food::describe(*column.nutrient).tagname;
  if (column.unit) json["unit"] = unitText(*column.unit);
  return json;
}

Json columnsJson(const std::vector<ColumnUse>& columns) {
  Json json = Json::array();
  for (const ColumnUse& column : columns) json.push_back(columnJson(column));
  return json;
}

Json codesJson(const std::map<std::string, CodedNutrient>& codes) {
  Json json = Json::object();
  for (const auto& [code, meaning] : codes) {
    Json& entry = json[code] = Json::object();
    if (!meaning.nutrient) {
      entry["left_out"] = meaning.reason;
      continue;
    }
    entry["nutrient"] = food::describe(*meaning.nutrient).tagname;
    if (meaning.unit) entry["unit"] = unitText(*meaning.unit);
  }
  return json;
}

Json foodListJson(const FoodList& list) {
  Json json = Json::object();
  json["file"] = list.file;
  writeForm(list.form, json);
  json["header_line"] = list.headerLine;
  json["columns"] = columnsJson(list.columns);
  return json;
}

}  // namespace

std::string writeMapping(const TableMapping& mapping) {
  Json json = Json::object();
  json["format"] = kMappingFormat;
  json["layout"] = kLayoutWords.at(mapping.isLong ? 1 : 0);
  writeForm(mapping.form, json);
  if (mapping.decimalMark) json["decimal"] = kDecimalWords.at(static_cast<std::size_t>(*mapping.decimalMark));
  json["header_line"] = mapping.headerLine;
  if (mapping.unitsLine) json["units_line"] = true;
  json["basis"] = quantity::symbolOf(mapping.basis);
  json["per"] = toJson(mapping.per);
  if (mapping.zeroIsUnknown) json["zero"] = kZeroWords.at(1);
  if (!mapping.source.empty()) json["source"] = mapping.source;
  json["columns"] = columnsJson(mapping.columns);
  if (!mapping.nutrients.empty()) json["nutrients"] = codesJson(mapping.nutrients);
  if (!mapping.groups.empty()) json["groups"] = mapping.groups;
  if (!mapping.sources.empty()) json["sources"] = mapping.sources;
  if (mapping.foods) json["foods_file"] = foodListJson(*mapping.foods);
  return toText(json);
}

}  // namespace tarebowl::exchange
