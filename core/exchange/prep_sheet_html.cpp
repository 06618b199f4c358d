// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/html_text.h"
#include "core/exchange/prep_sheet_page.h"
#include "core/exchange/sheet_words.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>

namespace tarebowl::exchange {

using intake::FoodLookup;
using intake::KitchenTotal;
using intake::PrepBowl;
using intake::PrepSheet;

namespace {

/// To be read at an arm's length with both hands full.
constexpr const char* kStyle =
    "@page { size: A4; margin: 12mm }\n"
    "body { font-family: sans-serif; font-size: 13pt; line-height: 1.25; color: #000000; margin: 0 }\n"
    "h1 { font-size: 20pt; margin: 0 0 4pt 0 }\n"
    "h2 { font-size: 16pt; margin: 12pt 0 2pt 0; page-break-after: avoid }\n"
    "p { margin: 2pt 0 }\n"
    "table { border-collapse: collapse; width: 100%; page-break-inside: avoid }\n"
    "th, td { border-bottom: 1px solid #999999; padding: 3px 6px; text-align: left; vertical-align: top }\n"
    "th { font-size: 10pt }\n"
    ".number { text-align: right; white-space: nowrap; font-weight: bold }\n"
    ".invented { border: 1pt solid #000000; padding: 2pt; font-weight: bold }\n"
    ".small { font-size: 10pt }\n";

constexpr const char* kLabelStyle =
    "@page { size: A4; margin: 8mm }\n"
    "body { font-family: sans-serif; font-size: 12pt; color: #000000; margin: 0 }\n"
    "table { border-collapse: collapse; width: 100% }\n"
    "td { border: 1px dashed #999999; padding: 6mm; width: 50%; vertical-align: top }\n"
    ".name { font-size: 18pt; font-weight: bold }\n";

std::string bowlFacts(const PrepBowl& bowl, const PageTongue& tongue) {
  std::string text = tongue.say(bowl.bowl.animals == 1 ? "{} animal" : "{} animals", bowl.bowl.animals);
  text += tongue.say(", {} g in all", tongue.number(shortNumber(bowl.total().value())));
  if (bowl.phaseDay > 0)
    text += tongue.say(", a new diet is phased in: day {} of {}", bowl.phaseDay, bowl.phaseDays);
  return text;
}

void addBowl(std::string& html, const PrepBowl& bowl, const FoodLookup& foodOf, const PageTongue& tongue) {
  heading(html, bowl.bowl.label);
  paragraph(html, bowlFacts(bowl, tongue));
  HtmlTable table(html);
  table.begin();
  table.numberTitle(tongue.say("To weigh"));
  for (const char* title : {"Food", "Preparation"}) table.title(tongue.say(title));
  table.numberTitle(tongue.say("Weighed, g"));
  table.end();
  for (const intake::BowlItem& item : bowl.bowl.items) {
    if (item.swappedOut) continue;
    const intake::KitchenFood food = foodOf(item.food);
    const auto weighed = intake::entryThatCounts(item.weighings);
    table.begin();
    table.number(portionText(item.planned, food, tongue));
    table.text(foodTitle(food, tongue) + (item.swap ? tongue.say(" (swapped in)") : "") +
               (food.inStock ? "" : tongue.say(" (not in stock)")));
    table.text(item.preparation);
    table.number(weighed ? tongue.number(gramsText(weighed->actual, food.step)) : "______");
    table.end();
  }
}

void addAllowances(std::string& html, const PrepBowl& bowl, const FoodLookup& foodOf,
                   const PageTongue& tongue) {
  for (const diet::Allowance& allowance : bowl.allowances)
    paragraph(html,
              tongue.say("Without weighing, for each animal: {} … {} g {} ({}){}",
                         tongue.number(shortNumber(allowance.low.value())),
                         tongue.number(shortNumber(allowance.high.value())),
                         foodTitle(foodOf(allowance.food), tongue), tongue.say(symbolOf(allowance.purpose)),
                         allowance.note.empty() ? std::string() : ": " + allowance.note));
}

void addTotals(std::string& html, const PrepSheet& sheet, const PageTongue& tongue) {
  if (sheet.totals.empty()) return;
  heading(html, tongue.say("The kitchen needs"));
  HtmlTable table(html);
  table.begin();
  table.numberTitle(tongue.say("In the bowls"));
  for (const char* title : {"Food", "Raw, bought", "Preparation"}) table.title(tongue.say(title));
  table.numberTitle(tongue.say("Bowls"));
  table.end();
  for (const KitchenTotal& total : sheet.totals) {
    table.begin();
    table.number(portionText(total.amount, total.food, tongue));
    table.text(foodTitle(total.food, tongue));
    table.text(rawText(total, tongue));
    table.text(total.preparations);
    table.number(std::to_string(total.bowls));
    table.end();
  }
}

void addAhead(std::string& html, const char* title, const std::vector<KitchenTotal>& totals,
              const PageTongue& tongue) {
  if (totals.empty()) return;
  heading(html, tongue.say(title));
  for (const KitchenTotal& total : totals) paragraph(html, "☐ " + aheadText(total, tongue));
}

void addFoot(std::string& html, const PrepSheet& sheet, const PageTongue& tongue) {
  for (const intake::GroupWithoutBowl& group : sheet.withoutBowl)
    paragraph(html, tongue.say("No bowl for {}: {}.", group.name, tongue.say(reasonText(group.why))));
  if (!sheet.cautions.empty()) heading(html, tongue.say("Cautions"));
  for (const std::string& caution : sheet.cautions) paragraph(html, caution);
  heading(html, tongue.say("Always"));
  for (const std::string_view rule : hygieneRules()) paragraph(html, tongue.say(rule));
  paragraph(html, tongue.say(kCaution), "small");
}

}  // namespace

std::string prepSheetAsHtml(const PrepSheet& sheet, const FoodLookup& foodOf, const PageTongue& tongue) {
  const std::string title = fmt::format("{}, {}", sheet.section, tongue.day(sheet.day));
  std::string html = htmlHead(title, kStyle);
  html += "<h1>" + escaped(title) + "</h1>\n";
  if (sheet.invented) paragraph(html, tongue.say(kInventedMark), "invented");
  for (const PrepBowl& bowl : sheet.bowls) {
    addBowl(html, bowl, foodOf, tongue);
    addAllowances(html, bowl, foodOf, tongue);
  }
  addTotals(html, sheet, tongue);
  addAhead(html, "Out of the freezer today, for tomorrow", sheet.thawForTomorrow, tongue);
  addAhead(html, "Feed well today: live food of tomorrow", sheet.gutLoadForTomorrow, tongue);
  addFoot(html, sheet, tongue);
  return html + std::string(kHtmlEnd);
}

std::string bowlLabelsAsHtml(const PrepSheet& sheet, const PageTongue& tongue) {
  std::string html = htmlHead(tongue.say("Bowl labels"), kLabelStyle) + "<table>\n";
  std::size_t place = 0;
  for (const PrepBowl& bowl : sheet.bowls) {
    if (place % 2 == 0) html += "<tr>";
    html += "<td>";
    paragraph(html, bowl.bowl.label, "name");
    paragraph(html, fmt::format("{}, {}", sheet.section, tongue.day(sheet.day)));
    paragraph(html, bowlFacts(bowl, tongue));
    if (sheet.invented) paragraph(html, tongue.say("Invented sample: not for feeding."));
    html += ++place % 2 == 0 ? "</td></tr>\n" : "</td>";
  }
  if (place % 2 == 1) html += "<td></td></tr>\n";
  return html + "</table>\n" + std::string(kHtmlEnd);
}

}  // namespace tarebowl::exchange
