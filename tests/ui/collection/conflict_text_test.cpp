// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/conflict_text.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

std::string conflict(const char* mine, const char* theirs) {
  return conflictText(QString::fromUtf8(mine), QString::fromUtf8(theirs)).toStdString();
}

TEST(ConflictText, NamesOnlyWhatDiffers) {
  EXPECT_EQ(conflict(R"({"name":"Kale","scale_step_g":0.1})", R"({"name":"Kale","scale_step_g":1})"),
            "scale step g: yours 0.1, now there 1");
}

TEST(ConflictText, SaysWhatIsMissingOnOneSide) {
  EXPECT_EQ(conflict(R"({"excluded":"dusted"})", "{}"), "excluded: yours dusted, now there nothing");
}

TEST(ConflictText, SaysThatTheThingWasRemoved) {
  EXPECT_EQ(conflict("{}", ""), "It was removed.");
}

}  // namespace
}  // namespace tarebowl::ui
