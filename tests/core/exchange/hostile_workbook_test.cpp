// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"
#include "core/exchange/mapping_guess.h"
#include "core/exchange/problem_json.h"
#include "tests/core/exchange/memory_sink.h"
#include "tests/core/exchange/zip_archive.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

// Spreadsheets as they should not be: what stands in the archive, written by hand.
namespace tarebowl::exchange {
namespace {

using ::testing::HasSubstr;
using ::testing::StartsWith;

using Members = std::vector<std::pair<std::string, std::string>>;

std::string repeated(const std::string& text, std::size_t times) {
  std::string all;
  all.reserve(text.size() * times);
  for (std::size_t i = 0; i < times; ++i) all += text;
  return all;
}

std::string cell(const std::string& text) {
  return "<c t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
}

std::string sheetOf(const std::string& rows) {
  return "<worksheet><sheetData><row>" + cell("Food") + cell("CA (mg)") + "</row>" + rows +
         "</sheetData></worksheet>";
}

/// A workbook with one sheet; more: further members, such as shared texts.
Members workbook(const std::string& sheet, const Members& more = {}) {
  Members members{
      {"xl/workbook.xml",
       "<workbook><sheets><sheet name=\"a\" r:id=\"r1\" xmlns:r=\"r\"/></sheets></workbook>"},
      {"xl/_rels/workbook.xml.rels",
       "<Relationships><Relationship Id=\"r1\" Target=\"worksheets/sheet1.xml\"/></Relationships>"},
      {"xl/worksheets/sheet1.xml", sheet}};
  members.insert(members.end(), more.begin(), more.end());
  return members;
}

/// What an import says of the workbook: "read", or the place and what was expected there.
std::string saidOf(const Members& members) {
  const auto file = std::filesystem::path(testing::TempDir()) /
                    (std::string(testing::UnitTest::GetInstance()->current_test_info()->name()) + ".xlsx");
  const auto bytes = archiveOf(members);
  std::ofstream(file, std::ios::binary)
      .write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
  std::string said = "read";
  try {
    const TableInput table = tableFile(file);
    MemorySink sink;
    const ImportPlan plan = importTable(table, guessMapping(table).mapping, sink);
    if (!plan.mayBeWritten()) throwFirstRefusal(plan, "t.xlsx");
  } catch (const FormatError& error) {
    said = error.keyPath() + ": " + error.expected();
  }
  std::filesystem::remove(file);
  return said;
}

TEST(HostileWorkbook, TheSoundOneBesideThemIsRead) {
  EXPECT_EQ(saidOf(workbook(sheetOf("<row>" + cell("Kale") + "<c><v>254</v></c></row>"))), "read");
}

TEST(HostileWorkbook, WithoutItsPartsIsRefusedByTheirNames) {
  EXPECT_THAT(saidOf({{"a.txt", "a letter"}}), StartsWith("xl/workbook.xml: a part of a spreadsheet"));
  Members noSheet = workbook("");
  noSheet.pop_back();
  EXPECT_THAT(saidOf(noSheet), StartsWith("xl/worksheets/sheet1.xml: a part of a spreadsheet"));
  EXPECT_THAT(
      saidOf({{"xl/workbook.xml", "<workbook/>"}, {"xl/_rels/workbook.xml.rels", "<Relationships/>"}}),
      HasSubstr("a workbook with a sheet"));
}

TEST(HostileWorkbook, OfBrokenXmlIsRefusedWithLineAndColumn) {
  EXPECT_THAT(saidOf(workbook("<worksheet>\n<row></worksheet>")),
              StartsWith("xl/worksheets/sheet1.xml: XML, found at line 2, column 8"));
  EXPECT_THAT(saidOf(workbook("")), HasSubstr("XML"));
}

TEST(HostileWorkbook, ThatGrowsByEntitiesIsRefused) {
  EXPECT_THAT(saidOf(workbook("<!DOCTYPE a [<!ENTITY b \"bbbb\">]><worksheet/>")),
              HasSubstr("without a document type declaration"));
}

TEST(HostileWorkbook, WithATagThatNeverEndsIsRefusedAfterAMegabyte) {
  EXPECT_THAT(saidOf(workbook("<worksheet><row a=\"" + std::string(1'500'000, 'x') + "\"/></worksheet>")),
              HasSubstr("tags of at most 1 MB"));
  EXPECT_THAT(saidOf(workbook("<worksheet><!--" + std::string(1'500'000, 'x') + "--></worksheet>")),
              HasSubstr("tags of at most 1 MB"));
}

TEST(HostileWorkbook, WithTextsWithoutEndIsRefused) {
  EXPECT_THAT(saidOf(workbook(sheetOf(""),
                              {{"xl/sharedStrings.xml", "<sst>" + repeated("<si/>", 4'000'001) + "</sst>"}})),
              StartsWith("xl/sharedStrings.xml: at most 4000000 texts"));
}

TEST(HostileWorkbook, WithMoreStylesThanASpreadsheetHasIsRefused) {
  EXPECT_THAT(
      saidOf(workbook(sheetOf(""), {{"xl/styles.xml", "<styleSheet><cellXfs>" + repeated("<xf/>", 70'000) +
                                                          "</cellXfs></styleSheet>"}})),
      StartsWith("xl/styles.xml: at most 65536 cell styles"));
}

TEST(HostileWorkbook, WithACellOutOfPlaceIsRefusedWithItsPlace) {
  EXPECT_THAT(saidOf(workbook(sheetOf("<row r=\"2\"><c r=\"B2\"><v>1</v></c><c r=\"A2\"/></row>"))),
              StartsWith("line 2, column 1: cells from left to right"));
  EXPECT_THAT(saidOf(workbook(sheetOf("<row r=\"2\"><c r=\"ZZZZZZ2\"/></row>"))),
              HasSubstr("at most 16384 columns"));
  EXPECT_THAT(saidOf(workbook(sheetOf("<row r=\"2\"><c t=\"s\"><v>7</v></c></row>"))),
              StartsWith("line 2, column 1: text of the workbook, found no such text"));
}

TEST(HostileWorkbook, OfRowsWithNothingButTheirLastCellTakesLittleMemory) {
  // 16,384 cells a row from 30 bytes: they must not all be held at once.
  EXPECT_THAT(saidOf(workbook(sheetOf(repeated("<row><c r=\"XFD2\"/></row>", 2'000)))),
              HasSubstr("values of foods, found none"));
}

}  // namespace
}  // namespace tarebowl::exchange
