// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/page_tongue.h"

#include <array>
#include <chrono>

namespace tarebowl::exchange {

std::string PageTongue::say(std::string_view english) const {
  return words && !english.empty() ? words(english) : std::string(english);
}

std::string PageTongue::day(quantity::Date date) const {
  return days ? days(date) : quantity::isoDate(date);
}

std::string PageTongue::shortDay(quantity::Date date) const {
  if (shortDays) return shortDays(date);
  constexpr std::array<const char*, 7> kNames{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
  const unsigned weekday = std::chrono::weekday(std::chrono::sys_days(date)).c_encoding();
  return fmt::format("{} {}", kNames.at(weekday), quantity::isoDate(date).substr(5));
}

std::string PageTongue::nutrient(food::NutrientId nutrient) const {
  return nutrientNames ? nutrientNames(nutrient) : food::describe(nutrient).name;
}

std::string PageTongue::number(std::string text) const {
  for (std::size_t point = text.find('.'); point != std::string::npos;
       point = text.find('.', point + decimalMark.size()))
    text.replace(point, 1, decimalMark);
  return text;
}

std::string PageTongue::counted(std::size_t count, std::string_view one, std::string_view many) const {
  return say(count == 1 ? one : many, count);
}

}  // namespace tarebowl::exchange
