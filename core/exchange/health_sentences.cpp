// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/health_sentences.h"

#include "core/exchange/wording.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace tarebowl::exchange {

using health::DifferenceKind;
using health::DoseAnswer;

std::string HealthSubjectLine::foodName(const std::string& code) const {
  const auto found = foodNames.find(code);
  return found == foodNames.end() ? code : found->second;
}

namespace {

std::string doseAndWhy(const health::SupplementAdvice& advice, const std::string& food, int animals) {
  return fmt::format("{} g {} a day in the bowl of {} (exactly {} g; {} of it retained, {} of that eaten)",
                     shortNumber(advice.dose.grams), food,
                     counted(static_cast<std::size_t>(animals), "animal", "animals"),
                     shortNumber(advice.dose.exact), percentText(advice.retained), percentText(advice.eaten));
}

/// "Calcium, g per kg DM (at most 25)": what the ids of maxima stand for.
std::string maxima(const health::CalciumReview& review, const std::vector<std::string>& ids) {
  std::vector<std::string> names;
  for (const std::string& id : ids) {
    const auto zone = std::ranges::find(review.zones, id, &health::CalciumZone::id);
    names.push_back(zone == review.zones.end()
                        ? id
                        : fmt::format("{} (at most {})", zoneTitle(*zone), shortNumber(zone->eaten.max)));
  }
  return fmt::format("{}", fmt::join(names, "; "));
}

std::string ifAllEaten(const health::CalciumReview& review) {
  const health::Dose& dose = review.advice->dose;
  if (dose.crossedIfAllEaten.empty()) return "";
  return fmt::format(" If all of it reached the mouth, over their maximum would be: {}.",
                     maxima(review, dose.crossedIfAllEaten));
}

}  // namespace

std::string doseSentence(const CalciumPage& page) {
  if (!page.review.advice)
    return page.review.completeDays == 0 ? "No dose: on no day of the period are all leftovers known."
                                         : "No supplement was chosen.";
  const health::SupplementAdvice& advice = *page.review.advice;
  const std::string food = page.subject.foodName(advice.food);
  const std::string dose = doseAndWhy(advice, food, page.subject.animals);
  switch (advice.dose.answer) {
    case DoseAnswer::NothingNeeded:
      return fmt::format("Calcium and Ca:P as eaten reach their minima: no {} is needed.{}", food,
                         advice.dose.crossed.empty() ? ""
                                                     : fmt::format(" Over their maximum: {}.",
                                                                   maxima(page.review, advice.dose.crossed)));
    case DoseAnswer::Found:
      return fmt::format("The least that brings calcium and Ca:P into zone: {}. Ca:P goes from {} to {}.{}{}",
                         dose, shortNumber(advice.caPBefore), shortNumber(advice.caPAfter),
                         advice.dose.most
                             ? fmt::format(" The upper limits allow {} g.", shortNumber(advice.dose.most))
                             : " No upper limit that is known is reached by it.",
                         ifAllEaten(page.review));
    case DoseAnswer::NotByThisFood:
      return fmt::format(
          "No amount of {} brings calcium and Ca:P into zone: it holds too little calcium for "
          "what else it brings.",
          food);
    case DoseAnswer::CrossesALimit:
      return fmt::format(
          "It would take {}, and that crosses a maximum: {}. Another supplement or another diet "
          "is needed.",
          dose, maxima(page.review, advice.dose.crossed));
    case DoseAnswer::NoTarget:
      return "No target in force says how much calcium or which Ca:P there should be.";
    case DoseAnswer::ContentUnknown:
      return fmt::format("Nobody has stated how much calcium {} holds.", food);
  }
  return "";
}

std::string oxalateSentence(const health::OxalateShare& share) {
  if (!share.couldBind) return "? Oxalate is known of no food eaten: what it binds cannot be said.";
  return fmt::format(
      "Estimate: oxalate could bind up to {} of the calcium of foods whose oxalate is known "
      "({} of the calcium eaten). Published oxalate values of one food differ up to tenfold.",
      percentText(*share.couldBind), percentText(share.known));
}

std::string phytateSentence(const health::PhytateShare& share) {
  if (!share.ofPhosphorus) return "? Phytate is known of no food eaten: phosphorus counts in full.";
  return fmt::format(
      "Of the phosphorus of foods whose phytate is known ({} of it), {} is in phytate; it counts "
      "in full here.",
      percentText(share.known), percentText(*share.ofPhosphorus));
}

