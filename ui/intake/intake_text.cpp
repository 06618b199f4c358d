// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/intake_text.h"

#include "core/intake/head_shares.h"
#include "ui/shared/days.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <map>

namespace tarebowl::ui {
namespace {

struct Intake {
  Q_DECLARE_TR_FUNCTIONS(Intake)
};

using intake::FindingKind;

std::size_t countOf(const transfer::IntakeTrend& trend, FindingKind kind) {
  const auto found = trend.findings.find(kind);
  return found == trend.findings.end() ? 0 : found->second;
}

bool touches(const intake::Drop& drop, const DaySpan& span) {
  return toQDate(drop.from) <= span.until && toQDate(drop.until) >= span.from;
}

/// Sums of the days that are known.
struct KnownDays {
  std::size_t days = 0;
  std::size_t daysFed = 0;
  std::size_t bowls = 0;
  double animalDays = 0.0;
  double eaten = 0.0;
};

KnownDays knownDays(const transfer::IntakeTrend& trend, const DaySpan& span) {
  KnownDays known;
  for (const intake::IntakeStretch* point : pointsWithin(trend, span)) {
    known.days += point->daysKnown;
    known.daysFed += point->days;
    known.bowls += point->bowlsKnown;
    known.animalDays += point->animalDays;
    for (const intake::StretchFood& food : point->foods) known.eaten += food.eaten;
  }
  return known;
}

void noticeDrops(std::vector<NoticedLine>& lines, const std::vector<intake::Drop>& drops, const DaySpan& span,
                 const QString& what) {
  constexpr std::size_t kTold = 3;
  std::vector<const intake::Drop*> within;
  for (const intake::Drop& drop : drops)
    if (touches(drop, span)) within.push_back(&drop);
  const std::size_t first = within.size() > kTold ? within.size() - kTold : 0;
  for (std::size_t i = first; i < within.size(); ++i)
    lines.push_back({Mark::Lacking, Intake::tr("%1 fell, %2").arg(what, dropText(*within[i]))});
  if (first > 0)
    lines.push_back({Mark::Lacking, Intake::tr("%1 fell %2 times more before that.").arg(what).arg(first)});
}

/// How many points of what is followed lie outside their zone.
void noticeZone(std::vector<NoticedLine>& lines, const transfer::IntakeTrend& trend, const DaySpan& span,
                std::size_t line) {
  const ValueLine shown = valueLineOf(trend, line);
  if (!shown.min && !shown.max) return;
  std::map<diet::TargetState, std::size_t> states;
  std::size_t known = 0;
  for (const intake::IntakeStretch* point : pointsWithin(trend, span)) {
    if (point->values.empty() || !point->values[line].eaten) continue;
    ++known;
    ++states[point->values[line].state];
  }
  if (known == 0) return;
  const QString unit =
      trend.daysAPoint == 1 ? Intake::tr("days") : Intake::tr("stretches of %1 days").arg(trend.daysAPoint);
  const std::size_t low = states[diet::TargetState::Short];
  const std::size_t high = states[diet::TargetState::Over];
  if (low + high == 0) {
    lines.push_back(
        {Mark::Met,
         Intake::tr("%1 as eaten was in its zone on all %2 known %3.").arg(shown.name).arg(known).arg(unit)});
    return;
  }
  if (low > 0)
    lines.push_back({Mark::Lacking, Intake::tr("%1 as eaten was short on %2 of %3 known %4.")
                                        .arg(shown.name)
                                        .arg(low)
                                        .arg(known)
                                        .arg(unit)});
  if (high > 0)
    lines.push_back({Mark::Over, Intake::tr("%1 as eaten was over on %2 of %3 known %4.")
                                     .arg(shown.name)
                                     .arg(high)
                                     .arg(known)
                                     .arg(unit)});
}

void noticeEntries(std::vector<NoticedLine>& lines, const transfer::IntakeTrend& trend) {
  const auto add = [&](Mark mark, FindingKind kind, const QString& text) {
    if (const std::size_t count = countOf(trend, kind)) lines.push_back({mark, text.arg(count)});
  };
  for (const transfer::TrendSlip& slip : trend.slips)
    lines.push_back(
        {Mark::Unknown, Intake::tr("%1, %2: %3 g more was left than offered. Look at the entry.")
                            .arg(dateText(slip.day), foodNameIn(trend, slip.food), measured(slip.grams))});
  add(Mark::Unknown, FindingKind::NotWeighed,
      Intake::tr("%1 leftovers were not weighed: their days are missing, not zero."));
  add(Mark::Unknown, FindingKind::NoPan,
      Intake::tr("%1 leftovers had no control pan near: what was eaten is not known, at most what is gone."));
  add(Mark::AtLimit, FindingKind::BorrowedPan,
      Intake::tr("%1 leftovers are corrected by pans of other days."));
  add(Mark::AtLimit, FindingKind::NoEstimate,
      Intake::tr("%1 foods lie in a mixed remainder whose parts nobody estimated."));
  add(Mark::Unknown, FindingKind::LossUnknown,
      Intake::tr("%1 times food was spilled or stolen and nobody could say how much."));
}

/// Of the last stretch in which the food was compared.
const intake::FoodChoice* choiceOf(const transfer::IntakeTrend& trend, const std::string& food) {
  for (auto stretch = trend.choices.rbegin(); stretch != trend.choices.rend(); ++stretch)
    for (const intake::BowlChoice& bowl : stretch->bowls)
      for (const intake::FoodChoice& choice : bowl.choice.foods)
        if (choice.food == food && choice.alpha) return &choice;
  return nullptr;
}

QString rangeText(const std::vector<double>& shares, double all) {
  const auto [least, most] = std::ranges::minmax(shares);
  return Intake::tr("%1–%2 g").arg(gramsADay(least * all), gramsADay(most * all));
}

}  // namespace

QString gramsADay(double grams) {
  const double size = std::abs(grams);
  return decimal(grams, size >= 100.0 ? 0 : size >= 10.0 ? 1 : 2);
}

QString bowlsText(std::size_t bowls) {
  return bowls == 1 ? Intake::tr("1 bowl") : Intake::tr("%1 bowls").arg(bowls);
}

QString spanText(const DaySpan& span) {
  const QString first = dateText(toDate(span.from));
  return span.from == span.until ? first : Intake::tr("%1 – %2").arg(first, dateText(toDate(span.until)));
}

QString daysText(const ChartDays& point) {
  const QString when = spanText(point.span);
  if (point.days == 0) return Intake::tr("%1 · no bowl: missing, not zero").arg(when);
  if (point.isMissing()) return Intake::tr("%1 · not all was weighed: missing, not zero").arg(when);
  if (point.span.days() == 1) return Intake::tr("%1 · %2").arg(when, bowlsText(point.bowlsKnown));
  return Intake::tr("%1 · %2 of %3 days known (%4)")
      .arg(when)
      .arg(point.daysKnown)
      .arg(point.span.days())
      .arg(bowlsText(point.bowlsKnown));
}

QString alphaText(const std::optional<double>& alpha, const std::optional<intake::Interval>& interval) {
  const auto two = [](double value) { return decimal(value, 2); };
  if (!alpha) return QStringLiteral("?");
  return interval ? Intake::tr("%1 (%2–%3)").arg(two(*alpha), two(interval->low), two(interval->high))
                  : two(*alpha);
}

QString dropText(const intake::Drop& drop) {
  return Intake::tr("%1: down to %2, %3 below the usual %4 (median of %5 known days)")
      .arg(spanText(daysOf(drop.from, drop.until)), measured(drop.lowest), percent(drop.share()),
           measured(drop.usual))
      .arg(drop.known);
}

QString dropRuleText(const intake::DropRule& rule) {
  return Intake::tr(
             "A drop: more than %1 robust standard deviations, and at least %2, below the median of the "
             "%3 days before, of which %4 must be known (house rule).")
      .arg(stated(rule.spreads), percent(rule.leastShare))
      .arg(rule.historyDays)
      .arg(rule.leastKnown);
}

std::vector<const intake::IntakeStretch*> pointsWithin(const transfer::IntakeTrend& trend,
                                                       const DaySpan& span) {
  std::vector<const intake::IntakeStretch*> points;
  for (const intake::IntakeStretch& point : trend.points)
    if (toQDate(point.from) <= span.until && toQDate(point.until) >= span.from) points.push_back(&point);
  return points;
}

QString knownText(const transfer::IntakeTrend& trend, const DaySpan& span) {
  const KnownDays known = knownDays(trend, span);
  if (known.daysFed == 0) return Intake::tr("No bowl of these days is written down.");
  return Intake::tr(
             "On %1 of %2 days with a bowl all of it is known (%3, %4 control pans); the others are missing, "
             "not zero.")
      .arg(known.days)
      .arg(known.daysFed)
      .arg(bowlsText(known.bowls))
      .arg(trend.pans);
}

std::vector<NoticedLine> noticedIn(const transfer::IntakeTrend& trend, const DaySpan& span) {
  std::vector<NoticedLine> lines;
  noticeDrops(lines, trend.foodDrops, span, Intake::tr("What an animal eats in all (g)"));
  noticeDrops(lines, trend.subjectDrops, span, valueLineOf(trend, transfer::kSubjectLine).name);
  noticeZone(lines, trend, span, transfer::kSubjectLine);
  const bool isCalcium =
      valueLineOf(trend, transfer::kSubjectLine).name == valueLineOf(trend, transfer::kCalciumLine).name;
  if (!isCalcium) noticeZone(lines, trend, span, transfer::kCalciumLine);
  noticeEntries(lines, trend);
  for (const std::string& food : trend.unknownFoods)
    lines.push_back(
        {Mark::Unknown, Intake::tr("%1: the collection has no such food; nothing is counted of it.")
                            .arg(QString::fromStdString(food))});
  return lines;
}

QString perAnimalText(const transfer::IntakeTrend& trend, const DaySpan& span) {
  const KnownDays known = knownDays(trend, span);
  if (known.days == 0) return Intake::tr("Nothing is known of these days.");
  const double all = known.eaten / static_cast<double>(known.days);
  const double animals = known.animalDays / static_cast<double>(known.days);
  if (animals < 1.5) return Intake::tr("One animal: %1 g a day.").arg(gramsADay(all));
  QString text =
      Intake::tr("A shared bowl does not say who ate what. Of %1 g a day, %2 g each by equal share")
          .arg(gramsADay(all), gramsADay(all / animals));
  const auto byMass = intake::headShares(intake::ShareBy::BodyMass, trend.masses);
  const auto metabolic = intake::headShares(intake::ShareBy::MetabolicMass, trend.masses);
  if (trend.masses.size() > 1 && byMass && metabolic)
    text += Intake::tr(", %1 by body mass, %2 by metabolic mass")
                .arg(rangeText(*byMass, all), rangeText(*metabolic, all));
  return text + Intake::tr("; nobody can have had more than the %1 g.").arg(gramsADay(all));
}

QStringList foodTitles() {
  return {Intake::tr("Food"),  Intake::tr("Offered g"), Intake::tr("Eaten g"),     Intake::tr("Eaten"),
          Intake::tr("Bowls"), Intake::tr("Not known"), Intake::tr("Picked first")};
}

std::vector<RowsModel::Row> foodRows(const transfer::IntakeTrend& trend, const DaySpan& span) {
  std::map<std::string, intake::StretchFood> foods;
  for (const intake::IntakeStretch* point : pointsWithin(trend, span))
    for (const intake::StretchFood& food : point->foods) {
      intake::StretchFood& sum = foods[food.food];
      sum.food = food.food;
      sum.offered += food.offered;
      sum.eaten += food.eaten;
      sum.bowls += food.bowls;
      sum.bowlsNotKnown += food.bowlsNotKnown;
    }
  std::vector<intake::StretchFood> sorted;
  for (const auto& [code, food] : foods) sorted.push_back(food);
  std::ranges::stable_sort(sorted, std::ranges::greater{}, &intake::StretchFood::offered);
  const auto days = static_cast<double>(knownDays(trend, span).days);
  std::vector<RowsModel::Row> rows;
  for (const intake::StretchFood& food : sorted) {
    const intake::FoodChoice* choice = choiceOf(trend, food.food);
    const bool known = food.offered > 0.0;
    rows.push_back(
        {{foodNameIn(trend, food.food), known ? gramsADay(food.offered / days) : QStringLiteral("?"),
          known ? gramsADay(food.eaten / days) : QStringLiteral("?"),
          known ? percent(food.eaten / food.offered) : QStringLiteral("?"), QString::number(food.bowls),
          QString::number(food.bowlsNotKnown),
          choice != nullptr ? alphaText(choice->alpha, choice->interval) : QString()},
         choice != nullptr ? Intake::tr("Picked first: Manly's alpha with its 95 % interval, from the "
                                        "last stretch in which it could be compared")
                           : QString(),
         QColor()});
  }
  return rows;
}

}  // namespace tarebowl::ui
