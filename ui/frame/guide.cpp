// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/guide.h"

#include "ui/frame/explanation.h"
#include "ui/frame/room_numbers.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <QRegularExpression>
#include <QTabBar>

namespace tarebowl::ui {
namespace {

struct Guide {
  Q_DECLARE_TR_FUNCTIONS(Guide)
};

GuideFlow designOfADiet() {
  return {Guide::tr("A nutritionist designs the first diet of a species"),
          {{kAnimalsNumber, Guide::tr("The gardens took in lowland streaked tenrecs, and nobody has designed "
                                      "their diet yet. Type “streaked tenrecs” into *Find an animal* and "
                                      "press Enter. (A species of your own is begun by *Add*.)")},
           {kAnimalsNumber, Guide::tr("Choose *energy need*: it is worked out step by step, and each number "
                                      "names its source or is the house's own. Press F1 on any of them.")},
           {kAnimalsNumber,
            Guide::tr("Choose *targets*: what a diet of this group is judged by. Each says where it was "
                      "stated. What comes from a model species is a starting point, not a requirement.")},
           {kAnimalsNumber, Guide::tr("These targets are a draft: nobody has decided on them. Press *Put in "
                                      "force…*; in a real house that is the nutritionist's decision.")},
           {kAnimalsNumber, Guide::tr("Say why in *Reason* and press Enter. From today on the group's diets "
                                      "are judged by these targets.")},
           {kAnimalsNumber, Guide::tr("Press *Design a diet*. It opens on the desk in Diets, empty.")},
           {kDietsNumber,
            Guide::tr("Type part of a food's name into *Add a food* and press Enter: “cricket”. Then add "
                      "“earthworm” and “limestone” in the same way. The grams follow as foods are added.")},
           {kDietsNumber,
            Guide::tr("Look at the *Balance ladder*, at the right: what falls short comes first. A shaded "
                      "stretch is a target's zone, the mark is the diet, and what nobody measured is "
                      "hatched, never counted as nothing. Choose a rung to see which food brings how much.")},
           {kDietsNumber, Guide::tr("Type a gram of your own into *Foods of the diet*: it is locked, and the "
                                    "other foods give way. Ctrl+Z takes it back. The card *Why* says what "
                                    "cannot hold together, and offers what would settle it.")},
           {kDietsNumber,
            Guide::tr("Press *Submit…*: the diet waits for a decision, and is not edited while it waits.")},
           {kDietsNumber,
            Guide::tr("Say why in *Reason* and press Enter. Whoever decides presses *Approve…*, which "
                      "appears now; from then on this version never changes, and the kitchen follows it. "
                      "Targets and foods are only as good as their sources: the nutritionist decides.")}}};
}

GuideFlow aMorningInTheKitchen() {
  return {
      Guide::tr("A keeper checks a swap and weighs"),
      {{kTodayNumber, Guide::tr("*What is due today* says which sections have bowls to prepare. A row leads "
                                "to its sheet; Ctrl+5 goes to the Kitchen as well.")},
       {kKitchenNumber, Guide::tr("Choose Reptiles and Bats in *Section*. Its bowls stand below, in *Bowls "
                                  "of the sheet*; the first food of the first one is on the scale.")},
       {kKitchenNumber,
        Guide::tr("Suppose this food did not come. Press *Not available* (the key * does it too).")},
       {kKitchenNumber,
        Guide::tr("*What to give instead* ranks what is on hand, the nearest first, in grams, with what it "
                  "does to the balance and who must approve it. Arrows choose, Enter uses. Nothing is "
                  "missing this time: *Back* (Esc) goes to the bowl again.")},
       {kKitchenNumber,
        Guide::tr("Type what the scale shows into *Weight in g*. The bar says under, in or over. Enter keeps "
                  "the weight, and the next food is on the scale. A doubtful one is asked about first.")},
       {kKitchenNumber,
        Guide::tr(
            "Tomorrow, *Leftovers* asks what came back of each food. What nobody weighs stays unknown.")}}};
}

GuideFlow aReviewOfCalcium() {
  return {
      Guide::tr("A vet reviews calcium and looks back"),
      {{kHealthNumber,
        Guide::tr("Choose the bearded dragons in *Groups and animals*. *How far back* says how many days up "
                  "to today are looked at; the feeding of the sample ends on 24 November 2026.")},
       {kHealthNumber,
        Guide::tr("*Calcium review* sets calcium, phosphorus, Ca:P and vitamin D as eaten against their "
                  "targets, in *Calcium against its targets*. Days that nobody weighed widen the range.")},
       {kHealthNumber,
        Guide::tr("Choose one in *Supplement*: the review says the least dose that brings calcium in, and "
                  "whether that stays below the safe limit. Whether it is given, the vet decides.")},
       {kHealthNumber, Guide::tr("Now the ruffed lemurs in *Groups and animals*: their faeces were soft. In "
                                 "*What was seen* put the hand on a line with ▲ and press Enter.")},
       {kHealthNumber, Guide::tr("*Look-back* shows in *Foods and the sign* which foods were in the bowls "
                                 "before it, against days without it. *Hours before the sign* says how far "
                                 "back. It shows what goes together, not what caused what.")},
       {kHealthNumber, Guide::tr("*Look-back for the file…* writes it as one page, to print or to keep.")}}};
}

const QRegularExpression& namePattern() {
  static const QRegularExpression pattern(QStringLiteral("\\*(\\S(?:[^*]*\\S)?)\\*"));
  return pattern;
}

/// Whole, or its first words.
bool isCalled(QString text, const QString& name) {
  text.remove(QLatin1Char('&'));
  if (!text.startsWith(name)) return false;
  return text.size() == name.size() || !text[name.size()].isLetterOrNumber();
}

bool isCalled(const QWidget& control, const QString& name) {
  if (isCalled(nameOf(control), name) || isCalled(control.property("text").toString(), name)) return true;
  if (const auto* field = qobject_cast<const QLineEdit*>(&control))
    return isCalled(field->placeholderText(), name);
  if (const auto* tabs = qobject_cast<const QTabBar*>(&control))
    for (int tab = 0; tab < tabs->count(); ++tab)
      if (isCalled(tabs->tabText(tab), name)) return true;
  return false;
}

}  // namespace

std::vector<GuideFlow> guideFlows() {
  return {designOfADiet(), aMorningInTheKitchen(), aReviewOfCalcium()};
}

QStringList controlsOf(const GuideStep& step) {
  QStringList names;
  for (auto found = namePattern().globalMatch(step.text); found.hasNext();) names << found.next().captured(1);
  return names;
}

QString htmlOf(const GuideStep& step) {
  return step.text.toHtmlEscaped().replace(namePattern(), QStringLiteral("<b>\\1</b>"));
}

QWidget* controlInSight(const QWidget& window, const QString& name) {
  QWidget* shown = nullptr;
  for (QWidget* control : window.findChildren<QWidget*>()) {
    if (!control->isVisible() || !isCalled(*control, name)) continue;
    if (control->focusPolicy() != Qt::NoFocus && control->isEnabled()) return control;
    if (shown == nullptr) shown = control;
  }
  return shown;
}

}  // namespace tarebowl::ui
