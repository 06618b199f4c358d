// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/intake_report.h"
#include "core/exchange/row_writer.h"

#include <filesystem>
#include <string>
#include <vector>

/// An intake study as a page and as a workbook: offered, left, corrected, eaten, nutrients against targets,
/// day by day and as means with their intervals.
namespace tarebowl::exchange {

/// One table of the report: what is missing is an empty text.
struct StudyTable {
  std::string title{};
  std::vector<std::string> columns{};
  std::vector<std::vector<Cell>> rows{};
};
[[nodiscard]] std::vector<StudyTable> studyTables(const IntakeToWrite& intake);
/// Whose study, which days, how many of them are known.
[[nodiscard]] std::vector<std::string> studyHead(const IntakeToWrite& intake);

/// A page of its own, style included; every text is escaped.
[[nodiscard]] std::string studyAsHtml(const IntakeToWrite& intake);
/// Throws FormatError (problem_json.h) where the file cannot be written.
void writeStudyXlsx(const IntakeToWrite& intake, const std::filesystem::path& file);

}  // namespace tarebowl::exchange
