// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/faeces_verbs.h"

#include "core/store/change_log.h"
#include "tests/core/store/herd.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using intake::FaecesCollected;
using ::testing::HasSubstr;

class FaecesVerbs : public testing::Test {
 protected:
  FaecesVerbs() {
    addSpecies(collection, lemurSpecies(), kKeeper);
    addGroup(collection, lemurGroup("family"), kKeeper);
  }
  static FaecesCollected faeces(const char* from, const char* until) {
    return {
        .group = "family",
        .from = day(from),
        .until = day(until),
        .fresh = quantity::Grams(412),
        .dryMatter = 24.3,
        .dryMatterSd = 0.4,
        .values = {{food::nutrients::calcium(), 1850.0, 90.0}, {food::nutrients::phosphorus(), 1200.0, {}}},
        .source = "Report 7",
        .who = "Keeper A"};
  }

  OwnFolder folder;
  Collection collection = Collection::create(folder.collection("faeces"), kKeeper);
};

TEST_F(FaecesVerbs, WhatWasAnalysedIsReadAgainInOrderOfDays) {
  addFaeces(collection, faeces("2026-11-10", "2026-11-14"), kKeeper);
  addFaeces(collection, faeces("2026-11-01", "2026-11-05"), kKeeper);
  const auto stored = faecesOfGroup(collection, "family");
  ASSERT_EQ(stored.size(), 2U);
  EXPECT_EQ(stored[0].record, faeces("2026-11-01", "2026-11-05"));
  EXPECT_EQ(stored[1].record, faeces("2026-11-10", "2026-11-14"));
}

TEST_F(FaecesVerbs, ADayIsCollectedOnce) {
  addFaeces(collection, faeces("2026-11-01", "2026-11-05"), kKeeper);
  EXPECT_THAT(
      refusal(collection, [&] { addFaeces(collection, faeces("2026-11-05", "2026-11-08"), kKeeper); }),
      HasSubstr("share a day"));
  addFaeces(collection, faeces("2026-11-06", "2026-11-08"), kKeeper);
  EXPECT_EQ(faecesOfGroup(collection, "family").size(), 2U);
}

TEST_F(FaecesVerbs, WhatIsUnsoundOrOfNobodyIsRefused) {
  FaecesCollected wrong = faeces("2026-11-01", "2026-11-05");
  wrong.dryMatter = 0.0;
  EXPECT_THAT(refusal(collection, [&] { addFaeces(collection, wrong, kKeeper); }), HasSubstr("dry matter"));
  wrong = faeces("2026-11-01", "2026-11-05");
  wrong.group = "nobody";
  EXPECT_THAT(refusal(collection, [&] { addFaeces(collection, wrong, kKeeper); }),
              HasSubstr("no group nobody"));
}

TEST_F(FaecesVerbs, ArePutRightTakenOutAndTakenBack) {
  const Written added = addFaeces(collection, faeces("2026-11-01", "2026-11-05"), kKeeper);
  FaecesCollected changed = faeces("2026-11-01", "2026-11-04");
  changed.values.pop_back();
  editFaeces(collection, FaecesId{added.id}, 1, changed, kKeeper);
  EXPECT_EQ(faecesOfGroup(collection, "family").at(0).record, changed);
  const Written removed = removeFaeces(collection, FaecesId{added.id}, 2, kKeeper);
  EXPECT_TRUE(faecesOfGroup(collection, "family").empty());
  undo(collection, removed.change, kKeeper);
  EXPECT_EQ(faecesOfGroup(collection, "family").at(0).record, changed);
}

TEST_F(FaecesVerbs, AGroupWhoseFaecesWereAnalysedIsKept) {
  addFaeces(collection, faeces("2026-11-01", "2026-11-05"), kKeeper);
  const auto group = findGroup(collection, "family").value();
  EXPECT_THAT(refusal(collection, [&] { removeGroup(collection, group.id, group.revision, kKeeper); }),
              HasSubstr("what was measured is kept"));
}

}  // namespace
}  // namespace tarebowl::store
