// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"

#include "core/store/opening.h"
#include "tests/core/store/own_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using testing::HasSubstr;

TEST(ChangeLog, NobodyCanChangeOrRemoveAnEntry) {
  const OwnFolder folder;
  const Collection made = Collection::create(folder.collection("a"), kKeeper);
  for (const char* attempt : {"UPDATE change_log SET who = 'nobody'", "DELETE FROM change_log"}) {
    const auto error = errorOf([&] { guarded(made.file(), [&] { made.inner().sql() << attempt; }); });
    ASSERT_TRUE(error) << attempt;
    EXPECT_EQ(error->code(), StoreErrorCode::Refused);
    EXPECT_THAT(error->what(), HasSubstr("append-only"));
  }
  EXPECT_EQ(newestChanges(made, 10).size(), 1U);
}

TEST(ChangeLog, AnEntryIsFoundByItsNumberWithEverythingItSays) {
  const OwnFolder folder;
  const Collection made = Collection::create(folder.collection("a"), kKeeper);
  WriteTransaction transaction(made.inner().connection);
  const auto number =
      record(made.inner(), {0, {"Keeper B", kNow}, "edit food", "food", 7, "{}", std::nullopt});
  transaction.commit();
  const auto found = findChange(made, number);
  ASSERT_TRUE(found);
  EXPECT_EQ(found->author.who, "Keeper B");
  EXPECT_EQ(found->subjectId, 7);
  EXPECT_EQ(found->before, "{}");
  EXPECT_FALSE(found->after);
  EXPECT_FALSE(findChange(made, 99));
}

}  // namespace
}  // namespace tarebowl::store
