// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/difference_text.h"

#include "ui/shared/format.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

using Kind = diet::DifferenceKind;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Words)
};

QString orNone(const std::optional<double>& value) {
  return value ? stated(*value) : Words::tr("none");
}

QString orNone(const std::string& text) {
  return text.empty() ? Words::tr("none") : QString::fromStdString(text);
}

QString inGrams(const std::optional<double>& value) {
  return value ? Words::tr("%1 g").arg(stated(*value)) : Words::tr("none");
}

QString fromTo(const QString& what, const QString& before, const QString& after) {
  return Words::tr("%1: %2 → %3").arg(what, before, after);
}

QString yesOrNo(const std::optional<double>& value) {
  return value.value_or(0) != 0 ? Words::tr("yes") : Words::tr("no");
}

/// What is said of a line or an allowance.
QString ofFood(const diet::VersionDifference& difference, const QString& food) {
  const auto& [before, after] = std::pair(difference.before, difference.after);
  switch (difference.kind) {
    case Kind::LineAdded:
      return Words::tr("%1 is new: %2").arg(food, inGrams(after));
    case Kind::LineRemoved:
      return Words::tr("%1 is gone: it was %2").arg(food, inGrams(before));
    case Kind::Amount:
      return fromTo(food, inGrams(before), inGrams(after));
    case Kind::Min:
      return fromTo(Words::tr("%1, at least").arg(food), inGrams(before), inGrams(after));
    case Kind::Max:
      return fromTo(Words::tr("%1, at most").arg(food), inGrams(before), inGrams(after));
    case Kind::Locked:
      return fromTo(Words::tr("%1, locked").arg(food), yesOrNo(before), yesOrNo(after));
    case Kind::PurposeOf:
      return fromTo(Words::tr("%1, given as").arg(food), orNone(difference.textBefore),
                    orNone(difference.textAfter));
    case Kind::Preparation:
      return fromTo(Words::tr("%1, preparation").arg(food), orNone(difference.textBefore),
                    orNone(difference.textAfter));
    case Kind::AllowanceAdded:
      return Words::tr("%1 may be given unweighed").arg(food);
    case Kind::AllowanceRemoved:
      return Words::tr("%1 is no longer given unweighed").arg(food);
    case Kind::AllowanceLow:
      return fromTo(Words::tr("%1 unweighed, from").arg(food), inGrams(before), inGrams(after));
    case Kind::AllowanceHigh:
      return fromTo(Words::tr("%1 unweighed, up to").arg(food), inGrams(before), inGrams(after));
    default:
      return {};
  }
}

QString wordOf(Kind kind) {
  switch (kind) {
    case Kind::ProfileOf:
      return Words::tr("targets");
    case Kind::ObjectiveOf:
      return Words::tr("what is sought");
    case Kind::Confidence:
      return Words::tr("how sure");
    case Kind::EnergyMethodOf:
      return Words::tr("energy method");
    case Kind::WholeSteps:
      return Words::tr("whole scale steps");
    case Kind::Shares:
      return Words::tr("group shares");
    case Kind::Choices:
      return Words::tr("structure rules");
    case Kind::FedFrom:
      return Words::tr("fed from");
    case Kind::PhaseInDays:
      return Words::tr("days of phasing in");
    default:
      return Words::tr("other settings");
  }
}

QString ofDiet(const diet::VersionDifference& difference) {
  const QString rule = QString::fromStdString(difference.subject);
  if (difference.kind == Kind::BoundMin)
    return fromTo(Words::tr("%1, minimum").arg(rule), orNone(difference.before), orNone(difference.after));
  if (difference.kind == Kind::BoundMax)
    return fromTo(Words::tr("%1, maximum").arg(rule), orNone(difference.before), orNone(difference.after));
  if (difference.kind == Kind::Lifted || difference.kind == Kind::LiftedReason)
    return Words::tr("%1 is set aside: %2").arg(rule, orNone(difference.textAfter));
  if (difference.kind == Kind::BackInForce) return Words::tr("%1 is in force again").arg(rule);
  const QString what = wordOf(difference.kind);
  if (difference.kind == Kind::WholeSteps)
    return fromTo(what, yesOrNo(difference.before), yesOrNo(difference.after));
  if (!difference.textBefore.empty() || !difference.textAfter.empty())
    return fromTo(what, orNone(difference.textBefore), orNone(difference.textAfter));
  if (difference.before || difference.after)
    return fromTo(what, orNone(difference.before), orNone(difference.after));
  return Words::tr("%1: changed").arg(what);
}

}  // namespace

QString differenceText(const diet::VersionDifference& difference,
                       const std::function<QString(const std::string& code)>& nameOf) {
  QString food = nameOf(difference.subject);
  if (!difference.meal.empty()) food = Words::tr("%1, %2").arg(food, QString::fromStdString(difference.meal));
  const QString words = ofFood(difference, food);
  return words.isEmpty() ? ofDiet(difference) : words;
}

}  // namespace tarebowl::ui
