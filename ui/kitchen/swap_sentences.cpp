// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/swap_sentences.h"

#include "ui/diets/food_label.h"
#include "ui/diets/target_names.h"
#include "ui/shared/caution_text.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/format.h"
#include "ui/shared/nutrient_text.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace tarebowl::ui {
namespace {

class Swaps {
  Q_DECLARE_TR_FUNCTIONS(Swaps)
};

using diet::TargetState;

constexpr int kMostNamed = 3;

QString dotted(const QStringList& parts) {
  return parts.join(QStringLiteral(" · "));
}

QString fewOf(const QStringList& names, const QString& separator = QStringLiteral(", ")) {
  if (names.size() <= kMostNamed) return names.join(separator);
  return Swaps::tr("%1 and %n more", nullptr, static_cast<int>(names.size()) - kMostNamed)
      .arg(names.mid(0, kMostNamed).join(separator));
}

QString nameOf(const diet::DietFood& food) {
  const FoodLabel label = foodLabel(food);
  return label.remark.isEmpty() ? label.name : QStringLiteral("%1, %2").arg(label.name, label.remark);
}

int countOf(const diet::SwapRequest& request) {
  return std::max(1, request.problem.eater.count);
}

/// The whole bowl's, with the digits of the scale.
QString bowlGrams(const diet::SwapRequest& request, quantity::Grams each, quantity::Grams step) {
  return Swaps::tr("%1 g").arg(grams(each * countOf(request), step));
}

/// Within a sentence: "calcium", but "Ca : P".
QString rungWithin(const diet::SwapEffect& effect, const diet::TargetBalance& line) {
  const QString name = rungName(effect.problem, refOf(line));
  const bool isWord = line.kind != diet::TargetKind::Ratio && name.size() > 1 && name[1].isLower();
  return isWord ? name[0].toLower() + name.mid(1) : name;
}

bool isIn(TargetState state) {
  return state == TargetState::Met || state == TargetState::AtMin || state == TargetState::AtMax;
}

QString zoneWords(TargetState before, TargetState after) {
  if (after == TargetState::Unknown) return Swaps::tr("not known");
  if (isIn(after)) return isIn(before) ? Swaps::tr("still in zone") : Swaps::tr("now in zone");
  if (after == TargetState::Over) return isIn(before) ? Swaps::tr("now over") : Swaps::tr("over as before");
  return isIn(before) ? Swaps::tr("now short") : Swaps::tr("short as before");
}

QString ratioText(std::optional<double> ratio) {
  return ratio ? decimal(*ratio, 2) : QStringLiteral("?");
}

QString calciumText(const diet::SwapEffect& effect) {
  const diet::CalciumToPhosphorus& ratio = effect.calciumToPhosphorus;
  if (!ratio.before && !ratio.after) return {};
  const QString after = (ratio.isKnown ? QString() : QStringLiteral("≈ ")) + ratioText(ratio.after);
  const QString change = Swaps::tr("Ca:P %1 → %2").arg(ratioText(ratio.before), after);
  if (!ratio.rung) return change;
  const diet::RungChange& rung = effect.rungs[*ratio.rung];
  return Swaps::tr("%1, %2").arg(change, zoneWords(rung.before.state, rung.after.state));
}

QString energyText(const diet::BeforeAfter& energy) {
  const QString after = (energy.afterAtLeast ? QStringLiteral("≥ ") : QString()) + measured(energy.after);
  return Swaps::tr("energy %1 → %2 kcal").arg(measured(energy.before), after);
}

QString stateWord(TargetState state) {
  return wordOf(markOf(state));
}

/// What is lost first; Ca:P is told before.
QString changesText(const diet::SwapEffect& effect) {
  QStringList lost;
  QStringList others;
  for (std::size_t i = 0; i < effect.rungs.size(); ++i) {
    const diet::RungChange& rung = effect.rungs[i];
    if (!rung.changesState() || effect.calciumToPhosphorus.rung == i) continue;
    if (stateWord(rung.before.state) == stateWord(rung.after.state)) continue;
    const bool isLost = isIn(rung.before.state) && !isIn(rung.after.state);
    (isLost ? lost : others) << Swaps::tr("%1: %2 → %3")
                                    .arg(rungWithin(effect, rung.before), stateWord(rung.before.state),
                                         stateWord(rung.after.state));
  }
  return fewOf(lost + others, QStringLiteral(" · "));
}

QString movesText(const diet::SwapRequest& request, const diet::Swap& swap) {
  QStringList moves;
  for (const diet::MovedLine& line : swap.moved) {
    const diet::DietFood& food = request.problem.foods[line.food];
    moves << Swaps::tr("%1 %2 → %3")
                 .arg(foodLabel(food).name, bowlGrams(request, request.approved[line.food], food.scaleStep),
                      bowlGrams(request, line.grams, food.scaleStep));
  }
  return moves.isEmpty() ? QString() : Swaps::tr("with %1").arg(moves.join(QStringLiteral(", ")));
}

QString eatenText(const diet::SwapEffect& effect) {
  QStringList parts;
  for (const auto& eaten : effect.eatenBefore)
    parts << (eaten ? Swaps::tr("eaten %1 in %n bowls", nullptr, eaten->bowls).arg(percent(eaten->fraction))
                    : Swaps::tr("eaten before: ?"));
  parts.removeDuplicates();
  return parts.join(QStringLiteral(" + "));
}

QString unknownText(const diet::SwapEffect& effect) {
  if (effect.unknown.empty()) return {};
  QStringList names;
  for (const food::NutrientId nutrient : effect.unknown) names << nutrientWithin(nutrient);
  return Swaps::tr("unknown: %1").arg(fewOf(names));
}

QString rungNames(const diet::SwapEffect& effect, const std::vector<std::size_t>& rungs) {
  QStringList names;
  for (const std::size_t rung : rungs) names << rungWithin(effect, effect.rungs[rung].before);
  return fewOf(names);
}

}  // namespace

