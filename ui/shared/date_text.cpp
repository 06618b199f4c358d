// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/date_text.h"

#include "ui/shared/days.h"

#include <QCoreApplication>
#include <QLocale>

namespace tarebowl::ui {
namespace {

struct Days {
  Q_DECLARE_TR_FUNCTIONS(Days)
};

}  // namespace

QString dateFormat() {
  return Days::tr("d MMM yyyy", "a day, as Qt writes formats");
}

QString momentFormat() {
  return Days::tr("d MMM yyyy, HH:mm", "a day and its time, as Qt writes formats");
}

QString shortDay(quantity::Date date) {
  return dateIn(Days::tr("ddd d MMM", "a day and its weekday, as Qt writes formats"), date);
}

QString dateIn(const QString& format, quantity::Date date) {
  return QLocale().toString(toQDate(date), format);
}

}  // namespace tarebowl::ui
