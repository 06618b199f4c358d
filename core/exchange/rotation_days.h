// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"
#include "core/exchange/json_reader.h"
#include "core/quantity/date.h"

#include <optional>

namespace tarebowl::exchange {

/// Days as a file names them, counted from 0.
class RotationDays {
 public:
  RotationDays(int count, std::optional<quantity::Date> from) : count_(count), from_(from) {}

  /// A number from 1, or a date. Throws FormatError for a day outside the period.
  [[nodiscard]] int day(const JsonReader& reader) const;
  /// A list of days and days of the week.
  [[nodiscard]] diet::DayList list(const JsonReader& reader) const;
  /// Those between two dates of every year or of one; both stated as dates.
  [[nodiscard]] diet::DayList outside(quantity::Date first, quantity::Date last,
                                      const JsonReader& reader) const;
  [[nodiscard]] int count() const { return count_; }

 private:
  [[nodiscard]] quantity::Date requireFrom(const JsonReader& reader) const;

  int count_;
  std::optional<quantity::Date> from_;
};

}  // namespace tarebowl::exchange
