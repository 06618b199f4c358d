// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/health_table.h"

#include "app/text_table.h"
#include "core/exchange/health_sentences.h"
#include "core/exchange/uncertain_text.h"
#include "core/exchange/wording.h"
#include "core/health/health_words.h"

#include <fmt/format.h>

namespace tarebowl::app {

namespace {

using exchange::shortNumber;
using quantity::isoDate;
constexpr auto kRight = TextTable::Align::Right;

std::string strandsText(const health::CalciumReview& review) {
  TextTable table({{"per animal and day"},
                   {"offered", kRight},
                   {"eaten", kRight},
                   {"per kg body", kRight},
                   {"per kg DM", kRight},
                   {"days", kRight}});
  for (const health::Strand& strand : review.strands) {
    table.addRow(
        {fmt::format("{}, {}", food::describe(strand.nutrient).name, exchange::symbolFor(strand.nutrient)),
         shortNumber(strand.offered.perDay), exchange::uncertainText(strand.eaten.perDay, strand.eatenSd),
         shortNumber(strand.eaten.perKgBody), shortNumber(strand.eaten.perKgDryMatter),
         std::to_string(strand.known)});
  }
  table.addRow({"Ca:P", shortNumber(review.ratioOffered),
                exchange::uncertainText(review.ratioEaten, review.ratioSd), "", "", ""});
  return table.text();
}

std::string zonesText(const health::CalciumReview& review) {
  TextTable table({{"target"},
                   {"zone", kRight},
                   {"offered", kRight},
                   {"eaten", kRight},
                   {"as eaten"},
                   {"with the dose"}});
  for (std::size_t i = 0; i < review.zones.size(); ++i) {
    const health::CalciumZone& zone = review.zones[i];
    const bool after = review.advice && review.advice->dose.grams;
    table.addRow({exchange::zoneTitle(zone), exchange::zoneText(zone.offered.min, zone.offered.max),
                  shortNumber(zone.offered.value), exchange::uncertainText(zone.eaten.value, zone.eaten.sd),
                  std::string(exchange::stateText(zone.eaten.state)),
                  after ? fmt::format("{} {}", shortNumber(review.advice->after[i].eaten.value),
                                      exchange::stateText(review.advice->after[i].eaten.state))
                        : ""});
  }
  return table.text();
}

std::string marked(const exchange::HealthSubjectLine& subject) {
  return subject.invented ? "INVENTED SAMPLE: all of this is made up.\n" : "";
}

}  // namespace

std::string calciumTable(const exchange::CalciumPage& page) {
  const health::CalciumReview& review = page.review;
  std::string text =
      fmt::format("Calcium of {}, {} to {}\n{}{}\n\n", page.subject.name, isoDate(review.from),
                  isoDate(review.to), marked(page.subject), exchange::coverageSentence(review));
  text += strandsText(review) + '\n';
  if (!review.zones.empty()) text += zonesText(review) + '\n';
  text += exchange::doseSentence(page) + '\n';
  text += exchange::oxalateSentence(review.oxalate) + '\n';
  text += exchange::phytateSentence(review.phytate) + '\n';
  for (const std::string& caution : exchange::cautionsOf(page)) text += caution + '\n';
  return text + '\n' + std::string(exchange::kCaution);
}

std::string lookBackTable(const exchange::LookBackPage& page) {
  const health::LookBack& found = page.lookBack;
  std::string text =
      fmt::format("{}, {} on {}\n{}{}\n", page.subject.name, animal::symbolOf(page.kind),
                  isoDate(found.sign.day), marked(page.subject), exchange::comparedSentence(page));
  if (!found.signHasIntake) text += "? No intake was recorded in the hours before this sign.\n";
  text += '\n';
  for (const health::Difference& difference : found.differences)
    text += exchange::differenceSentence(difference, page.subject) + '\n';
  TextTable table({{"food"}, {"sign"}, {"Fisher", kRight}, {"corrected", kRight}, {"risk ratio", kRight}});
  for (const health::FoodLink& link : found.foods)
    table.addRow(
        {page.subject.foodName(link.food) + (link.newFood ? " (new)" : ""), exchange::countsSentence(link),
         link.days.comparable() ? exchange::chanceText(link.test.twoSided) : "",
         link.days.comparable() ? exchange::chanceText(link.corrected) : "nothing to compare",
         link.risk ? fmt::format("{} ({} … {}){}", shortNumber(link.risk->ratio), shortNumber(link.risk->low),
                                 shortNumber(link.risk->high), link.risk->halfAdded ? " ½ added" : "")
                   : ""});
  return text + '\n' + table.text() + '\n' + std::string(exchange::kAssociation) + '\n' +
         std::string(exchange::kCaution);
}

}  // namespace tarebowl::app
