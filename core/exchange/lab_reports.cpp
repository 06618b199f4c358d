// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/lab_reports.h"

#include "core/exchange/fixed_table.h"
#include "core/food/stated_value.h"

#include <algorithm>
#include <array>
#include <variant>

namespace tarebowl::exchange {

namespace {

enum Field {
  Food,
  Report,
  Day,
  Laboratory,
  Method,
  Batch,
  Tagname,
  Per100g,
  Unit,
  Count,
  SetAside,
  FieldCount
};

constexpr std::array<std::string_view, FieldCount> kTitles{"food",   "report", "date",     "laboratory",
                                                           "method", "batch",  "tagname",  "per_100_g",
                                                           "unit",   "n",      "set_aside"};

/// One row: a report with a single value.
LabReport reportOf(const FixedRecord& record) {
  LabReport report{.food = record.text(Food),
                   .sample = {.origin = food::SampleOrigin::OwnLab,
                              .source = "Report " + record.text(Report) + " (invented)",
                              .sourceCode = record.text(Report),
                              .date = record.date(Day),
                              .lab = record.text(Laboratory),
                              .method = record.text(Method),
                              .batch = record.text(Batch)}};
  if (!record.row[SetAside].empty()) report.sample.excluded = record.text(SetAside);
  const auto nutrient = food::findByTagname(record.row[Tagname]);
  if (!nutrient) record.refuse(Tagname, "a tagname that is known here");
  const auto unit = quantity::parseUnit(record.row[Unit]);
  if (!unit) record.refuse(Unit, "a unit");
  const auto value = food::toSampleValue(*nutrient, {.amount = record.number(Per100g),
                                                     .unit = *unit,
                                                     .sampleCount = static_cast<int>(record.number(Count))});
  if (!std::holds_alternative<food::SampleValue>(value)) record.refuse(Unit, "a unit of this nutrient");
  report.sample.values.push_back(std::get<food::SampleValue>(value));
  return report;
}

}  // namespace

std::vector<LabReport> readLabReports(const std::filesystem::path& file) {
  std::vector<LabReport> reports;
  for (LabReport& row : readFixedTable(file, kTitles, reportOf)) {
    const auto begun = std::ranges::find_if(reports, [&](const LabReport& report) {
      return report.food == row.food && report.sample.sourceCode == row.sample.sourceCode;
    });
    if (begun == reports.end())
      reports.push_back(std::move(row));
    else
      begun->sample.values.push_back(row.sample.values.front());
  }
  return reports;
}

}  // namespace tarebowl::exchange
