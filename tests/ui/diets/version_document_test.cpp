// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/version_document.h"

#include "core/store/diet_reading.h"
#include "core/store/food_reading.h"
#include "core/store/profile_verbs.h"
#include "core/store/verbs.h"
#include "tests/ui/diets/example_diets.h"
#include "tests/ui/foods/example_foods.h"

#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using diet::VersionState;
using quantity::Grams;
using ::testing::HasSubstr;

enum Food : std::size_t { kKale, kCrickets, kLimestone };

const store::Author kOther{.who = "another", .at = "2026-11-25T08:00:00Z"};

class VersionDocumentTest : public ::testing::Test {
 protected:
  VersionDocumentTest() { alone.open(example.draft()); }

  [[nodiscard]] diet::DietFood foodOf(const char* code) const {
    return store::dietFood(example.elsewhere(), code).value();
  }
  [[nodiscard]] const diet::DietVersion& shown() const { return document.shown()->version.record.version; }
  void submitAndApprove() {
    document.submit(QStringLiteral("ready"));
    alone.settle();
    document.approve({.from = exampleToday(), .phaseInDays = 5}, QStringLiteral("eaten well"));
    alone.settle();
  }

  ExampleDiets example;
  DietAlone alone{example, &diet::solve};
  DietDesk& desk = alone.desk;
  VersionDocument& document = alone.document;
};

TEST_F(VersionDocumentTest, AStoredDietStandsAsItWasWritten) {
  EXPECT_EQ(desk.draft().grams[kKale], Grams(4));
  EXPECT_EQ(desk.draft().grams[kCrickets], Grams(12)) << "though the solver would give other grams";
  EXPECT_TRUE(desk.wouldMove()) << "calcium is short: that is told, not done";
  EXPECT_EQ(example.stored(example.draft()).lines[kCrickets].amount, Grams(12));
}

TEST_F(VersionDocumentTest, AnEditIsOnTheDiskAsSoonAsTheHandRests) {
  desk.setHolding(true);
  desk.setGrams(kKale, Grams(9));
  EXPECT_FALSE(document.isSaved());
  alone.settle();
  EXPECT_EQ(example.stored(example.draft()).lines[kKale].amount, Grams(9));
  desk.undoStack().undo();
  alone.settle();
  EXPECT_EQ(example.stored(example.draft()).lines[kKale].amount, Grams(4)) << "undone on the disk too";
}

TEST_F(VersionDocumentTest, WhatTheSolverMovesAfterAnEditIsKeptAsWell) {
  desk.addFood(foodOf("limestone"));
  alone.settle();
  const diet::DietVersion stored = example.stored(example.draft());
  ASSERT_EQ(stored.lines.size(), 3U);
  EXPECT_EQ(stored.lines[kLimestone].food, "limestone");
  EXPECT_GT(stored.lines[kLimestone].amount, Grams(0)) << "calcium was short, and this closes it";
  EXPECT_EQ(stored.lines[kLimestone].amount, desk.draft().grams[kLimestone]);
}

TEST_F(VersionDocumentTest, AFoodMoreMayMakeARuleJudged) {
  const std::size_t before = desk.problem().targets.size();
  desk.removeFood(kCrickets);
  desk.removeFood(kKale);
  EXPECT_LT(desk.problem().targets.size(), before) << "no food is left that states anything";
  EXPECT_FALSE(desk.draft().frame->opened.notCounted.empty())
      << "and each rule that cannot be judged is named";
  desk.addFood(foodOf("kale-raw"));
  EXPECT_EQ(desk.problem().targets.size(), before);
}

TEST_F(VersionDocumentTest, FromDraftToApprovedItsLifeIsWrittenDownAndAnApprovedVersionIsNotEdited) {
  submitAndApprove();
  EXPECT_EQ(shown().state, VersionState::Approved);
  EXPECT_EQ(shown().steps.back().who, "Keeper A");
  EXPECT_EQ(shown().steps.back().reason, "eaten well");
  EXPECT_EQ(shown().phaseInDays, 5);
  EXPECT_TRUE(desk.isReadOnly());
  const QSignalSpy refused(&desk, &DietDesk::refused);
  desk.setGrams(kKale, Grams(30));
  EXPECT_EQ(refused.count(), 1);
  EXPECT_EQ(desk.draft().grams[kKale], Grams(4));
}

TEST_F(VersionDocumentTest, ASubmittedVersionCanBeSentBackAndIsADraftAgain) {
  document.submit(QStringLiteral("ready"));
  alone.settle();
  EXPECT_EQ(shown().state, VersionState::Submitted);
  EXPECT_TRUE(desk.isReadOnly());
  document.sendBack(QStringLiteral("more calcium"));
  alone.settle();
  EXPECT_EQ(shown().state, VersionState::Draft);
  EXPECT_FALSE(desk.isReadOnly());
}

