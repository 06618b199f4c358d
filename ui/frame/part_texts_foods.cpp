// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/part_texts.h"

#include <QCoreApplication>

#include <array>

namespace tarebowl::ui {
namespace {

constexpr std::array kTexts{
    PartText{"FoodList",
             QT_TRANSLATE_NOOP("PartTexts",
                               "The foods of the collection. Each number in a column is per 100 g as fed, "
                               "and is the mean that the food's samples form; ? is unknown, never nothing.")},
    PartText{
        "FoodPane",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "What one food is made of. A value is the mean of its laboratory samples, or a publication's; ± "
            "is the scatter between samples, n how many there are. Open a row to see them, each with its "
            "source and day. A value set by hand goes before every sample, and says who set it and why.")},
    PartText{"CompositionView",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Each nutrient of the food. A value is the mean of the samples under it, or one that was "
                 "set by hand or worked out (cooked from raw, mixed from parts, summed from others); the "
                 "Source column names where it comes from. ≥ and ≤ are bounds, such as a label's guarantee, "
                 "and are not used as means. ? is unknown, and is never counted as nothing.")},
    PartText{"FoodForm",
             QT_TRANSLATE_NOOP("PartTexts",
                               "What the food is called and how it is fed: its form and group, the step of "
                               "the scale it is weighed in, what is edible of it, what it costs. A person of "
                               "your house states these; they are kept under that name.")},
    PartText{"SampleForm",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "One laboratory sample or publication: its values as they were reported, on the basis and "
                 "in the units that are chosen. The mean of all samples that count is the food's value.")},
    PartText{"RecipeCard",
             QT_TRANSLATE_NOOP("PartTexts",
                               "What a house mix is made of. What nobody analysed in the mix is worked out "
                               "from the grams of its parts and from what a gram of them gives once "
                               "prepared; the source says who measured that.")},
    PartText{"CookingCard",
             QT_TRANSLATE_NOOP("PartTexts",
                               "Which raw food this one is cooked from. What nobody analysed in the cooked "
                               "food is worked out from the raw one: grams left of a gram, and the share of "
                               "each nutrient that stays. The source says who says so.")},
    PartText{"PlanCard", QT_TRANSLATE_NOOP("PartTexts",
                                           "Which nutrients your laboratory is to look at, how often, and "
                                           "what is due. It is counted from the days of the samples.")},
    PartText{"ChecksCard",
             QT_TRANSLATE_NOOP("PartTexts",
                               "What a careful analyst would doubt in this food: parts that do not add up, "
                               "energy that disagrees with them, a value far from the food's group. A doubt "
                               "is a question, not a verdict; each says how it was found.")},
    PartText{"DoubtList", QT_TRANSLATE_NOOP("PartTexts",
                                            "What a careful analyst would doubt in all foods. Each doubt "
                                            "says how it was found; a line goes to its food.")},
    PartText{"ComparisonPane", QT_TRANSLATE_NOOP("PartTexts",
                                                 "Foods side by side, all on one basis. The values are those "
                                                 "of each food's own page; rest on one to see its source.")},
    PartText{"ImportPage",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "A table of foods on its way into the collection. Nothing is written before you press "
                 "Import; all of it is written, or where anything is wrong with it, nothing.")},
    PartText{
        "ImportSettings",
        QT_TRANSLATE_NOOP("PartTexts",
                          "How the table is read: its form, decimal sign, units and basis, and whose it is. "
                          "These are guessed from the table first; change what was guessed wrongly.")},
    PartText{"ImportPreview",
             QT_TRANSLATE_NOOP("PartTexts",
                               "What will become of each line: a new food, a new sample, a value that is "
                               "left out and why. Counted by reading the whole table, without writing.")},
};

}  // namespace

std::span<const PartText> foodsTexts() {
  return kTexts;
}

}  // namespace tarebowl::ui
