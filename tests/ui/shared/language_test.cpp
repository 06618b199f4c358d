// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/language.h"

#include "core/food/nutrient.h"
#include "ui/shared/format.h"
#include "ui/shared/nutrient_text.h"
#include "ui/shared/state_mark.h"

#include <QCoreApplication>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

TEST(LanguageOfTheWindow, IsTheFirstOfThePersonsThatItSpeaks) {
  EXPECT_EQ(languageAmong({QStringLiteral("de-AT"), QStringLiteral("en")}), QStringLiteral("de"));
  EXPECT_EQ(languageAmong({QStringLiteral("nl"), QStringLiteral("fr-BE"), QStringLiteral("de")}),
            QStringLiteral("fr"));
  EXPECT_EQ(languageAmong({QStringLiteral("en-GB"), QStringLiteral("de")}), QStringLiteral("en"))
      << "English is no gap to be filled by the next one";
  EXPECT_EQ(languageAmong({QStringLiteral("it")}), QStringLiteral("en"));
  EXPECT_EQ(languageAmong({}), QStringLiteral("en"));
}

TEST(LanguageOfTheWindow, WritesNumbersAsThePersonsCountryDoesWhereThatSpeaksIt) {
  const QLocale swiss(QLocale::German, QLocale::Switzerland);
  EXPECT_EQ(localeOf(QStringLiteral("de"), swiss).territory(), QLocale::Switzerland);
  EXPECT_EQ(localeOf({}, swiss).territory(), QLocale::Switzerland);
  EXPECT_EQ(localeOf(QStringLiteral("fr"), swiss).language(), QLocale::French);
  EXPECT_EQ(localeOf(QStringLiteral("en"), swiss).decimalPoint(), QStringLiteral("."));
  EXPECT_EQ(localeOf({}, QLocale(QLocale::Italian, QLocale::Italy)).decimalPoint(), QStringLiteral(","))
      << "English words, and the person's own numbers";
}

TEST(LanguageOfTheWindow, SetsNoThousandsApart) {
  const QLocale german = localeOf(QStringLiteral("de"), QLocale::c());
  EXPECT_EQ(german.toString(1500.5, 'f', 1), QStringLiteral("1500,5"));
  bool read = true;
  (void)german.toDouble(QStringLiteral("1.500"), &read);
  EXPECT_FALSE(read);
}

TEST(LanguageOfTheWindow, IsSpokenAsLongAsItIsAskedFor) {
  const QString before = wordOf(Mark::Met);
  {
    const SpokenLanguage german(QStringLiteral("de"));
    EXPECT_EQ(wordOf(Mark::Met), QStringLiteral("erfüllt"));
    EXPECT_EQ(percent(0.058).toStdString(), "5,8\u00a0%");
  }
  EXPECT_EQ(wordOf(Mark::Met), before);
  EXPECT_EQ(QLocale().territory(), QLocale::UnitedKingdom);
}

TEST(LanguageOfTheWindow, CountsOneAndMany) {
  const auto rows = [](int many) {
    return QCoreApplication::translate("Kitchen", "%n piece(s) (%1)", nullptr, many)
        .arg(QStringLiteral("40 g"))
        .toStdString();
  };
  const SpokenLanguage english(QStringLiteral("en"));
  EXPECT_EQ(rows(1), "1 piece (40 g)");
  EXPECT_EQ(rows(3), "3 pieces (40 g)");
}

TEST(NutrientsNamed, FollowTheLanguageAndItsCapitals) {
  const auto calcium = food::findByTagname("CA").value();
  const auto protein = food::findByTagname("PROCNT").value();
  EXPECT_EQ(nutrientWithin(protein).toStdString(), "crude protein");
  {
    const SpokenLanguage german(QStringLiteral("de"));
    EXPECT_EQ(nutrientName(protein).toStdString(), "Rohprotein");
    EXPECT_EQ(nutrientWithin(protein).toStdString(), "Rohprotein");
  }
  const SpokenLanguage french(QStringLiteral("fr"));
  EXPECT_EQ(nutrientName(calcium).toStdString(), "Calcium");
  EXPECT_EQ(nutrientWithin(protein).toStdString(), "protéines brutes");
}

}  // namespace
}  // namespace tarebowl::ui
