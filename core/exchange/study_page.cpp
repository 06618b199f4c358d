// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/study_page.h"

#include "core/exchange/html_text.h"
#include "core/exchange/sheet_words.h"
#include "core/exchange/wording.h"

namespace tarebowl::exchange {

namespace {

constexpr const char* kStyle =
    "@page { size: A4; margin: 12mm }\n"
    "body { font-family: sans-serif; font-size: 8pt; line-height: 1.2; color: #000000; margin: 0 }\n"
    "h1 { font-size: 14pt; margin: 0 0 2pt 0 }\n"
    "h2 { font-size: 10pt; margin: 7pt 0 1pt 0 }\n"
    "p { margin: 2pt 0 }\n"
    "table { border-collapse: collapse; width: 100% }\n"
    "th, td { border-bottom: 1px solid #999999; padding: 1px 4px; text-align: left; vertical-align: top }\n"
    "td { white-space: nowrap }\n"
    ".number { text-align: right }\n"
    ".invented { border: 1pt solid #000000; padding: 2pt; font-weight: bold }\n"
    ".small { font-size: 7pt }\n";

void addTable(std::string& html, const StudyTable& study) {
  html += "<h2>" + escaped(study.title) + "</h2>\n";
  HtmlTable table(html);
  table.begin();
  for (const std::string& column : study.columns) table.title(column);
  table.end();
  for (const std::vector<Cell>& row : study.rows) {
    table.begin();
    for (const Cell& cell : row) {
      if (const auto* number = std::get_if<double>(&cell))
        table.number(shortNumber(*number));
      else
        table.text(std::get<std::string>(cell));
    }
    table.end();
  }
}

}  // namespace

std::string studyAsHtml(const IntakeToWrite& intake) {
  const std::vector<std::string> head = studyHead(intake);
  std::string html = htmlHead(head.front(), kStyle) + "<h1>" + escaped(head.front()) + "</h1>\n";
  if (intake.invented) paragraph(html, kInventedMark, "invented");
  for (std::size_t i = 1; i < head.size(); ++i) paragraph(html, head[i]);
  for (const StudyTable& table : studyTables(intake)) addTable(html, table);
  paragraph(html, kCaution, "small");
  return html + std::string(kHtmlEnd);
}

void writeStudyXlsx(const IntakeToWrite& intake, const std::filesystem::path& file) {
  XlsxWriter writer(file, "Intake study");
  const std::vector<std::string> head = studyHead(intake);
  writer.write({head.front()});
  if (intake.invented) writer.write({std::string(kInventedMark)});
  for (std::size_t i = 1; i < head.size(); ++i) writer.write({head[i]});
  for (const StudyTable& table : studyTables(intake)) {
    writer.write({});
    writer.write({table.title});
    writer.write({table.columns.begin(), table.columns.end()});
    for (const std::vector<Cell>& row : table.rows) writer.write(row);
  }
  writer.write({});
  writer.write({std::string(kCaution)});
  writer.close();
}

}  // namespace tarebowl::exchange
