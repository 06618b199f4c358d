// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/study_plan_page.h"

#include "core/exchange/html_text.h"
#include "core/exchange/sheet_words.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;
using quantity::isoDate;

constexpr const char* kStyle =
    "@page { size: A4; margin: 14mm }\n"
    "body { font-family: sans-serif; font-size: 10pt; color: #000000; margin: 0 }\n"
    "h1 { font-size: 15pt; margin: 0 0 3pt 0 }\n"
    "h2 { font-size: 11pt; margin: 8pt 0 2pt 0 }\n"
    "p { margin: 3pt 0 }\n"
    "table { border-collapse: collapse; width: 100% }\n"
    "th, td { border-bottom: 1px solid #999999; padding: 2px 4px; text-align: left; vertical-align: top }\n"
    ".invented { border: 1pt solid #000000; padding: 2pt; font-weight: bold }\n"
    ".small { font-size: 8pt }\n";

std::string unitOf(const StudyPlanToWrite& plan) {
  return plan.nutrient ? std::string(quantity::symbolOf(food::describe(*plan.nutrient).unit)) : "g";
}

std::string nameOf(const StudyPlanToWrite& plan, const std::string& food) {
  const auto found = plan.foodNames.find(food);
  return found == plan.foodNames.end() || found->second.empty() ? food : found->second;
}

std::string foodsText(const StudyPlanToWrite& plan, const std::vector<std::string>& foods) {
  std::string text;
  for (const std::string& food : foods) text += (text.empty() ? "" : ", ") + nameOf(plan, food);
  return text;
}

std::string panText(const StudyPlanToWrite& plan, const intake::PanWanted& pan) {
  return fmt::format("{}: one of {}", pan.foodClass.empty() ? "foods without a group" : pan.foodClass,
                     foodsText(plan, pan.foods));
}

std::string titleOf(const StudyPlanToWrite& plan) {
  return fmt::format("Plan of an intake study: {}, {} to {}", plan.groupName, isoDate(plan.first),
                     isoDate(plan.last()));
}

void addList(std::string& html, const std::vector<std::string>& lines) {
  for (const std::string& line : lines) paragraph(html, line);
}

/// To tick off: a row a day.
void addDays(std::string& html, const StudyPlanToWrite& plan) {
  HtmlTable table(html);
  table.begin();
  for (const char* const title :
       {"Day", "Bowls weighed in", "Pans put out", "Leftovers weighed", "Pans weighed"})
    table.title(title);
  table.end();
  for (int day = 0; day < plan.plan.days; ++day) {
    table.begin();
    table.text(isoDate(std::chrono::sys_days(plan.first) + std::chrono::days(day)));
    for (int box = 0; box < 4; ++box) table.text("☐");
    table.end();
  }
}

}  // namespace

std::string subjectText(const StudyPlanToWrite& plan) {
  return fmt::format("{}, {} per animal and day",
                     plan.nutrient ? std::string(food::describe(*plan.nutrient).name) : "All food as fed",
                     unitOf(plan));
}

std::vector<std::string> reasonsOf(const StudyPlanToWrite& plan) {
  const intake::DayVariation& seen = plan.plan.variation;
  const double confidence = plan.plan.precision.confidence;
  std::vector<std::string> lines{
      fmt::format("{}, {} to {}: so many days for the mean of {} to be known to ± {} {} ({} of it) with {} "
                  "confidence.",
                  counted(static_cast<std::size_t>(plan.plan.days), "day", "days"), isoDate(plan.first),
                  isoDate(plan.last()), subjectText(plan), shortNumber(plan.plan.precision.halfWidth),
                  unitOf(plan), percentText(plan.plan.precision.halfWidth / seen.mean),
                  percentText(confidence)),
      fmt::format("Planned by the animals' own days from {} to {}: on {} all was known, with a mean of {} {} "
                  "and {} {} from day to day (standard deviation).",
                  isoDate(plan.learnedFrom), isoDate(plan.learnedUntil), counted(seen.days, "day", "days"),
                  shortNumber(seen.mean), unitOf(plan), shortNumber(seen.sd), unitOf(plan))};
  if (seen.lag1 > 0.0)
    lines.push_back(
        fmt::format("A day resembles the one before it (correlation {:.2f}) and tells less than a day "
                    "of its own: it is planned with {} {}.",
                    seen.lag1, shortNumber(seen.sdForPlanning()), unitOf(plan)));
  return lines;
}

std::vector<std::string> stepsOf(const StudyPlanToWrite& plan) {
  std::vector<std::string> lines{
      fmt::format("Print the sheet of {} for each day, and weigh every food into its bowl.",
                  plan.section.empty() ? "the section" : plan.section),
      fmt::format("Weigh back, each day and food by food: {}.", foodsText(plan, plan.plan.foods))};
  for (const intake::PanWanted& pan : plan.plan.pans)
    lines.push_back(fmt::format("Put out a control pan in {} each day, out of the animals' reach: {}.",
                                pan.place.empty() ? "the same place" : pan.place, panText(plan, pan)));
  lines.push_back(fmt::format("The last leftovers and pans are weighed on {}.",
                              isoDate(std::chrono::sys_days(plan.last()) + std::chrono::days(1))));
  return lines;
}

std::string studyPlanAsJson(const StudyPlanToWrite& plan) {
  const intake::DayVariation& seen = plan.plan.variation;
  Json json{{"format", kStudyPlanFormat}, {"group", plan.group}, {"name", plan.groupName}};
  if (plan.invented) json["invented"] = true;
  json["nutrient"] = plan.nutrient ? Json(food::describe(*plan.nutrient).tagname) : Json(nullptr);
  json["unit"] = unitOf(plan);
  json["days"] = plan.plan.days;
  json["from"] = isoDate(plan.first);
  json["to"] = isoDate(plan.last());
  json["half_width"] = plan.plan.precision.halfWidth;
  json["confidence"] = plan.plan.precision.confidence;
  json["history"] = {{"from", isoDate(plan.learnedFrom)},
                     {"to", isoDate(plan.learnedUntil)},
                     {"days_known", seen.days},
                     {"mean", seen.mean},
                     {"sd", seen.sd},
                     {"correlation_with_day_before", seen.lag1},
                     {"sd_for_planning", seen.sdForPlanning()}};
  json["foods"] = plan.plan.foods;
  json["pans"] = Json::array();
  for (const intake::PanWanted& pan : plan.plan.pans)
    json["pans"].push_back({{"place", pan.place}, {"food_class", pan.foodClass}, {"foods", pan.foods}});
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

std::string studyPlanAsText(const StudyPlanToWrite& plan) {
  std::string text = titleOf(plan) + '\n';
  if (plan.invented) text += std::string(kInventedMark) + '\n';
  for (const std::string& line : reasonsOf(plan)) text += line + '\n';
  text += '\n';
  for (const std::string& line : stepsOf(plan)) text += "- " + line + '\n';
  return text;
}

std::string studyPlanAsHtml(const StudyPlanToWrite& plan) {
  const std::string title = titleOf(plan);
  std::string html = htmlHead(title, kStyle) + "<h1>" + escaped(title) + "</h1>\n";
  if (plan.invented) paragraph(html, kInventedMark, "invented");
  addList(html, reasonsOf(plan));
  html += "<h2>Each day</h2>\n";
  addList(html, stepsOf(plan));
  addDays(html, plan);
  paragraph(html, kCaution, "small");
  return html + std::string(kHtmlEnd);
}

}  // namespace tarebowl::exchange
