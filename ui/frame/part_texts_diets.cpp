// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/part_texts.h"

#include <QCoreApplication>

#include <array>

namespace tarebowl::ui {
namespace {

constexpr std::array kTexts{
    PartText{"DietList",
             QT_TRANSLATE_NOOP("PartTexts",
                               "The diets of the collection by group, each with its versions, and the groups "
                               "that have none yet. A marked one cannot be read; choosing it says why.")},
    PartText{
        "VersionBar",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "Which version of the diet is on the desk and what can be done next: submit it, approve it, send "
            "it back, retire it. What was approved never changes; the next idea is a new version.")},
    PartText{
        "ApprovalForm",
        QT_TRANSLATE_NOOP("PartTexts",
                          "Whoever approves says why, from which day it is fed and over how many days it is "
                          "phased in. Grams, targets and composition are kept as they were decided on.")},
    PartText{"StandingBar",
             QT_TRANSLATE_NOOP("PartTexts",
                               "What has happened since this version was written: foods that are gone, "
                               "targets that changed, another window that was faster.")},
    PartText{
        "IngredientTable",
        QT_TRANSLATE_NOOP("PartTexts",
                          "The foods of the diet. Grams are as fed, for one animal and day or for the whole "
                          "group, as the switch above says. They are yours where locked (Space); the others "
                          "are found by the solver in whole steps of the kitchen's scale. Min and max are "
                          "limits of this diet. The bar is the food's share of the dry matter.")},
    PartText{
        "FoodBench",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "Foods of the collection are added here by name. A food that is given unweighed, such as browse, "
            "is stated as a range; the balance counts the middle and carries the range as uncertainty.")},
    PartText{"AllowanceBar",
             QT_TRANSLATE_NOOP("PartTexts",
                               "Something that is given unweighed, between two amounts a day. The balance "
                               "counts the middle, and the range as uncertainty.")},
    PartText{"LinePane", QT_TRANSLATE_NOOP("PartTexts",
                                           "More about the food that the hand is on: how the kitchen "
                                           "prepares it, what it is given for, and the cautions about it.")},
    PartText{
        "BalanceLadder",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "One rung for each target, in the order that is chosen above. The number is what the bowl gives: "
            "grams of each food times its composition. The shaded stretch is the target's zone, the mark is "
            "the diet, the whisker its uncertainty from scatter between samples. The hatched part of the "
            "track rests on foods of which the value is unknown, and is never counted as nothing.")},
    PartText{"RungDetail",
             QT_TRANSLATE_NOOP("PartTexts",
                               "The rung that is open: its bounds, which can be changed for this diet, where "
                               "the target was stated, and which food brings how much of it.")},
    PartText{"BalancePane",
             QT_TRANSLATE_NOOP("PartTexts",
                               "How the diet stands against its targets. Choose a rung to see which food "
                               "brings how much, and where the target comes from.")},
    PartText{"WhyCard", QT_TRANSLATE_NOOP("PartTexts",
                                          "Why the diet stands as it does, in sentences. They follow from "
                                          "the targets and foods on the desk alone; a suggestion was worked "
                                          "out before it is offered, and can be tried and taken back.")},
    PartText{
        "ExplorePane",
        QT_TRANSLATE_NOOP("PartTexts",
                          "What has to give while one bound moves, or one thing sought is traded for "
                          "another. What is read off the chart can be tried on the diet, and taken back.")},
    PartText{"TraceChart",
             QT_TRANSLATE_NOOP("PartTexts",
                               "What has to give while one bound moves: foods above, what is sought and what "
                               "is missed below. Each dot is where another food or target begins to give.")},
    PartText{"RulesPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What is asked of the diet beside its targets: how many foods of a group, at most how much "
                 "of it. Rules of the targets are shown, those of this diet can be changed.")},
    PartText{"ComparePane",
             QT_TRANSLATE_NOOP("PartTexts",
                               "What this version says otherwise than another: grams, balance, cost, in "
                               "words and side by side. Both are as they stand in the collection.")},
    PartText{"DeskPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The diet on the desk: its foods and grams, and below them why it stands as it does.")},
    PartText{"RotationCalendar",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Days by foods. Grams are as fed for one animal; a locked cell stays as the hand left it, "
                 "the others are planned so that each day keeps its rules and the period balances.")},
    PartText{"RotationSide",
             QT_TRANSLATE_NOOP("PartTexts",
                               "How the whole period stands against the targets, or the day that the hand is "
                               "on. It is the mean of the days as planned.")},
    PartText{"RotationForm", QT_TRANSLATE_NOOP("PartTexts",
                                               "What the plan must keep: how many days, what varies, what "
                                               "may not follow upon what, days off, what is in stock.")},
    PartText{"RotationBar",
             QT_TRANSLATE_NOOP("PartTexts", "Which days are looked at, and what can be planned.")},
    PartText{"RotationHandBar",
             QT_TRANSLATE_NOOP("PartTexts", "What keys do in the calendar on the cell that the hand is on.")},
    PartText{"RotationPane",
             QT_TRANSLATE_NOOP("PartTexts",
                               "A plan by the day for the diet on the desk. What was fed already stays.")},
};

}  // namespace

std::span<const PartText> dietsTexts() {
  return kTexts;
}

}  // namespace tarebowl::ui
