// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/diet_sheet.h"
#include "core/exchange/html_text.h"
#include "core/exchange/sheet_words.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>

namespace tarebowl::exchange {

namespace {

/// Small enough that 25 foods and 35 targets stand on one page.
constexpr const char* kStyle =
    "@page { size: A4; margin: 10mm }\n"
    "body { font-family: sans-serif; font-size: 8pt; line-height: 1.15; color: #000000; margin: 0 }\n"
    "h1 { font-size: 13pt; margin: 0 0 2pt 0 }\n"
    "h2 { font-size: 9pt; margin: 6pt 0 1pt 0 }\n"
    "p { margin: 1pt 0 }\n"
    "table { border-collapse: collapse; width: 100% }\n"
    "th, td { border-bottom: 1px solid #999999; padding: 1px 4px; text-align: left; vertical-align: top "
    "}\n"
    ".number { text-align: right; white-space: nowrap }\n"
    ".invented { border: 1pt solid #000000; padding: 2pt; font-weight: bold }\n"
    ".small { font-size: 6.5pt }\n";

void addHead(std::string& html, const DietSheet& sheet, const PageTongue& tongue) {
  html += "<h1>" + escaped(sheet.title) + "</h1>\n";
  if (sheet.invented) paragraph(html, tongue.say(kInventedMark), "invented");
  paragraph(html, subjectLine(sheet, tongue));
  std::string state = stateSentence(sheet.version, tongue);
  if (const std::string feeding = feedingSentence(sheet.version, tongue); !feeding.empty())
    state += ' ' + feeding;
  paragraph(html, state);
  paragraph(html, sheet.version.note);
}

void addFoods(std::string& html, const DietSheet& sheet, const PageTongue& tongue) {
  heading(html, tongue.say("What is fed, as fed, each day"));
  HtmlTable table(html);
  table.begin();
  for (const char* title : {"Meal", "Food"}) table.title(tongue.say(title));
  table.numberTitle(tongue.say("g per animal"));
  table.numberTitle(tongue.say("g for {}", sheet.animals));
  for (const char* title : {"Preparation", "Given as"}) table.title(tongue.say(title));
  table.end();
  for (const SheetFood& food : sheet.foods) {
    table.begin();
    table.text(food.meal);
    table.text(food.name);
    table.number(amountText(food, 1, tongue));
    table.number(amountText(food, sheet.animals, tongue));
    table.text(food.preparation);
    table.text(food.purpose.empty() ? tongue.say("bowl") : food.purpose);
    table.end();
  }
  table.begin();
  table.text("");
  table.text(tongue.say("In all"));
  table.number(tongue.number(shortNumber(sheet.total.value())));
  table.number(tongue.number(shortNumber(sheet.total.value() * sheet.animals)));
  table.text(energyAndCost(sheet, tongue));
  table.text("");
  table.end();
}

void addTargets(std::string& html, const DietSheet& sheet, const PageTongue& tongue) {
  if (sheet.targets.empty()) return;
  heading(html, tongue.say("How it stands against its targets"));
  HtmlTable table(html);
  table.begin();
  table.title(tongue.say("Target"));
  for (const char* title : {"Value", "Zone"}) table.numberTitle(tongue.say(title));
  for (const char* title : {"Unit", "State"}) table.title(tongue.say(title));
  for (const char* title : {"Known", "Source"}) table.numberTitle(tongue.say(title));
  table.end();
  for (const SheetTarget& target : sheet.targets) {
    table.begin();
    table.text(fmt::format("{} ({}){}", target.subject, target.id, target.hard ? tongue.say(", hard") : ""));
    table.number(target.valueText);
    table.number(tongue.number(zoneText(target.min, target.max)));
    table.text(target.unit);
    table.text(target.state);
    table.number(percentText(target.coverage));
    table.number(target.source == 0 ? "?" : std::to_string(target.source));
    table.end();
  }
}

void addCautions(std::string& html, const DietSheet& sheet, const PageTongue& tongue) {
  if (sheet.cautions.empty()) return;
  heading(html, tongue.say("Cautions"));
  for (const SheetCaution& caution : sheet.cautions) {
    std::string text = fmt::format("{}: {} ({})", caution.food, caution.reason, caution.severity);
    if (!caution.advice.empty()) text += ". " + caution.advice;
    if (!caution.lifted.empty()) text += ". " + tongue.say("Set aside: {}", caution.lifted);
    paragraph(html, text);
  }
}

void addFoot(std::string& html, const DietSheet& sheet, const PageTongue& tongue) {
  for (std::size_t i = 0; i < sheet.sources.size(); ++i)
    paragraph(html, fmt::format("{}: {}", i + 1, sheet.sources[i]), "small");
  paragraph(html,
            tongue.say("Known: the share of the eaten dry matter whose value is known. What is unknown could "
                       "only add to a value with ≥; one with ≈ it could move either way."),
            "small");
  paragraph(html, tongue.say(kCaution), "small");
}

}  // namespace

std::string sheetAsHtml(const DietSheet& sheet, const PageTongue& tongue) {
  std::string html = htmlHead(sheet.title, kStyle);
  addHead(html, sheet, tongue);
  addFoods(html, sheet, tongue);
  addCautions(html, sheet, tongue);
  addTargets(html, sheet, tongue);
  paragraph(html, ownBoundsSentence(sheet.version, tongue));
  paragraph(html, eatenSentence(sheet, tongue));
  paragraph(html, notJudgedSentence(sheet, tongue));
  addFoot(html, sheet, tongue);
  return html + std::string(kHtmlEnd);
}

}  // namespace tarebowl::exchange
