// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/conflict_text.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStringList>

#include <set>

namespace tarebowl::ui {
namespace {

struct Conflict {
  Q_DECLARE_TR_FUNCTIONS(Conflict)
};

QString shown(const QJsonValue& value) {
  if (value.isUndefined() || value.isNull()) return Conflict::tr("nothing");
  if (value.isObject())
    return QString::fromUtf8(QJsonDocument(value.toObject()).toJson(QJsonDocument::Compact));
  if (value.isArray())
    return QString::fromUtf8(QJsonDocument(value.toArray()).toJson(QJsonDocument::Compact));
  return value.toVariant().toString();
}

void addDifferences(QStringList& lines, const QString& prefix, const QJsonObject& mine,
                    const QJsonObject& theirs) {
  std::set<QString> keys;
  for (const QString& key : mine.keys()) keys.insert(key);
  for (const QString& key : theirs.keys()) keys.insert(key);
  for (const QString& key : keys) {
    const QJsonValue left = mine[key];
    const QJsonValue right = theirs[key];
    if (left == right) continue;
    const QString name = prefix + QString(key).replace(QLatin1Char('_'), QLatin1Char(' '));
    if (left.isObject() && right.isObject())
      addDifferences(lines, name + QStringLiteral(" "), left.toObject(), right.toObject());
    else
      lines << Conflict::tr("%1: yours %2, now there %3").arg(name, shown(left), shown(right));
  }
}

}  // namespace

QString conflictText(const QString& mine, const QString& theirs) {
  if (theirs.isEmpty()) return Conflict::tr("It was removed.");
  QStringList lines;
  addDifferences(lines, {}, QJsonDocument::fromJson(mine.toUtf8()).object(),
                 QJsonDocument::fromJson(theirs.toUtf8()).object());
  return lines.join(QLatin1Char('\n'));
}

QString refusalText(const Refusal& refusal) {
  if (refusal.mine.isEmpty()) return refusal.why;
  return refusal.why + QLatin1Char('\n') + conflictText(refusal.mine, refusal.theirs);
}

}  // namespace tarebowl::ui
