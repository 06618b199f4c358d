// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/health_page.h"
#include "core/exchange/health_sentences.h"
#include "core/exchange/html_text.h"
#include "core/exchange/sheet_words.h"
#include "core/exchange/uncertain_text.h"
#include "core/exchange/wording.h"
#include "core/health/health_words.h"

#include <fmt/format.h>

namespace tarebowl::exchange {

namespace {

using quantity::isoDate;

constexpr const char* kStyle =
    "@page { size: A4; margin: 12mm }\n"
    "body { font-family: sans-serif; font-size: 9pt; line-height: 1.2; color: #000000; margin: 0 }\n"
    "h1 { font-size: 15pt; margin: 0 0 2pt 0 }\n"
    "h2 { font-size: 11pt; margin: 7pt 0 1pt 0 }\n"
    "p { margin: 2pt 0 }\n"
    "table { border-collapse: collapse; width: 100% }\n"
    "th, td { border-bottom: 1px solid #999999; padding: 1px 4px; text-align: left; vertical-align: top }\n"
    "th { font-size: 8pt }\n"
    ".number { text-align: right; white-space: nowrap }\n"
    ".invented { border: 1pt solid #000000; padding: 2pt; font-weight: bold }\n"
    ".answer { font-weight: bold }\n"
    ".small { font-size: 8pt }\n";

std::string begin(const HealthSubjectLine& subject, const std::string& title) {
  std::string html = htmlHead(title, kStyle) + "<h1>" + escaped(title) + "</h1>\n";
  if (subject.invented) paragraph(html, kInventedMark, "invented");
  std::string who = fmt::format("{}, {}", subject.species,
                                counted(static_cast<std::size_t>(subject.animals), "animal", "animals"));
  who +=
      subject.bodyMass ? fmt::format(", {} kg each", shortNumber(subject.bodyMass)) : ", body mass not known";
  paragraph(html, who);
  return html;
}

void addStrands(std::string& html, const health::CalciumReview& review) {
  HtmlTable table(html);
  table.begin();
  table.title("Per animal and day");
  for (const char* title :
       {"offered", "eaten", "± day to day", "eaten per kg body", "eaten per kg DM", "known days"})
    table.numberTitle(title);
  table.end();
  for (const health::Strand& strand : review.strands) {
    table.begin();
    table.text(fmt::format("{}, {}", food::describe(strand.nutrient).name, symbolFor(strand.nutrient)));
    table.number(shortNumber(strand.offered.perDay));
    table.number(uncertainText(strand.eaten.perDay, strand.eatenSd));
    table.number(shortNumber(strand.dayToDaySd));
    table.number(shortNumber(strand.eaten.perKgBody));
    table.number(shortNumber(strand.eaten.perKgDryMatter));
    table.number(std::to_string(strand.known));
    table.end();
  }
  table.begin();
  table.text("Ca:P");
  table.number(shortNumber(review.ratioOffered));
  table.number(uncertainText(review.ratioEaten, review.ratioSd));
  for (int i = 0; i < 4; ++i) table.number("");
  table.end();
}

std::string originText(const animal::TargetOrigin& origin) {
  std::string text = origin.source;
  if (!origin.modelSpecies.empty()) text += fmt::format(" (model species: {})", origin.modelSpecies);
  return text.empty() ? "no source stated" : text;
}

void addZones(std::string& html, const CalciumPage& page) {
  html += "<h2>Against the targets in force</h2>\n";
  if (page.review.zones.empty()) {
    paragraph(html, "No target of calcium, phosphorus, magnesium or vitamin D is in force.");
    return;
  }
  HtmlTable table(html);
  table.begin();
  table.title("Target");
  for (const char* title : {"zone", "offered", "eaten"}) table.numberTitle(title);
  for (const char* title : {"as eaten", "with the dose", "source"}) table.title(title);
  table.end();
  const auto& advice = page.review.advice;
  for (std::size_t i = 0; i < page.review.zones.size(); ++i) {
    const health::CalciumZone& zone = page.review.zones[i];
    table.begin();
    table.text(zoneTitle(zone));
    const diet::TargetBalance& known = zone.offered.id.empty() ? zone.eaten : zone.offered;
    table.number(zoneText(known.min, known.max));
    table.number(shortNumber(zone.offered.value));
    table.number(uncertainText(zone.eaten.value, zone.eaten.sd));
    table.text(stateText(zone.eaten.state));
    table.text(advice && advice->dose.grams && i < advice->after.size()
                   ? fmt::format("{} {}", shortNumber(advice->after[i].eaten.value),
                                 stateText(advice->after[i].eaten.state))
                   : "");
    table.text(originText(zone.origin));
    table.end();
  }
}

void addSensitivity(std::string& html, const health::SupplementAdvice& advice) {
  if (!advice.dose.grams) return;
  HtmlTable table(html);
  table.begin();
  for (const char* title : {"If retained", "and eaten", "least dose, g", "Ca:P with the dose above"})
    table.numberTitle(title);
  table.end();
  for (const health::DoseSensitivity& other : advice.sensitivity) {
    table.begin();
    table.number(percentText(other.retained));
    table.number(percentText(other.eaten));
    table.number(shortNumber(other.dose.grams) +
                 (other.dose.answer == health::DoseAnswer::CrossesALimit ? " (crosses a maximum)" : ""));
    table.number(shortNumber(other.caPAtAnswer));
    table.end();
  }
}

void addBlood(std::string& html, const CalciumPage& page) {
  if (page.blood.empty()) return;
  html += "<h2>Blood</h2>\n";
  HtmlTable table(html);
  table.begin();
  for (const char* title : {"Day", "Of", "Analyte"}) table.title(title);
  for (const char* title : {"as reported", "lab's range", "in common units"}) table.numberTitle(title);
  table.end();
  for (const BloodLine& line : page.blood) {
    const health::BloodUnit common = health::commonUnit(line.value.analyte);
    table.begin();
    table.text(isoDate(line.day));
    table.text(line.who);
    table.text(animal::symbolOf(line.value.analyte));
    table.number(fmt::format("{} {}", shortNumber(line.value.value), health::symbolOf(line.value.unit)));
    table.number(zoneText(line.value.low, line.value.high));
    table.number(
        fmt::format("{} {}", shortNumber(health::inUnit(line.value, common)), health::symbolOf(common)));
    table.end();
  }
}

/// First and last weighing of each animal: the trend in one line.
void addMasses(std::string& html, const CalciumPage& page) {
  std::map<std::string, std::pair<MassLine, MassLine>> ends;
  for (const MassLine& mass : page.masses) {
    const auto [at, fresh] = ends.try_emplace(mass.who, std::pair(mass, mass));
    if (!fresh) at->second.second = mass;
  }
  std::string text;
  for (const auto& [who, pair] : ends)
    text += fmt::format("{}{}: {} kg on {} → {} kg on {}", text.empty() ? "Body mass. " : "; ", who,
                        shortNumber(pair.first.kilograms), isoDate(pair.first.day),
                        shortNumber(pair.second.kilograms), isoDate(pair.second.day));
  paragraph(html, text.empty() ? "Body mass: nobody was weighed in this period." : text + ".");
}

void addDiets(std::string& html, const CalciumPage& page) {
  std::string text;
  for (const DietLine& diet : page.diets)
    text +=
        fmt::format("{}{} from {}", text.empty() ? "Fed by: " : ", ",
                    diet.diet.empty() ? "no recorded diet" : fmt::format("{}/{}", diet.diet, diet.version),
                    isoDate(diet.day));
  paragraph(html, text);
}

}  // namespace

std::string calciumPageAsHtml(const CalciumPage& page) {
  std::string html = begin(page.subject, fmt::format("Calcium review: {}, {} to {}", page.subject.name,
                                                     isoDate(page.review.from), isoDate(page.review.to)));
  paragraph(html, coverageSentence(page.review));
  addMasses(html, page);
  addDiets(html, page);
  addStrands(html, page.review);
  addZones(html, page);
  html += "<h2>Smallest addition</h2>\n";
  paragraph(html, doseSentence(page), "answer");
  if (page.review.advice) addSensitivity(html, *page.review.advice);
  html += "<h2>What may be bound</h2>\n";
  paragraph(html, oxalateSentence(page.review.oxalate));
  paragraph(html, phytateSentence(page.review.phytate));
  addBlood(html, page);
  html += "<h2>Cautions and sources</h2>\n";
  for (const std::string& caution : cautionsOf(page)) paragraph(html, caution, "small");
  if (!page.profile.empty()) paragraph(html, "Targets of " + page.profile + ".", "small");
  std::string sources;
  for (const std::string& source : page.sources)
    sources += (sources.empty() ? "Values of foods: " : "; ") + source;
  paragraph(html, sources, "small");
  paragraph(html, kCaution, "small");
  return html + std::string(kHtmlEnd);
}

std::string lookBackPageAsHtml(const LookBackPage& page) {
  const health::LookBack& found = page.lookBack;
  std::string html = begin(page.subject, fmt::format("Look-back: {}, {} on {}", page.subject.name,
                                                     animal::symbolOf(page.kind), isoDate(found.sign.day)));
  paragraph(html, comparedSentence(page));
  if (!found.signHasIntake)
    paragraph(html, "? No intake was recorded in the hours before this sign.", "answer");
  html += "<h2>Otherwise than usual before it</h2>\n";
  if (found.differences.empty()) paragraph(html, "Nothing that was recorded.");
  for (const health::Difference& difference : found.differences)
    paragraph(html, differenceSentence(difference, page.subject));
  html += "<h2>Over all days</h2>\n";
  {
    HtmlTable table(html);
    table.begin();
    for (const char* title : {"Food", "Sign"}) table.title(title);
    for (const char* title : {"Fisher, two-sided", "corrected", "risk ratio (95 %)"})
      table.numberTitle(title);
    table.end();
    for (const health::FoodLink& link : found.foods) {
      table.begin();
      table.text(page.subject.foodName(link.food) + (link.newFood ? " (new)" : ""));
      table.text(countsSentence(link));
      table.number(link.days.comparable() ? chanceText(link.test.twoSided) : "nothing to compare");
      table.number(link.days.comparable() ? chanceText(link.corrected) : "");
      table.number(link.risk ? fmt::format("{} ({} … {}){}", shortNumber(link.risk->ratio),
                                           shortNumber(link.risk->low), shortNumber(link.risk->high),
                                           link.risk->halfAdded ? " ½ added" : "")
                             : "");
      table.end();
    }
  }
  paragraph(html, fmt::format("Corrected for {} compared (Benjamini and Hochberg).",
                              counted(found.compared, "food", "foods")));
  paragraph(html, kAssociation, "answer");
  paragraph(html, kCaution, "small");
  return html + std::string(kHtmlEnd);
}

}  // namespace tarebowl::exchange
