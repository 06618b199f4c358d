// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"
#include "tests/core/store/diets.h"
#include "tests/faults/child.h"
#include "tests/faults/how_often.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace tarebowl::faults {
namespace {

namespace fs = std::filesystem;
using namespace tarebowl::store;
using std::chrono::microseconds;

constexpr std::size_t kChangesBefore = 3;  // the collection, its species and its group
constexpr int kDeathsOfAHerd = 40;  // all of a herd is read after each: a new one before that takes long
const OpenOptions kReadThrough{.check = OpenOptions::Check::Always};

std::string numbered(int number) {
  return "animal-" + std::to_string(number);
}

animal::TargetProfile profileOf(int number) {
  animal::TargetProfile profile = primateProfile();
  profile.code = numbered(number);
  return profile;
}

diet::DietVersion versionOf(int number) {
  diet::DietVersion version = fullVersion();
  version.profile = {numbered(number), 1};
  return version;
}

/// Adds an animal, a weighing of it, a profile and a diet with a version without end, and tells each number
/// when all are written.
void addNumber(Collection& collection, int number) {
  addIndividual(collection, lemur(numbered(number)), kKeeper);
  addMass(collection, weighed(numbered(number), "2026-11-20", 3.5), Confirmed::Yes, kKeeper);
  addProfile(collection, profileOf(number), kKeeper);
  addDiet(collection, {.code = numbered(number), .name = "bowl", .group = "family"}, kKeeper);
  addVersion(collection, numbered(number), versionOf(number), kKeeper);
}

void addOnAndOn(const fs::path& file, int first, const Child::Tell& tell) {
  Collection collection = Collection::open(file, kNow);
  tell(0);
  for (int number = first;; ++number) {
    addNumber(collection, number);
    tell(number);
  }
}

/// So long this machine needs for one animal now: deaths come in the midst of the first few, however slow it
/// is.
microseconds timeOfNumber(Collection& collection, int number) {
  const auto begin = std::chrono::steady_clock::now();
  addNumber(collection, number);
  return std::chrono::duration_cast<microseconds>(std::chrono::steady_clock::now() - begin);
}

/// Whatever is there of an animal and its diet is there as a whole.
void expectWhole(const Collection& collection, int number) {
  if (const auto found = findIndividual(collection, numbered(number))) {
    EXPECT_EQ(found->record, lemur(numbered(number)));
  }
  if (const auto found = findProfile(collection, animal::ProfileReference{numbered(number), 1})) {
    EXPECT_EQ(found->record.profile, profileOf(number));
  }
  for (const StoredVersion& version : versionsOfDiet(collection, numbered(number)))
    EXPECT_EQ(version.record.version, versionOf(number));
}

std::size_t massesBetween(const Collection& collection, int first, int last) {
  std::size_t count = 0;
  for (int number = first; number <= last; ++number)
    count += massesOfIndividual(collection, numbered(number)).size();
  return count;
}

/// A herd with one animal; how long that took.
microseconds makeHerd(const fs::path& file) {
  Collection collection = Collection::create(file, kKeeper);
  addSpecies(collection, lemurSpecies(), kKeeper);
  addGroup(collection, lemurGroup("family"), kKeeper);
  return timeOfNumber(collection, 1);
}

void expectAllTold(const Collection& collection, const std::vector<int>& told) {
  for (const int number : told) {
    if (number == 0) continue;
    ASSERT_TRUE(findIndividual(collection, numbered(number))) << number;
    ASSERT_EQ(massesOfIndividual(collection, numbered(number)).size(), 1U);
    ASSERT_TRUE(findProfile(collection, animal::ProfileReference{numbered(number), 1}));
    ASSERT_EQ(versionsOfDiet(collection, numbered(number)).size(), 1U);
  }
}

/// Each record with its entry in the change log.
void expectAllLogged(const Collection& collection, int last) {
  const std::size_t written = listIndividuals(collection).size() + listProfiles(collection).size() +
                              listDiets(collection).size() + listVersions(collection).size() +
                              massesBetween(collection, 1, last);
  ASSERT_EQ(newestChanges(collection, 1'000'000).size(), written + kChangesBefore);
}

/// One herd, grown and read through over so many deaths.
void killOver(const fs::path& file, int deaths, std::mt19937& random) {
  const microseconds ofOne = makeHerd(file);
  std::uniform_int_distribution<microseconds::rep> delay(0, 4 * ofOne.count());
  int next = 2;
  for (int death = 0; death < deaths; ++death) {
    SCOPED_TRACE(testing::Message() << "death " << death);
    Child child([&](const Child::Tell& tell) { addOnAndOn(file, next, tell); });
    child.killAfter(microseconds(delay(random)));
    const std::vector<int> told = child.told();
    const Collection collection = Collection::open(file, kNow, kReadThrough);
    ASSERT_NO_FATAL_FAILURE(expectAllTold(collection, told));
    const int last = std::max(next - 1, *std::ranges::max_element(told));
    expectWhole(collection, last);
    expectWhole(collection, last + 1);  // the one it died over
    ASSERT_NO_FATAL_FAILURE(expectAllLogged(collection, last + 1));
    next = last + 2;  // the one it died over may be there
  }
}

TEST(KilledHerd, AnAnimalItsWeighingsAndItsTargetsAreThereAsToldAfterEveryDeath) {
  const OwnFolder folder;
  std::mt19937 random(20261125);
  std::size_t animals = 0;
  int left = deaths(30);
  for (int herd = 0; left > 0 && !HasFatalFailure(); ++herd, left -= kDeathsOfAHerd) {
    const fs::path file = folder / ("herd" + std::to_string(herd) + ".tarebowl");
    killOver(file, std::min(left, kDeathsOfAHerd), random);
    animals += listIndividuals(Collection::open(file, kNow)).size();
  }
  EXPECT_GT(animals, 5U);  // the children did live to write
}

}  // namespace
}  // namespace tarebowl::faults
