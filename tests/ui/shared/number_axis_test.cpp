// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What stands at a line of a chart is the number of that line.
#include "ui/shared/number_axis.h"

#include <QString>
#include <QValueAxis>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace tarebowl::ui {
namespace {

using testing::ElementsAre;

struct Lines {
  std::vector<double> at;
  std::vector<std::string> said;
};

Lines linesOf(double low, double high) {
  QValueAxis axis;
  setRoundRange(axis, low, high);
  Lines lines;
  for (int i = 0; i < axis.tickCount(); ++i) {
    lines.at.push_back(axis.min() + (axis.max() - axis.min()) * i / (axis.tickCount() - 1));
    lines.said.push_back(
        QString::asprintf(axis.labelFormat().toUtf8().constData(), lines.at.back()).toStdString());
  }
  return lines;
}

TEST(NumberAxis, StepsAreRound) {
  EXPECT_THAT(linesOf(0.0, 2.2).said, ElementsAre("0.0", "0.5", "1.0", "1.5", "2.0", "2.5"));
  EXPECT_THAT(linesOf(0.0, 3.96).said, ElementsAre("0", "1", "2", "3", "4"));
  EXPECT_THAT(linesOf(0.0, 0.0431).said, ElementsAre("0.00", "0.01", "0.02", "0.03", "0.04", "0.05"));
  EXPECT_THAT(linesOf(1230.0, 1271.0).said, ElementsAre("1230", "1240", "1250", "1260", "1270", "1280"));
}

TEST(NumberAxis, EachLineSaysTheNumberAtWhichItStandsAndAllIsWithinThem) {
  for (double high = 0.0013; high < 90'000.0; high *= 1.37)
    for (const double low : {0.0, high * 0.5, high * 0.93}) {
      SCOPED_TRACE(testing::Message() << low << " to " << high);
      const Lines lines = linesOf(low, high);
      const double step = lines.at[1] - lines.at[0];
      ASSERT_GE(lines.at.size(), 3U);
      ASSERT_LE(lines.at.size(), 6U);
      EXPECT_LE(lines.at.front(), low + 1e-5 * step);
      EXPECT_GE(lines.at.back(), high - 1e-5 * step);
      for (std::size_t i = 0; i < lines.at.size(); ++i)
        EXPECT_NEAR(std::stod(lines.said[i]), lines.at[i], 1e-6 * step);
    }
}

}  // namespace
}  // namespace tarebowl::ui
