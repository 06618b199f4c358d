// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/theme.h"

#include "tests/source_dir.h"

#include <QApplication>
#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

// WCAG 2.1, 1.4.3: text of this size needs 4.5:1; 1.4.11: what a graphic says needs 3:1.
constexpr double kText = 4.5;
constexpr double kGraphic = 3.0;

class ThemeTest : public ::testing::TestWithParam<bool> {
 protected:
  const Theme& theme = GetParam() ? darkTheme() : lightTheme();
};

TEST_P(ThemeTest, EveryTextCanBeReadOnEveryGroundItStandsOn) {
  for (const TextPair& pair : textPairs(theme))
    EXPECT_GE(contrastRatio(pair.text, pair.ground), kText) << pair.where.toStdString();
}

TEST_P(ThemeTest, TheMarkerStandsOutFromZoneTrackAndGround) {
  for (const QColor& ground : {theme.zone, theme.line, theme.paper, theme.card, theme.selected})
    EXPECT_GE(contrastRatio(theme.marker, ground), kGraphic);
}

TEST_P(ThemeTest, BarsStandOutFromTheirGround) {
  EXPECT_GE(contrastRatio(theme.bar, theme.card), kGraphic);
  EXPECT_GE(contrastRatio(theme.secondBar, theme.paper), kGraphic);
}

TEST_P(ThemeTest, ThePaletteLeadsBackToItsTheme) {
  EXPECT_EQ(themeOf(paletteOf(theme)).dark, theme.dark);
}

TEST_P(ThemeTest, TheStyleSheetLeavesNoNameUnreplaced) {
  const QString sheet = styleSheetOf(theme);
  EXPECT_FALSE(sheet.contains(QLatin1Char('@')));
  EXPECT_TRUE(sheet.contains(theme.accent.name()));
}

INSTANTIATE_TEST_SUITE_P(LightAndDark, ThemeTest, ::testing::Bool(),
                         [](const auto& which) { return which.param ? "Dark" : "Light"; });

TEST(Contrast, BlackOnWhiteIs21AndAColourOnItselfIs1) {
  EXPECT_NEAR(contrastRatio(Qt::black, Qt::white), 21.0, 1e-9);
  EXPECT_NEAR(contrastRatio(Qt::red, Qt::red), 1.0, 1e-12);
}

// 0x77 is 0.46667 of full; ((0.46667 + 0.055) / 1.055)^2.4 = 0.18447; 1.05 / (0.18447 + 0.05) = 4.478.
TEST(Contrast, MidGreyOnWhiteJustMissesTheLimit) {
  EXPECT_NEAR(contrastRatio(QColor(0x77, 0x77, 0x77), Qt::white), 4.478, 0.001);
}

TEST(ThemeFile, IsTheOnlyOneInTheWindowThatNamesAColour) {
  static const QRegularExpression kColour(QStringLiteral(
      R"re(QColor\(\s*(0x|\d)|"#[0-9a-fA-F]{6}"|Qt::(red|green|blue|yellow|cyan|magenta|gray)\b|rgb\()re"));
  QDirIterator files(QStringLiteral(TAREBOWL_SOURCE_DIR "/ui"),
                     {QStringLiteral("*.cpp"), QStringLiteral("*.h")}, QDir::Files,
                     QDirIterator::Subdirectories);
  int read = 0;
  while (files.hasNext()) {
    QFile file(files.next());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    ++read;
    if (file.fileName().endsWith(QLatin1String("shared/theme.cpp"))) continue;
    QString text = QString::fromUtf8(file.readAll());
    // The drawings' placeholder for ink is not a colour that anyone sees.
    text.remove(QStringLiteral("\"#000000\""));
    EXPECT_FALSE(text.contains(kColour)) << file.fileName().toStdString();
  }
  EXPECT_GT(read, 20);
}

}  // namespace
}  // namespace tarebowl::ui
