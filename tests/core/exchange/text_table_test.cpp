// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/text_table.h"

#include "core/exchange/problem_json.h"
#include "core/exchange/table_input.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>
#include <string>
#include <vector>

namespace tarebowl::exchange {
namespace {

using ::testing::ElementsAre;
using Cells = std::vector<std::string>;

std::vector<Cells> rowsOf(const std::string& text, const TextTableForm& form = {}) {
  const auto reader = openTable(tableText(text, "t"), form);
  std::vector<Cells> rows;
  TableRow row;
  while (reader->next(row)) {
    Cells cells;
    for (std::size_t c = 0; c < row.size(); ++c) cells.emplace_back(row[c]);
    rows.push_back(cells);
  }
  return rows;
}

std::string utf16(const std::u16string& text, bool bigEndian) {
  std::string bytes;
  for (const char16_t unit : text) {
    const char high = static_cast<char>(unit >> 8U);
    const char low = static_cast<char>(unit & 0xFFU);
    bytes += bigEndian ? high : low;
    bytes += bigEndian ? low : high;
  }
  return bytes;
}

TEST(TextTable, ReadsQuotesDelimitersAndLineBreaksInsideThem) {
  EXPECT_THAT(rowsOf("a,b\n\"x, \"\"y\"\"\nz\",2\n"),
              ElementsAre(Cells{"a", "b"}, Cells{"x, \"y\"\nz", "2"}));
}

TEST(TextTable, TakesEveryKindOfLineEnd) {
  const std::vector<Cells> rows = {{"a", "b"}, {"1", "2"}};
  for (const char* text :
       {"a,b\n1,2\n", "a,b\r\n1,2\r\n", "a,b\r1,2\r", "a,b\n1,2", "a,b\n\n\n1,2\n\n", "a,b\n,\n1,2\n"})
    EXPECT_EQ(rowsOf(text), rows) << text;
}

TEST(TextTable, CountsLinesAsAnEditorDoes) {
  for (const std::string end : {"\n", "\r\n", "\r"}) {
    const auto reader =
        openTable(tableText("a,b" + end + end + "\"x" + end + "y\",1" + end + "z,2" + end, "t"), {});
    TableRow row;
    std::vector<std::size_t> lines;
    while (reader->next(row)) lines.push_back(row.line());
    EXPECT_THAT(lines, ElementsAre(1, 3, 5));
  }
}

TEST(TextTable, PartsCellsByCaretsWithTildeQuotes) {
  // The form of the ASCII files of SR28.
  EXPECT_THAT(rowsOf("~01001~^~203~^0.85^16\r\n", {{}, '^', '~'}),
              ElementsAre(Cells{"01001", "203", "0.85", "16"}));
}

TEST(TextTable, ReadsEveryEncodingAlike) {
  const std::vector<Cells> rows = {{"Möhre", "½ µg"}};
  EXPECT_EQ(rowsOf("M\u00f6hre,\u00bd \u00b5g\n"), rows);
  EXPECT_EQ(rowsOf("\xEF\xBB\xBFM\u00f6hre,\u00bd \u00b5g\n"), rows);
  EXPECT_EQ(rowsOf("M\xF6hre,\xBD \xB5g\n"), rows);
  EXPECT_EQ(rowsOf("M\xF6hre,\xBD \xB5g\n", {Encoding::Latin1}), rows);
  const std::u16string wide = u"M\u00f6hre,\u00bd \u00b5g\n";
  EXPECT_EQ(rowsOf("\xFF\xFE" + utf16(wide, false)), rows);
  EXPECT_EQ(rowsOf("\xFE\xFF" + utf16(wide, true)), rows);
  EXPECT_EQ(rowsOf(utf16(wide, false)), rows);
  EXPECT_EQ(rowsOf(utf16(wide, true)), rows);
}

TEST(TextTable, TellsWindows1252ByTheFirstLetterThatIsNotUtf8HoweverLateItComes) {
  const std::string plain(200'000, 'x');
  std::string text;
  for (std::size_t i = 0; i < 20; ++i) text += plain.substr(0, 10'000) + ",1\n";
  text += "caf\xE9 \x80,2\n";
  const auto rows = rowsOf(text);
  ASSERT_EQ(rows.size(), 21U);
  EXPECT_EQ(rows.back()[0], "café €");
}

TEST(TextTable, ReadsLettersThatTheReadingCutsInTwo) {
  // Pieces are read 65536 bytes at a time; the two bytes of ö and the four of 🥬 fall on both sides of it.
  for (std::size_t before = 65'530; before < 65'540; ++before) {
    const std::string start(before, 'x');
    EXPECT_EQ(rowsOf("\u00e4" + start + "\u00f6\U0001F96C,1\n")[0][0], "\u00e4" + start + "\u00f6\U0001F96C")
        << before;
  }
}

struct Slip {
  const char* name;
  std::string text;
  const char* place;
  const char* expected;
};

class BadTextTable : public ::testing::TestWithParam<Slip> {};

TEST_P(BadTextTable, IsRefusedWithItsPlace) {
  try {
    (void)rowsOf(GetParam().text);
    FAIL() << "was read";
  } catch (const FormatError& error) {
    EXPECT_EQ(error.keyPath(), GetParam().place);
    EXPECT_THAT(error.expected(), ::testing::HasSubstr(GetParam().expected));
    EXPECT_EQ(std::string(error.what()).find('\n'), std::string::npos);
  }
}

const std::string kZero(1, '\0');

INSTANTIATE_TEST_SUITE_P(
    All, BadTextTable,
    ::testing::Values(
        Slip{"UnclosedQuote", "a,b\n1,2\n3,\"4\n5,6\n", "line 3, column 2", "a closing \""},
        Slip{"UnclosedQuoteAtTheEnd", "a,b\n1,\"", "line 2, column 2", "a closing \""},
        Slip{"TextBehindAQuote", "a,b\n\"1\"2,3\n", "line 2, column 1", "only around a whole cell"},
        Slip{"QuoteInsideACell", "a,b\nx\"y,3\n", "line 2, column 1", "only around a whole cell"},
        Slip{"ZeroByte", "a,b\n1,x" + kZero + "2\n", "line 2, column 2", "zero byte"},
        Slip{"ZeroByteFirst", kZero + "abc,1\n", "line 1, column 1", "zero byte"},
        Slip{"MixedEncodings", "a,b\n\u00e9,1\n\xE9,2\n", "line 3, column 1", "one encoding throughout"},
        Slip{"Utf8ThatBreaksLater", "\u00e9,b\n" + std::string(100'000, ' ') + "\n1,\xC3(\n",
             "line 3, column 2", "UTF-8"},
        Slip{"Utf8CutOffAtTheEnd",
             "\xEF\xBB\xBF"
             "a,b\n1,\xE2\x82",
             "line 2, column 2", "UTF-8"},
        Slip{"LoneSurrogate",
             "\xFF\xFE" + utf16(u"a,b\n1,", false) + std::string("\x00\xD8", 2) + utf16(u"x\n", false),
             "line 2, column 2", "utf-16le"},
        Slip{"HalfAUtf16Letter", "\xFF\xFE" + utf16(u"a,b\n1,2", false) + "x", "line 2, column 2",
             "utf-16le"},
        Slip{"CellBeyondAllMeasure", "a,b\n1," + std::string(2'000'000, 'x'), "line 2, column 2",
             "at most 1048576 characters"},
        Slip{"TooManyColumns", "a,b\n" + std::string(20'000, ','), "line 2, column 16386",
             "at most 16384 columns"}),
    [](const auto& slip) { return slip.param.name; });

/// Bytes without end, of which nothing is kept.
class EndlessBuffer : public std::streambuf {
 public:
  explicit EndlessBuffer(std::size_t length, std::string pattern)
      : left_(length), piece_(std::move(pattern)) {}
  [[nodiscard]] std::size_t given() const { return given_; }

 protected:
  int_type underflow() override {
    if (left_ == 0) return traits_type::eof();
    const std::size_t count = std::min(left_, piece_.size());
    left_ -= count;
    given_ += count;
    setg(piece_.data(), piece_.data(), piece_.data() + count);
    return traits_type::to_int_type(piece_.front());
  }

 private:
  std::size_t left_;
  std::size_t given_ = 0;
  std::string piece_;
};

class EndlessStream : private EndlessBuffer, public std::istream {
 public:
  EndlessStream(std::size_t length, std::string pattern)
      : EndlessBuffer(length, std::move(pattern)), std::istream(this) {}
  using EndlessBuffer::given;
};

constexpr std::size_t kGigabyte = std::size_t{1} << 30U;

TEST(EndlessLine, IsRefusedLongBeforeItIsRead) {
  auto stream = std::make_unique<EndlessStream>(kGigabyte, std::string(4096, 'x'));
  const EndlessStream& bytes = *stream;
  TextTableReader reader(std::move(stream), "t", {});
  TableRow row;
  EXPECT_THROW((void)reader.next(row), FormatError);
  EXPECT_LT(bytes.given(), std::size_t{2} << 20U);
}

TEST(EndlessLine, OfManyCellsIsRefusedToo) {
  auto stream = std::make_unique<EndlessStream>(kGigabyte, "12.5,");
  const EndlessStream& bytes = *stream;
  TextTableReader reader(std::move(stream), "t", {});
  TableRow row;
  EXPECT_THROW((void)reader.next(row), FormatError);
  EXPECT_LT(bytes.given(), std::size_t{2} << 20U);
}

}  // namespace
}  // namespace tarebowl::exchange
