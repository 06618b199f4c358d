// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/page_tongue.h"

namespace tarebowl::exchange {

std::string PageTongue::say(std::string_view english) const {
  return words ? words(english) : std::string(english);
}

std::string PageTongue::day(quantity::Date date) const {
  return days ? days(date) : quantity::isoDate(date);
}

std::string PageTongue::number(std::string text) const {
  const std::size_t point = text.find('.');
  return point == std::string::npos ? text : text.replace(point, 1, decimalMark);
}

}  // namespace tarebowl::exchange
