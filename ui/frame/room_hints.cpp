// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/room_hints.h"

#include "ui/frame/room_numbers.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

struct Hints {
  Q_DECLARE_TR_FUNCTIONS(Hints)
};

/// What comes next on the way from nothing to a bowl.
void addFirst(EmptyRoom& room, const WhatIsThere& there, bool needsFoods) {
  if (needsFoods && !there.foods) {
    room.first = Hints::tr("Begin with foods");
    room.firstWhy = Hints::tr("Import a table of foods, or add them one by one, in the room Foods.");
    room.firstRoom = kFoodsNumber;
  } else if (!there.animals) {
    room.first = Hints::tr("Add a species");
    room.firstWhy = Hints::tr("With its group, energy need and targets, in the room Animals.");
    room.firstRoom = kAnimalsNumber;
  } else {
    room.first = there.diets ? Hints::tr("Have a diet approved") : Hints::tr("Design a diet");
    room.firstWhy =
        there.diets ? Hints::tr("A diet is fed once it was submitted and approved, in the room Diets.")
                    : Hints::tr("For a group that has targets, in the room Diets. Once approved, it is fed.");
    room.firstRoom = kDietsNumber;
  }
}

std::optional<EmptyRoom> emptyRoom(int room, const WhatIsThere& there) {
  if (room == kTodayNumber && !there.diets)
    return EmptyRoom{
        Hints::tr("Nothing is due yet."),
        Hints::tr("Today says what the house has to do: bowls to prepare and weigh, leftovers that "
                  "came back, swaps and diets that wait for a decision."),
        {},
        {},
        0};
  if (room == kDietsNumber && !there.diets && !(there.foods && there.animals))
    return EmptyRoom{
        Hints::tr("No diet can be designed yet."),
        Hints::tr("Diets is the design desk: foods and grams, and beside them how they stand against "
                  "the targets of a group. It needs foods, and animals with targets."),
        {},
        {},
        0};
  if (room == kKitchenNumber && !there.fedDiets)
    return EmptyRoom{
        Hints::tr("There is no bowl to prepare yet."),
        Hints::tr("The Kitchen prepares what the diets in force say: a sheet for each section and day, "
                  "weights typed or read from a scale, and what to give instead of a food that did "
                  "not come."),
        {},
        {},
        0};
  if (room == kIntakeNumber && !there.fedDiets)
    return EmptyRoom{
        Hints::tr("Nothing was fed yet."),
        Hints::tr("Intake shows what was really eaten: what the kitchen weighed in, less what came "
                  "back, over a week or over years, against the targets."),
        {},
        {},
        0};
  if (room == kHealthNumber && !there.animals)
    return EmptyRoom{
        Hints::tr("There is no patient yet."),
        Hints::tr("Health keeps what was seen of animals, sets it beside what was eaten, reviews "
                  "calcium, and looks back from a sign to the bowls before it."),
        {},
        {},
        0};
  return std::nullopt;
}

}  // namespace

std::optional<EmptyRoom> hintFor(int room, const WhatIsThere& there) {
  std::optional<EmptyRoom> empty = emptyRoom(room, there);
  // What is seen of animals can be written down before there is any food.
  if (empty) addFirst(*empty, there, room != kHealthNumber);
  return empty;
}

}  // namespace tarebowl::ui
