// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/html_text.h"

#include <fmt/format.h>

namespace tarebowl::exchange {

std::string escaped(std::string_view text) {
  std::string safe;
  for (const char c : text) {
    switch (c) {
      case '&':
        safe += "&amp;";
        break;
      case '<':
        safe += "&lt;";
        break;
      case '>':
        safe += "&gt;";
        break;
      case '"':
        safe += "&quot;";
        break;
      default:
        safe += c;
    }
  }
  return safe;
}

std::string htmlHead(std::string_view title, std::string_view style) {
  return fmt::format(
      "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>{}</title>\n<style>\n{}"
      "</style>\n</head>\n<body>\n",
      escaped(title), style);
}

void heading(std::string& html, std::string_view text) {
  html += "<h2>" + escaped(text) + "</h2>\n";
}

void paragraph(std::string& html, std::string_view text, std::string_view style) {
  if (text.empty()) return;
  html += style.empty() ? "<p>" : fmt::format("<p class=\"{}\">", style);
  html += escaped(text) + "</p>\n";
}

}  // namespace tarebowl::exchange
