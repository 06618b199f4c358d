// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/number_reading.h"

#include "ui/kitchen/big_type.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/format.h"

#include <gtest/gtest.h>

#include <array>
#include <random>

namespace tarebowl::ui {
namespace {

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);
const QLocale kGerman(QLocale::German, QLocale::Germany);
const QLocale kFrench(QLocale::French, QLocale::France);
const QLocale kSpanish(QLocale::Spanish, QLocale::Spain);
const QLocale kAmerican(QLocale::English, QLocale::UnitedStates);
const QLocale kSwiss(QLocale::German, QLocale::Switzerland);
const std::array kAll{kEnglish, kGerman, kFrench, kSpanish, kAmerican, kSwiss};

std::string nameOf(const QLocale& locale) {
  return locale.name().toStdString();
}

TEST(TypedNumbers, ReadCommaAndPointAsTheDecimalMarkInEveryLanguage) {
  for (const QLocale& locale : kAll) {
    EXPECT_EQ(readNumber(QStringLiteral("1.5"), locale), 1.5) << nameOf(locale);
    EXPECT_EQ(readNumber(QStringLiteral("1,5"), locale), 1.5) << nameOf(locale);
    EXPECT_EQ(readNumber(QStringLiteral(" 20,50 "), locale), 20.5) << nameOf(locale);
    EXPECT_EQ(readNumber(QStringLiteral("0.125"), locale), 0.125)
        << nameOf(locale) << ": no thousand begins with 0";
    EXPECT_EQ(readNumber(QStringLiteral("0,125"), locale), 0.125) << nameOf(locale);
    EXPECT_EQ(readNumber(QStringLiteral("1500"), locale), 1500.0) << nameOf(locale);
    EXPECT_EQ(readNumber(QStringLiteral(".5"), locale), 0.5) << nameOf(locale);
    EXPECT_EQ(readNumber(QStringLiteral("1,2345"), locale), 1.2345) << nameOf(locale);
    EXPECT_EQ(readNumber(QStringLiteral("1234,567"), locale), 1234.567) << nameOf(locale);
  }
}

TEST(TypedNumbers, ReadNothingWhereAMarkMayPartThousands) {
  EXPECT_EQ(readNumber(QStringLiteral("1.500"), kGerman), std::nullopt);
  EXPECT_EQ(readNumber(QStringLiteral("1.500"), kFrench), std::nullopt);
  EXPECT_EQ(readNumber(QStringLiteral("1.500"), kSpanish), std::nullopt);
  EXPECT_EQ(readNumber(QStringLiteral("1,500"), kEnglish), std::nullopt);
  EXPECT_EQ(readNumber(QStringLiteral("12,500"), kAmerican), std::nullopt);
  EXPECT_EQ(readNumber(QStringLiteral("1,500"), kGerman), 1.5) << "the language's own mark is no other";
  EXPECT_EQ(readNumber(QStringLiteral("1.500"), kEnglish), 1.5);
}

TEST(TypedNumbers, ReadNothingThatSetsThousandsApart) {
  for (const QLocale& locale : kAll)
    for (const char* text :
         {"1.500,5", "1,500.5", "1 500", "1\u00a0500", "1\u202f500", "1'500", "1’500", "1.500.000"}) {
      EXPECT_EQ(readNumber(QString::fromUtf8(text), locale), std::nullopt) << nameOf(locale) << " " << text;
      EXPECT_FALSE(thousandsAdvice(QString::fromUtf8(text), locale).isEmpty())
          << nameOf(locale) << " " << text;
    }
}

TEST(TypedNumbers, AreNothingElse) {
  for (const QLocale& locale : kAll)
    for (const char* text : {"", " ", "-", ",", "1e3", "inf", "nan", "0x10", "1,5 g", "1;5", "--1", "1-"}) {
      EXPECT_EQ(readSigned(QString::fromUtf8(text), locale), std::nullopt) << nameOf(locale) << " " << text;
      EXPECT_TRUE(thousandsAdvice(QString::fromUtf8(text), locale).isEmpty())
          << nameOf(locale) << " " << text;
    }
  EXPECT_EQ(readNumber(QStringLiteral("-1"), kEnglish), std::nullopt) << "below zero is for those who ask";
  EXPECT_EQ(readSigned(QStringLiteral("−1,5"), kGerman), -1.5) << "Unicode's minus";
}

TEST(TypedNumbers, SayWhatToTypeInstead) {
  EXPECT_EQ(thousandsAdvice(QStringLiteral("1.500"), kGerman).toStdString(),
            "“1.500” may mean 1500 or 1,5: type one of these, for nothing sets thousands apart here.");
  EXPECT_EQ(thousandsAdvice(QStringLiteral("1,500"), kEnglish).toStdString(),
            "“1,500” may mean 1500 or 1.5: type one of these, for nothing sets thousands apart here.");
  EXPECT_EQ(thousandsAdvice(QStringLiteral("1.500,5"), kGerman).toStdString(),
            "“1.500,5” sets thousands apart: type it without, 1500,5.");
  EXPECT_TRUE(thousandsAdvice(QStringLiteral("1,5"), kGerman).isEmpty());
}

/// What is shown is read back as the same number, in every language, and never as one a thousand times it.
TEST(TypedNumbers, ReadBackWhatIsShown) {
  std::mt19937 random(20260101);
  std::uniform_real_distribution<double> size(-3.0, 6.0);
  for (int i = 0; i < 2000; ++i) {
    const double number = std::pow(10.0, size(random));
    for (const QLocale& locale : kAll)
      for (int decimals = 0; decimals <= 3; ++decimals) {
        const QString shown = decimal(number, decimals, locale);
        const auto read = readNumber(shown, locale);
        ASSERT_TRUE(read.has_value()) << nameOf(locale) << " " << shown.toStdString();
        EXPECT_NEAR(*read, number, 0.5001 * std::pow(10.0, -decimals))
            << nameOf(locale) << " " << shown.toStdString();
      }
  }
}

/// Read in another language, what is shown is the same number or none.
TEST(TypedNumbers, AreNeverAThousandTimesWhatAnotherLanguageShows) {
  for (const QLocale& from : kAll)
    for (const QLocale& to : kAll)
      for (const double number : {1.5, 1.25, 1.125, 12.345, 999.999, 1500.0, 1500.5, 22500.0}) {
        const QString shown = stated(number, from);
        if (const auto read = readNumber(shown, to)) {
          EXPECT_NEAR(*read, number, 1e-9) << shown.toStdString() << " in " << nameOf(to);
        }
      }
}

TEST(GramsTypedInTheKitchen, FollowTheSameRule) {
  const QLocale before;
  QLocale::setDefault(kGerman);
  EXPECT_EQ(typedGrams(QStringLiteral("20,5")), quantity::Grams(20.5));
  EXPECT_EQ(typedGrams(QStringLiteral("20.5")), quantity::Grams(20.5));
  EXPECT_EQ(typedGrams(QStringLiteral("1.500")), std::nullopt);
  EXPECT_EQ(typedGrams(QStringLiteral("-0,5")), quantity::Grams(-0.5)) << "an untared bowl is asked about";
  EXPECT_EQ(typedLeftAndLost(QStringLiteral("3,5 + 4.5"))->lost, quantity::Grams(4.5));
  EXPECT_FALSE(typedLeftAndLost(QStringLiteral("1.500 + 4")).has_value());
  QLocale::setDefault(before);
}

}  // namespace
}  // namespace tarebowl::ui
