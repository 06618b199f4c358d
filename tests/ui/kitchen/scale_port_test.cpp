// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/scale_port.h"

#include "tests/ui/kitchen/pretend_scale.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

constexpr ScalePatience kShort{.silence = std::chrono::milliseconds(60),
                               .retry = std::chrono::milliseconds(40)};

class AScaleOnAPort : public testing::Test {
 protected:
  void connectScale(std::optional<intake::ScaleUnit> unit = std::nullopt) {
    port.open({.port = scale.port(), .speed = 9600, .unit = unit});
    ASSERT_TRUE(port.isConnected());
  }
  /// The next weight that may be taken.
  std::optional<double> settled() {
    const auto found = [this] {
      for (; next < weights.size(); ++next)
        if (weights.at(next).at(1).toBool()) return true;
      return false;
    };
    if (!QTest::qWaitFor(found, 3000)) return std::nullopt;
    return weights.at(next++).at(0).toDouble();
  }

  PretendScale scale;
  ScalePort port{nullptr, kShort};
  QSignalSpy weights{&port, &ScalePort::weightRead};
  QSignalSpy troubles{&port, &ScalePort::troubled};
  QSignalSpy connections{&port, &ScalePort::connectedChanged};
  int next = 0;
};

TEST_F(AScaleOnAPort, ThatSendsAllTheTimeAndSaysWhenItIsAtRest) {
  connectScale();
  scale.send("ST,GS,+0000.0 g\r\nUS,GS,+0011.2 g\r\nUS,GS,+0023.9 g\r\nST,GS,+0023.4 g\r\n");
  EXPECT_EQ(settled(), 0.0);
  EXPECT_EQ(settled(), 23.4);
  EXPECT_TRUE(troubles.isEmpty());
}

TEST_F(AScaleOnAPort, ThatLeavesOutItsUnitUntilItIsAtRest) {
  connectScale();
  scale.send("+   11.2  \n+   22.9  \n+   23.4 g\n+   23.4 g\n");
  EXPECT_EQ(settled(), 23.4);
}

TEST_F(AScaleOnAPort, ThatSendsOneLineWhenItsKeyIsPressed) {
  connectScale();
  scale.send("  23,4 g\r");
  EXPECT_EQ(settled(), 23.4) << "nothing followed";
  scale.send("  23,4 g\r");
  EXPECT_EQ(settled(), 23.4) << "the next bowl may weigh the same";
}

TEST_F(AScaleOnAPort, InOuncesIsReadAsGrams) {
  connectScale();
  scale.send("S  1.000 oz\r\n");
  EXPECT_DOUBLE_EQ(settled().value_or(0), 28.349523125);
}

TEST_F(AScaleOnAPort, ThatDropsBytesIsToldAndGivesNoOtherWeight) {
  connectScale();
  for (int line = 0; line < 4; ++line) scale.send("ST,+00123.4 g\r\n");
  for (int line = 0; line < 4; ++line) EXPECT_EQ(settled(), 123.4);
  scale.send("ST,+0013.4 g\r\nST,+00125.0 g\r\n");
  EXPECT_EQ(settled(), 125.0);
  ASSERT_EQ(troubles.size(), 1);
  EXPECT_TRUE(troubles.at(0).at(0).toString().contains(QStringLiteral("not whole")));
}

TEST_F(AScaleOnAPort, ThatIsUnpluggedIsToldOnceAndFoundAgain) {
  connectScale();
  scale.unplug();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !port.isConnected(); }, 3000));
  QTest::qWait(150);
  EXPECT_GE(troubles.size(), 1);
  EXPECT_LE(troubles.size(), 2) << "gone, and not found; not once a try";
  scale.plugIn();
  ASSERT_TRUE(QTest::qWaitFor([&] { return port.isConnected(); }, 3000));
  scale.send("ST  5.0 g\r\n");
  EXPECT_EQ(settled(), 5.0);
  EXPECT_EQ(connections.size(), 3) << "there, gone, there";
}

TEST_F(AScaleOnAPort, ThatIsNotThereIsToldAndLookedFor) {
  scale.unplug();
  port.open({.port = scale.port()});
  EXPECT_FALSE(port.isConnected());
  ASSERT_EQ(troubles.size(), 1);
  EXPECT_TRUE(troubles.at(0).at(0).toString().contains(QStringLiteral("can be typed")));
  scale.plugIn();
  EXPECT_TRUE(QTest::qWaitFor([&] { return port.isConnected(); }, 3000));
}

TEST_F(AScaleOnAPort, ThatWasLetGoSaysNothingMore) {
  connectScale();
  port.close();
  scale.send("ST  5.0 g\r\n");
  QTest::qWait(100);
  EXPECT_TRUE(weights.isEmpty());
  EXPECT_FALSE(port.isConnected());
}

}  // namespace
}  // namespace tarebowl::ui
