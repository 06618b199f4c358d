// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What each role may do with a collection on a server, with our program and with the engine's own words.
#include "core/store/diet_reading.h"
#include "core/store/feeding_reading.h"
#include "core/store/opening.h"
#include "core/store/server_setup.h"
#include "core/store/swap_verbs.h"
#include "tests/core/store/feeding_days.h"
#include "tests/core/store/larder.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using quantity::Grams;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr const char* kPassword = "a long one, with blanks & marks";

/// A kitchen with an approved diet on a server, and a person in each role.
class ServerRights : public testing::Test {
 protected:
  ServerRights() {
    for (const std::string_view role : kServerRoles) letIn(address(), {}, personIn(role), role, kPassword);
  }
  ~ServerRights() override {
    for (const std::string_view role : kServerRoles)
      (void)refusedTo(address(), "", fmt::format("DROP ROLE IF EXISTS \"{}\"", personIn(role)));
  }

  [[nodiscard]] const fs::path& address() const { return kitchen.collection.file(); }
  /// Roles are known to the whole server, so each test has people of its own.
  [[nodiscard]] static std::string personIn(std::string_view role) {
    return fmt::format("{}_of_{}", role, testing::UnitTest::GetInstance()->current_test_info()->name());
  }
  [[nodiscard]] fs::path addressOf(std::string_view role) const {
    std::string text = address().string();
    return text.replace(text.find("owner"), 5, personIn(role));
  }
  [[nodiscard]] Collection openedBy(std::string_view role) const {
    return Collection::open(addressOf(role), kNow, {.password = [](const fs::path&) { return kPassword; }});
  }
  /// What the server says to somebody in this role who has no more than psql.
  [[nodiscard]] std::string said(std::string_view role, const std::string& statement) const {
    return refusedTo(addressOf(role), "a%20long%20one%2C%20with%20blanks%20%26%20marks",
                     "SET search_path = tarebowl; " + statement);
  }

  Kitchen kitchen;
};

TEST_F(ServerRights, AKeeperNeitherApprovesADietNorChangesALabValue) {
  addSample(kitchen.collection, findFood(kitchen.collection, "kale")->id,
            analysis("Field lab", "2026-10-01", 250), kKeeper);
  for (const char* attempt :
       {"UPDATE diet_version SET state = 'approved', fed_from = '2026-12-01'",
        "UPDATE diet_line SET grams = 1",
        "INSERT INTO diet_step (owner_id, place, state, who, at, reason) VALUES (1, 9, 'approved', 'x', 'x', "
        "'')",
        "UPDATE sample_value SET amount = 0", "DELETE FROM sample_value", "UPDATE sample SET excluded = 'no'",
        "UPDATE food SET name = 'x'", "UPDATE target_profile SET name = 'x'",
        "UPDATE tolerance_rule SET of_bowl = 1", "DELETE FROM change_log",
        "UPDATE collection_state SET schema_version = 1", "DROP TABLE food",
        "ALTER TABLE diet_version DISABLE TRIGGER ALL", "CREATE TABLE tarebowl.x (y INT)"})
    EXPECT_THAT(said("keeper", attempt),
                testing::AnyOf(HasSubstr("permission denied"), HasSubstr("must be owner")))
        << attempt;
}

TEST_F(ServerRights, AKeeperWeighsAndSwaps) {
  Collection desk = openedBy("keeper");
  EXPECT_TRUE(desk.mayWrite());
  const intake::ItemKey pellets{{"family", kitchen.today, 1}, 2};
  const std::vector<WeightRead> weights{{pellets, Grams(30)}};
  EXPECT_EQ(weighIn(desk, weights, kKeeper).size(), 1U);
  EXPECT_THAT(said("keeper", "UPDATE feeding_line SET weighed_mg = 1"), HasSubstr("stays; correct it"));
  EXPECT_THAT(said("keeper", "DELETE FROM feeding_line"), HasSubstr("stays on the sheet"));
  EXPECT_THAT(said("keeper", "UPDATE feeding_line SET planned_mg = 1"), HasSubstr("permission denied"));
}

