// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/individual.h"

#include "tests/core/animal/days.h"

#include <gmock/gmock.h>

namespace tarebowl::animal {
namespace {

using enum IndividualProblem;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

Individual sound() {
  Individual tenrec;
  tenrec.code = "T1";
  tenrec.species = "lesser-hedgehog-tenrec";
  tenrec.born = day("2024-03-01");
  tenrec.arrived = day("2025-01-10");
  tenrec.left = day("2026-05-01");
  tenrec.stages = {{day("2024-03-01"), LifeStage::Unweaned}, {day("2024-04-01"), LifeStage::Growing}};
  return tenrec;
}

TEST(Individual, OfASoundOneNothingIsWrong) {
  EXPECT_THAT(problemsWith(sound()), IsEmpty());
}

TEST(Individual, BornAndGoneOnOneDayIsNoContradiction) {
  Individual tenrec = sound();
  tenrec.left = tenrec.arrived = tenrec.born;
  EXPECT_THAT(problemsWith(tenrec), IsEmpty());
}

TEST(Individual, ABirthAfterADeathIsNamed) {
  Individual tenrec = sound();
  tenrec.arrived.reset();
  tenrec.stages.clear();
  tenrec.died = true;
  tenrec.born = day("2026-05-02");
  EXPECT_THAT(problemsWith(tenrec), ElementsAre(BornAfterLeaving));
}

TEST(Individual, ADepartureBeforeTheArrivalIsNamed) {
  Individual tenrec = sound();
  tenrec.left = day("2025-01-09");
  EXPECT_THAT(problemsWith(tenrec), ElementsAre(ArrivedAfterLeaving));
}

TEST(Individual, AnArrivalBeforeTheBirthIsNamed) {
  Individual tenrec = sound();
  tenrec.arrived = day("2024-02-29");
  EXPECT_THAT(problemsWith(tenrec), ElementsAre(BornAfterArriving));
}

TEST(Individual, StagesMustFollowEachOtherFromBirthOn) {
  Individual tenrec = sound();
  tenrec.stages.front().from = day("2024-02-01");
  EXPECT_THAT(problemsWith(tenrec), ElementsAre(StageBeforeBirth));
  tenrec.stages = {{day("2024-05-01"), LifeStage::Growing}, {day("2024-05-01"), LifeStage::Adult}};
  EXPECT_THAT(problemsWith(tenrec), ElementsAre(StagesNotInOrder));
}

TEST(Individual, AllThatIsWrongIsNamedAtOnce) {
  Individual nobody;
  nobody.died = true;
  EXPECT_THAT(problemsWith(nobody), ElementsAre(NoCode, NoSpecies, DiedWithoutDay));
}

TEST(Individual, IsInTheStageLastEntered) {
  const Individual tenrec = sound();
  EXPECT_EQ(stageOn(tenrec, day("2024-03-31")), LifeStage::Unweaned);
  EXPECT_EQ(stageOn(tenrec, day("2024-04-01")), LifeStage::Growing);
  EXPECT_EQ(stageOn(tenrec, day("2030-01-01")), LifeStage::Growing);
}

TEST(Individual, BeforeAnyStageItIsTakenForAdult) {
  EXPECT_EQ(stageOn(sound(), day("2024-02-29")), LifeStage::Adult);
  EXPECT_EQ(stageOn(Individual{}, day("2024-02-29")), LifeStage::Adult);
}

}  // namespace
}  // namespace tarebowl::animal
