// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/date_field.h"

#include "ui/shared/days.h"
#include "ui/shared/language.h"

#include <QRegularExpression>
#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

const QDate kDay(2026, 11, 25);

TEST(TypedDays, AreReadAsIsoInEveryLanguage) {
  for (const char* locale : {"en_GB", "en_US", "de_DE", "fr_FR", "es_ES"})
    EXPECT_EQ(readDate(QStringLiteral("2026-11-25"), QLocale(QLatin1String(locale))), kDay) << locale;
}

TEST(TypedDays, AreReadInTheOrderOfTheLocaleWithTheWholeYear) {
  EXPECT_EQ(readDate(QStringLiteral("25.11.2026"), QLocale(QStringLiteral("de_DE"))), kDay);
  EXPECT_EQ(readDate(QStringLiteral("25/11/2026"), QLocale(QStringLiteral("fr_FR"))), kDay);
  EXPECT_EQ(readDate(QStringLiteral("25/11/2026"), QLocale(QStringLiteral("es_ES"))), kDay);
  EXPECT_EQ(readDate(QStringLiteral("25/11/2026"), QLocale(QStringLiteral("en_GB"))), kDay);
  EXPECT_EQ(readDate(QStringLiteral("11/25/2026"), QLocale(QStringLiteral("en_US"))), kDay);
}

TEST(TypedDays, AreNotGuessedAt) {
  for (const char* text : {"", "25.11", "31.02.2026", "2026-13-01", "today"})
    EXPECT_EQ(readDate(QString::fromUtf8(text), QLocale(QStringLiteral("de_DE"))), std::nullopt) << text;
}

TEST(ShownDays, FollowTheLanguage) {
  const auto day = quantity::parseDate("2026-11-25").value();
  EXPECT_EQ(dateText(day).toStdString(), "25 Nov 2026");
  const SpokenLanguage german(QStringLiteral("de"));
  EXPECT_EQ(dateText(day).toStdString(), "25. Nov. 2026");
}

class DateFieldTest : public ::testing::TestWithParam<const char*> {
 protected:
  DateFieldTest() : language(QLatin1String(GetParam())) {
    field.setDate(QDate(2026, 1, 2));
    field.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&field));
    field.setFocus();
  }
  void type(const QString& keys) {
    field.selectAll();
    QTest::keyClicks(&field, keys);
    QTest::keyClick(&field, Qt::Key_Return);
  }
  SpokenLanguage language;
  DateField field;
};

TEST_P(DateFieldTest, TakesAnIsoDayOverAllThatStandsThere) {
  type(QStringLiteral("2026-11-25"));
  EXPECT_EQ(field.date(), kDay) << field.text().toStdString();
}

TEST_P(DateFieldTest, TakesADayInFiguresAsTheLocaleOrdersThem) {
  QString figures = QLocale().dateFormat(QLocale::ShortFormat);
  figures.replace(QRegularExpression(QStringLiteral("y+")), QStringLiteral("yyyy"));
  type(QLocale().toString(kDay, figures));
  EXPECT_EQ(field.date(), kDay) << field.text().toStdString();
}

INSTANTIATE_TEST_SUITE_P(Languages, DateFieldTest, ::testing::Values("en", "de", "fr", "es"),
                         [](const auto& language) { return std::string(language.param); });

}  // namespace
}  // namespace tarebowl::ui
