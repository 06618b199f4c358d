// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/waiting_text.h"

#include "ui/shared/date_text.h"
#include "ui/shared/days.h"
#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QStringList>

namespace tarebowl::ui {
namespace {

using intake::LeftoverKind;

struct Waiting {
  Q_DECLARE_TR_FUNCTIONS(Waiting)
};

/// "27 Nov 2026, 07:31", as the clock on the wall shows it.
QString timeText(const std::string& at) {
  const QDateTime time = QDateTime::fromString(QString::fromStdString(at), Qt::ISODate).toLocalTime();
  if (!time.isValid()) return QString::fromStdString(at);
  return Waiting::tr("%1, %2").arg(dateText(toDate(time.date())),
                                   time.time().toString(QStringLiteral("HH:mm")));
}

QString gramsText(const std::optional<quantity::Grams>& mass) {
  return mass ? Waiting::tr("%1 g").arg(stated(mass->value())) : QStringLiteral("?");
}

QString lossText(const store::NotedValue& value, const QString& lost) {
  if (value.grams) return Waiting::tr("%1 left, %2").arg(gramsText(value.grams), lost);
  return lost;
}

QString cutOffText(const OpenCollection& collection, int waiting) {
  QStringList said;
  said << (waiting > 0 ? Waiting::tr("Cut off from the server: %n entry(ies) wait.", nullptr, waiting)
                       : Waiting::tr("Cut off from the server."));
  if (collection.isOnCopy())
    said << Waiting::tr(
                "The kitchen goes on with this desk's copy of %1; all other rooms wait for the server.")
                .arg(timeText(collection.station()->copy()->takenAt));
  else
    said << Waiting::tr("This desk has no copy yet: all rooms wait for the server.");
  return said.join(QLatin1Char(' '));
}

}  // namespace

QString waitingText(const OpenCollection& collection) {
  const KitchenStation* const station = collection.station();
  const store::WaitingCount count = station != nullptr ? station->count() : store::WaitingCount{};
  QStringList said;
  if (collection.isCutOff())
    said << cutOffText(collection, static_cast<int>(count.waiting));
  else if (count.waiting > 0)
    said << Waiting::tr("%n entry(ies) wait for the server.", nullptr, static_cast<int>(count.waiting));
  if (count.conflicts > 0)
    said << Waiting::tr("Of %n entry(ies) the server has something else: choose what counts.", nullptr,
                        static_cast<int>(count.conflicts));
  if (station != nullptr && !station->problem().isEmpty()) said << station->problem();
  return said.join(QLatin1Char(' '));
}

QString valueText(const store::NotedValue& value) {
  if (!value.kind) return gramsText(value.grams);
  switch (*value.kind) {
    case LeftoverKind::Weighed:
      return Waiting::tr("%1 left").arg(gramsText(value.grams));
    case LeftoverKind::AllEaten:
      return Waiting::tr("all eaten");
    case LeftoverKind::NotWeighed:
      return Waiting::tr("not weighed");
    case LeftoverKind::Estimated:
      return Waiting::tr("about %1 left").arg(gramsText(value.grams));
    case LeftoverKind::Spilled:
      return lossText(value, Waiting::tr("%1 spilled").arg(gramsText(value.lost)));
    case LeftoverKind::Stolen:
      return lossText(value, Waiting::tr("%1 stolen").arg(gramsText(value.lost)));
  }
  return {};
}

QString theirsText(const store::WaitingEntry& entry) {
  if (entry.state == store::EntryState::Waiting) return {};
  if (!entry.theirs) return Waiting::tr("nothing");
  const QString who = QString::fromStdString(entry.theirs->by.who);
  const QString value = valueText(entry.theirs->value);
  return who.isEmpty() ? value : QStringLiteral("%1, %2").arg(value, who);
}

QString bowlText(const store::WaitingEntry& entry) {
  if (!entry.entry) return Waiting::tr("cannot be read any more");
  return QStringLiteral("%1, %2").arg(QString::fromStdString(entry.entry->bowl.label),
                                      dateText(entry.entry->bowl.key.day));
}

QString notedText(const store::WaitingEntry& entry) {
  if (!entry.entry) return {};
  const QString food = QString::fromStdString(entry.entry->food());
  switch (entry.entry->noted) {
    case store::Noted::Weight:
      return Waiting::tr("%1, weighed in").arg(food);
    case store::Noted::Leftover:
      return Waiting::tr("%1, leftover").arg(food);
    case store::Noted::Remainder:
      return Waiting::tr("left of all together");
  }
  return {};
}

QString aboutText(const store::WaitingEntry& entry) {
  if (entry.state == store::EntryState::Waiting)
    return Waiting::tr("It waits, and is sent in its turn when the server answers.");
  const QString why = QString::fromStdString(entry.why);
  if (!entry.theirs)
    return Waiting::tr(
               "The server did not take it: %1. Yours writes it there if it can be; theirs sets it aside "
               "on this desk.")
        .arg(why);
  return Waiting::tr(
             "The server has something else: %1. If yours counts, it corrects what is there; if theirs "
             "counts, yours is kept beside it.")
      .arg(why);
}

}  // namespace tarebowl::ui
