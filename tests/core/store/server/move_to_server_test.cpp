// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A collection moves from a file to a server: what is the server's alone. All else: move_test.cpp.
#include "core/store/move.h"
#include "core/store/opening.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

class MoveToServer : public testing::Test {
 protected:
  MoveToServer() {
    Collection collection = Collection::create(from, kKeeper);
    (void)addFood(collection, plain("kale"), kKeeper);
    (void)addFood(collection, plain("fennel"), kKeeper);
  }
  OwnFolder folder;
  fs::path from = folder / "old.tarebowl";
  fs::path to = folder.collection("new");
};

TEST_F(MoveToServer, TheServerKnowsAtOnceHowManyRowsCame) {
  (void)moveCollection(from, to, kKeeper);
  EXPECT_EQ(refusedTo(to, "",
                      "SELECT 1 / CASE WHEN reltuples = 2 THEN 1 ELSE 0 END FROM pg_class WHERE oid = "
                      "'tarebowl.food'::regclass"),
            "");
}

/// It is refused once all rows of its table have been sent.
TEST_F(MoveToServer, ATextThatItDoesNotKeepUndoesTheMove) {
  for (const char* const unkept : {"CAST(x'ff' AS TEXT)", "'a' || CHAR(0) || 'b'"}) {
    Collection::open(from, kNow).inner().sql() << std::string("UPDATE food SET note = ") + unkept;
    const auto error = errorOf([&] { (void)moveCollection(from, to, kKeeper); });
    ASSERT_TRUE(error);
    EXPECT_THAT(error->what(), testing::AnyOf(HasSubstr("encoding"), HasSubstr("the character 0")));
    EXPECT_EQ(codeOf([&] { (void)Collection::open(to, kNow); }), StoreErrorCode::NotACollection);
    EXPECT_EQ(countFoods(Collection::open(from, kNow)), 2U);
  }
}

}  // namespace
}  // namespace tarebowl::store
