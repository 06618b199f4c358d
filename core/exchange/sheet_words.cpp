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

std::string stateSentence(const diet::DietVersion& version) {
  std::string text = stateWord(version.state);
  if (!version.steps.empty()) {
    const diet::VersionStep& last = version.steps.back();
    text += fmt::format(" by {} on {}", last.who, last.at.substr(0, kDayLength));
    if (!last.reason.empty()) text += ": " + last.reason;
  }
  text += '.';
  return version.state == diet::VersionState::Approved ? text : text + " Not for feeding.";
}

std::string feedingSentence(const diet::DietVersion& version) {
  if (!version.fedFrom) return {};
  std::string text = "Fed from " + quantity::isoDate(*version.fedFrom);
  if (version.phaseInDays > 0)
    text +=
        fmt::format(", phased in over {} {}", version.phaseInDays, version.phaseInDays == 1 ? "day" : "days");
  return text + '.';
}

std::string subjectLine(const DietSheet& sheet) {
  std::string text = fmt::format("{} {}", sheet.animals, sheet.animals == 1 ? "animal" : "animals");
  if (sheet.bodyMass) text += fmt::format(" of {} kg", shortNumber(sheet.bodyMass->value()));
  if (!sheet.species.empty()) text = sheet.species + ", " + text;
  return sheet.section.empty() ? text : text + ", " + sheet.section;
}

std::string energyAndCost(const DietSheet& sheet) {
  std::string text = fmt::format(
      "{} kcal ME ({}) per animal and day",
      sheet.energy ? (sheet.energyAtLeast ? "≥ " : "") + shortNumber(*sheet.energy) : std::string("?"),
      sheet.energyMethod);
  if (!sheet.costPerDay) return text + "; cost ?";
  text += fmt::format("; cost {} per animal, {} for {}", shortNumber(*sheet.costPerDay),
                      shortNumber(*sheet.costPerDay * sheet.animals), sheet.animals);
  if (sheet.unpriced > 0)
    text += fmt::format(" (without {} {} that {} no price)", sheet.unpriced,
                        sheet.unpriced == 1 ? "food" : "foods", sheet.unpriced == 1 ? "has" : "have");
  return text;
}

std::string amountText(const SheetFood& food, int animals) {
  if (food.low && food.high)
    return fmt::format("{} … {}", shortNumber(food.low->value() * animals),
                       shortNumber(food.high->value() * animals));
  return gramsText(food.perAnimal * animals, food.step);
}

std::string ownBoundsSentence(const diet::DietVersion& version) {
  std::string text;
  for (const diet::ChangedBound& bound : version.changedBounds)
    text +=
        fmt::format("{}{} {} ({})", text.empty() ? "Set otherwise than the targets say: " : "; ", bound.rule,
                    zoneText(bound.min, bound.max), bound.reason.empty() ? "no reason given" : bound.reason);
  return text.empty() ? text : text + ".";
}

std::string notJudgedSentence(const DietSheet& sheet) {
  std::vector<std::pair<diet::NotCounted, std::string>> reasons;
  for (const diet::RuleNotCounted& rule : sheet.notJudged) {
    auto reason = std::ranges::find(reasons, rule.why, &std::pair<diet::NotCounted, std::string>::first);
    if (reason == reasons.end()) reason = reasons.insert(reasons.end(), {rule.why, {}});
    reason->second += (reason->second.empty() ? "" : ", ") + rule.id;
  }
  std::string text;
  for (const auto& [why, rules] : reasons)
    text += fmt::format("{}{} ({})", text.empty() ? "? Not judged: " : "; ", rules, reasonText(why));
  return text.empty() ? text : text + ".";
}

std::string eatenSentence(const DietSheet& sheet) {
  std::string foods;
  for (const SheetFood& food : sheet.foods)
    if (food.eatenFraction < 1.0)
      foods += fmt::format("{}{} {}", foods.empty() ? "" : ", ", food.name, percentText(food.eatenFraction));
  return foods.empty() ? foods
                       : "Energy and targets are of what is eaten: " + foods + "; all else is eaten up.";
}

}  // namespace tarebowl::exchange
