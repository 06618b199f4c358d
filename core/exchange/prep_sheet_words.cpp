// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/prep_sheet_page.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 5> kHygiene{
    "Gloves on; washed hands are not enough.", "One bowl, one animal or group, with its label.",
    "Bowls and tools stay in their section.",
    "Leftovers never come back into the prep room: they are weighed where dirty bowls go.",
    "Tare the empty bowl before each food."};

std::string inGrams(quantity::Grams amount, quantity::Grams step, const PageTongue& tongue) {
  return tongue.number(gramsText(amount, step)) + " g";
}

}  // namespace

std::span<const std::string_view> hygieneRules() {
  return kHygiene;
}

std::string portionText(quantity::Grams amount, const intake::KitchenFood& food, const PageTongue& tongue) {
  constexpr double kWhole = 1e-6;
  if (food.unitMass) {
    const double pieces = amount / *food.unitMass;
    if (pieces > 0.5 && std::abs(pieces - std::round(pieces)) < kWhole)
      return tongue.say(pieces < 1.5 ? "{} piece ({})" : "{} pieces ({})", std::lround(pieces),
                        inGrams(amount, food.step, tongue));
  }
  return inGrams(amount, food.step, tongue);
}

std::string foodTitle(const intake::KitchenFood& food, const PageTongue& tongue) {
  if (!food.known) return tongue.say("{} (not in the collection)", food.code);
  const bool saysForm = food.form.empty() || food.name.find(food.form) != std::string::npos;
  return saysForm ? food.name : food.name + ", " + food.form;
}

std::string_view reasonText(intake::NoBowl why) {
  switch (why) {
    case intake::NoBowl::NoDiet:
      return "no diet is in force";
    case intake::NoBowl::HeadcountUnknown:
      return "nobody knows how many animals it has";
    case intake::NoBowl::NoAnimals:
      return "it has no animal on this day";
    case intake::NoBowl::NothingPlanned:
      return "nothing is planned for this day";
  }
  return "";
}

std::string rawText(const intake::KitchenTotal& total, const PageTongue& tongue) {
  const std::string& name = total.food.rawName.empty() ? total.food.raw : total.food.rawName;
  std::string text;
  if (intake::isCooked(total.food))
    text = total.raw ? tongue.say("raw: {} {}", inGrams(*total.raw, quantity::Grams(1), tongue), name)
                     : tongue.say("? raw amount unknown: no cooking yield");
  if (total.bought)
    text += (text.empty() ? "" : ", ") +
            tongue.say("{} as bought", inGrams(*total.bought, quantity::Grams(1), tongue));
  return text;
}

std::string aheadText(const intake::KitchenTotal& total, const PageTongue& tongue) {
  return foodTitle(total.food, tongue) + ": " + portionText(total.amount, total.food, tongue);
}

}  // namespace tarebowl::exchange
