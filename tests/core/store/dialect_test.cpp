// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What each engine makes of the SQL that they have in common.
#include "core/store/named_places.h"
#include "core/store/postgresql_dialect.h"
#include "core/store/server_address.h"
#include "core/store/sqlite_dialect.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

TEST(Dialect, InAFileTablesAreStrictAndMarksAreTakenAtTheirWord) {
  EXPECT_THAT(toSqlite("-- a reason; with a semicolon\nCREATE TABLE a (b TEXT) /* clustered */;\n"
                       "CREATE INDEX c ON a (b);\n"),
              ElementsAre("CREATE TABLE a (b TEXT) STRICT, WITHOUT ROWID", "CREATE INDEX c ON a (b)"));
  EXPECT_THAT(toSqlite("CREATE TABLE a (b TEXT) /* append-only */;"),
              ElementsAre("CREATE TABLE a (b TEXT) STRICT", HasSubstr("BEFORE UPDATE ON a"),
                          HasSubstr("BEFORE DELETE ON a")));
}

TEST(Dialect, OnAServerTypesAreAsWideAsInAFileAndTextsAreComparedByBytes) {
  EXPECT_THAT(
      toPostgresql("CREATE TABLE a (id INTEGER PRIMARY KEY, b TEXT NOT NULL, c REAL) /* clustered */;\n"
                   "CREATE INDEX d ON a (b);\n"),
      ElementsAre("CREATE TABLE a (id BIGINT PRIMARY KEY, b TEXT COLLATE \"C\" NOT NULL, c DOUBLE PRECISION)",
                  "CREATE INDEX d ON a (b)"));
  EXPECT_THAT(toPostgresql("CREATE TABLE a (b TEXT) /* append-only */;"),
              ElementsAre("CREATE TABLE a (b TEXT COLLATE \"C\")", HasSubstr("FUNCTION refuse_change"),
                          HasSubstr("BEFORE UPDATE OR DELETE ON a"), HasSubstr("BEFORE TRUNCATE ON a")));
}

TEST(Dialect, PlacesAreNumberedInTheirOrderOrAsTheySay) {
  EXPECT_EQ(withNumberedPlaces("INSERT INTO a VALUES (?, ?)"), "INSERT INTO a VALUES ($1, $2)");
  EXPECT_EQ(withNumberedPlaces("SELECT ?2, ?1, 'why?' WHERE a = ?12"), "SELECT $2, $1, 'why?' WHERE a = $12");
  EXPECT_EQ(withNumberedPlaces("SELECT a WHERE b = :code AND c = :day OR b = :code"),
            "SELECT a WHERE b = $1 AND c = $2 OR b = $3");
}

TEST(Dialect, ANameOfAPlaceIsNoneBetweenQuotesOrWithoutAWord) {
  EXPECT_EQ(withBarePlaces("SELECT 'at :noon', ':' WHERE a = :a AND b = ': '"),
            "SELECT 'at :noon', ':' WHERE a = ? AND b = ': '");
  EXPECT_EQ(withBarePlaces("SELECT a: b WHERE c = :last_1"), "SELECT a: b WHERE c = ?");
}

TEST(ServerAddress, IsToldFromAFile) {
  EXPECT_TRUE(isServerAddress("postgresql://ann@zoo/collection"));
  EXPECT_TRUE(isServerAddress("postgres://zoo/collection"));
  EXPECT_FALSE(isServerAddress("postgresql.tarebowl"));
  EXPECT_FALSE(isServerAddress("/home/ann/house.tarebowl"));
  EXPECT_EQ(databaseOf("postgresql://ann@zoo/collection?sslmode=require"), "collection");
}

TEST(ServerAddress, AnotherMachineProvesWhoItIsUnlessTheAddressSaysOtherwise) {
  EXPECT_THAT(connectionWords("postgresql://ann@zoo/c", {}), HasSubstr("sslmode=verify-full"));
  EXPECT_THAT(connectionWords("postgresql://ann@zoo/c?sslmode=require", {}), HasSubstr("sslmode=require"));
  EXPECT_THAT(connectionWords("postgresql://ann@localhost/c", {}), Not(HasSubstr("sslmode")));
  EXPECT_THAT(connectionWords("postgresql:///c?host=%2Ftmp", {}), Not(HasSubstr("sslmode")));
}

TEST(ServerAddress, APasswordMayHoldAnything) {
  EXPECT_THAT(connectionWords("postgresql://ann@zoo/c", "a b&c='%"),
              HasSubstr("password=a%20b%26c%3D%27%25"));
}

TEST(ServerAddress, APasswordIsAskedForOnce) {
  int asked = 0;
  const PasswordAsker ask = askedOnce([&asked](const std::filesystem::path&) {
    ++asked;
    return std::optional<std::string>("known");
  });
  EXPECT_EQ(ask("postgresql://a/b"), "known");
  EXPECT_EQ(ask("postgresql://a/b"), "known");
  EXPECT_EQ(asked, 1);
  (void)ask("postgresql://a/c");
  EXPECT_EQ(asked, 2);
}

}  // namespace
}  // namespace tarebowl::store
