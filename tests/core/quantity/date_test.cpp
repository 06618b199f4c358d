// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/date.h"

#include <gtest/gtest.h>

namespace tarebowl::quantity {
namespace {

Date day(const char* text) {
  return parseDate(text).value();
}

TEST(Date, IsReadAndWrittenAsIsoText) {
  EXPECT_EQ(isoDate(day("2026-11-05")), "2026-11-05");
  EXPECT_EQ(isoDate(day("0099-01-31")), "0099-01-31");
}

TEST(Date, ADayThatDoesNotExistIsNoDate) {
  for (const char* text : {"2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "0000-01-01"})
    EXPECT_FALSE(parseDate(text)) << text;
  EXPECT_TRUE(parseDate("2028-02-29"));
}

TEST(Date, OtherWaysToWriteADayAreNotGuessedAt) {
  for (const char* text :
       {"", "2026-1-5", "05.11.2026", "2026/11/05", "2026-11-05T07:30", "+026-11-05", "2026-11- 5"})
    EXPECT_FALSE(parseDate(text)) << text;
}

TEST(Date, AMonthAfterTheLastOfJanuaryIsTheLastOfFebruary) {
  EXPECT_EQ(isoDate(plusMonths(day("2026-01-31"), 1)), "2026-02-28");
  EXPECT_EQ(isoDate(plusMonths(day("2028-01-31"), 1)), "2028-02-29");
  EXPECT_EQ(isoDate(plusMonths(day("2026-11-30"), 12)), "2027-11-30");
  EXPECT_EQ(isoDate(plusMonths(day("2026-03-31"), -1)), "2026-02-28");
}

}  // namespace
}  // namespace tarebowl::quantity
