// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/exchange/foreign_page.h"

#include "tests/source_dir.h"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <regex>

namespace tarebowl::exchange {
namespace {

bool isLetter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

std::string madeForeign(std::string text) {
  std::ranges::replace_if(text, isLetter, 'x');
  return text;
}

}  // namespace

PageTongue foreignTongue(std::set<std::string>& asked) {
  return {.words =
              [&asked](std::string_view english) {
                asked.emplace(english);
                return madeForeign(std::string(english));
              },
          .days = [](quantity::Date) { return std::string("x"); },
          .shortDays = [](quantity::Date) { return std::string("x"); },
          .nutrientNames = [](food::NutrientId) { return std::string("xxx"); },
          .decimalMark = ","};
}

std::vector<std::string> wordsNotAskedFor(const std::string& html, const std::set<std::string>& ofTheData) {
  const std::string body = html.substr(html.find("<body>"));
  const std::string text = std::regex_replace(body, std::regex("<[^>]*>|&[a-z]+;"), " ");
  const std::regex word("[A-Za-z]{3,}");
  std::vector<std::string> found;
  for (auto at = std::sregex_iterator(text.begin(), text.end(), word); at != std::sregex_iterator(); ++at)
    if (at->str() != std::string(at->str().size(), 'x') && !ofTheData.contains(at->str()))
      found.push_back(at->str());
  return found;
}

std::vector<std::string> unknownToLanguages(const std::set<std::string>& asked) {
  std::ifstream file(TAREBOWL_SOURCE_DIR "/resources/languages/data_strings.h");
  const std::string known{std::istreambuf_iterator<char>(file), {}};
  std::vector<std::string> unknown;
  for (const std::string& words : asked) {
    const std::string quoted = std::regex_replace(words, std::regex("\n"), "\\n");
    if (known.find(fmt::format("\"Pages\", \"{}\")", quoted)) == std::string::npos) unknown.push_back(words);
  }
  return unknown;
}

}  // namespace tarebowl::exchange
