// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/days.h"

#include "ui/shared/date_text.h"

namespace tarebowl::ui {

QDate toQDate(quantity::Date date) {
  return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
          static_cast<int>(static_cast<unsigned>(date.day()))};
}

quantity::Date toDate(QDate date) {
  return {std::chrono::year(date.year()), std::chrono::month(static_cast<unsigned>(date.month())),
          std::chrono::day(static_cast<unsigned>(date.day()))};
}

quantity::Date today() {
  return toDate(QDate::currentDate());
}

QString dateText(quantity::Date date) {
  return dateIn(dateFormat(), date);
}

}  // namespace tarebowl::ui
