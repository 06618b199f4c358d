// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/page_tongue.h"

#include "ui/shared/caution_text.h"
#include "ui/shared/date_text.h"
#include "ui/shared/days.h"
#include "ui/shared/nutrient_text.h"

#include <QCoreApplication>
#include <QLocale>

namespace tarebowl::ui {
namespace {

/// A caution that comes with the program stands on pages, too.
std::string inWords(std::string_view english) {
  const std::string words(english);
  const QString text = QCoreApplication::translate("Pages", words.c_str());
  return (text == QString::fromStdString(words) ? cautionWords(words) : text).toStdString();
}

}  // namespace

exchange::PageTongue pageTongue() {
  return {.words = inWords,
          .days = [](quantity::Date day) { return dateText(day).toStdString(); },
          .shortDays = [](quantity::Date day) { return shortDay(day).toStdString(); },
          .nutrientNames = [](food::NutrientId nutrient) { return nutrientName(nutrient).toStdString(); },
          .decimalMark = QLocale().decimalPoint().toStdString()};
}

}  // namespace tarebowl::ui
