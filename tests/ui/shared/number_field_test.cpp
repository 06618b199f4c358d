// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/number_field.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

class NumberFieldTest : public ::testing::TestWithParam<const char*> {
 protected:
  NumberFieldTest() {
    field.setLocale(QLocale(QLatin1String(GetParam())));
    field.setRange(0.0, 10'000.0);
    field.setDecimals(2);
    field.setValue(7.0);
    field.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&field));
    field.setFocus();
  }
  /// Over what stands there, and Enter.
  void type(const char* keys) {
    field.selectAll();
    QTest::keyClicks(&field, QString::fromUtf8(keys));
    QTest::keyClick(&field, Qt::Key_Return);
  }
  [[nodiscard]] bool isOwn(char mark) const { return field.locale().decimalPoint() == QLatin1Char(mark); }

  NumberField field;
  QSignalSpy refused{&field, &NumberField::refused};
};

TEST_P(NumberFieldTest, ReadsCommaAndPoint) {
  type("1,5");
  EXPECT_EQ(field.value(), 1.5);
  type("2.5");
  EXPECT_EQ(field.value(), 2.5);
  type("1500");
  EXPECT_EQ(field.value(), 1500.0);
  EXPECT_FALSE(field.text().contains(QLatin1Char(isOwn(',') ? '.' : ',')))
      << "nothing sets its thousand apart";
  EXPECT_EQ(refused.count(), 0);
}

TEST_P(NumberFieldTest, GoesBackToWhatItHeldWhereAMarkMayPartThousandsAndSaysWhy) {
  const char* const text = isOwn(',') ? "1.500" : "1,500";
  type(text);
  EXPECT_EQ(field.value(), 7.0) << "neither 1500 nor 1.5";
  ASSERT_EQ(refused.count(), 1);
  EXPECT_THAT(refused.at(0).at(0).toString().toStdString(), HasSubstr(text));
  EXPECT_THAT(refused.at(0).at(0).toString().toStdString(), HasSubstr("1500"));
}

TEST_P(NumberFieldTest, ShowsWhatIsTypedUntilItIsFinished) {
  field.selectAll();
  QTest::keyClicks(&field, isOwn(',') ? QStringLiteral("1.500") : QStringLiteral("1,500"));
  EXPECT_EQ(field.text(), isOwn(',') ? QStringLiteral("1.500") : QStringLiteral("1,500"));
  EXPECT_EQ(refused.count(), 0);
}

TEST_P(NumberFieldTest, RefusesWhatIsFinerOrLargerThanItCounts) {
  type("1.2345");
  EXPECT_EQ(field.value(), 7.0);
  type("20000");
  EXPECT_EQ(field.value(), 7.0);
  EXPECT_EQ(refused.count(), 2);
  field.setDecimals(0);
  type("1.5");
  EXPECT_EQ(field.value(), 7.0) << "Qt's own field would make 1 or 15 of it";
  EXPECT_EQ(refused.count(), 3);
}

TEST_P(NumberFieldTest, TakesNoLetters) {
  type("x1y2z");
  EXPECT_EQ(field.value(), 12.0);
}

TEST_P(NumberFieldTest, KeepsItsUnitBesideTheNumber) {
  field.setSuffix(QStringLiteral(" %"));
  type("12,5");
  EXPECT_EQ(field.value(), 12.5);
  EXPECT_TRUE(field.text().endsWith(QStringLiteral(" %"))) << field.text().toStdString();
}

TEST_P(NumberFieldTest, LeftEmptyItHoldsWhatItHeld) {
  field.selectAll();
  QTest::keyClick(&field, Qt::Key_Delete);
  QTest::keyClick(&field, Qt::Key_Return);
  EXPECT_EQ(field.value(), 7.0);
  EXPECT_EQ(refused.count(), 0);
}

INSTANTIATE_TEST_SUITE_P(Languages, NumberFieldTest, ::testing::Values("en_GB", "de_DE", "fr_FR", "es_ES"),
                         [](const auto& language) { return std::string(language.param).substr(0, 2); });

}  // namespace
}  // namespace tarebowl::ui
