// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/rotation_page.h"

#include "core/diet/rotation_purchase.h"
#include "core/exchange/html_text.h"
#include "core/exchange/line_words.h"
#include "core/exchange/rotation_json.h"
#include "core/exchange/sheet_words.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace tarebowl::exchange {

namespace {

constexpr int kDaysOfWeek = 7;

constexpr const char* kStyle =
    "@page { size: A4 landscape; margin: 10mm }\n"
    "body { font-family: sans-serif; font-size: 9pt; line-height: 1.2; color: #000000; margin: 0 }\n"
    "h1 { font-size: 14pt; margin: 0 0 2pt 0 }\n"
    "h2 { font-size: 10pt; margin: 7pt 0 2pt 0 }\n"
    "p { margin: 1pt 0 }\n"
    "table { border-collapse: collapse; width: 100% }\n"
    "th, td { border-bottom: 1px solid #999999; padding: 1px 5px; text-align: left }\n"
    ".number { text-align: right; white-space: nowrap }\n"
    ".invented { border: 1pt solid #000000; padding: 2pt; font-weight: bold }\n";

void addWeek(std::string& html, const RotationPage& page, int first, const PageTongue& tongue) {
  const int end = std::min(static_cast<int>(page.days.size()), first + kDaysOfWeek);
  heading(html, tongue.say("Grams per animal, as fed: {} to {}", tongue.day(dateOfDay(page.from, first)),
                           tongue.day(dateOfDay(page.from, end - 1))));
  HtmlTable table(html);
  table.begin();
  table.title(tongue.say("Food"));
  for (int day = first; day < end; ++day) table.numberTitle(tongue.shortDay(dateOfDay(page.from, day)));
  table.end();
  for (std::size_t food = 0; food < page.problem.base.foods.size(); ++food) {
    const auto grams = [&](int day) { return page.days[static_cast<std::size_t>(day)][food]; };
    bool isFed = false;
    for (int day = first; day < end; ++day) isFed = isFed || grams(day).value() > 0.0;
    if (!isFed) continue;
    table.begin();
    table.text(nameOf(page.problem.base.foods[food]));
    for (int day = first; day < end; ++day)
      table.number(grams(day).value() > 0.0
                       ? tongue.number(gramsText(grams(day), page.problem.base.foods[food].scaleStep))
                       : "·");
    table.end();
  }
}

std::string orderText(quantity::Kilograms mass, const PageTongue& tongue) {
  return tongue.number(fmt::format("{:.3f}", mass.value()));
}

/// "?" where it is not known what is lost on the way to the bowl.
std::string boughtText(quantity::Kilograms mass, bool lossIsKnown, const PageTongue& tongue) {
  return orderText(mass, tongue) + (lossIsKnown ? "" : " ?");
}

void addPurchase(std::string& html, const RotationPage& page, const PageTongue& tongue) {
  const auto lines = diet::purchaseList(page.problem, page.days);
  if (lines.empty()) return;
  heading(html,
          tongue.say("To buy for {}", tongue.counted(static_cast<std::size_t>(page.problem.base.eater.count),
                                                     "{} animal", "{} animals")));
  HtmlTable table(html);
  table.begin();
  for (const char* title : {"Week", "Group", "Food"}) table.title(tongue.say(title));
  table.numberTitle(tongue.say("Offered, kg"));
  table.numberTitle(tongue.say("To buy, kg"));
  table.end();
  for (const diet::PurchaseLine& line : lines) {
    const diet::DietFood& food = page.problem.base.foods[line.food];
    table.begin();
    table.text(tongue.day(dateOfDay(page.from, line.week * kDaysOfWeek)));
    table.text(food.group);
    table.text(nameOf(food));
    table.number(orderText(line.offered, tongue));
    table.number(boughtText(line.bought, line.lossIsKnown, tongue));
    table.end();
  }
  for (const diet::PurchaseOfGroup& group : diet::byGroup(page.problem, lines)) {
    table.begin();
    table.text(tongue.day(dateOfDay(page.from, group.week * kDaysOfWeek)));
    table.text(group.group);
    table.text(tongue.say("in all"));
    table.number(orderText(group.offered, tongue));
    table.number(boughtText(group.bought, group.lossIsKnown, tongue));
    table.end();
  }
}

void addStanding(std::string& html, const RotationPage& page, const PageTongue& tongue) {
  heading(html, tongue.say("The mean day against the targets"));
  const diet::BalanceProblem zoned = diet::zonedProblem(page.problem.base, page.problem.rules.period);
  HtmlTable table(html);
  table.begin();
  for (const char* title : {"Target", "Value", "Zone", "Unit", "State"}) table.title(tongue.say(title));
  table.end();
  for (const diet::TargetBalance& line : page.period.targets) {
    const LineWords words = wordsOf(zoned, line, tongue);
    const auto scaled = [&](std::optional<double> bound) {
      return bound ? std::optional(*bound * words.scale) : std::nullopt;
    };
    table.begin();
    table.text(words.subject);
    table.text(tongue.number(valueText(line, words.scale)));
    table.text(tongue.number(zoneText(scaled(line.min), scaled(line.max))));
    table.text(words.unit);
    table.text(tongue.say(stateText(line.state)));
    table.end();
  }
}

}  // namespace

std::string rotationAsHtml(const RotationPage& page, const PageTongue& tongue) {
  std::string html = htmlHead(page.title, kStyle);
  html += "<h1>" + escaped(page.title) + "</h1>\n";
  if (page.problem.base.invented) paragraph(html, tongue.say(kInventedMark), "invented");
  paragraph(html, page.state);
  for (int first = 0; first < static_cast<int>(page.days.size()); first += kDaysOfWeek)
    addWeek(html, page, first, tongue);
  addPurchase(html, page, tongue);
  addStanding(html, page, tongue);
  paragraph(html, tongue.say(kCaution));
  html += kHtmlEnd;
  return html;
}

}  // namespace tarebowl::exchange
