// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/food_codes.h"

#include <filesystem>
#include <fstream>
#include <istream>
#include <sstream>
#include <utility>

namespace tarebowl::app {

namespace {

std::string trimmed(const std::string& text) {
  const auto first = text.find_first_not_of(" \t\r\n");
  if (first == std::string::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

std::vector<std::string> codesParted(std::istream& text, char by) {
  std::vector<std::string> codes;
  for (std::string part; std::getline(text, part, by);)
    if (std::string code = trimmed(part); !code.empty()) codes.push_back(std::move(code));
  return codes;
}

}  // namespace

std::vector<std::string> codesIn(const std::string& text) {
  std::istringstream stream(text);
  return codesParted(stream, ',');
}

std::vector<std::string> foodCodes(const std::string& foods) {
  std::error_code ignored;
  if (!std::filesystem::is_regular_file(foods, ignored)) return codesIn(foods);
  std::ifstream file(foods, std::ios::binary);
  return codesParted(file, '\n');
}

}  // namespace tarebowl::app