TEST_F(VersionDocumentTest, SubmittingTakesTheEditThatWasNotYetWritten) {
  desk.setHolding(true);
  desk.setGrams(kKale, Grams(7));
  document.submit(QStringLiteral("ready"));
  alone.settle();
  EXPECT_EQ(shown().lines[kKale].amount, Grams(7));
  EXPECT_EQ(shown().state, VersionState::Submitted);
}

TEST_F(VersionDocumentTest, ANewVersionBeginsWithWhatTheApprovedOneHolds) {
  submitAndApprove();
  document.beginNewVersion();
  alone.settle();
  EXPECT_EQ(shown().number, 2);
  EXPECT_EQ(shown().madeFrom, 1);
  EXPECT_EQ(shown().state, VersionState::Draft);
  EXPECT_EQ(shown().lines[kCrickets].amount, Grams(12));
  EXPECT_FALSE(shown().fedFrom) << "its first day is its own";
}

TEST_F(VersionDocumentTest, AnApprovedVersionShowsWhatWasDecidedOnAndTellsWhatChangedSince) {
  submitAndApprove();
  const diet::BalanceProblem decided = desk.problem();
  store::Collection collection = example.elsewhere();
  const auto kale = store::findFood(collection, "kale-raw").value();
  store::addSample(collection, kale.id,
                   report(food::SampleOrigin::OwnLab, "Report 9", "2026-11-20", {valueOf("CA", 120)}),
                   kOther);
  document.open(example.draft());
  alone.settle();
  EXPECT_EQ(desk.problem().foods, decided.foods) << "the values of that day";
  EXPECT_THAT(document.shown()->foodsChanged, ::testing::ElementsAre("Kale"));
}

TEST_F(VersionDocumentTest, ADraftFollowsItsFoodsAndNoGramMoves) {
  const QSignalSpy told(&document, &VersionDocument::told);
  store::Collection collection = example.elsewhere();
  const auto kale = store::findFood(collection, "kale-raw").value();
  store::addSample(collection, kale.id,
                   report(food::SampleOrigin::OwnLab, "Report 9", "2026-11-20", {valueOf("CA", 120)}),
                   kOther);
  emit alone.collection.outdated();
  alone.settle();
  EXPECT_EQ(desk.problem().foods[kKale].composition.amountPer100g(nutrient("CA")), 120);
  EXPECT_EQ(desk.draft().grams[kKale], Grams(4));
  EXPECT_EQ(told.count(), 1);
}

