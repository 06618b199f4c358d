// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame/sample_in_window.h"

#include "core/diet/solve.h"
#include "ui/diets/diet_desk.h"
#include "ui/health/health_room.h"
#include "ui/intake/intake_room.h"
#include "ui/kitchen/kitchen_room.h"

namespace tarebowl::ui {

SampleInWindow::SampleInWindow()
    : window(&diet::solve, sample.dialogs(), Preferences(seat.filePath(QStringLiteral("seat.ini"))),
             &sampleDay) {
  window.collection().setPerson(QStringLiteral("Keeper A"));
  window.show();
  EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  sample.openIn(window.collection());
  settle();
  EXPECT_TRUE(QTest::qWaitFor([this] { return window.diets().version().isOpen(); }, 30'000));
  settle();
}

void SampleInWindow::settle() {
  QTest::qWait(10);
  EXPECT_TRUE(QTest::qWaitFor(
      [this] {
        return window.collection().isIdle() && !window.diets().desk().isSolving() &&
               window.diets().version().isSaved() && !window.intake().desk().isReading() &&
               !window.kitchen().desk().isReading();
      },
      60'000));
  QCoreApplication::processEvents();  // what was read is laid out
}

void SampleInWindow::goTo(int room) {
  window.goToRoom(room);
  settle();
}

}  // namespace tarebowl::ui
