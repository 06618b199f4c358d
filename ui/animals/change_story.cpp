// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/change_story.h"

#include "ui/animals/animal_text.h"
#include "ui/shared/days.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStringList>

#include <map>
#include <set>
#include <utility>

namespace tarebowl::ui {
namespace {

struct Story {
  Q_DECLARE_TR_FUNCTIONS(Story)
};

QJsonObject stateOf(const std::optional<std::string>& json) {
  return json ? QJsonDocument::fromJson(QByteArray::fromStdString(*json)).object() : QJsonObject();
}

/// Of what it is now, or was where it was taken away.
QJsonObject lastState(const store::Change& change) {
  return stateOf(change.after ? change.after : change.before);
}

QString word(const QJsonObject& state, const char* key) {
  return state.value(QLatin1String(key)).toString();
}

QString dayOf(const QJsonObject& state, const char* key) {
  const auto date = quantity::parseDate(word(state, key).toStdString());
  return date ? dateText(*date) : QStringLiteral("?");
}

QString subjectName(const QJsonObject& state) {
  const QString individual = word(state, "individual");
  return individual.isEmpty() ? word(state, "group_code") : individual;
}

/// What the thing is called in a sentence.
QString nameOf(const store::Change& change, const QJsonObject& state) {
  if (change.subject == "mass")
    return Story::tr("mass of %1 on %2: %3")
        .arg(subjectName(state), dayOf(state, "on_day"),
             massText(quantity::Kilograms(state.value(QLatin1String("mass_kg")).toDouble())));
  if (change.subject == "condition")
    return Story::tr("condition of %1 on %2: %3")
        .arg(subjectName(state), dayOf(state, "on_day"),
             QString::number(state.value(QLatin1String("score")).toDouble()));
  if (change.subject == "membership")
    return Story::tr("%1 in %2 from %3")
        .arg(subjectName(state), word(state, "group_code"), dayOf(state, "from_day"));
  if (change.subject == "target profile")
    return Story::tr("profile %1, version %2")
        .arg(word(state, "name"))
        .arg(state.value(QLatin1String("version")).toInt());
  if (change.subject == "energy plan") return Story::tr("energy plan from %1").arg(dayOf(state, "from_day"));
  const QString name = word(state, "name");
  return name.isEmpty() ? word(state, "code") : name;
}

bool concernsCode(const QJsonObject& state, const char* key, const std::string& code) {
  return word(state, key).toStdString() == code;
}

bool isAboutGroup(const store::Change& change, const AnimalPage& page, const QJsonObject& state) {
  const animal::Group& group = page.group->record;
  if (change.subject == "group") return change.subjectId == static_cast<std::int64_t>(page.group->id);
  if (change.subject == "target profile") return concernsCode(state, "code", group.profile);
  if (concernsCode(state, "group_code", group.code)) return true;
  if (change.subject != "mass" && change.subject != "condition" && change.subject != "individual")
    return false;
  for (const MeasuredSeries& series : page.series)
    if (!series.ofGroup && (concernsCode(state, "individual", series.code) ||
                            (change.subject == "individual" && concernsCode(state, "code", series.code))))
      return true;
  return false;
}

/// Names of the columns, as a person says them.
QString columnWord(const QString& column) {
  static const std::map<QString, const char*> kWords{
      {QStringLiteral("least"), QT_TRANSLATE_NOOP("Story", "minimum")},
      {QStringLiteral("most"), QT_TRANSLATE_NOOP("Story", "maximum")},
      {QStringLiteral("mass_kg"), QT_TRANSLATE_NOOP("Story", "mass, kg")},
      {QStringLiteral("until_day"), QT_TRANSLATE_NOOP("Story", "until")},
      {QStringLiteral("from_day"), QT_TRANSLATE_NOOP("Story", "from")},
      {QStringLiteral("excluded"), QT_TRANSLATE_NOOP("Story", "left out")},
      {QStringLiteral("left_on"), QT_TRANSLATE_NOOP("Story", "left")},
      {QStringLiteral("profile_step"), QT_TRANSLATE_NOOP("Story", "state")},
      {QStringLiteral("why_model"), QT_TRANSLATE_NOOP("Story", "why the model stands in")}};
  const auto found = kWords.find(column);
  if (found != kWords.end()) return Story::tr(found->second);
  return QString(column).replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString shown(const QJsonValue& value) {
  if (value.isUndefined() || value.isNull()) return Story::tr("nothing");
  if (value.isArray() && value.toArray().isEmpty()) return Story::tr("nothing");
  if (value.isArray()) return Story::tr("%1 entries").arg(value.toArray().size());
  if (value.isObject())
    return QString::fromUtf8(QJsonDocument(value.toObject()).toJson(QJsonDocument::Compact));
  if (value.isBool()) return value.toBool() ? Story::tr("yes") : Story::tr("no");
  const QString text = value.toVariant().toString();
  return text.isEmpty() ? Story::tr("nothing") : text;
}

QString ruleOf(const QJsonObject& entry) {
  const QString rule = word(entry, "rule");
  return rule.isEmpty() ? word(entry, "words") : rule;
}

void addDifferences(QStringList& lines, const QString& of, const QJsonObject& before,
                    const QJsonObject& after);

/// Lists of rules: each by its own name.
void addListDifferences(QStringList& lines, const QString& list, const QJsonArray& before,
                        const QJsonArray& after) {
  std::map<QString, std::pair<QJsonObject, QJsonObject>> rules;
  for (const QJsonValue& entry : before) rules[ruleOf(entry.toObject())].first = entry.toObject();
  for (const QJsonValue& entry : after) rules[ruleOf(entry.toObject())].second = entry.toObject();
  if (rules.contains(QString())) {
    lines << Story::tr("%1: %2 instead of %3").arg(columnWord(list), shown(after), shown(before));
    return;
  }
  for (const auto& [rule, states] : rules) {
    if (states.first == states.second) continue;
    if (states.first.isEmpty())
      lines << Story::tr("%1: added").arg(rule);
    else if (states.second.isEmpty())
      lines << Story::tr("%1: taken away").arg(rule);
    else
      addDifferences(lines, rule + QStringLiteral(", "), states.first, states.second);
  }
}

void addDifferences(QStringList& lines, const QString& of, const QJsonObject& before,
                    const QJsonObject& after) {
  std::set<QString> keys;
  for (const QString& key : before.keys()) keys.insert(key);
  for (const QString& key : after.keys()) keys.insert(key);
  for (const QString& key : keys) {
    const QJsonValue was = before[key];
    const QJsonValue is = after[key];
    if (was == is) continue;
    if (was.isArray() && is.isArray())
      addListDifferences(lines, key, was.toArray(), is.toArray());
    else
      lines << Story::tr("%1%2: %3 instead of %4").arg(of, columnWord(key), shown(is), shown(was));
  }
}

}  // namespace

bool isAbout(const store::Change& change, const AnimalPage& page) {
  const QJsonObject state = lastState(change);
  if (page.group) return isAboutGroup(change, page, state);
  if (page.individual) {
    const std::string& code = page.individual->record.code;
    if (change.subject == "individual")
      return change.subjectId == static_cast<std::int64_t>(page.individual->id);
    return concernsCode(state, "individual", code);
  }
  return change.subject == "species" && change.subjectId == static_cast<std::int64_t>(page.species.id);
}

QString storyOf(const store::Change& change) {
  const QJsonObject state = lastState(change);
  const QString verb = QString::fromStdString(change.verb);
  // A reading that was written down says so itself.
  QString story = verb == QLatin1String("add mass") || verb == QLatin1String("add condition")
                      ? nameOf(change, state)
                      : Story::tr("%1 · %2").arg(verb, nameOf(change, state));
  if (!change.before || !change.after) return story;
  QStringList lines{story};
  addDifferences(lines, {}, stateOf(change.before), stateOf(change.after));
  return lines.join(QLatin1Char('\n'));
}

}  // namespace tarebowl::ui
