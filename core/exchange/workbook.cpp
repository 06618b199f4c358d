// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_json.h"
#include "core/exchange/sheet_xml.h"
#include "core/exchange/zip_member.h"

#include <algorithm>
#include <charconv>
#include <map>
#include <set>

namespace tarebowl::exchange {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kMostSharedText = std::size_t{256} << 20U;
constexpr std::size_t kMostSharedTexts = 4'000'000;  // empty ones too take their place in memory
constexpr std::size_t kMostStyles = 65'536;          // a spreadsheet program writes 65,490 at most

void readPart(const fs::path& file, const std::string& part, XmlEvents events) {
  ZipMember member(file, part);
  XmlReader reader(std::move(events), file.string(), part);
  while (true) {
    const std::string_view piece = member.read();
    reader.feed(piece, piece.empty());
    if (piece.empty()) return;
  }
}

/// Where the first sheet lies: the workbook names a relation, the relations name a file.
std::string firstSheet(const fs::path& file) {
  std::string relation;
  readPart(file, "xl/workbook.xml", {.start = [&](std::string_view name, const XmlAttributes& attributes) {
             if (name == "sheet" && relation.empty()) relation = attributes.find("id").value_or("");
           }});
  std::string target;
  readPart(file, "xl/_rels/workbook.xml.rels",
           {.start = [&](std::string_view name, const XmlAttributes& attributes) {
             if (name == "Relationship" && attributes.find("Id") == relation)
               target = attributes.find("Target").value_or("");
           }});
  if (relation.empty() || target.empty())
    throw FormatError(file.string(), "xl/workbook.xml", "a workbook with a sheet");
  return target.starts_with('/') ? target.substr(1) : "xl/" + target;
}

std::vector<std::string> sharedStrings(const fs::path& file) {
  std::vector<std::string> strings;
  if (!ZipMember::exists(file, "xl/sharedStrings.xml")) return strings;
  bool inText = false;
  bool inPhonetics = false;
  std::size_t total = 0;
  XmlEvents events;
  events.start = [&](std::string_view name, const XmlAttributes&) {
    if (name == "si") strings.emplace_back();
    if (strings.size() > kMostSharedTexts)
      throw FormatError(file.string(), "xl/sharedStrings.xml",
                        "at most " + std::to_string(kMostSharedTexts) + " texts");
    if (name == "rPh") inPhonetics = true;
    if (name == "t") inText = true;
  };
  events.end = [&](std::string_view name) {
    if (name == "rPh") inPhonetics = false;
    if (name == "t") inText = false;
  };
  events.text = [&](std::string_view text) {
    if (!inText || inPhonetics || strings.empty()) return;
    total += text.size();
    if (total > kMostSharedText)
      throw FormatError(file.string(), "xl/sharedStrings.xml", "at most 256 MB of text");
    strings.back().append(text);
  };
  readPart(file, "xl/sharedStrings.xml", std::move(events));
  return strings;
}

int idOf(std::optional<std::string_view> text) {
  int id = 0;
  if (text) std::from_chars(text->data(), text->data() + text->size(), id);
  return id;
}

/// A number format that shows days, months or years: their letters outside quotes and brackets.
bool showsDate(std::string_view format) {
  bool quoted = false;
  bool bracketed = false;
  for (const char c : format) {
    if (c == '"') quoted = !quoted;
    if (c == '[') bracketed = true;
    if (c == ']') bracketed = false;
    if (!quoted && !bracketed && std::string_view("dmyhDMYH").find(c) != std::string_view::npos) return true;
  }
  return false;
}

/// ECMA-376, 18.8.30: the numbers of the built-in formats that show dates and times.
bool isBuiltInDate(int format) {
  return (format >= 14 && format <= 22) || (format >= 27 && format <= 36) || (format >= 45 && format <= 47) ||
         (format >= 50 && format <= 58);
}

std::vector<bool> dateStyles(const fs::path& file) {
  std::vector<bool> isDate;
  if (!ZipMember::exists(file, "xl/styles.xml")) return isDate;
  std::set<int> own;
  bool inCellFormats = false;
  const auto tooMany = [&] {
    return FormatError(file.string(), "xl/styles.xml",
                       "at most " + std::to_string(kMostStyles) + " cell styles");
  };
  XmlEvents events;
  events.start = [&](std::string_view name, const XmlAttributes& attributes) {
    if (name == "cellXfs") inCellFormats = true;
    if (own.size() >= kMostStyles) throw tooMany();
    if (name == "numFmt" && showsDate(attributes.find("formatCode").value_or("")))
      own.insert(idOf(attributes.find("numFmtId")));
    if (name != "xf" || !inCellFormats) return;
    if (isDate.size() >= kMostStyles) throw tooMany();
    const int format = idOf(attributes.find("numFmtId"));
    isDate.push_back(isBuiltInDate(format) || own.contains(format));
  };
  events.end = [&](std::string_view name) {
    if (name == "cellXfs") inCellFormats = false;
  };
  readPart(file, "xl/styles.xml", std::move(events));
  return isDate;
}

}  // namespace

Workbook readWorkbook(const fs::path& file) {
  return {firstSheet(file), sharedStrings(file), dateStyles(file)};
}

}  // namespace tarebowl::exchange