TEST_F(VersionDocumentTest, TwoWhoEditOneDraftBothKeepTheirWork) {
  desk.setHolding(true);
  store::Collection collection = example.elsewhere();
  const auto theirs = store::findVersion(collection, example.draft()).value();
  diet::DietVersion changed = theirs.record.version;
  changed.lines[kCrickets].amount = Grams(10);
  store::editVersion(collection, theirs.id, theirs.revision, changed, kOther);
  const QSignalSpy refused(&document, &VersionDocument::refused);
  desk.setGrams(kKale, Grams(9));
  ASSERT_TRUE(QTest::qWaitFor([&] { return document.isInConflict(); }, 10'000));
  EXPECT_EQ(refused.count(), 1) << "the second is told, and nothing is written over";
  EXPECT_EQ(example.stored(example.draft()).lines[kCrickets].amount, Grams(10));
  document.keepMine();
  ASSERT_TRUE(QTest::qWaitFor([&] { return shown().number == 2; }, 10'000));
  alone.settle();
  EXPECT_EQ(shown().lines[kKale].amount, Grams(9));
  EXPECT_EQ(example.stored(example.draft()).lines[kKale].amount, Grams(4));
}

TEST_F(VersionDocumentTest, AfterAConflictTheOtherVersionCanBeTaken) {
  desk.setHolding(true);
  store::Collection collection = example.elsewhere();
  const auto theirs = store::findVersion(collection, example.draft()).value();
  diet::DietVersion changed = theirs.record.version;
  changed.lines[kCrickets].amount = Grams(10);
  store::editVersion(collection, theirs.id, theirs.revision, changed, kOther);
  desk.setGrams(kKale, Grams(9));
  ASSERT_TRUE(QTest::qWaitFor([&] { return document.isInConflict(); }, 10'000));
  document.takeTheirs();
  alone.settle();
  EXPECT_EQ(desk.draft().grams[kCrickets], Grams(10));
  EXPECT_EQ(desk.draft().grams[kKale], Grams(4));
}

TEST_F(VersionDocumentTest, NewerTargetsAreToldAndTakenOnlyWhenAsked) {
  store::Collection collection = example.elsewhere();
  const auto profile = store::versionsOfProfile(collection, "tenrec").back();
  animal::TargetProfile stricter = profile.record.profile;
  stricter.targets.front().target.min = 12.0;
  const store::Written next = store::draftNextVersion(collection, profile.id, stricter, kOther);
  store::putInForce(collection, store::ProfileId{next.id}, next.revision,
                    quantity::parseDate("2026-11-20").value(), "growing", kOther);
  document.open(example.draft());
  alone.settle();
  ASSERT_TRUE(document.shown()->newerProfile);
  EXPECT_EQ(desk.problem().targets.front().min, 8.0) << "nothing changes silently";
  document.takeNewerTargets();
  alone.settle();
  EXPECT_EQ(desk.problem().targets.front().min, 12.0);
  EXPECT_EQ(shown().profile.version, 2);
}

TEST_F(VersionDocumentTest, ALineWhoseFoodIsGoneStaysAndIsTold) {
  store::Collection collection = example.elsewhere();
  diet::DietVersion version = example.stored(example.draft());
  version.lines.push_back({.food = "withdrawn", .amount = Grams(2)});
  const auto stored = store::findVersion(collection, example.draft()).value();
  store::editVersion(collection, stored.id, stored.revision, version, kOther);
  document.open(example.draft());
  alone.settle();
  EXPECT_THAT(document.shown()->made.missingFoods, ::testing::ElementsAre("withdrawn"));
  desk.setHolding(true);
  desk.setGrams(kKale, Grams(5));
  alone.settle();
  EXPECT_EQ(example.stored(example.draft()).lines.back().food, "withdrawn");
}

TEST_F(VersionDocumentTest, ASafeUpperLimitIsLoosenedOnlyForAReasonThatIsKept) {
  const auto& targets = desk.problem().targets;
  const auto iron = std::ranges::find(targets, "iron", &animal::Target::id);
  ASSERT_NE(iron, targets.end());
  const RungRef rung{diet::TargetKind::Nutrient, static_cast<std::size_t>(iron - targets.begin())};
  const QSignalSpy asked(&desk, &DietDesk::reasonWanted);
  EXPECT_FALSE(desk.setBounds(rung, {.min = {}, .max = 0.5}));
  EXPECT_EQ(asked.count(), 1);
  EXPECT_EQ(desk.problem().targets[rung.index].max, 0.2) << "until it is said why";
  desk.loosenBounds(rung, {.min = {}, .max = 0.5}, QStringLiteral("anaemia"));
  alone.settle();
  EXPECT_EQ(desk.problem().targets[rung.index].max, 0.5);
  const diet::DietVersion stored = example.stored(example.draft());
  ASSERT_EQ(stored.changedBounds.size(), 1U);
  EXPECT_EQ(stored.changedBounds.front().reason, "anaemia");
  desk.undoStack().undo();
  EXPECT_EQ(desk.problem().targets[rung.index].max, 0.2);
}

TEST_F(VersionDocumentTest, WhatWasJustTypedIsWrittenBeforeAnotherCollectionIsOpened) {
  desk.setHolding(true);
  desk.setGrams(kKale, Grams(9));
  const ExampleDiets other;
  alone.collection.open({.name = QStringLiteral("Other"), .file = other.file()}, other.opener());
  alone.settle();
  EXPECT_EQ(example.stored(example.draft()).lines[kKale].amount, Grams(9));
}

TEST_F(VersionDocumentTest, WhatWasJustTypedIsWrittenBeforeAProblemFileComesOnTheDesk) {
  desk.setHolding(true);
  desk.setGrams(kKale, Grams(9));
  desk.open(desk.problem());
  alone.settle();
  EXPECT_EQ(example.stored(example.draft()).lines[kKale].amount, Grams(9));
}

TEST_F(VersionDocumentTest, EditsFollowEachOtherWithoutWaitingForTheDisk) {
  const QSignalSpy refused(&document, &VersionDocument::refused);
  desk.setHolding(true);
  for (int grams = 5; grams <= 9; ++grams) {
    desk.setGrams(kKale, Grams(grams));
    document.saveNow();
  }
  alone.settle();
  EXPECT_EQ(example.stored(example.draft()).lines[kKale].amount, Grams(9));
  EXPECT_EQ(refused.count(), 0);
}

TEST_F(VersionDocumentTest, ADiscardedDraftIsGoneAndTheDeskIsFree) {
  const QSignalSpy listed(&document, &VersionDocument::listChanged);
  document.removeDraft();
  ASSERT_TRUE(QTest::qWaitFor([&] { return listed.count() > 0; }, 10'000));
  EXPECT_FALSE(document.isOpen());
  EXPECT_FALSE(store::findVersion(example.elsewhere(), example.draft()));
}

}  // namespace
}  // namespace tarebowl::ui
