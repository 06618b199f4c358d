// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/stated_text.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using food::Qualifier;

std::optional<StatedText> read(const char* text) {
  return readStated(QString::fromUtf8(text));
}

TEST(StatedText, ReadsWhatReportsPrint) {
  EXPECT_EQ(read("12.4"), (StatedText{12.4, Qualifier::Equal}));
  EXPECT_EQ(read("< 0.05"), (StatedText{0.05, Qualifier::BelowQuantification}));
  EXPECT_EQ(read("≥33"), (StatedText{33.0, Qualifier::AtLeast}));
  EXPECT_EQ(read("<=6"), (StatedText{6.0, Qualifier::AtMost}));
  EXPECT_EQ(read("tr"), (StatedText{0.0, Qualifier::Trace}));
  EXPECT_EQ(read("n.d."), (StatedText{0.0, Qualifier::NotDetected}));
}

TEST(StatedText, RefusesWhatIsNoAmount) {
  for (const char* text : {"", "-3", "abc", "1.2.3", "nan", "inf", "<", "12 mg"})
    EXPECT_FALSE(read(text).has_value()) << text;
}

TEST(StatedText, ReadsBackWhatItWrites) {
  for (const StatedText& stated :
       {StatedText{12.5, Qualifier::Equal}, StatedText{0.05, Qualifier::BelowQuantification},
        StatedText{33.0, Qualifier::AtLeast}, StatedText{0.0, Qualifier::Trace}})
    EXPECT_EQ(readStated(writeStated(stated)), stated);
}

}  // namespace
}  // namespace tarebowl::ui
