// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/food_codes.h"

#include <filesystem>
#include <fstream>
#include <sstream>

namespace tarebowl::app {

namespace {

std::string trimmed(const std::string& text) {
  const auto first = text.find_first_not_of(" \t\r\n");
  if (first == std::string::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

}  // namespace

std::vector<std::string> foodCodes(const std::string& foods) {
  std::error_code ignored;
  const bool isFile = std::filesystem::is_regular_file(foods, ignored);
  std::ostringstream text;
  if (isFile)
    text << std::ifstream(foods, std::ios::binary).rdbuf();
  else
    text << foods;
  std::istringstream parts(text.str());
  std::vector<std::string> codes;
  for (std::string part; std::getline(parts, part, isFile ? '\n' : ',');)
    if (std::string code = trimmed(part); !code.empty()) codes.push_back(std::move(code));
  return codes;
}

}  // namespace tarebowl::app
