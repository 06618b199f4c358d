// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

/// Pages in HTML, piece by piece; every text is escaped.
namespace tarebowl::exchange {

[[nodiscard]] std::string escaped(std::string_view text);

/// From the first line of the file to the beginning of the body.
[[nodiscard]] std::string htmlHead(std::string_view title, std::string_view style);
inline constexpr std::string_view kHtmlEnd = "</body>\n</html>\n";

/// Of a part of the page.
void heading(std::string& html, std::string_view text);
/// Nothing for an empty text.
void paragraph(std::string& html, std::string_view text, std::string_view style = {});

/// One table, cell by cell.
class HtmlTable {
 public:
  explicit HtmlTable(std::string& html) : html_(html) { html_ += "<table>\n"; }
  HtmlTable(const HtmlTable&) = delete;
  HtmlTable& operator=(const HtmlTable&) = delete;
  ~HtmlTable() { html_ += "</table>\n"; }

  void begin() { html_ += "<tr>"; }
  void end() { html_ += "</tr>\n"; }
  void title(std::string_view text) { html_ += "<th>" + escaped(text) + "</th>"; }
  void numberTitle(std::string_view text) { html_ += "<th class=\"number\">" + escaped(text) + "</th>"; }
  void text(std::string_view text) { html_ += "<td>" + escaped(text) + "</td>"; }
  void number(std::string_view text) { html_ += "<td class=\"number\">" + escaped(text) + "</td>"; }

 private:
  std::string& html_;
};

}  // namespace tarebowl::exchange
