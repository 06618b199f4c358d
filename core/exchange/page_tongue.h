// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"
#include "core/quantity/date.h"

#include <fmt/format.h>

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// In which language a page is written: in English, with a decimal point and ISO days, where nothing is
/// given.
struct PageTongue {
  std::function<std::string(std::string_view)>
      words{};  ///< a title or sentence in that language, "{}" and all
  std::function<std::string(quantity::Date)> days{};
  std::function<std::string(quantity::Date)> shortDays{};  ///< of a calendar's columns
  std::function<std::string(food::NutrientId)> nutrientNames{};
  std::string decimalMark = ".";

  [[nodiscard]] std::string say(std::string_view english) const;
  /// The sentence with this in its places.
  template <class... Parts>
  [[nodiscard]] std::string say(std::string_view english, const Parts&... parts) const {
    return fmt::format(fmt::runtime(say(english)), parts...);
  }
  [[nodiscard]] std::string day(quantity::Date date) const;
  /// "Mon 09-07" where nothing is given.
  [[nodiscard]] std::string shortDay(quantity::Date date) const;
  [[nodiscard]] std::string nutrient(food::NutrientId nutrient) const;
  /// A number that was written with a point, or two: "0.5 … 1.5".
  [[nodiscard]] std::string number(std::string text) const;
  /// The one sentence or the other, by how many there are, with the number in its place.
  [[nodiscard]] std::string counted(std::size_t count, std::string_view one, std::string_view many) const;
};

}  // namespace tarebowl::exchange
