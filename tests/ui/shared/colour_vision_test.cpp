// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What those see of the window's colours who do not see all colours. State is told by shape and word besides
// (state_mark_test.cpp).
#include "tests/ui/shared/colour_vision.h"

#include "ui/shared/band_colors.h"
#include "ui/shared/state_mark.h"
#include "ui/shared/theme_pairs.h"

#include <gtest/gtest.h>

#include <array>

namespace tarebowl::ui {
namespace {

constexpr std::array kMarks{Mark::Met, Mark::AtLimit, Mark::Lacking, Mark::Over, Mark::Unknown};

TEST(ColourVision, LeavesGreysAsTheyAre) {
  for (const ColourVision eye : kColourVisions)
    for (const int grey : {0, 60, 128, 255})
      EXPECT_LT(distance(seenBy(eye, QColor(grey, grey, grey)), QColor(grey, grey, grey)), 0.5);
}

// Copunctal confusion: to an eye without cones for red or green these two are much alike, to others not.
TEST(ColourVision, TakesRedAndGreenForAlikeWhereTheEyeDoes) {
  const QColor red(200, 60, 40);
  const QColor green(90, 110, 40);
  EXPECT_GT(distance(red, green), 60.0);
  EXPECT_LT(distance(seenBy(ColourVision::Deutan, red), seenBy(ColourVision::Deutan, green)), 25.0);
  EXPECT_GT(distance(seenBy(ColourVision::Tritan, red), seenBy(ColourVision::Tritan, green)), 60.0);
}

// L* of black is 0 and of white 100, both without hue.
TEST(ColourVision, MeasuresDistanceByLightnessAndHue) {
  EXPECT_NEAR(distance(QColor(0, 0, 0), QColor(255, 255, 255)), 100.0, 0.1);
}

class ColoursTest : public ::testing::TestWithParam<bool> {
 protected:
  const Theme& theme = GetParam() ? darkTheme() : lightTheme();
};

// Five times what is just noticeable.
TEST_P(ColoursTest, OfStatesStayApartForEveryEye) {
  for (std::size_t i = 0; i < kMarks.size(); ++i)
    for (std::size_t j = i + 1; j < kMarks.size(); ++j)
      for (const ColourVision eye : kColourVisions)
        EXPECT_GT(distance(seenBy(eye, colorOf(kMarks[i], theme)), seenBy(eye, colorOf(kMarks[j], theme))),
                  11.5)
            << wordOf(kMarks[i]).toStdString() << " and " << wordOf(kMarks[j]).toStdString() << ", "
            << nameOf(eye);
}

TEST_P(ColoursTest, OfTextCanBeReadByEveryEye) {
  for (const ColorPair& pair : colorPairs())
    for (const ColourVision eye : kColourVisions)
      EXPECT_GE(contrastRatio(seenBy(eye, theme.*pair.color->color), seenBy(eye, theme.*pair.ground->color)),
                0.9 * leastContrast(pair.role))
          << pair.color->name << " on " << pair.ground->name << ", " << nameOf(eye);
}

TEST_P(ColoursTest, OfFoodsInAChartStandOutFromTheCardAndFromTheirNeighbours) {
  const auto expectApart = [this](const auto& seen, const char* who) {
    for (int band = 0; band <= kBands; ++band) {
      EXPECT_GE(contrastRatio(seen(bandColor(theme, band)), seen(theme.card)), leastContrast(ColorRole::Mark))
          << band << ", " << who;
      if (band < kBands) {
        EXPECT_GE(contrastRatio(seen(bandColor(theme, band)), seen(bandColor(theme, band + 1))), 1.5)
            << band << ", " << who;
      }
    }
  };
  expectApart([](const QColor& color) { return color; }, "all colours");
  for (const ColourVision eye : kColourVisions)
    expectApart([eye](const QColor& color) { return seenBy(eye, color); }, nameOf(eye));
}

INSTANTIATE_TEST_SUITE_P(LightAndDark, ColoursTest, ::testing::Bool(),
                         [](const auto& which) { return which.param ? "Dark" : "Light"; });

}  // namespace
}  // namespace tarebowl::ui
