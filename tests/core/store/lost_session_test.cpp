// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A file that goes while it is open for looking only, and could not be opened again.
#include "core/store/sqlite_connection.h"
#include "tests/core/store/larder.h"

#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

TEST(LostSession, OfASqliteFileThatIsGoneNothingIsBegunAndItIsSaidToBeLost) {
  const OwnFolder folder;
  const auto file = folder / "a.tarebowl";
  (void)Collection::create(file, kKeeper);
  SqliteConnection connection(file, Connection::Access::Still, std::chrono::milliseconds(0));
  EXPECT_FALSE(connection.isLost());
  std::filesystem::remove(file);
  EXPECT_THROW(connection.takeUpAgain(), StoreError);
  EXPECT_FALSE(connection.beginReading());
  EXPECT_TRUE(connection.isLost());
}

}  // namespace
}  // namespace tarebowl::store