std::string coverageSentence(const health::CalciumReview& review) {
  if (review.daysWithBowls == 0)
    return fmt::format(
        "No intake was recorded on any of these {} days: nothing is known, and nothing is "
        "counted as 0.",
        review.daysOfPeriod);
  return fmt::format(
      "Bowls were recorded on {} of {} days; on {} of them all leftovers are known, and zones "
      "rest on these. Days that are missing are not counted as 0.",
      review.daysWithBowls, review.daysOfPeriod, review.completeDays);
}

std::vector<std::string> cautionsOf(const CalciumPage& page) {
  std::vector<std::string> cautions{
      "Light, heat and ultraviolet B decide how much of this calcium is used; they are not in this page.",
      "± is one standard deviation from weighing, water and the scatter of lab values."};
  if (page.subject.sharesItsBowl)
    cautions.emplace_back(
        "This animal shares its bowl: its share is taken as that of each, which nobody "
        "measured.");
  if (page.review.advice)
    cautions.emplace_back(
        "Dust falls off: the retained share is assumed, and the table says what becomes of "
        "the dose where it is another.");
  for (const health::Strand& strand : page.review.strands)
    if (strand.known > 0 && strand.coverage < 0.995)
      cautions.push_back(
          fmt::format("{}: values are known for {} of the dry matter at least; the true amount "
                      "can only be more.",
                      food::describe(strand.nutrient).name, percentText(strand.coverage)));
  return cautions;
}

std::string countsSentence(const health::FoodLink& link) {
  return fmt::format("{} of {} days with it, {} of {} without", link.days.eatenSign, link.days.eaten(),
                     link.days.withoutSign, link.days.without());
}

std::string differenceSentence(const health::Difference& difference, const HealthSubjectLine& subject) {
  const std::string food = subject.foodName(difference.food);
  const std::string now = shortNumber(difference.now);
  const std::string usual = shortNumber(difference.usual);
  switch (difference.kind) {
    case DifferenceKind::NewFood:
      return fmt::format("New: {}, {} g eaten; never before in this period.", food, now);
    case DifferenceKind::MoreThanUsual:
      return fmt::format("More than usual: {}, {} g rather than {} g.", food, now, usual);
    case DifferenceKind::LessThanUsual:
      return fmt::format("Less than usual: {}, {} g rather than {} g.", food, now, usual);
    case DifferenceKind::NotOffered:
      return fmt::format("Not given: {}, usually {} g.", food, usual);
    case DifferenceKind::SwappedIn:
      return fmt::format("Swapped in: {}, {} g.", food, now);
    case DifferenceKind::NewLot:
      return fmt::format("New lot: {} {}, {} g.", food, difference.lot, now);
    case DifferenceKind::LeftoverMissing:
      return fmt::format("? Leftover not known: {}.", food);
  }
  return "";
}

std::string comparedSentence(const LookBackPage& page) {
  const health::LookBack& found = page.lookBack;
  std::string text = fmt::format(
      "{} with the sign and {} without it are compared, each by the bowls given in the {} hours before.",
      counted(found.signDays, "day", "days"), counted(found.wellDays, "day", "days"), found.hours);
  if (found.withoutIntake > 0)
    text += fmt::format(" Left out: {} before which no intake was recorded.",
                        counted(found.withoutIntake, "day", "days"));
  if (found.sameEpisode > 0)
    text += fmt::format(" {} of a sign that had begun the day before, not counted again.",
                        counted(found.sameEpisode, "day", "days"));
  if (found.leftoversMissing > 0)
    text += fmt::format(" {} not weighed back: counted as offered.",
                        counted(found.leftoversMissing, "food was", "foods were"));
  return text;
}

std::string_view symbolFor(food::NutrientId nutrient) {
  return quantity::symbolOf(food::describe(nutrient).unit);
}

std::string zoneName(const health::CalciumZone& zone) {
  const std::string& nutrient = food::describe(zone.nutrient).name;
  return zone.per ? fmt::format("{} : {}", nutrient, food::describe(*zone.per).name) : nutrient;
}

std::string zoneUnit(const health::CalciumZone& zone) {
  if (!zone.unit || !zone.basis) return "";
  return fmt::format("{} {}", quantity::symbolOf(*zone.unit), basisText(*zone.basis));
}

std::string zoneTitle(const health::CalciumZone& zone) {
  const std::string unit = zoneUnit(zone);
  return unit.empty() ? zoneName(zone) : fmt::format("{}, {}", zoneName(zone), unit);
}

std::string chanceText(double p) {
  return p < 0.0001 ? "< 0.0001" : fmt::format("{:.2g}", p);
}

}  // namespace tarebowl::exchange
