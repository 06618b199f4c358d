// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/diet_sheet.h"
#include "core/exchange/row_writer.h"
#include "core/exchange/sheet_words.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>

#include <charconv>
#include <initializer_list>
#include <vector>

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

void writeTitles(XlsxWriter& writer, std::initializer_list<const char*> titles, const PageTongue& tongue) {
  std::vector<Cell> cells;
  for (const char* title : titles) cells.emplace_back(tongue.say(title));
  writer.write(cells);
}

void writeHead(XlsxWriter& writer, const DietSheet& sheet, const PageTongue& tongue) {
  writeLine(writer, sheet.title);
  if (sheet.invented) writeLine(writer, tongue.say(kInventedMark));
  writeLine(writer, subjectLine(sheet, tongue));
  writeLine(writer, stateSentence(sheet.version, tongue));
  writeLine(writer, feedingSentence(sheet.version, tongue));
  writeLine(writer, sheet.version.note);
  writeLine(writer, energyAndCost(sheet, tongue));
}

void writeFoods(XlsxWriter& writer, const DietSheet& sheet, const PageTongue& tongue) {
  writer.write({tongue.say("Meal"), tongue.say("Food"), tongue.say("g per animal and day"),
                tongue.say("g for {} and day", sheet.animals), tongue.say("least g"), tongue.say("most g"),
                tongue.say("Cost per animal and day"), tongue.say("Preparation"), tongue.say("Given as")});
  for (const SheetFood& food : sheet.foods)
    writer.write({food.meal, food.name, rounded(food.perAnimal.value()),
                  rounded(food.perAnimal.value() * sheet.animals), numberOrBlank(gramsOf(food.low)),
                  numberOrBlank(gramsOf(food.high)), numberOrBlank(food.costPerDay), food.preparation,
                  food.purpose.empty() ? tongue.say("bowl") : food.purpose});
  writer.write({"", tongue.say("In all"), rounded(sheet.total.value()),
                rounded(sheet.total.value() * sheet.animals), "", "", numberOrBlank(sheet.costPerDay)});
}

void writeTargets(XlsxWriter& writer, const DietSheet& sheet, const PageTongue& tongue) {
  writeTitles(writer,
              {"Target", "Of", "Value", "Least", "Most", "Unit", "State", "Known (%)", "Hard", "Source"},
              tongue);
  for (const SheetTarget& target : sheet.targets)
    writer.write({target.id, target.subject, target.value ? numberOrBlank(target.value) : Cell("?"),
                  numberOrBlank(target.min), numberOrBlank(target.max), target.unit, target.state,
                  rounded(100.0 * target.coverage), target.hard ? tongue.say("yes") : "",
                  target.source == 0 ? "?" : sheet.sources.at(target.source - 1)});
}

void writeCautions(XlsxWriter& writer, const DietSheet& sheet, const PageTongue& tongue) {
  if (sheet.cautions.empty()) return;
  writeTitles(writer, {"Caution", "Severity", "Reason", "Advice", "Set aside because"}, tongue);
  for (const SheetCaution& caution : sheet.cautions)
    writer.write({caution.food, caution.severity, caution.reason, caution.advice, caution.lifted});
}

}  // namespace

void writeSheetXlsx(const DietSheet& sheet, const std::filesystem::path& file, const PageTongue& tongue) {
  XlsxWriter writer(file, tongue.say("Diet"));
  writer.fitToPage();
  writeHead(writer, sheet, tongue);
  writer.write({});
  writeFoods(writer, sheet, tongue);
  writer.write({});
  writeTargets(writer, sheet, tongue);
  writeLine(writer, ownBoundsSentence(sheet.version, tongue));
  writeLine(writer, eatenSentence(sheet, tongue));
  writeLine(writer, notJudgedSentence(sheet, tongue));
  writer.write({});
  writeCautions(writer, sheet, tongue);
  writeLine(writer, tongue.say(kCaution));
  writer.close();
}

}  // namespace tarebowl::exchange
