// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/options.h"

#include <CLI/CLI.hpp>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::app {
namespace {

using std::chrono::milliseconds;

TEST(Options, SecondsAreTenUnlessToldOtherwise) {
  CLI::App usual;
  double seconds = 10.0;
  addSeconds(usual, seconds);
  usual.parse("");
  EXPECT_EQ(deadlineOf(seconds), std::chrono::seconds(10));
  usual.parse("--seconds 0.5");
  EXPECT_EQ(deadlineOf(seconds), milliseconds(500));
}

TEST(Options, SecondsAreNeverLessThanAMillisecondOrNoNumber) {
  EXPECT_EQ(deadlineOf(0.0001), milliseconds(1));
  for (const char* text : {"--seconds nan", "--seconds inf", "--seconds 0", "--seconds soon"}) {
    CLI::App command;
    double seconds = 10.0;
    addSeconds(command, seconds);
    EXPECT_THROW(command.parse(text), CLI::ValidationError) << text;
  }
}

TEST(Options, ADietIsNamedWithAVersionOrWithNone) {
  CLI::App command;
  DietWords words;
  addDiet(command, words);
  command.parse("--diet winter");
  EXPECT_EQ(words.diet, "winter");
  EXPECT_EQ(words.version, 0);
  command.parse("--diet winter --version 3");
  EXPECT_EQ(words.version, 3);
  EXPECT_THROW(command.parse("--version 3"), CLI::RequiresError);
}

TEST(Options, ADayIsReadAsItIsTypedAndTodayWhereNoneIs) {
  CLI::App command;
  GroupAndDay words;
  addGroupAndDay(command, words);
  command.parse("--group dragons --day 2026-08-07");
  EXPECT_EQ(quantity::isoDate(dayOf(words.day)), "2026-08-07");
  EXPECT_EQ(words.group, "dragons");
}

}  // namespace
}  // namespace tarebowl::app
