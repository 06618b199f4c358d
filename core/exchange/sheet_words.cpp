// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sheet_words.h"

#include "core/exchange/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <vector>

namespace tarebowl::exchange {

namespace {

constexpr std::size_t kDayLength = 10;

std::string stateWord(diet::VersionState state) {
  switch (state) {
    case diet::VersionState::Draft:
      return "Draft";
    case diet::VersionState::Submitted:
      return "Submitted";
    case diet::VersionState::Approved:
      return "Approved";
    case diet::VersionState::Retired:
      break;
  }
  return "Retired";
}

}  // namespace

std::string stateSentence(const diet::DietVersion& version, const PageTongue& tongue) {
  std::string text = tongue.say(stateWord(version.state));
  if (!version.steps.empty()) {
    const diet::VersionStep& last = version.steps.back();
    const std::string written = last.at.substr(0, kDayLength);
    const auto day = quantity::parseDate(written);
    text = tongue.say("{} by {} on {}", text, last.who, day ? tongue.day(*day) : written);
    if (!last.reason.empty()) text += ": " + last.reason;
  }
  text += '.';
  return version.state == diet::VersionState::Approved ? text : text + ' ' + tongue.say("Not for feeding.");
}

std::string feedingSentence(const diet::DietVersion& version, const PageTongue& tongue) {
  if (!version.fedFrom) return {};
  const std::string day = tongue.day(*version.fedFrom);
  if (version.phaseInDays <= 0) return tongue.say("Fed from {}.", day);
  return tongue.say(version.phaseInDays == 1 ? "Fed from {}, phased in over {} day."
                                             : "Fed from {}, phased in over {} days.",
                    day, version.phaseInDays);
}

std::string subjectLine(const DietSheet& sheet, const PageTongue& tongue) {
  std::string text = tongue.counted(static_cast<std::size_t>(sheet.animals), "{} animal", "{} animals");
  if (sheet.bodyMass)
    text = tongue.say("{} of {} kg", text, tongue.number(shortNumber(sheet.bodyMass->value())));
  if (!sheet.species.empty()) text = sheet.species + ", " + text;
  return sheet.section.empty() ? text : text + ", " + sheet.section;
}

std::string energyAndCost(const DietSheet& sheet, const PageTongue& tongue) {
  const auto number = [&](double value) { return tongue.number(shortNumber(value)); };
  std::string text =
      tongue.say("{} kcal ME ({}) per animal and day",
                 sheet.energy ? (sheet.energyAtLeast ? "≥ " : "") + number(*sheet.energy) : std::string("?"),
                 sheet.energyMethod);
  if (!sheet.costPerDay) return text + tongue.say("; cost ?");
  text += tongue.say("; cost {} per animal, {} for {}", number(*sheet.costPerDay),
                     number(*sheet.costPerDay * sheet.animals), sheet.animals);
  if (sheet.unpriced > 0)
    text += ' ' + tongue.counted(sheet.unpriced, "(without {} food that has no price)",
                                 "(without {} foods that have no price)");
  return text;
}

std::string amountText(const SheetFood& food, int animals, const PageTongue& tongue) {
  if (food.low && food.high)
    return tongue.number(fmt::format("{} … {}", shortNumber(food.low->value() * animals),
                                     shortNumber(food.high->value() * animals)));
  return tongue.number(gramsText(food.perAnimal * animals, food.step));
}

std::string ownBoundsSentence(const diet::DietVersion& version, const PageTongue& tongue) {
  std::string bounds;
  for (const diet::ChangedBound& bound : version.changedBounds)
    bounds += fmt::format("{}{} {} ({})", bounds.empty() ? "" : "; ", bound.rule,
                          tongue.number(zoneText(bound.min, bound.max)),
                          bound.reason.empty() ? tongue.say("no reason given") : bound.reason);
  return bounds.empty() ? bounds : tongue.say("Set otherwise than the targets say: {}.", bounds);
}

std::string notJudgedSentence(const DietSheet& sheet, const PageTongue& tongue) {
  std::vector<std::pair<diet::NotCounted, std::string>> reasons;
  for (const diet::RuleNotCounted& rule : sheet.notJudged) {
    auto reason = std::ranges::find(reasons, rule.why, &std::pair<diet::NotCounted, std::string>::first);
    if (reason == reasons.end()) reason = reasons.insert(reasons.end(), {rule.why, {}});
    reason->second += (reason->second.empty() ? "" : ", ") + rule.id;
  }
  std::string text;
  for (const auto& [why, rules] : reasons)
    text += fmt::format("{}{} ({})", text.empty() ? "" : "; ", rules, tongue.say(reasonText(why)));
  return text.empty() ? text : tongue.say("? Not judged: {}.", text);
}

std::string eatenSentence(const DietSheet& sheet, const PageTongue& tongue) {
  std::string foods;
  for (const SheetFood& food : sheet.foods)
    if (food.eatenFraction < 1.0)
      foods += fmt::format("{}{} {}", foods.empty() ? "" : ", ", food.name, percentText(food.eatenFraction));
  return foods.empty()
             ? foods
             : tongue.say("Energy and targets are of what is eaten: {}; all else is eaten up.", foods);
}

}  // namespace tarebowl::exchange
