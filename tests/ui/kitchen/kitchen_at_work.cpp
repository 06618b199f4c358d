// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/kitchen/kitchen_at_work.h"

#include <QTest>

namespace tarebowl::ui {
namespace {

Dialogs savingTo(const std::filesystem::path& file) {
  Dialogs dialogs;
  dialogs.sheetToSave = [file](QWidget*, const std::filesystem::path&) { return std::optional(file); };
  return dialogs;
}

}  // namespace

KitchenAtWork::KitchenAtWork() : room(collection, savingTo(saved), &kitchenDay) {
  collection.setPerson(QStringLiteral("Keeper A"));
  room.resize(1290, 740);
  room.show();
  EXPECT_TRUE(QTest::qWaitForWindowActive(&room));
  collection.open({.name = QStringLiteral("kitchen"), .file = example.file(), .invented = true},
                  example.opener());
  settle();
  room.desk().showSection(QStringLiteral("Small Mammals"));
  settle();
}

void KitchenAtWork::settle() {
  EXPECT_TRUE(QTest::qWaitFor([this] { return collection.isIdle() && !room.desk().isReading(); }, 20'000));
}

}  // namespace tarebowl::ui
