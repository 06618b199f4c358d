// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/part_texts.h"

#include <QCoreApplication>
#include <QMetaObject>

#include <algorithm>
#include <array>
#include <string_view>

namespace tarebowl::ui {
namespace {

struct PartText {
  std::string_view part;  // its class
  const char* text;
};

constexpr const char* kContext = "PartTexts";

constexpr std::array kTexts{
    // Foods
    PartText{"FoodList",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The foods of the collection. Each number in a column is per 100 g as fed, and is the mean "
                 "that the food's samples form; ? is unknown, never nothing.")},
    PartText{"FoodPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What one food is made of. A value is the mean of its laboratory samples, or a "
                 "publication's; ± is the scatter between samples, n how many there are. Open a row to see "
                 "them, each with its source and day. A value set by hand goes before every sample, and says "
                 "who set it and why.")},
    PartText{
        "CompositionView",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "Each nutrient of the food. A value is the mean of the samples under it, or one that was set "
            "by hand or worked out (cooked from raw, mixed from parts, summed from others); the Source "
            "column names where it comes from. ≥ and ≤ are bounds, such as a label's guarantee, and are "
            "not used as means. ? is unknown, and is never counted as nothing.")},
    PartText{"FoodForm",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What the food is called and how it is fed: its form and group, the step of the scale it is "
                 "weighed in, what is edible of it, what it costs. A person of your house states these; they "
                 "are kept under that name.")},
    PartText{
        "SampleForm",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "One laboratory sample or publication: its values as they were reported, on the basis and in "
            "the units that are chosen. The mean of all samples that count is the food's value.")},
    PartText{
        "RecipeCard",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "What a house mix is made of. What nobody analysed in the mix is worked out from the grams "
            "of its parts and from what a gram of them gives once prepared; the source says who measured "
            "that.")},
    PartText{"CookingCard",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Which raw food this one is cooked from. What nobody analysed in the cooked food is worked "
                 "out from the raw one: grams left of a gram, and the share of each nutrient that stays. The "
                 "source says who says so.")},
    PartText{"PlanCard",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Which nutrients your laboratory is to look at, how often, and what is due. It is counted "
                 "from the days of the samples.")},
    PartText{"ChecksCard",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What a careful analyst would doubt in this food: parts that do not add up, energy that "
                 "disagrees with them, a value far from the food's group. A doubt is a question, not a "
                 "verdict; each says how it was found.")},
    PartText{"DoubtList",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What a careful analyst would doubt in all foods. Each doubt says how it was found; a line "
                 "goes to its food.")},
    PartText{
        "ComparisonPane",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "Foods side by side, all on one basis. The values are those of each food's own page; rest on "
            "one to see its source.")},
    PartText{"ImportPage",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "A table of foods on its way into the collection. Nothing is written before you press "
                 "Import; all of it is written, or where anything is wrong with it, nothing.")},
    PartText{"ImportSettings",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "How the table is read: its form, decimal sign, units and basis, and whose it is. These are "
                 "guessed from the table first; change what was guessed wrongly.")},
    PartText{"ImportPreview",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What will become of each line: a new food, a new sample, a value that is left out and why. "
                 "Counted by reading the whole table, without writing.")},
    // Animals
    PartText{"AnimalList",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Species, their groups, and the animals in each. Choose one to see its page at the right.")},
    PartText{
        "MembersCard",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "What the group is called, its section, and who is in it since when. How many eat is counted "
            "from this; a bowl's grams are those of one animal times the number.")},
    PartText{"MassCard",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Body mass over time. Points are weighings; the mass that counts is the newest of each "
                 "animal that is not left out, and a group's is the mean of its animals. Energy need and "
                 "everything per kg rest on it.")},
    PartText{"ReadingsCard",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Each weighing and condition score with its day and who wrote it down. A first entry is "
                 "never written over: a correction stands beside it, with a reason.")},
    PartText{
        "MassEntry",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "A weighing or a condition score of today or of another day. A mass that is far from what is "
            "known of the animal is asked about before it is kept.")},
    PartText{
        "EnergyCard",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "The energy need, worked out step by step: energy at 1 kg of body mass, the exponent, body "
            "mass, and the factor for what the animals do. A published number names its source, one that "
            "is edited is the house's own. It is where a diet starts; body mass and condition decide "
            "whether it was right.")},
    PartText{"TargetsCard",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The targets that this group's diets are judged by. Each names where it was stated and how "
                 "it is known: a published requirement, the house's own rule, recalled, or derived from a "
                 "model species, which is a starting point and not a requirement.")},
    PartText{
        "TargetsLadder",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "The rules of the target profile, nutrient by nutrient: from, to, unit and basis, where each "
            "was stated, and whether it is a hard rule. Edit one and a draft is kept until it is put in "
            "force.")},
    PartText{"RuleAdder",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "A further rule for this profile. State where it comes from: a rule without a source cannot "
                 "be checked by anybody else.")},
    PartText{
        "CautionsCard",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "Foods that are known to be dangerous to this species or need thought, from the program's "
            "list with its sources and from the house's own. The list is not complete: what is not on it "
            "is not thereby safe.")},
    PartText{"HistoryCard",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What changed, when, and by whom. It is read from the collection's log, which is only ever "
                 "added to.")},
    PartText{
        "ModelStart",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "For a group without targets: a published profile of a model species to derive from. Say why "
            "that species stands in; the sentence is kept with every target.")},
    PartText{"ModelPicker",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Published profiles of model species, side by side where several are ticked. Each number is "
                 "that of the publication named; none was made for your species.")},
    PartText{
        "NewSpeciesPage",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "A species that is new to the collection, with its first group, energy need and targets. The "
            "targets come from the model species that you choose, as a starting point.")},
    PartText{"IndividualForm",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Who the animal is: sex, birth, stages of life, coming and going. Stages change its energy "
                 "need and targets from the day they begin.")},
    PartText{"IndividualPane",
             QT_TRANSLATE_NOOP("PartTexts", "One animal: who it is, its masses and condition scores.")},
    PartText{"SpeciesPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The species: its names, and the groups of animals that it belongs to. Cautions about foods "
                 "go by these.")},
    PartText{"PageHeader",
             QT_TRANSLATE_NOOP("PartTexts", "What is shown below, and what can be done with it.")},
    PartText{"GroupPane",
             QT_TRANSLATE_NOOP("PartTexts",
                               "A group: who is in it, what it needs, and what its diets are judged by.")},
    // Diets
    PartText{"DietList",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The diets of the collection by group, and the groups that have none yet. The mark says how "
                 "the version that would be opened stands against its targets.")},
    PartText{
        "VersionBar",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "Which version of the diet is on the desk and what can be done next: submit it, approve it, "
            "send it back, retire it. What was approved never changes; the next idea is a new version.")},
    PartText{
        "ApprovalForm",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "Whoever approves says why, from which day it is fed and over how many days it is phased in. "
            "Grams, targets and composition are kept as they were decided on.")},
    PartText{"StandingBar",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What has happened since this version was written: foods that are gone, targets that "
                 "changed, another window that was faster.")},
    PartText{"IngredientTable",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The foods of the diet. Grams are as fed, for one animal and day or for the whole group, as "
                 "the switch above says. They are yours where locked (Space); the others are found by the "
                 "solver in whole steps of the kitchen's scale. Min and max are limits of this diet. The bar "
                 "is the food's share of the dry matter.")},
    PartText{"FoodBench",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Foods of the collection are added here by name. A food that is given unweighed, such as "
                 "browse, is stated as a range; the balance counts the middle and carries the range as "
                 "uncertainty.")},
    PartText{"AllowanceBar",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Something that is given unweighed, between two amounts a day. The balance counts the "
                 "middle, and the range as uncertainty.")},
    PartText{
        "LinePane",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "More about the food that the hand is on: how the kitchen prepares it, what it is given for, "
            "and the cautions about it.")},
    PartText{
        "BalanceLadder",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "One rung for each target, those that fall short first. The number is what the bowl gives: "
            "grams of each food times its composition. The shaded stretch is the target's zone, the mark "
            "is the diet, the whisker its uncertainty from scatter between samples. The hatched stretch "
            "is what unknown values could add: an unknown is never counted as nothing, and a rung that "
            "rests on one says so.")},
    PartText{
        "RungDetail",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "The rung that is open: its bounds, which can be changed for this diet, where the target was "
            "stated, and which food brings how much of it.")},
    PartText{"BalancePane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "How the diet stands against its targets. Choose a rung to see which food brings how much, "
                 "and where the target comes from.")},
    PartText{
        "WhyCard",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "Why the diet stands as it does, in sentences. They follow from the targets and foods on the "
            "desk alone; a suggestion was worked out before it is offered, and can be tried and taken "
            "back.")},
    PartText{"ExplorePane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What has to give while one bound moves. Each point of the chart is a diet of its own that "
                 "was solved.")},
    PartText{"TraceChart",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What has to give while one bound moves: foods above, what is sought and what is missed "
                 "below. Each dot is where another food or target begins to give.")},
    PartText{"RulesPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What is asked of the diet beside its targets: how many foods of a group, at most how much "
                 "of it. Rules of the targets are shown, those of this diet can be changed.")},
    PartText{"ComparePane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What this version says otherwise than another: grams, balance, cost, in words and side by "
                 "side. Both are as they stand in the collection.")},
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
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "How the whole period stands against the targets, or the day that the hand is on. It is the "
                 "mean of the days as planned.")},
    PartText{"RotationForm",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What the plan must keep: how many days, what varies, what may not follow upon what, days "
                 "off, what is in stock.")},
    PartText{"RotationBar",
             QT_TRANSLATE_NOOP("PartTexts", "Which days are looked at, and what can be planned.")},
    PartText{"RotationHandBar",
             QT_TRANSLATE_NOOP("PartTexts", "What keys do in the calendar on the cell that the hand is on.")},
    PartText{"RotationPane",
             QT_TRANSLATE_NOOP("PartTexts",
                               "A plan by the day for the diet on the desk. What was fed already stays.")},
    // Kitchen
    PartText{
        "BowlList",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "The section, the day, and its bowls. They come from the diets in force on that day, or from "
            "the plan of a rotation, times the number of animals.")},
    PartText{"BowlPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The bowl that is prepared: its foods with planned grams, what was weighed, how each is "
                 "prepared. Planned grams come from the approved diet, times the animals of the group.")},
    PartText{"WeighPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The food on the scale. The plan is the approved diet's; ± is how far the weight may lie "
                 "from it by the rule of the house. The first weight is never written over: a correction "
                 "stands beside it.")},
    PartText{"LeftoverPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What came back of a food. What was eaten is offered less left less lost, corrected for "
                 "drying by the control pans of the day.")},
    PartText{
        "ScaleBar",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "The scale of this bench: what it shows now and where it is plugged in. Without one, weights "
            "are typed.")},
    PartText{"ToleranceForm",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "How far a weight may lie from the plan, a rule of your house, and what it comes to for the "
                 "food on the scale.")},
    PartText{"SheetSide",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What stands on the sheet beside the bowls: what the kitchen needs in all, what to thaw for "
                 "tomorrow, cautions and hygiene.")},
    PartText{"SwapPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "What to give instead of a food that is not there, the nearest first. Each line says the "
                 "grams and what it does to the balance, worked out against the approved bowl; where the "
                 "approved targets are no longer met, it says who must approve.")},
    PartText{"PanPane",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Control pans: the same food out of the animals' reach, weighed when the bowls went out and "
                 "when they came back. What they lose by drying, or gain, is taken off what came back of the "
                 "same food.")},
    // Intake
    PartText{"GroupChoice",
             QT_TRANSLATE_NOOP("PartTexts",
                               "The section and its groups. A group without a bowl cannot be chosen.")},
    PartText{
        "SubjectBox",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "What is followed over time: the targets of the group, then every nutrient that some food of "
            "its bowls tells.")},
    PartText{
        "IntakeSide",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "What was noticed in the days in sight, and how much is known of them. A drop is told by the "
            "group's own history, not by a fixed number.")},
    PartText{"FoodBandsChart",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Grams a day of each food, all animals together: what was offered, and what was eaten of it "
                 "(offered less left and lost, corrected by control pans). Days without a bowl written down "
                 "stay empty.")},
    PartText{
        "ValueChart",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "What is followed, a day and animal, as eaten, against its zone. Hatched is what is missing: "
            "foods whose leftovers or composition nobody knows. The line is the mean of the days around.")},
    PartText{
        "ChoiceChart",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "What is picked first: Manly's alpha with its 95 % interval, from what was offered and left. "
            "Above the dashed line a food is taken more than its share.")},
    PartText{"StudyPage",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "A study of what is eaten: how many days it needs for the precision wanted, by how much the "
                 "group's own days differ, what is weighed, and where control pans stand.")},
    PartText{"FaecesCard",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Faeces that were collected and analysed. With what was eaten on their days they say what "
                 "was digested; without, nothing.")},
    PartText{"YesterdayPage",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Yesterday's bowls as a list to fill in: what came back of each food, by weight, all eaten, "
                 "or not weighed. Not weighed stays unknown.")},
    // Health
    PartText{
        "ObservationForm",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "What was seen: kind, day, time, and what its kind asks for. It is kept under your name, and "
            "is never written over.")},
    PartText{"HealthTimeline",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Signs, blood values, treatments, condition, body mass, Ca:P and diets on one axis of days. "
                 "Points are what was written down; lines are worked out from the bowls of each day.")},
    // Frame
    PartText{"Finder",
             QT_TRANSLATE_NOOP("PartTexts", "Goes to any food, animal or diet by part of its name.")},
    PartText{"StatusLine",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "Whether all is on the disk, the units in force, whether this is the invented sample, and "
                 "who is at the keyboard: every change is kept under that name.")},
    PartText{"Rail",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The rooms of the window, Ctrl+1 to Ctrl+7, and below them the collection file and help.")},
    PartText{"StartPage", QT_TRANSLATE_NOOP("PartTexts", "No collection is open. Choose a way in.")},
    PartText{
        "GuidePanel",
        QT_TRANSLATE_NOOP("PartTexts", "The guide leads through the invented sample, a step at a time.")},
    PartText{
        "ReasonBar",
        QT_TRANSLATE_NOOP("PartTexts",
                          "A reason is kept with what you do, under your name, and can be read for good.")},
};

}  // namespace

QString partText(const QMetaObject& part) {
  std::string_view name = part.className();
  if (const auto colon = name.rfind(':'); colon != std::string_view::npos) name.remove_prefix(colon + 1);
  const auto found =
      std::find_if(kTexts.begin(), kTexts.end(), [name](const PartText& text) { return text.part == name; });
  return found == kTexts.end() ? QString() : QCoreApplication::translate(kContext, found->text);
}

}  // namespace tarebowl::ui
