// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/format.h"

#include <gtest/gtest.h>

#include <limits>

namespace tarebowl::ui {
namespace {

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);
const QLocale kGerman(QLocale::German, QLocale::Germany);

std::string text(const QString& from) {
  return from.toStdString();
}

TEST(MeasuredNumbers, ShowThreeFigures) {
  EXPECT_EQ(text(measured(6.9278, kEnglish)), "6.93");
  EXPECT_EQ(text(measured(24.63, kEnglish)), "24.6");
  EXPECT_EQ(text(measured(118.4, kEnglish)), "118");
  EXPECT_EQ(text(measured(0.2447, kEnglish)), "0.245");
  EXPECT_EQ(text(measured(5200.4, kEnglish)), "5200");
  EXPECT_EQ(text(measured(0.0, kEnglish)), "0");
}

TEST(MeasuredNumbers, ThatAreNoNumberAreUnknown) {
  EXPECT_EQ(text(measured(std::numeric_limits<double>::quiet_NaN(), kEnglish)), "?");
}

TEST(MeasuredNumbers, NeverReadMinusZero) {
  EXPECT_FALSE(measured(-1e-12, kEnglish).contains(QLatin1Char('-')));
}

TEST(StatedNumbers, AreAsShortAsTheyWereWritten) {
  EXPECT_EQ(text(stated(5.0, kEnglish)), "5");
  EXPECT_EQ(text(stated(1.2, kEnglish)), "1.2");
  EXPECT_EQ(text(stated(1.825, kEnglish)), "1.825");
  EXPECT_EQ(text(stated(2500.0, kEnglish)), "2500");
}

TEST(Numbers, FollowThePersonsLocale) {
  EXPECT_EQ(text(measured(6.9278, kGerman)), "6,93");
  EXPECT_EQ(text(stated(2500.5, kGerman)), "2500,5");
}

TEST(Percent, ShowsADigitMoreWhereItSaysMore) {
  EXPECT_EQ(text(percent(0.34, kEnglish)), "34\u00a0%");
  EXPECT_EQ(text(percent(0.058, kEnglish)), "5.8\u00a0%");
  EXPECT_EQ(text(percent(0.05, kEnglish)), "5\u00a0%");
  EXPECT_EQ(text(percent(0.0, kEnglish)), "0\u00a0%");
}

TEST(GramsShown, HaveTheDigitsOfTheScale) {
  using quantity::Grams;
  EXPECT_EQ(text(grams(Grams(6), Grams(1), kEnglish)), "6");
  EXPECT_EQ(text(grams(Grams(2), Grams(0.1), kEnglish)), "2.0");
  EXPECT_EQ(text(grams(Grams(0.15), Grams(0.05), kEnglish)), "0.15");
  EXPECT_EQ(text(grams(Grams(110), Grams(55), kEnglish)), "110");
  EXPECT_EQ(text(grams(Grams(0), Grams(0.1), kEnglish)), "0");
}

TEST(GramsShown, BesideTheScalesStepsShowThatTheyAre) {
  EXPECT_EQ(text(grams(quantity::Grams(6.25), quantity::Grams(1), kEnglish)), "6.25");
}

TEST(Durations, ReadInMillisecondsOrSeconds) {
  EXPECT_EQ(text(duration(840, kEnglish)), "0.8\u00a0ms");
  EXPECT_EQ(text(duration(42'000, kEnglish)), "42\u00a0ms");
  EXPECT_EQ(text(duration(2'140'000, kEnglish)), "2.1\u00a0s");
}

TEST(Units, CarryTheirBasis) {
  using quantity::Basis;
  using quantity::Unit;
  EXPECT_EQ(text(unitPerBasis(Unit::Gram, Basis::DryMatter)), "g/kg DM");
  EXPECT_EQ(text(unitPerBasis(Unit::Microgram, Basis::Energy)), "µg/1000 kcal");
  EXPECT_EQ(text(unitPerBasis(Unit::Kilocalorie, Basis::Day)), "kcal a day");
}

}  // namespace
}  // namespace tarebowl::ui
