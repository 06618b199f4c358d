// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/kitchen/example_kitchen.h"
#include "ui/kitchen/kitchen_room.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace tarebowl::ui {

/// The example kitchen open in a window, with the sheet of its small mammals on the desk; who is asked for a
/// file says `saved`.
class KitchenAtWork : public ::testing::Test {
 protected:
  KitchenAtWork();
  /// The collection has answered, and the sheet is read.
  void settle();

  QTemporaryDir folder;
  ExampleKitchen example;
  OpenCollection collection;
  std::filesystem::path saved{folder.filePath(QStringLiteral("sheet.pdf")).toStdString()};
  KitchenRoom room;
};

}  // namespace tarebowl::ui
