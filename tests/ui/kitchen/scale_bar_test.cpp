// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/scale_bar.h"

#include "tests/ui/kitchen/pretend_scale.h"

#include <QComboBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

constexpr ScalePatience kShort{.silence = std::chrono::milliseconds(60),
                               .retry = std::chrono::milliseconds(40)};

TEST(TheScaleOfABench, IsChosenOnceAndShowsWhatStandsOnIt) {
  PretendScale scale;
  ScaleBar bar(nullptr, kShort);
  QSignalSpy weights(&bar, &ScaleBar::weightRead);
  ScaleSettings chosen;
  QObject::connect(&bar, &ScaleBar::chosen, [&](const ScaleSettings& settings) { chosen = settings; });
  EXPECT_EQ(bar.state(), QStringLiteral("No scale: weights are typed."));
  auto* use = bar.findChild<QPushButton*>();
  use->click();
  bar.findChild<QComboBox*>()->setCurrentText(scale.port());
  use->click();
  EXPECT_EQ(chosen.port, scale.port()) << "to be remembered";
  scale.send("US  11.0 g\r\n");
  ASSERT_TRUE(QTest::qWaitFor([&] { return bar.state().contains(QStringLiteral("moving")); }, 3000));
  EXPECT_TRUE(weights.isEmpty()) << "what still moves is no weight";
  scale.send("ST  23.4 g\r\n");
  ASSERT_TRUE(QTest::qWaitFor([&] { return !weights.isEmpty(); }, 3000));
  EXPECT_EQ(weights.at(0).at(0).toDouble(), 23.4);
  EXPECT_TRUE(bar.state().contains(QStringLiteral("at rest")));
  use->click();
  EXPECT_TRUE(chosen.port.isEmpty());
  EXPECT_EQ(bar.state(), QStringLiteral("No scale: weights are typed."));
}

TEST(TheScaleOfABench, ThatIsGoneIsToldWhereItsWeightStood) {
  PretendScale scale;
  ScaleBar bar(nullptr, kShort);
  bar.use({.port = scale.port()});
  scale.unplug();
  EXPECT_TRUE(QTest::qWaitFor([&] { return bar.state().contains(QStringLiteral("can be typed")); }, 3000));
}

TEST(TheScaleOfABench, LeavesEnterToTheWeights) {
  const ScaleBar bar;
  for (const QComboBox* choice : bar.findChildren<QComboBox*>())
    EXPECT_EQ(choice->focusPolicy() & Qt::TabFocus, 0);
}

}  // namespace
}  // namespace tarebowl::ui
