// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

#include <fmt/format.h>

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
  std::string decimalMark = ".";

  [[nodiscard]] std::string say(std::string_view english) const;
  /// The sentence with this in its places.
  template <class... Parts>
  [[nodiscard]] std::string say(std::string_view english, const Parts&... parts) const {
    return fmt::format(fmt::runtime(say(english)), parts...);
  }
  [[nodiscard]] std::string day(quantity::Date date) const;
  /// A number that was written with a point.
  [[nodiscard]] std::string number(std::string text) const;
};

}  // namespace tarebowl::exchange
