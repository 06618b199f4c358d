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

std::string bowlFacts(const PrepBowl& bowl) {
  std::string text = bowl.bowl.animals == 1 ? "1 animal" : fmt::format("{} animals", bowl.bowl.animals);
  text += fmt::format(", {} g in all", shortNumber(bowl.total().value()));
  if (bowl.phaseDay > 0)
    text += fmt::format(", a new diet is phased in: day {} of {}", bowl.phaseDay, bowl.phaseDays);
  return text;
}

void addBowl(std::string& html, const PrepBowl& bowl, const FoodLookup& foodOf) {
  html += "<h2>" + escaped(bowl.bowl.label) + "</h2>\n";
  paragraph(html, bowlFacts(bowl));
  HtmlTable table(html);
  table.begin();
  table.numberTitle("To weigh");
  for (const char* title : {"Food", "Preparation"}) table.title(title);
  table.numberTitle("Weighed, g");
  table.end();
  for (const intake::BowlItem& item : bowl.bowl.items) {
    if (item.swappedOut) continue;
    const intake::KitchenFood food = foodOf(item.food);
    const auto weighed = intake::entryThatCounts(item.weighings);
    table.begin();
    table.number(portionText(item.planned, food));
    table.text(foodTitle(food) + (item.swap ? " (swapped in)" : "") +
               (food.inStock ? "" : " (not in stock)"));
    table.text(item.preparation);
    table.number(weighed ? gramsText(weighed->actual, food.step) : "______");
    table.end();
  }
}

void addAllowances(std::string& html, const PrepBowl& bowl, const FoodLookup& foodOf) {
  for (const diet::Allowance& allowance : bowl.allowances)
    paragraph(html, fmt::format("Without weighing, for each animal: {} … {} g {} ({}){}",
                                shortNumber(allowance.low.value()), shortNumber(allowance.high.value()),
                                foodTitle(foodOf(allowance.food)), symbolOf(allowance.purpose),
                                allowance.note.empty() ? "" : ": " + allowance.note));
}

void addTotals(std::string& html, const PrepSheet& sheet) {
  if (sheet.totals.empty()) return;
  html += "<h2>The kitchen needs</h2>\n";
  HtmlTable table(html);
  table.begin();
  table.numberTitle("In the bowls");
  for (const char* title : {"Food", "Raw, bought", "Preparation"}) table.title(title);
  table.numberTitle("Bowls");
  table.end();
  for (const KitchenTotal& total : sheet.totals) {
    table.begin();
    table.number(portionText(total.amount, total.food));
    table.text(foodTitle(total.food));
    table.text(rawText(total));
    table.text(total.preparations);
    table.number(std::to_string(total.bowls));
    table.end();
  }
}

void addAhead(std::string& html, const char* title, const std::vector<KitchenTotal>& totals) {
  if (totals.empty()) return;
  html += fmt::format("<h2>{}</h2>\n", title);
  for (const KitchenTotal& total : totals) paragraph(html, "☐ " + aheadText(total));
}

void addFoot(std::string& html, const PrepSheet& sheet) {
  for (const intake::GroupWithoutBowl& group : sheet.withoutBowl)
    paragraph(html, fmt::format("No bowl for {}: {}.", group.name, reasonText(group.why)));
  if (!sheet.cautions.empty()) html += "<h2>Cautions</h2>\n";
  for (const std::string& caution : sheet.cautions) paragraph(html, caution);
  html += "<h2>Always</h2>\n";
  for (const std::string_view rule : hygieneRules()) paragraph(html, rule);
  paragraph(html, kCaution, "small");
}

}  // namespace

std::string prepSheetAsHtml(const PrepSheet& sheet, const FoodLookup& foodOf) {
  const std::string title = fmt::format("{}, {}", sheet.section, quantity::isoDate(sheet.day));
  std::string html = htmlHead(title, kStyle);
  html += "<h1>" + escaped(title) + "</h1>\n";
  if (sheet.invented) paragraph(html, kInventedMark, "invented");
  for (const PrepBowl& bowl : sheet.bowls) {
    addBowl(html, bowl, foodOf);
    addAllowances(html, bowl, foodOf);
  }
  addTotals(html, sheet);
  addAhead(html, "Out of the freezer today, for tomorrow", sheet.thawForTomorrow);
  addAhead(html, "Feed well today: live food of tomorrow", sheet.gutLoadForTomorrow);
  addFoot(html, sheet);
  return html + std::string(kHtmlEnd);
}

std::string bowlLabelsAsHtml(const PrepSheet& sheet) {
  std::string html = htmlHead("Bowl labels", kLabelStyle) + "<table>\n";
  std::size_t place = 0;
  for (const PrepBowl& bowl : sheet.bowls) {
    if (place % 2 == 0) html += "<tr>";
    html += "<td>";
    paragraph(html, bowl.bowl.label, "name");
    paragraph(html, fmt::format("{}, {}", sheet.section, quantity::isoDate(sheet.day)));
    paragraph(html, bowlFacts(bowl));
    if (sheet.invented) paragraph(html, "Invented sample: not for feeding.");
    html += ++place % 2 == 0 ? "</td></tr>\n" : "</td>";
  }
  if (place % 2 == 1) html += "<td></td></tr>\n";
  return html + "</table>\n" + std::string(kHtmlEnd);
}

}  // namespace tarebowl::exchange
