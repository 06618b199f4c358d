// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/part_texts.h"

#include <QCoreApplication>

#include <array>

namespace tarebowl::ui {
namespace {

constexpr std::array kTexts{
    PartText{"AnimalList",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Species, their groups, and the animals in each. Choose one to see its page at the right.")},
    PartText{
        "MembersCard",
        QT_TRANSLATE_NOOP("PartTexts",
                          "What the group is called, its section, and who is in it since when. How many eat "
                          "is counted from this; a bowl's grams are those of one animal times the number.")},
    PartText{"MassCard",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Body mass over time. Points are weighings; the mass that counts of an animal is the median "
                 "of its last fortnight's, or else the newest, and a group's is the mean of its animals. One "
                 "that was left out does not count. Energy need and everything per kg rest on it.")},
    PartText{
        "ReadingsCard",
        QT_TRANSLATE_NOOP("PartTexts",
                          "Each weighing and condition score with its day and who wrote it down. A first "
                          "entry is never written over: a correction stands beside it, with a reason.")},
    PartText{"MassEntry",
             QT_TRANSLATE_NOOP("PartTexts",
                               "A weighing or a condition score of today or of another day. A mass that is "
                               "far from what is known of the animal is asked about before it is kept.")},
    PartText{"EnergyCard",
             QT_TRANSLATE_NOOP("PartTexts",
                               "The energy need, worked out step by step: energy at 1 kg of body mass, the "
                               "exponent, body mass, and the factor for what the animals do. A published "
                               "number names its source, one that is edited is the house's own. It is where "
                               "a diet starts; body mass and condition decide whether it was right.")},
    PartText{
        "TargetsCard",
        QT_TRANSLATE_NOOP("PartTexts",
                          "The targets that this group's diets are judged by. Each names where it was stated "
                          "and how it is known: a published requirement, the house's own rule, recalled, or "
                          "derived from a model species, which is a starting point and not a requirement.")},
    PartText{
        "TargetsLadder",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "The rules of the target profile, nutrient by nutrient: from, to, unit and basis, where each was "
            "stated, and whether it is a hard rule. Edit one and a draft is kept until it is put in force.")},
    PartText{"RuleAdder", QT_TRANSLATE_NOOP("PartTexts",
                                            "A further rule for this profile. State where it comes from: a "
                                            "rule without a source cannot be checked by anybody else.")},
    PartText{"CautionsCard",
             QT_TRANSLATE_NOOP("PartTexts",
                               "Foods that are known to be dangerous to this species or need thought, from "
                               "the program's list with its sources and from the house's own. The list is "
                               "not complete: what is not on it is not thereby safe.")},
    PartText{"HistoryCard", QT_TRANSLATE_NOOP("PartTexts",
                                              "What changed, when, and by whom. It is read from the "
                                              "collection's log, which is only ever added to.")},
    PartText{
        "ModelStart",
        QT_TRANSLATE_NOOP("PartTexts",
                          "For a group without targets: a published profile of a model species to derive "
                          "from. Say why that species stands in; the sentence is kept with every target.")},
    PartText{
        "ModelPicker",
        QT_TRANSLATE_NOOP("PartTexts",
                          "Published profiles of model species, side by side where several are ticked. Each "
                          "number is that of the publication named; none was made for your species.")},
    PartText{"NewSpeciesPage",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "A species that is new to the collection, with its first group, energy need and targets. "
                 "The targets come from the model species that you choose, as a starting point.")},
    PartText{"IndividualForm",
             QT_TRANSLATE_NOOP("PartTexts",
                               "Who the animal is: sex, birth, stages of life, coming and going. A stage is "
                               "kept with the day on which it begins; the energy need and the targets of its "
                               "group are the nutritionist's to change.")},
    PartText{"IndividualPane",
             QT_TRANSLATE_NOOP("PartTexts", "One animal: who it is, its masses and condition scores.")},
    PartText{"SpeciesPane", QT_TRANSLATE_NOOP("PartTexts",
                                              "The species: its names, and the groups of animals that it "
                                              "belongs to. Cautions about foods go by these.")},
    PartText{"PageHeader",
             QT_TRANSLATE_NOOP("PartTexts", "What is shown below, and what can be done with it.")},
    PartText{"GroupPane",
             QT_TRANSLATE_NOOP("PartTexts",
                               "A group: who is in it, what it needs, and what its diets are judged by.")},
};

}  // namespace

std::span<const PartText> animalsTexts() {
  return kTexts;
}

}  // namespace tarebowl::ui
