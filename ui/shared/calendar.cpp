// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/calendar.h"

#include <QDate>

namespace tarebowl::ui {

quantity::Date today() {
  const QDate day = QDate::currentDate();
  return {std::chrono::year(day.year()), std::chrono::month(static_cast<unsigned>(day.month())),
          std::chrono::day(static_cast<unsigned>(day.day()))};
}

}  // namespace tarebowl::ui