QString missingText(const diet::SwapRequest& request) {
  QStringList texts;
  for (const std::size_t line : request.missing) {
    const diet::DietFood& food = request.problem.foods[line];
    texts << Swaps::tr("%1 %2").arg(bowlGrams(request, request.approved[line], food.scaleStep), nameOf(food));
  }
  return texts.join(QStringLiteral(" + "));
}

QString swapGramsText(const diet::SwapRequest& request, const diet::Swap& swap) {
  QStringList texts;
  for (const diet::SwapPart& part : swap.parts)
    texts << bowlGrams(request, part.grams, request.candidates[part.candidate].scaleStep);
  return texts.join(QStringLiteral(" + "));
}

QString eachText(const diet::SwapRequest& request, const diet::Swap& swap) {
  if (countOf(request) == 1) return {};
  QStringList texts;
  for (const diet::SwapPart& part : swap.parts)
    texts << Swaps::tr("%1 g").arg(grams(part.grams, request.candidates[part.candidate].scaleStep));
  return Swaps::tr("%1 each").arg(texts.join(QStringLiteral(" + ")));
}

QString swapFoodsText(const diet::SwapRequest& request, const diet::Swap& swap) {
  QStringList texts;
  for (const diet::SwapPart& part : swap.parts) texts << nameOf(request.candidates[part.candidate]);
  return texts.join(QStringLiteral(" + "));
}

QString effectLine(const diet::SwapRequest& request, const SwapOffer& offer) {
  QStringList parts{calciumText(offer.effect), energyText(offer.effect.energy)};
  parts << changesText(offer.effect) << movesText(request, offer.swap) << eatenText(offer.effect)
        << unknownText(offer.effect);
  parts.removeAll(QString());
  return dotted(parts);
}

QString cautionLine(const SwapOffer& offer) {
  QStringList parts;
  for (const diet::FoodFinding& finding : offer.effect.cautions) {
    QString text = cautionWords(finding.reason);
    if (!finding.advice.empty()) text += QStringLiteral(": ") + cautionWords(finding.advice);
    if (!finding.inForce) text += Swaps::tr(" (the animal is not known)");
    if (!finding.lifted.empty())
      text += Swaps::tr(" (set aside: %1)").arg(QString::fromStdString(finding.lifted));
    parts << text;
  }
  return dotted(parts);
}

QString askLine(const SwapOffer& offer) {
  const diet::SwapApproval& approval = offer.effect.approval;
  if (approval.keeperMay()) return Swaps::tr("Keeper may decide");
  QStringList reasons;
  if (!approval.isSameGroup) reasons << Swaps::tr("another food group");
  if (!approval.lost.empty())
    reasons << Swaps::tr("no longer met: %1").arg(rungNames(offer.effect, approval.lost));
  if (!approval.doubtful.empty())
    reasons << Swaps::tr("may not be met: %1").arg(rungNames(offer.effect, approval.doubtful));
  if (approval.isCautioned) reasons << Swaps::tr("a caution");
  return Swaps::tr("Ask the nutritionist: %1").arg(reasons.join(QStringLiteral("; ")));
}

Mark markOf(const SwapOffer& offer) {
  const diet::SwapApproval& approval = offer.effect.approval;
  for (const std::size_t rung : approval.lost)
    if (offer.effect.rungs[rung].after.state == TargetState::Over) return Mark::Over;
  if (!approval.lost.empty()) return Mark::Lacking;
  if (!approval.doubtful.empty()) return Mark::Unknown;
  return approval.keeperMay() ? Mark::Met : Mark::AtLimit;
}

QString othersText(const SwapOffers& offers) {
  using Why = diet::SwapRefusal::Why;
  const auto of = [&](Why why) {
    return static_cast<int>(std::ranges::count(offers.refused, why, &diet::SwapRefusal::why));
  };
  QStringList parts;
  if (offers.further > 0)
    parts << Swaps::tr("%n more would do, further off", nullptr, static_cast<int>(offers.further));
  if (const int count = of(Why::Banned)) parts << Swaps::tr("%n not for this animal", nullptr, count);
  if (const int count = of(Why::Structure)) parts << Swaps::tr("%n against a structure rule", nullptr, count);
  if (const int count = of(Why::HardRule))
    parts << Swaps::tr("%n in no amount within the hard rules", nullptr, count);
  if (const int count = of(Why::NoAmount)) parts << Swaps::tr("%n at their limits", nullptr, count);
  if (const int count = of(Why::NoWater)) parts << Swaps::tr("%n of unknown water", nullptr, count);
  return dotted(parts);
}

QString equalText(const diet::SwapRequest& request, const SwapOffer& offer) {
  QStringList parts;
  if (offer.equalDryMatter)
    parts << Swaps::tr("D: equal dry matter, %1").arg(swapGramsText(request, *offer.equalDryMatter));
  if (offer.equalEnergy)
    parts << Swaps::tr("E: equal energy, %1").arg(swapGramsText(request, *offer.equalEnergy));
  return dotted(parts);
}

}  // namespace tarebowl::ui
