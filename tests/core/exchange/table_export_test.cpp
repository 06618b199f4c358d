// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_export.h"

#include "core/exchange/import_plan.h"
#include "core/exchange/mapping_guess.h"
#include "core/exchange/problem_json.h"
#include "core/food/sample.h"
#include "tests/core/exchange/memory_sink.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <unistd.h>
#include <xlsxwriter.h>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace tarebowl::exchange {
namespace {

namespace fs = std::filesystem;

/// A file of this process, removed when done.
class Scratch {
 public:
  explicit Scratch(const std::string& name)
      : file_(fs::temp_directory_path() / ("tarebowl-" + std::to_string(getpid()) + "-" + name)) {}
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;
  ~Scratch() { fs::remove(file_); }
  [[nodiscard]] const fs::path& file() const { return file_; }

 private:
  fs::path file_;
};

std::string anyName() {
  static const std::vector<std::string> kPieces{"Kale", "a", ";", ",", "\"",    "'",  "ö",   "🥬",
                                                "|",    "^", "~", "%", "(raw)", "µg", "1.5", " and "};
  std::string name = "F";
  for (const auto& piece : *rc::gen::container<std::vector<std::string>>(rc::gen::elementOf(kPieces)))
    name += piece;
  return name + ".";
}

food::NutrientValue anyValue() {
  const auto amount = [] {
    return static_cast<double>(*rc::gen::inRange<std::int64_t>(0, 1LL << 53)) * 0x1p-53 * 90.0;
  };
  food::NutrientValue value{.amount = quantity::AsFedContent(amount())};
  if (*rc::gen::arbitrary<bool>()) value.sd = quantity::AsFedContent(amount());
  if (*rc::gen::arbitrary<bool>()) value.sampleCount = *rc::gen::inRange(1, 1000);
  value.qualifier = static_cast<food::Qualifier>(*rc::gen::inRange(0, 8));
  if (*rc::gen::arbitrary<bool>()) value.source = anyName();
  return value;
}

ExportedOther anyOther(const std::string& name) {
  const food::NutrientValue like = anyValue();
  ExportedOther other{.name = name, .amount = like.amount.value(), .count = like.sampleCount};
  other.unit.unit = *rc::gen::elementOf(
      std::vector{quantity::Unit::Milligram, quantity::Unit::Kilocalorie, quantity::Unit::InternationalUnit});
  other.unit.basis = *rc::gen::elementOf(
      std::vector{quantity::Basis::AsFed, quantity::Basis::DryMatter, quantity::Basis::Energy});
  other.unit.per = other.unit.basis == quantity::Basis::Energy ? 1000.0 : 100.0;
  if (like.sd) other.sd = like.sd->value();
  other.qualifier = like.qualifier;
  other.source = like.source;
  return other;
}

std::vector<ExportedFood> anyFoods() {
  std::vector<ExportedFood> foods(static_cast<std::size_t>(*rc::gen::inRange(1, 6)));
  for (std::size_t i = 0; i < foods.size(); ++i) {
    foods[i] = {.code = "f" + std::to_string(i),
                .name = anyName(),
                .form = *rc::gen::elementOf(std::vector<std::string>{"", "raw", "steamed"}),
                .group = anyName()};
    const int others = *rc::gen::inRange(0, 3);
    for (int k = 0; k < others; ++k) foods[i].others.push_back(anyOther("Moon " + std::to_string(k)));
    const int count = *rc::gen::inRange(1, 8);
    for (int k = 0; k < count; ++k)
      foods[i].composition.set(
          food::NutrientId(*rc::gen::inRange<std::size_t>(0, food::allNutrients().size())), anyValue());
  }
  return foods;
}

/// The value as a collection keeps it.
food::NutrientValue asCollected(food::NutrientId nutrient, const food::StatedValue& stated) {
  const auto value = std::get<food::SampleValue>(food::toSampleValue(nutrient, stated));
  food::NutrientValue kept{.amount = std::get<quantity::AsFedContent>(value.amount)};
  if (value.sd) kept.sd = quantity::AsFedContent(*value.sd);
  kept.sampleCount = value.count;
  kept.qualifier = value.qualifier;
  kept.source = stated.source;
  return kept;
}

/// What the importer makes of a table by its own guess.
std::vector<ExportedFood> readBack(const TableInput& table) {
  MemorySink sink;
  const ImportPlan plan = importTable(table, guessMapping(table).mapping, sink);
  if (!plan.mayBeWritten()) throwFirstRefusal(plan, table.name);
  std::vector<ExportedFood> foods;
  for (const auto& [key, imported] : sink.foods) {
    ExportedFood food{imported.code, imported.name, imported.form, imported.group, {}, {}};
    for (const auto& [name, stated] : sink.others[key])
      food.others.push_back({name,
                             {stated.unit, 1.0, stated.per, stated.basis},
                             stated.amount,
                             stated.sd,
                             stated.sampleCount,
                             stated.qualifier,
                             stated.source});
    for (const auto& [nutrient, stated] : sink.values.at(key))
      food.composition.set(nutrient, asCollected(nutrient, stated));
    foods.push_back(std::move(food));
  }
  return foods;
}

void expectSame(const std::vector<ExportedFood>& a, const std::vector<ExportedFood>& b) {
  RC_ASSERT(a.size() == b.size());
  for (std::size_t i = 0; i < a.size(); ++i) {
    RC_ASSERT(a[i].name == b[i].name);
    RC_ASSERT(a[i].form == b[i].form);
    RC_ASSERT(a[i].group == b[i].group);
    RC_ASSERT(a[i].composition == b[i].composition);
    RC_ASSERT(a[i].others == b[i].others);
  }
}

RC_GTEST_PROP(Export, ToCsvAndBackLosesNothing, ()) {
  const auto foods = anyFoods();
  std::ostringstream out;
  writeCsv(eachOf(foods), TableLayout::Long, out);
  expectSame(readBack(tableText(out.str(), "out.csv")), foods);
}

RC_GTEST_PROP(Export, ToASpreadsheetAndBackLosesNothing, ()) {
  const auto foods = anyFoods();
  const Scratch scratch("round.xlsx");
  writeXlsx(eachOf(foods), TableLayout::Long, scratch.file());
  expectSame(readBack(tableFile(scratch.file())), foods);
}

TEST(Export, WideHasARowAFoodAndKeepsUnknownBlank) {
  ExportedFood kale{.code = "kale", .name = "Kale, curly", .form = "raw", .group = "leaf"};
  kale.composition.set(food::nutrients::water(), {.amount = quantity::AsFedContent(89.6)});
  kale.composition.set(food::nutrients::calcium(),
                       {.amount = quantity::AsFedContent(0.0), .qualifier = food::Qualifier::Trace});
  const std::vector foods{kale};
  std::ostringstream out;
  EXPECT_EQ(writeCsv(eachOf(foods), TableLayout::Wide, out), 2U);
  const auto back = readBack(tableText(out.str(), "out.csv"));
  ASSERT_EQ(back.size(), 1U);
  EXPECT_EQ(back[0].composition, kale.composition);
}

/// A workbook with one sheet, written cell by cell.
void writeSheet(const fs::path& file, const std::function<void(lxw_workbook*, lxw_worksheet*)>& fill) {
  lxw_workbook* book = workbook_new(file.string().c_str());
  lxw_worksheet* sheet = workbook_add_worksheet(book, nullptr);
  worksheet_write_string(sheet, 0, 0, "Food", nullptr);
  worksheet_write_string(sheet, 0, 1, "CA (mg)", nullptr);
  worksheet_write_string(sheet, 0, 2, "P (mg)", nullptr);
  worksheet_write_string(sheet, 1, 0, "Kale", nullptr);
  worksheet_write_number(sheet, 1, 2, 55, nullptr);
  fill(book, sheet);
  ASSERT_EQ(workbook_close(book), LXW_NO_ERROR);
}

std::string refusalOf(const fs::path& file) {
  try {
    (void)readBack(tableFile(file));
  } catch (const FormatError& error) {
    return error.keyPath() + ": " + error.expected();
  }
  return "read";
}

TEST(Spreadsheet, IsReadWithBlanksAtTheEndOfARow) {
  const Scratch scratch("blank.xlsx");
  writeSheet(scratch.file(), [](lxw_workbook*, lxw_worksheet* sheet) {
    worksheet_write_number(sheet, 1, 1, 254, nullptr);
    worksheet_write_string(sheet, 3, 0, "Chard", nullptr);
    worksheet_write_number(sheet, 3, 1, 0.1, nullptr);
  });
  const auto foods = readBack(tableFile(scratch.file()));
  ASSERT_EQ(foods.size(), 2U);
  EXPECT_EQ(foods[0].composition.amountPer100g(food::nutrients::calcium()), 0.1);
  EXPECT_FALSE(foods[0].composition.find(food::nutrients::phosphorus()));
}

TEST(Spreadsheet, RefusesFormulasDatesAndErrorsWithTheirCell) {
  const Scratch scratch("bad.xlsx");
  writeSheet(scratch.file(), [](lxw_workbook*, lxw_worksheet* sheet) {
    worksheet_write_formula(sheet, 1, 1, "=C2*4", nullptr);
  });
  EXPECT_THAT(refusalOf(scratch.file()),
              ::testing::StartsWith("line 2, column 2 (CA (mg)): a number and no formula"));
  writeSheet(scratch.file(), [](lxw_workbook* book, lxw_worksheet* sheet) {
    lxw_format* format = workbook_add_format(book);
    format_set_num_format(format, "d-mmm");
    worksheet_write_number(sheet, 1, 1, 46000, format);
  });
  EXPECT_THAT(refusalOf(scratch.file()),
              ::testing::StartsWith("line 2, column 2 (CA (mg)): a number and no date"));
  writeSheet(scratch.file(), [](lxw_workbook*, lxw_worksheet* sheet) {
    worksheet_write_string(sheet, 1, 1, "n/x", nullptr);
  });
  EXPECT_THAT(refusalOf(scratch.file()),
              ::testing::StartsWith("line 2, column 2 (CA (mg)): a number, found"));
}

TEST(Spreadsheet, RefusesAnArchiveThatIsNone) {
  const Scratch scratch("none.xlsx");
  std::ofstream(scratch.file(), std::ios::binary) << "PK\x03\x04 and nothing else";
  EXPECT_THAT(refusalOf(scratch.file()), ::testing::HasSubstr("spreadsheet"));
  Scratch cut("cut.xlsx");
  writeSheet(cut.file(), [](lxw_workbook*, lxw_worksheet*) {});
  std::string bytes;
  {
    std::ifstream in(cut.file(), std::ios::binary);
    bytes.assign(std::istreambuf_iterator<char>(in), {});
  }
  for (std::size_t at = 30; at < bytes.size(); at += 97) {
    std::string bent = bytes;
    bent[at] = static_cast<char>(bent[at] ^ 0x55);
    std::ofstream(cut.file(), std::ios::binary) << bent;
    (void)refusalOf(cut.file());  // read or refused; never a crash
    std::ofstream(cut.file(), std::ios::binary) << bytes.substr(0, at);
    EXPECT_NE(refusalOf(cut.file()), "read") << at;
  }
}

}  // namespace
}  // namespace tarebowl::exchange
