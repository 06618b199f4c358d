// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/source_dir.h"
#include "ui/shared/theme_pairs.h"

#include <QApplication>
#include <QDirIterator>
#include <QFile>
#include <QMap>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

namespace tarebowl::ui {
namespace {

class ThemeTest : public ::testing::TestWithParam<bool> {
 protected:
  const Theme& theme = GetParam() ? darkTheme() : lightTheme();
};

TEST_P(ThemeTest, EveryColourStandsOutFromEveryGroundThatItStandsOn) {
  for (const ColorPair& pair : colorPairs())
    EXPECT_GE(contrastRatio(theme.*pair.color->color, theme.*pair.ground->color), leastContrast(pair.role))
        << pair.color->name << " on " << pair.ground->name;
}

TEST_P(ThemeTest, ThePaletteLeadsBackToItsTheme) {
  EXPECT_EQ(themeOf(paletteOf(theme)).dark, theme.dark);
}

TEST_P(ThemeTest, TheStyleSheetLeavesNoNameUnreplaced) {
  const QString sheet = styleSheetOf(theme);
  EXPECT_FALSE(sheet.contains(QLatin1Char('@')));
  EXPECT_TRUE(sheet.contains(theme.accent.name()));
}

/// A disabled control's text is exempt (1.4.3), and can be read all the same.
TEST_P(ThemeTest, ThePalettesTextsAreOfThePairs) {
  const QPalette palette = paletteOf(theme);
  const std::pair<QPalette::ColorRole, QPalette::ColorRole> texts[] = {
      {QPalette::WindowText, QPalette::Window},  {QPalette::Text, QPalette::Base},
      {QPalette::Text, QPalette::AlternateBase}, {QPalette::PlaceholderText, QPalette::Base},
      {QPalette::ButtonText, QPalette::Button},  {QPalette::HighlightedText, QPalette::Highlight},
      {QPalette::Link, QPalette::Window},        {QPalette::ToolTipText, QPalette::ToolTipBase},
      {QPalette::BrightText, QPalette::Window}};
  for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled})
    for (const auto& [text, ground] : texts)
      EXPECT_GE(contrastRatio(palette.color(group, text), palette.color(group, ground)),
                leastContrast(ColorRole::Text))
          << group << ' ' << text << " on " << ground;
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

TEST(ThemePairs, NameEveryColourThatSaysSomething) {
  for (const ThemeColor& color : themeColors()) {
    if (color.role != ColorRole::Text && color.role != ColorRole::Mark) continue;
    const auto pairs = colorPairs();
    EXPECT_TRUE(std::ranges::any_of(pairs, [&](const ColorPair& pair) {
      return pair.color == &color && pair.role == color.role;
    })) << color.name;
  }
}

/// One rule of the style sheet: whose it is, and what it says.
struct StyleRule {
  QString selector;
  QMap<QString, QString> says;
};

std::vector<StyleRule> styleRules() {
  std::vector<StyleRule> rules;
  static const QRegularExpression kRule(QStringLiteral("([^{}]+)\\{([^}]*)\\}"));
  for (auto found = kRule.globalMatch(styleSheetTemplate()); found.hasNext();) {
    const QRegularExpressionMatch match = found.next();
    StyleRule& rule = rules.emplace_back();
    rule.selector = match.captured(1).simplified();
    for (const QString& line : match.captured(2).split(QLatin1Char(';'), Qt::SkipEmptyParts))
      rule.says[line.section(QLatin1Char(':'), 0, 0).trimmed()] = line.section(QLatin1Char(':'), 1).trimmed();
  }
  return rules;
}

const ThemeColor* colorIn(const QString& value) {
  static const QRegularExpression kName(QStringLiteral("@(\\w+)"));
  const QString name = kName.match(value).captured(1);
  const auto all = themeColors();
  const auto found =
      std::ranges::find_if(all, [&](const ThemeColor& color) { return name == QLatin1String(color.name); });
  return found == all.end() ? nullptr : &*found;
}

bool isPair(const ThemeColor* color, const ThemeColor* ground, ColorRole role) {
  const auto pairs = colorPairs();
  return std::ranges::any_of(pairs, [&](const ColorPair& pair) {
    return pair.color == color && pair.ground == ground && pair.role == role;
  });
}

TEST(StyleSheet, WritesNoTextOnAGroundThatIsNotAmongThePairs) {
  int checked = 0;
  for (const StyleRule& rule : styleRules())
    for (const auto& [text, ground] :
         {std::pair{"color", "background"}, std::pair{"selection-color", "selection-background-color"}}) {
      const ThemeColor* color = colorIn(rule.says.value(QLatin1String(text)));
      if (color == nullptr) continue;
      const ThemeColor* on = colorIn(rule.says.value(QLatin1String(ground)));
      const bool isOnRail = rule.selector.startsWith(QStringLiteral("QWidget#rail"));
      if (on == nullptr) on = isOnRail ? colorIn(QStringLiteral("@rail")) : colorIn(QStringLiteral("@paper"));
      EXPECT_TRUE(isPair(color, on, ColorRole::Text))
          << rule.selector.toStdString() << ": " << color->name << " on " << on->name;
      ++checked;
    }
  EXPECT_GT(checked, 15);
}

/// What one can type into, press or hold is seen by its edge: 1.4.11.
TEST(StyleSheet, DrawsNoControlByAMereRule) {
  static const QRegularExpression kControl(QStringLiteral(
      "QLineEdit|QComboBox(?! QAbstractItemView)|indicator|QPushButton|QToolButton|#segmented|handle"));
  int checked = 0;
  for (const StyleRule& rule : styleRules()) {
    if (!rule.selector.contains(kControl) || rule.selector.contains(QStringLiteral(":disabled"))) continue;
    const QString border = rule.says.value(QStringLiteral("border"));
    const ThemeColor* edge = colorIn(border.isEmpty() && rule.selector.contains(QStringLiteral("handle"))
                                         ? rule.says.value(QStringLiteral("background"))
                                         : border);
    if (edge == nullptr) continue;
    EXPECT_TRUE(edge->role == ColorRole::Mark || edge->role == ColorRole::Text)
        << rule.selector.toStdString() << ": " << edge->name;
    ++checked;
  }
  EXPECT_GT(checked, 10);
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
