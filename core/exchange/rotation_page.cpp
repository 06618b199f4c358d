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
#include <array>

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

std::string dayTitle(quantity::Date from, int day) {
  constexpr std::array<const char*, kDaysOfWeek> kNames{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
  const quantity::Date date = dateOfDay(from, day);
  const unsigned weekday = std::chrono::weekday(std::chrono::sys_days(date)).c_encoding();
  return fmt::format("{} {}", kNames[weekday], quantity::isoDate(date).substr(5));
}

void addWeek(std::string& html, const RotationPage& page, int first) {
  const int end = std::min(static_cast<int>(page.days.size()), first + kDaysOfWeek);
  html += fmt::format("<h2>Grams per animal, as fed: {} to {}</h2>\n",
                      quantity::isoDate(dateOfDay(page.from, first)),
                      quantity::isoDate(dateOfDay(page.from, end - 1)));
  HtmlTable table(html);
  table.begin();
  table.title("Food");
  for (int day = first; day < end; ++day) table.numberTitle(dayTitle(page.from, day));
  table.end();
  for (std::size_t food = 0; food < page.problem.base.foods.size(); ++food) {
    const auto grams = [&](int day) { return page.days[static_cast<std::size_t>(day)][food]; };
    bool isFed = false;
    for (int day = first; day < end; ++day) isFed = isFed || grams(day).value() > 0.0;
    if (!isFed) continue;
    table.begin();
    table.text(nameOf(page.problem.base.foods[food]));
    for (int day = first; day < end; ++day)
      table.number(grams(day).value() > 0.0 ? gramsText(grams(day), page.problem.base.foods[food].scaleStep)
                                            : "·");
    table.end();
  }
}

void addPurchase(std::string& html, const RotationPage& page) {
  const auto lines = diet::purchaseList(page.problem, page.days);
  if (lines.empty()) return;
  html += fmt::format("<h2>To buy for {}</h2>\n",
                      counted(static_cast<std::size_t>(page.problem.base.eater.count), "animal", "animals"));
  HtmlTable table(html);
  table.begin();
  for (const char* title : {"Week", "Group", "Food"}) table.title(title);
  table.numberTitle("Offered, kg");
  table.numberTitle("To buy, kg");
  table.end();
  for (const diet::PurchaseLine& line : lines) {
    const diet::DietFood& food = page.problem.base.foods[line.food];
    table.begin();
    table.text(quantity::isoDate(dateOfDay(page.from, line.week * kDaysOfWeek)));
    table.text(food.group);
    table.text(nameOf(food));
    table.number(fmt::format("{:.3f}", line.offered.value()));
    table.number(fmt::format("{:.3f}{}", line.bought.value(), line.lossIsKnown ? "" : " ?"));
    table.end();
  }
  for (const diet::PurchaseOfGroup& group : diet::byGroup(page.problem, lines)) {
    table.begin();
    table.text(quantity::isoDate(dateOfDay(page.from, group.week * kDaysOfWeek)));
    table.text(group.group);
    table.text("in all");
    table.number(fmt::format("{:.3f}", group.offered.value()));
    table.number(fmt::format("{:.3f}{}", group.bought.value(), group.lossIsKnown ? "" : " ?"));
    table.end();
  }
}

void addStanding(std::string& html, const RotationPage& page) {
  html += "<h2>The mean day against the targets</h2>\n";
  const diet::BalanceProblem zoned = diet::zonedProblem(page.problem.base, page.problem.rules.period);
  HtmlTable table(html);
  table.begin();
  for (const char* title : {"Target", "Value", "Zone", "Unit", "State"}) table.title(title);
  table.end();
  for (const diet::TargetBalance& line : page.period.targets) {
    const LineWords words = wordsOf(zoned, line);
    const auto scaled = [&](std::optional<double> bound) {
      return bound ? std::optional(*bound * words.scale) : std::nullopt;
    };
    table.begin();
    table.text(words.subject);
    table.text(valueText(line, words.scale));
    table.text(zoneText(scaled(line.min), scaled(line.max)));
    table.text(words.unit);
    table.text(stateText(line.state));
    table.end();
  }
}

}  // namespace

std::string rotationAsHtml(const RotationPage& page) {
  std::string html = htmlHead(page.title, kStyle);
  html += "<h1>" + escaped(page.title) + "</h1>\n";
  if (page.problem.base.invented) paragraph(html, kInventedMark, "invented");
  paragraph(html, page.state);
  for (int first = 0; first < static_cast<int>(page.days.size()); first += kDaysOfWeek)
    addWeek(html, page, first);
  addPurchase(html, page);
  addStanding(html, page);
  paragraph(html, kCaution);
  html += kHtmlEnd;
  return html;
}

}  // namespace tarebowl::exchange
