// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_text.h"

#include "ui/diets/target_names.h"
#include "ui/shared/date_text.h"
#include "ui/shared/days.h"
#include "ui/shared/format.h"
#include "ui/shared/state_mark.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include <algorithm>

namespace tarebowl::ui {
namespace {

struct RotationText {
  Q_DECLARE_TR_FUNCTIONS(RotationText)
};

QStringList namesOfMissed(const diet::BalanceProblem& problem, const diet::Balance& balance) {
  QStringList names;
  for (const diet::TargetBalance& line : balance.targets)
    if (line.shortfall > diet::kNoShortfall) names << rungName(problem, refOf(line));
  names.removeDuplicates();
  return names;
}

QString daysText(int days) {
  return days == 1 ? RotationText::tr("1 day") : RotationText::tr("%1 days").arg(days);
}

/// "nothing betters 0.02", where something better may be there.
QString openText(const diet::Reached& reached) {
  if (reached.gap() <= 0.0) return {};
  return RotationText::tr("A better one may be there, but none below %1.").arg(measured(reached.bound));
}

QString periodSentence(const RotationView& view) {
  const QStringList missed = namesOfMissed(view.problem().base, view.standing.period);
  if (missed.isEmpty()) return RotationText::tr("Over the %1 every target holds.").arg(daysText(view.days()));
  return RotationText::tr("Over the %1 these do not hold: %2.")
      .arg(daysText(view.days()), missed.join(QStringLiteral(", ")));
}

QString daysSentence(const RotationView& view) {
  int missing = 0;
  for (int day = 0; day < view.days(); ++day) missing += zonesMissed(view, day) > 0 ? 1 : 0;
  if (missing == 0) return RotationText::tr("Each day holds its own, wider zones.");
  if (missing == 1)
    return RotationText::tr("One day lies outside its own, wider zones: choose it to see how.");
  return RotationText::tr("%1 days lie outside their own, wider zones: choose one to see how.").arg(missing);
}

const diet::TargetBalance* lineOf(const diet::Balance& balance, const std::string& id) {
  const auto line = std::ranges::find(balance.targets, id, &diet::TargetBalance::id);
  return line == balance.targets.end() ? nullptr : &*line;
}

QString madeUpText(const RotationView& view, const std::string& id) {
  const diet::TargetBalance* period = lineOf(view.standing.period, id);
  if (period == nullptr || period->state == diet::TargetState::Unknown) return {};
  if (period->shortfall > diet::kNoShortfall)
    return RotationText::tr("The %1 together do not make it up.").arg(daysText(view.days()));
  return RotationText::tr("The %1 together make it up.").arg(daysText(view.days()));
}

}  // namespace

QString longDay(quantity::Date day) {
  return dateIn(RotationText::tr("dddd d MMMM", "a day and its weekday in full, as Qt writes formats"), day);
}

QString periodText(quantity::Date from, quantity::Date until) {
  const bool sameYear = from.year() == until.year();
  const QString first =
      sameYear ? dateIn(RotationText::tr("d MMM", "a day without its year, as Qt writes formats"), from)
               : dateText(from);
  return RotationText::tr("%1 to %2").arg(first, dateText(until));
}

QStringList rotationSentences(const RotationView& view) {
  QStringList sentences{periodSentence(view)};
  if (const QString open = openText(view.kept().period); !open.isEmpty()) sentences << open;
  sentences << daysSentence(view);
  if (view.kept().wishes.value > diet::kNoShortfall)
    sentences << RotationText::tr("Variety that was wished for, or stock to use up, lacks by %1.")
                     .arg(measured(view.kept().wishes.value));
  return sentences;
}

QString madeText(const RotationView& view) {
  const QDateTime at =
      QDateTime::fromString(QString::fromStdString(view.kept().at), Qt::ISODate).toLocalTime();
  const QString when = QLocale().toString(at, momentFormat());
  const QString who = QString::fromStdString(view.kept().who);
  QString text = who.isEmpty() ? RotationText::tr("planned on %1").arg(when)
                               : RotationText::tr("planned by %1, %2").arg(who, when);
  const auto over = static_cast<int>(view.problem().rules.fed.size());
  if (over > 0) {
    text += QStringLiteral(" · ");
    text += (view.kept().asEaten ? RotationText::tr("%1 fed, counted as eaten")
                                 : RotationText::tr("%1 fed, counted as offered"))
                .arg(daysText(over));
  }
  return text;
}

int zonesMissed(const RotationView& view, int day) {
  const auto& targets = view.standing.days.at(static_cast<std::size_t>(day)).targets;
  return static_cast<int>(std::ranges::count_if(
      targets, [](const diet::TargetBalance& line) { return line.shortfall > diet::kNoShortfall; }));
}

QStringList daySentences(const RotationView& view, int day) {
  QStringList sentences;
  const diet::BalanceProblem daily = diet::zonedProblem(view.problem().base, view.problem().rules.daily);
  for (const diet::TargetBalance& line : view.standing.days.at(static_cast<std::size_t>(day)).targets) {
    if (line.shortfall <= diet::kNoShortfall) continue;
    const QString missed = RotationText::tr("%1 is %2 by %3 of the day's zone (%4).")
                               .arg(rungName(daily, refOf(line)), wordOf(markOf(line.state)),
                                    percent(line.shortfall), boundsText(daily, refOf(line)));
    const QString madeUp = madeUpText(view, line.id);
    sentences << (madeUp.isEmpty() ? missed : missed + QLatin1Char(' ') + madeUp);
  }
  if (sentences.isEmpty()) sentences << RotationText::tr("Every target is within the day's own, wider zone.");
  return sentences;
}

QString noPlanText(const diet::RotationPlan& plan) {
  const QString reason = QString::fromStdString(plan.reason);
  switch (plan.status) {
    case diet::RotationStatus::Impossible:
      if (plan.reason == "hard rules")
        return RotationText::tr(
            "No plan keeps all hard rules at once: free a locked cell, or let a rule be wider. Nothing was "
            "changed.");
      return RotationText::tr("No plan keeps this rule: %1. Nothing was changed.").arg(reason);
    case diet::RotationStatus::Stopped:
      return RotationText::tr(
          "No plan was found in the time given. Nothing was changed; try again, or let a "
          "rule be wider.");
    default:
      return RotationText::tr("Nothing was planned (%1).").arg(reason);
  }
}

}  // namespace tarebowl::ui
