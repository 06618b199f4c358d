// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/diet_sheet.h"
#include "core/exchange/row_writer.h"
#include "core/exchange/sheet_words.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>

#include <charconv>

namespace tarebowl::exchange {

namespace {

/// To twelve digits: what binary arithmetic adds beyond them is no weight.
double rounded(double number) {
  const std::string text = fmt::format("{:.12g}", number);
  double read = 0.0;
  std::from_chars(text.data(), text.data() + text.size(), read);
  return read;
}

Cell numberOrBlank(const std::optional<double>& number) {
  return number ? Cell(rounded(*number)) : Cell(std::string());
}

std::optional<double> gramsOf(const std::optional<quantity::Grams>& mass) {
  return mass ? std::optional(mass->value()) : std::nullopt;
}

void writeLine(XlsxWriter& writer, const std::string& text) {
  if (!text.empty()) writer.write({text});
}

void writeHead(XlsxWriter& writer, const DietSheet& sheet) {
  writeLine(writer, sheet.title);
  if (sheet.invented) writeLine(writer, kInventedMark);
  writeLine(writer, subjectLine(sheet));
  writeLine(writer, stateSentence(sheet.version));
  writeLine(writer, feedingSentence(sheet.version));
  writeLine(writer, sheet.version.note);
  writeLine(writer, energyAndCost(sheet));
}

void writeFoods(XlsxWriter& writer, const DietSheet& sheet) {
  writer.write({"Meal", "Food", "g per animal and day", fmt::format("g for {} and day", sheet.animals),
                "least g", "most g", "Cost per animal and day", "Preparation", "Given as"});
  for (const SheetFood& food : sheet.foods)
    writer.write({food.meal, food.name, rounded(food.perAnimal.value()),
                  rounded(food.perAnimal.value() * sheet.animals), numberOrBlank(gramsOf(food.low)),
                  numberOrBlank(gramsOf(food.high)), numberOrBlank(food.costPerDay), food.preparation,
                  food.purpose.empty() ? "bowl" : food.purpose});
  writer.write({"", "In all", rounded(sheet.total.value()), rounded(sheet.total.value() * sheet.animals), "",
                "", numberOrBlank(sheet.costPerDay)});
}

void writeTargets(XlsxWriter& writer, const DietSheet& sheet) {
  writer.write({"Target", "Of", "Value", "Least", "Most", "Unit", "State", "Known (%)", "Hard", "Source"});
  for (const SheetTarget& target : sheet.targets)
    writer.write({target.id, target.subject, target.value ? numberOrBlank(target.value) : Cell("?"),
                  numberOrBlank(target.min), numberOrBlank(target.max), target.unit, target.state,
                  rounded(100.0 * target.coverage), target.hard ? "yes" : "",
                  target.source == 0 ? "?" : sheet.sources.at(target.source - 1)});
}

void writeCautions(XlsxWriter& writer, const DietSheet& sheet) {
  if (sheet.cautions.empty()) return;
  writer.write({"Caution", "Severity", "Reason", "Advice", "Set aside because"});
  for (const SheetCaution& caution : sheet.cautions)
    writer.write({caution.food, caution.severity, caution.reason, caution.advice, caution.lifted});
}

}  // namespace

void writeSheetXlsx(const DietSheet& sheet, const std::filesystem::path& file) {
  XlsxWriter writer(file, "Diet");
  writer.fitToPage();
  writeHead(writer, sheet);
  writer.write({});
  writeFoods(writer, sheet);
  writer.write({});
  writeTargets(writer, sheet);
  writeLine(writer, ownBoundsSentence(sheet.version));
  writeLine(writer, eatenSentence(sheet));
  writeLine(writer, notJudgedSentence(sheet));
  writer.write({});
  writeCautions(writer, sheet);
  writeLine(writer, std::string(kCaution));
  writer.close();
}

}  // namespace tarebowl::exchange