TEST_F(ServerRights, TheProgramSaysThatARoleMayNot) {
  Collection desk = openedBy("keeper");
  const StoredFood endive = findFood(desk, "endive").value();
  const auto error = errorOf([&] { removeFood(desk, endive.id, endive.revision, kKeeper); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::NoPermission);
  EXPECT_THAT(error->what(), HasSubstr("your role on the server may not do this"));
  EXPECT_TRUE(findFood(kitchen.collection, "endive"));
}

TEST_F(ServerRights, ASwapIsDecidedBySomebodyElse) {
  const std::string insert =
      "INSERT INTO swap_made (id, revision, group_code, day, bowl, item, food, why, who, at, approval, "
      "decided_by, "
      "decided_at, decision) VALUES ({}, 1, 'family', '2026-11-25', 1, 1, 'kale', 'none', 'x', 'x', '{}', "
      "'', '', '')";
  EXPECT_THAT(said("keeper", fmt::format(fmt::runtime(insert), 90, "waiting")), IsEmpty());
  EXPECT_THAT(said("keeper", fmt::format(fmt::runtime(insert), 91, "approved")),
              HasSubstr("is decided on by"));
  EXPECT_THAT(said("keeper", "UPDATE swap_made SET approval = 'approved'"), HasSubstr("permission denied"));
  EXPECT_THAT(said("curator", "UPDATE swap_made SET approval = 'approved' WHERE id = 90"), IsEmpty());
  EXPECT_THAT(said("keeper", "DELETE FROM swap_made WHERE id = 90"), HasSubstr("is decided on by"));
}

/// Whoever has a schema of their own on the server could put functions there that say what they like.
TEST_F(ServerRights, APersonsOwnFunctionsHaveNoSayInARole) {
  const std::string keeper = personIn("keeper");
  ASSERT_THAT(refusedTo(address(), "", fmt::format("CREATE SCHEMA own AUTHORIZATION \"{}\"", keeper)),
              IsEmpty());
  ASSERT_THAT(
      said("keeper",
           "CREATE FUNCTION own.pg_has_role(name, text, text) RETURNS BOOLEAN LANGUAGE sql AS 'SELECT true'"),
      IsEmpty());
  const std::string blood =
      "INSERT INTO tarebowl.observation_blood (owner_id, place, analyte, amount, unit) VALUES (70, 1, "
      "'calcium', "
      "2, 'mmol/L')";
  EXPECT_THAT(said("keeper", "SET search_path = own, pg_catalog; " + blood), HasSubstr("by a vet"));
  EXPECT_THAT(refusedTo(address(), "", "DROP SCHEMA own CASCADE"), IsEmpty());
}

TEST_F(ServerRights, AKeeperNotesWhatIsSeenButNoBlood) {
  EXPECT_THAT(
      said("keeper",
           "INSERT INTO observation (id, revision, group_code, on_day, at_time, kind, note, who) VALUES (70, "
           "1, 'family', '2026-11-25', '', 'appetite', '', 'x')"),
      IsEmpty());
  const std::string blood =
      "INSERT INTO observation_blood (owner_id, place, analyte, amount, unit) VALUES (70, 1, 'calcium', 2, "
      "'mmol/L')";
  EXPECT_THAT(said("keeper", blood), HasSubstr("by a vet"));
  EXPECT_THAT(said("vet", blood), IsEmpty());
}

TEST_F(ServerRights, TheLogOfAKeeperIsOfWhatKeepersDo) {
  const std::string entry =
      "INSERT INTO change_log (id, at, who, verb, subject) VALUES ({}, '2026-11-25T07:30:00Z', 'x', '{}', "
      "'{}')";
  EXPECT_THAT(said("keeper", fmt::format(fmt::runtime(entry), 900, "approve diet version", "diet version")),
              HasSubstr("row-level security"));
  EXPECT_THAT(said("keeper", fmt::format(fmt::runtime(entry), 900, "correct weight", "feeding")), IsEmpty());
}

TEST_F(ServerRights, WhatWasApprovedStaysWhoeverTries) {
  for (const char* attempt :
       {"UPDATE diet_version SET confidence = 0.77 WHERE state = 'approved'",
        "UPDATE diet_version SET state = 'draft', fed_from = NULL WHERE state = 'approved'",
        "UPDATE diet_line SET grams = grams + 1", "DELETE FROM diet_line",
        "INSERT INTO diet_line (owner_id, place, food, grams, least_g, locked, purpose, meal, preparation) "
        "SELECT "
        "id, 99, 'kale', 1, 0, 0, '', '', '' FROM diet_version"})
    EXPECT_THAT(said("nutritionist", attempt), HasSubstr("was approved stays")) << attempt;
  Collection desk = openedBy("nutritionist");
  const StoredVersion version = versionsOfDiet(desk, "lemur-morning").at(0);
  retireVersion(desk, version.id, version.revision, "another comes", kKeeper);
  EXPECT_EQ(versionsOfDiet(desk, "lemur-morning").at(0).record.version.state, diet::VersionState::Retired);
}

TEST_F(ServerRights, ANutritionistApprovesAndAVetDoesNot) {
  Collection desk = openedBy("nutritionist");
  const Written draft = addVersion(desk, "lemur-morning", fullVersion(), kKeeper);
  submitVersion(desk, VersionId{draft.id}, 1, "", kKeeper);
  Collection clinic = openedBy("vet");
  EXPECT_EQ(
      codeOf([&] {
        approveVersion(clinic, VersionId{draft.id}, 2, decision(), {day("2026-12-01"), 0}, "tried", kKeeper);
      }),
      StoreErrorCode::NoPermission);
  approveVersion(desk, VersionId{draft.id}, 2, decision(), {day("2026-12-01"), 0}, "tried", kKeeper);
}

TEST_F(ServerRights, AReaderReadsAndIsToldSo) {
  const auto error = errorOf([&] { (void)openedBy("reader"); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::NoPermission);
  EXPECT_THAT(error->what(), HasSubstr("may read the collection but not write"));
  const Collection reads = Collection::open(
      addressOf("reader"), kNow,
      {.access = OpenOptions::Access::AsAllowed, .password = [](const fs::path&) { return kPassword; }});
  EXPECT_FALSE(reads.mayWrite());
  EXPECT_EQ(countFoods(reads), 3U);
  EXPECT_THAT(said("reader", "INSERT INTO feeding_word (id, word) VALUES (99, 'x')"),
              HasSubstr("permission denied"));
}

TEST_F(ServerRights, SomebodyInNoRoleSeesNothing) {
  ASSERT_THAT(refusedTo(address(), "", "CREATE ROLE stranger_here LOGIN PASSWORD 'x'"), IsEmpty());
  std::string text = address().string();
  text.replace(text.find("owner"), 5, "stranger_here");
  EXPECT_THAT(refusedTo(text, "x", "SELECT * FROM tarebowl.food"), HasSubstr("permission denied"));
  const auto error =
      errorOf([&] { (void)Collection::open(text, kNow, {.password = [](const fs::path&) { return "x"; }}); });
  EXPECT_THAT(refusedTo(address(), "", "DROP ROLE stranger_here"), IsEmpty());
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::NoPermission);
}

/// A table that a later migration adds is nobody's until rights.sql says whose it is. Two are of desks' own
/// files and stay empty here.
TEST_F(ServerRights, EveryTableIsInSomebodysHands) {
  const soci::rowset<std::string> tables =
      (kitchen.collection.inner().sql().prepare
       << "SELECT c.relname FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace WHERE n.nspname = "
          "'tarebowl' AND c.relkind = 'r' AND c.relname NOT IN ('collection_state', 'station_copy', "
          "'station_entry') AND NOT EXISTS (SELECT FROM "
          "pg_roles r WHERE r.rolname LIKE 'tarebowl%' AND has_table_privilege(r.rolname, c.oid, 'INSERT'))");
  EXPECT_THAT(std::vector<std::string>(tables.begin(), tables.end()), IsEmpty());
}

}  // namespace
}  // namespace tarebowl::store
