// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/kitchen_text.h"

#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QDateTime>

#include <cmath>

namespace tarebowl::ui {
namespace {

struct Kitchen {
  Q_DECLARE_TR_FUNCTIONS(Kitchen)
};

QString inGrams(quantity::Grams amount, quantity::Grams step) {
  return Kitchen::tr("%1 g").arg(grams(amount, step));
}

QString clockText(const std::string& at) {
  return QDateTime::fromString(QString::fromStdString(at), Qt::ISODate)
      .toLocalTime()
      .toString(QStringLiteral("HH:mm"));
}

QString entryText(const intake::Weighing& entry, const intake::KitchenFood& food) {
  QString text = Kitchen::tr("%1 by %2 at %3")
                     .arg(inGrams(entry.actual, food.step), QString::fromStdString(entry.by.who),
                          clockText(entry.by.at));
  if (entry.second) text += Kitchen::tr(" (written a second time; does not count)");
  if (!entry.correction.empty())
    text += QStringLiteral(" (%1)").arg(QString::fromStdString(entry.correction));
  return text;
}

}  // namespace

QString foodText(const intake::KitchenFood& food) {
  const QString name = QString::fromStdString(food.name);
  if (!food.known) return Kitchen::tr("%1 (not in the collection)").arg(name);
  const QString form = QString::fromStdString(food.form);
  const QString whole = form.isEmpty() || name.contains(form) ? name : name + QStringLiteral(", ") + form;
  return food.inStock ? whole : Kitchen::tr("%1 (not in stock)").arg(whole);
}

QString portionText(quantity::Grams amount, const intake::KitchenFood& food) {
  constexpr double kWhole = 1e-6;
  const QString mass = inGrams(amount, food.step);
  const double pieces = food.unitMass ? amount / *food.unitMass : 0.0;
  if (pieces < 0.5 || std::abs(pieces - std::round(pieces)) > kWhole) return mass;
  return Kitchen::tr("%n piece(s) (%1)", nullptr, static_cast<int>(std::lround(pieces))).arg(mass);
}

QString toleranceText(quantity::Grams tolerance) {
  constexpr double kHundredths = 100.0;
  constexpr double kRounding = 1e-6;
  return stated(std::floor(tolerance.value() * kHundredths + kRounding) / kHundredths);
}

QString bowlFacts(const intake::PrepBowl& bowl) {
  QString text =
      bowl.bowl.animals == 1 ? Kitchen::tr("1 animal") : Kitchen::tr("%1 animals").arg(bowl.bowl.animals);
  text += Kitchen::tr(" · %1 g in all").arg(stated(bowl.total().value()));
  if (bowl.phaseDay > 0)
    text += Kitchen::tr(" · day %1 of %2 of a new diet").arg(bowl.phaseDay).arg(bowl.phaseDays);
  return text;
}

QString soFarText(const WeighedSoFar& so) {
  return so.weighed == so.lines ? Kitchen::tr("all weighed")
                                : Kitchen::tr("%1 of %2 weighed").arg(so.weighed).arg(so.lines);
}

Mark markOf(const WeighedSoFar& so) {
  if (so.weighed == so.lines) return Mark::Met;
  return so.weighed > 0 ? Mark::AtLimit : Mark::Lacking;
}

Mark markOf(intake::WeightState state) {
  switch (state) {
    case intake::WeightState::In:
      return Mark::Met;
    case intake::WeightState::Under:
      return Mark::Lacking;
    case intake::WeightState::Over:
      break;
  }
  return Mark::Over;
}

QString wordOf(intake::WeightState state) {
  switch (state) {
    case intake::WeightState::In:
      return Kitchen::tr("in");
    case intake::WeightState::Under:
      return Kitchen::tr("under");
    case intake::WeightState::Over:
      break;
  }
  return Kitchen::tr("over");
}

QString doubtText(intake::WeighingDoubt doubt) {
  using intake::WeighingDoubt;
  switch (doubt) {
    case WeighingDoubt::BelowNothing:
      return Kitchen::tr("Less than nothing: tare the empty bowl and weigh again.");
    case WeighingDoubt::TenTimes:
      return Kitchen::tr("About ten times the plan: is the decimal point right?");
    case WeighingDoubt::TenthOf:
      return Kitchen::tr("About a tenth of the plan: is the decimal point right?");
    case WeighingDoubt::NotInGrams:
      return Kitchen::tr("About the plan in ounces: set the scale to grams.");
    case WeighingDoubt::Under:
      return Kitchen::tr("Under the plan by more than the tolerance.");
    case WeighingDoubt::Over:
      return Kitchen::tr("Over the plan by more than the tolerance.");
    case WeighingDoubt::AsBowlBefore:
      return Kitchen::tr("The bowl before weighed just the same a moment ago: is this another bowl?");
    case WeighingDoubt::ClockWentBack:
      return Kitchen::tr("An earlier weight is later than now: is this machine's clock right?");
    case WeighingDoubt::DayToCome:
      return Kitchen::tr("This sheet is of a day to come.");
  }
  return {};
}

QString questionText(const std::vector<intake::WeighingDoubt>& doubts) {
  QStringList lines;
  for (const intake::WeighingDoubt doubt : doubts) lines << doubtText(doubt);
  if (!doubts.empty() && doubts.front() != intake::WeighingDoubt::BelowNothing)
    lines << Kitchen::tr("Enter again keeps it as it is.");
  return lines.join(QLatin1Char('\n'));
}

QString entriesText(const intake::BowlItem& item, const intake::KitchenFood& food) {
  QStringList entries;
  for (auto entry = item.weighings.rbegin(); entry != item.weighings.rend(); ++entry)
    entries << entryText(*entry, food);
  return entries.join(Kitchen::tr("; before that "));
}

QString leftText(const intake::BowlItem& item, const intake::KitchenFood& food) {
  using intake::LeftoverKind;
  const auto counts = intake::entryThatCounts(item.leftovers);
  if (!counts) return {};
  const QString left =
      counts->left ? Kitchen::tr("%1 left").arg(inGrams(*counts->left, food.step)) : QString();
  const auto with = [&](const QString& word) {
    QStringList parts{word};
    if (!left.isEmpty()) parts << left;
    if (counts->lost) parts << Kitchen::tr("%1 lost").arg(inGrams(*counts->lost, food.step));
    return parts.join(Kitchen::tr(", "));
  };
  switch (counts->kind) {
    case LeftoverKind::Weighed:
      return left;
    case LeftoverKind::AllEaten:
      return Kitchen::tr("all eaten");
    case LeftoverKind::NotWeighed:
      return Kitchen::tr("not weighed");
    case LeftoverKind::Estimated:
      return with(Kitchen::tr("estimated"));
    case LeftoverKind::Spilled:
      return with(Kitchen::tr("spilled"));
    case LeftoverKind::Stolen:
      break;
  }
  return with(Kitchen::tr("stolen"));
}

QString withoutBowlText(const intake::GroupWithoutBowl& group) {
  const QString name = QString::fromStdString(group.name);
  switch (group.why) {
    case intake::NoBowl::NoDiet:
      return Kitchen::tr("%1: no diet is in force").arg(name);
    case intake::NoBowl::HeadcountUnknown:
      return Kitchen::tr("%1: nobody knows how many animals it has").arg(name);
    case intake::NoBowl::NoAnimals:
      return Kitchen::tr("%1: no animal on this day").arg(name);
    case intake::NoBowl::NothingPlanned:
      break;
  }
  return Kitchen::tr("%1: nothing is planned for this day").arg(name);
}

QString allowanceText(const diet::Allowance& allowance, const intake::KitchenFood& food) {
  const QString note = QString::fromStdString(allowance.note);
  return Kitchen::tr("Without weighing: %1 … %2 g %3 each%4")
      .arg(stated(allowance.low.value()), stated(allowance.high.value()), foodText(food),
           note.isEmpty() ? QString() : QStringLiteral(", ") + note);
}

QString rawText(const intake::KitchenTotal& total) {
  QStringList parts;
  const QString raw =
      QString::fromStdString(total.food.rawName.empty() ? total.food.raw : total.food.rawName);
  if (intake::isCooked(total.food))
    parts << (total.raw ? Kitchen::tr("raw: %1 g %2").arg(measured(total.raw->value()), raw)
                        : Kitchen::tr("? raw amount unknown: no cooking yield"));
  if (total.bought) parts << Kitchen::tr("%1 g as bought").arg(measured(total.bought->value()));
  return parts.join(QStringLiteral(" · "));
}

QStringList hygieneTexts() {
  return {Kitchen::tr("Gloves on; washed hands are not enough."),
          Kitchen::tr("One bowl, one animal or group, with its label."),
          Kitchen::tr("Bowls and tools stay in their section."),
          Kitchen::tr("Leftovers never come back here: weigh them where dirty bowls go.")};
}

}  // namespace tarebowl::ui
