// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/part_texts.h"

#include <QCoreApplication>

#include <array>

namespace tarebowl::ui {
namespace {

constexpr std::array kTexts{
    PartText{"BowlList",
             QT_TRANSLATE_NOOP("PartTexts",
                               "The section, the day, and its bowls. They come from the diets in force on "
                               "that day, or from the plan of a rotation, times the number of animals.")},
    PartText{"BowlPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The bowl that is prepared: its foods with planned grams, what was weighed, how each is "
                 "prepared. Planned grams come from the approved diet, times the animals of the group.")},
    PartText{"WeighPane",
             QT_TRANSLATE_NOOP("PartTexts",
                               "The food on the scale. The plan is the approved diet's; ± is how far the "
                               "weight may lie from it by the rule of the house. The first weight is never "
                               "written over: a correction stands beside it.")},
    PartText{"LeftoverPane",
             QT_TRANSLATE_NOOP("PartTexts",
                               "What came back of a food. What was eaten is offered less left less lost, "
                               "corrected for drying by control pans: those of the day, or of days around it "
                               "where there were none, which is then said.")},
    PartText{"ScaleBar", QT_TRANSLATE_NOOP("PartTexts",
                                           "The scale of this bench: what it shows now and where it is "
                                           "plugged in. Without one, weights are typed.")},
    PartText{"ToleranceForm", QT_TRANSLATE_NOOP("PartTexts",
                                                "How far a weight may lie from the plan, a rule of your "
                                                "house, and what it comes to for the food on the scale.")},
    PartText{"SheetSide",
             QT_TRANSLATE_NOOP("PartTexts",
                               "What stands on the sheet beside the bowls: what the kitchen needs in all, "
                               "what to thaw for tomorrow, cautions and hygiene.")},
    PartText{
        "SwapPane",
        QT_TRANSLATE_NOOP("PartTexts",
                          "What to give instead of a food that is not there, the nearest first. Each line "
                          "says the grams and what it does to the balance, worked out against the approved "
                          "bowl; where the approved targets are no longer met, it says who must approve.")},
    PartText{"PanPane",
             QT_TRANSLATE_NOOP("PartTexts",
                               "Control pans: the same food out of the animals' reach, weighed when the "
                               "bowls went out and when they came back. What they lose by drying, or gain, "
                               "is taken off what came back of the same food.")},
    PartText{"GroupChoice",
             QT_TRANSLATE_NOOP("PartTexts",
                               "The section and its groups. A group without a bowl cannot be chosen.")},
    PartText{"SubjectBox", QT_TRANSLATE_NOOP("PartTexts",
                                             "What is followed over time: the targets of the group, then "
                                             "every nutrient that some food of its bowls tells.")},
    PartText{"IntakeSide",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What was noticed in the days in sight, and how much is known of them. A drop is told "
                 "against the group's own days before; the rule of the house stands beside it.")},
    PartText{"FoodBandsChart",
             QT_TRANSLATE_NOOP("PartTexts",
                               "Grams a day of each food, all animals together: what was offered, and what "
                               "was eaten of it (offered less left and lost, corrected by control pans). "
                               "Days without a bowl written down stay empty.")},
    PartText{
        "ValueChart",
        QT_TRANSLATE_NOOP("PartTexts",
                          "What is followed, a day and animal, offered and as eaten, against its zone; over "
                          "many days each step of the line is the mean of some. Hatched is what is missing: "
                          "foods whose leftovers or composition nobody knows. The band is the uncertainty.")},
    PartText{
        "ChoiceChart",
        QT_TRANSLATE_NOOP("PartTexts",
                          "What is picked first: Manly's alpha with its 95 % interval, from what was offered "
                          "and left. Above the dashed line a food is taken more than its share.")},
    PartText{"StudyPage",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "A study of what is eaten: how many days it needs for the precision wanted, by how much the "
                 "group's own days differ, what is weighed, and where control pans stand.")},
    PartText{"FaecesCard", QT_TRANSLATE_NOOP("PartTexts",
                                             "Faeces that were collected and analysed. With what was eaten "
                                             "on their days they say what was digested; without, nothing.")},
    PartText{"YesterdayPage",
             QT_TRANSLATE_NOOP("PartTexts",
                               "Yesterday's bowls as a list to fill in: what came back of each food, by "
                               "weight, all eaten, or not weighed. Not weighed stays unknown.")},
    PartText{"ObservationForm",
             QT_TRANSLATE_NOOP("PartTexts",
                               "What was seen: kind, day, time, and what its kind asks for. It is kept under "
                               "your name, and is never written over.")},
    PartText{"HealthTimeline",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Signs, blood values, treatments, condition, body mass, Ca:P and diets on one axis of days. "
                 "Points are what was written down; lines are worked out from the bowls of each day.")},
};

}  // namespace

std::span<const PartText> keepersTexts() {
  return kTexts;
}

}  // namespace tarebowl::ui
