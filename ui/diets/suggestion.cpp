// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/suggestion.h"

#include "core/exchange/wording.h"
#include "ui/diets/food_label.h"
#include "ui/diets/target_names.h"
#include "ui/shared/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {
namespace {

using diet::BoundSide;
using diet::Remedy;

struct Suggest {
  Q_DECLARE_TR_FUNCTIONS(Suggest)
};

constexpr std::string_view kChoice = "choice:";

QString amountText(const DietDraft& draft, const diet::DietFood& food, quantity::Grams amount) {
  // Without whole steps a remedy is an exact number, and nobody weighs one.
  return grams(amount, draft.problem.wholeSteps ? food.scaleStep : quantity::Grams(0.01));
}

QString nameText(const diet::DietFood& food) {
  const FoodLabel label = foodLabel(food);
  return label.remark.isEmpty() ? label.name : QStringLiteral("%1, %2").arg(label.name, label.remark);
}

QString effectOf(const SuggestedFacts& facts, const Remedy& remedy) {
  QString effect;
  if (remedy.closes())
    effect = Suggest::tr("closes the gap");
  else if (!remedy.possible)
    effect = Suggest::tr("helps, but the hard rules would still contradict each other");
  else if (facts.impossible)
    effect = Suggest::tr("the hard rules would hold, and other targets be missed");
  else
    effect = Suggest::tr("leaves %1 of the gap")
                 .arg(percent(facts.shortfall > 0.0 ? remedy.shortfall / facts.shortfall : 1.0));
  if (remedy.known < 1.0)
    effect += Suggest::tr("; its values are known for %1 of the rules").arg(percent(remedy.known));
  return effect;
}

Suggestion suggestionOf(const DietDraft& draft, const SuggestedFacts& facts,
                        const SuggestedFacts::FoodRemedy& found) {
  const Remedy& remedy = found.remedy;
  const QString amount = amountText(draft, found.food, remedy.grams);
  const QString name = nameText(found.food);
  const QString effect = effectOf(facts, remedy);
  switch (remedy.kind) {
    case Remedy::Kind::Raise:
      return {Suggest::tr("Allow %1 g %2").arg(amount, name), effect,
              RaisedFood{found.food.id, remedy.grams}};
    case Remedy::Kind::Replace:
      return {Suggest::tr("%1 g %2 in place of %3")
                  .arg(amount, name, distinctName(draft.problem, remedy.inPlaceOf)),
              effect, AddedFood{found.food, remedy.grams, draft.problem.foods.at(remedy.inPlaceOf).id}};
    case Remedy::Kind::Add:
      break;
  }
  return {Suggest::tr("Add %1 g %2").arg(amount, name), effect, AddedFood{found.food, remedy.grams, {}}};
}

QString effectOf(const SuggestedFacts& facts, const diet::LeastChange& change) {
  QString effect = change.resolvesAll ? facts.impossible ? Suggest::tr("the hard rules would hold")
                                                         : Suggest::tr("every target would hold")
                                      : Suggest::tr("these could hold together; others would still fight");
  if (!change.onGrid) effect += Suggest::tr(", in amounts between the scale's steps");
  return effect;
}

std::optional<Suggestion> boundSuggestion(const DietDraft& draft, const SuggestedFacts& facts,
                                          const diet::LeastChange& change) {
  const auto rung = rungOfRule(draft.problem, change.id);
  if (!rung) return std::nullopt;
  const double scale = shownValue(*rung, 1.0);
  const double to = exchange::givenWay(change.to * scale, change.side) / scale;
  const QString unit = rungUnit(draft.problem, *rung);
  const QString words =
      (change.side == BoundSide::Min ? Suggest::tr("%1 at least %2") : Suggest::tr("%1 at most %2"))
          .arg(rungName(draft.problem, *rung), stated(to * scale));
  return Suggestion{unit.isEmpty() ? words : words + QLatin1Char(' ') + unit, effectOf(facts, change),
                    MovedBound{change.id, change.side, to}};
}

/// A choice of the targets is not the diet's to change.
std::optional<Suggestion> choiceSuggestion(const DietDraft& draft, const SuggestedFacts& facts,
                                           const diet::LeastChange& change) {
  const std::string group = change.id.substr(kChoice.size());
  const auto own = ownChoices(draft);
  if (std::ranges::find(own, group, &animal::ChoiceRule::group) == own.end()) return std::nullopt;
  const int to = static_cast<int>(std::lround(change.to));
  const QString words = (change.side == BoundSide::Min ? Suggest::tr("Ask for at least %1 of the group %2")
                                                       : Suggest::tr("Ask for at most %1 of the group %2"))
                            .arg(to)
                            .arg(QString::fromStdString(group));
  return Suggestion{words, effectOf(facts, change), MovedChoice{group, change.side, to}};
}

}  // namespace

std::optional<RungRef> rungOfRule(const diet::BalanceProblem& problem, const std::string& id) {
  const auto in = [&](const auto& rules, diet::TargetKind kind) -> std::optional<RungRef> {
    const auto found = std::ranges::find_if(rules, [&](const auto& rule) { return rule.id == id; });
    if (found == rules.end()) return std::nullopt;
    return RungRef{kind, static_cast<std::size_t>(found - rules.begin())};
  };
  if (const auto target = in(problem.targets, diet::TargetKind::Nutrient)) return target;
  if (const auto ratio = in(problem.ratios, diet::TargetKind::Ratio)) return ratio;
  return in(problem.shares, diet::TargetKind::Share);
}

std::vector<Suggestion> suggestionsFrom(const DietDraft& draft, const SuggestedFacts& facts) {
  std::vector<Suggestion> closing;
  std::vector<Suggestion> nearing;
  for (const auto& found : facts.remedies)
    (found.remedy.closes() ? closing : nearing).push_back(suggestionOf(draft, facts, found));
  for (const diet::LeastChange& change : facts.changes) {
    auto suggestion = change.id.starts_with(kChoice) ? choiceSuggestion(draft, facts, change)
                                                     : boundSuggestion(draft, facts, change);
    if (suggestion) (change.resolvesAll ? closing : nearing).push_back(std::move(*suggestion));
  }
  std::ranges::move(nearing, std::back_inserter(closing));
  return closing;
}

}  // namespace tarebowl::ui
