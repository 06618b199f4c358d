// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/formula_guard.h"

#include <charconv>

namespace tarebowl::exchange {

namespace {

bool isNumber(std::string_view text) {
  double number = 0;
  const char* const end = text.data() + text.size();
  const auto read = std::from_chars(text.data(), end, number);
  return read.ec == std::errc() && read.ptr == end;
}

/// Blanks before the sign do not keep a spreadsheet from it; an apostrophe of the person's own must not be
/// taken for the guard.
bool needsGuard(std::string_view text) {
  if (text.empty() || isNumber(text)) return false;
  if (text.front() == '\'') return needsGuard(text.substr(1));
  const auto first = text.find_first_not_of(" \t\r\n");
  return first != std::string_view::npos &&
         std::string_view("=+-@").find(text[first]) != std::string_view::npos;
}

}  // namespace

std::string guarded(const std::string& text) {
  return needsGuard(text) ? '\'' + text : text;
}

std::string_view withoutGuard(std::string_view text) {
  const bool isGuarded = text.starts_with('\'') && needsGuard(text.substr(1));
  return isGuarded ? text.substr(1) : text;
}

}  // namespace tarebowl::exchange
