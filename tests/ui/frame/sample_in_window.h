// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/shared/sample_in_room.h"
#include "ui/diets/diets_room.h"
#include "ui/frame/main_window.h"

namespace tarebowl::ui {

/// The whole window on the invented sample, on its day, and somebody before it.
class SampleInWindow : public ::testing::Test {
 protected:
  SampleInWindow();
  /// The collection has answered, and the desk and the rooms have taken it in.
  void settle();
  void goTo(int room);

  SampleAtHand sample;
  QTemporaryDir seat;
  MainWindow window;
};

}  // namespace tarebowl::ui
