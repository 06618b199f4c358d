// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/health_text.h"

#include "core/exchange/health_sentences.h"
#include "core/exchange/uncertain_text.h"
#include "core/exchange/wording.h"
#include "core/health/health_words.h"
#include "ui/shared/days.h"
#include "ui/shared/theme.h"

#include <QCoreApplication>
#include <QStringList>

namespace tarebowl::ui {
namespace {

struct Health {
  Q_DECLARE_TR_FUNCTIONS(Health)
};

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QString number(std::optional<double> value) {
  return QString::fromStdString(exchange::shortNumber(value));
}

QString plusMinus(std::optional<double> value, double sd) {
  return QString::fromStdString(exchange::uncertainText(value, sd));
}

QString whose(const health::Observation& observation) {
  return observation.individual ? QString::fromStdString(*observation.individual) : Health::tr("the group");
}

/// "ug" is how files write it.
QString shown(std::string_view unit) {
  return text(unit).replace(QStringLiteral("ug"), QStringLiteral("µg"));
}

/// What the row is too narrow for.
QString tipOf(const health::Observation& observation) {
  QStringList lines;
  if (const auto& score = observation.faeces)
    lines << Health::tr("%1 goes from %2 to %3, formed is %4, liquid is %5")
                 .arg(QString::fromStdString(score->scale), number(score->lowest), number(score->highest),
                      number(score->ideal),
                      number(score->softer == health::Softer::Higher ? score->highest : score->lowest));
  if (!observation.note.empty()) lines << QString::fromStdString(observation.note);
  if (!observation.who.empty())
    lines << Health::tr("Written down by %1").arg(QString::fromStdString(observation.who));
  if (health::isSign(observation)) lines << Health::tr("A sign: Enter looks back from it");
  return lines.join(QLatin1Char('\n'));
}

QColor inkOf(diet::TargetState state) {
  const Theme& theme = currentTheme();
  switch (state) {
    case diet::TargetState::Met:
      return theme.met;
    case diet::TargetState::AtMin:
    case diet::TargetState::AtMax:
      return theme.atLimit;
    case diet::TargetState::Short:
      return theme.lacking;
    case diet::TargetState::Over:
      return theme.over;
    case diet::TargetState::Unknown:
      break;
  }
  return theme.unknown;
}

}  // namespace

QString kindText(health::SignKind kind) {
  switch (kind) {
    case health::SignKind::Faeces:
      return Health::tr("Faeces");
    case health::SignKind::Appetite:
      return Health::tr("Appetite");
    case health::SignKind::Vomiting:
      return Health::tr("Vomiting");
    case health::SignKind::Limping:
      return Health::tr("Limping");
    case health::SignKind::Fracture:
      return Health::tr("Fracture");
    case health::SignKind::Blood:
      return Health::tr("Blood");
    case health::SignKind::Treatment:
      return Health::tr("Treatment");
    case health::SignKind::Other:
      return Health::tr("Other");
  }
  return {};
}

QString whatWasSeen(const health::Observation& observation) {
  QStringList parts;
  if (const auto& score = observation.faeces)
    parts << Health::tr("%1 on %2").arg(number(score->score), QString::fromStdString(score->scale));
  if (observation.appetite) parts << text(animal::symbolOf(*observation.appetite));
  for (const health::BloodValue& value : observation.blood)
    parts << QStringLiteral("%1 %2 %3")
                 .arg(text(animal::symbolOf(value.analyte)), number(value.value),
                      text(health::symbolOf(value.unit)));
  if (!observation.note.empty()) parts << QString::fromStdString(observation.note);
  for (const health::Attachment& attachment : observation.attachments)
    parts << QString::fromStdString(attachment.path);
  return parts.join(QStringLiteral(" · "));
}

QString timelineText(const health::Observation& observation) {
  const QString what = whatWasSeen(observation);
  return Health::tr("%1, %2: %3%4")
      .arg(dateText(observation.on), whose(observation), kindText(observation.kind),
           what.isEmpty() ? QString() : QStringLiteral(", ") + what);
}

std::vector<RowsModel::Row> observationRows(const HealthView& view) {
  std::vector<RowsModel::Row> rows;
  const auto& seen = view.period.observations;
  for (auto one = seen.rbegin(); one != seen.rend(); ++one) {
    const health::Observation& record = one->record;
    const bool sign = health::isSign(record);
    rows.push_back({{(sign ? QStringLiteral("▲ ") : QStringLiteral("  ")) + kindText(record.kind),
                     dateText(record.on), whatWasSeen(record), whose(record)},
                    tipOf(record),
                    sign ? currentTheme().lacking : QColor()});
  }
  return rows;
}

std::vector<RowsModel::Row> zoneRows(const HealthView& view) {
  std::vector<RowsModel::Row> rows;
  const health::CalciumReview& review = view.page.review;
  for (std::size_t i = 0; i < review.zones.size(); ++i) {
    const health::CalciumZone& zone = review.zones[i];
    const diet::TargetBalance& known = zone.offered.id.empty() ? zone.eaten : zone.offered;
    const bool after = review.advice && review.advice->dose.grams && i < review.advice->after.size();
    rows.push_back(
        {{text(exchange::stateText(zone.eaten.state)), QString::fromStdString(exchange::zoneName(zone)),
          QString::fromStdString(exchange::zoneText(known.min, known.max)), number(zone.offered.value),
          plusMinus(zone.eaten.value, zone.eaten.sd),
          after ? number(review.advice->after[i].eaten.value) : QString(), shown(exchange::zoneUnit(zone))},
         QString::fromStdString(zone.origin.source),
         inkOf(zone.eaten.state)});
  }
  for (const health::Strand& strand : review.strands) {
    rows.push_back({{QString(), QString::fromStdString(food::describe(strand.nutrient).name), QString(),
                     number(strand.offered.perDay), plusMinus(strand.eaten.perDay, strand.eatenSd), QString(),
                     Health::tr("%1 a day and animal").arg(shown(exchange::symbolFor(strand.nutrient)))},
                    QString(),
                    QColor()});
  }
  rows.push_back({{QString(), Health::tr("Ca:P"), QString(), number(review.ratioOffered),
                   plusMinus(review.ratioEaten, review.ratioSd), QString(), QString()},
                  QString(),
                  QColor()});
  return rows;
}

std::vector<RowsModel::Row> linkRows(const exchange::LookBackPage& page) {
  std::vector<RowsModel::Row> rows;
  for (const health::FoodLink& link : page.lookBack.foods) {
    QString name = QString::fromStdString(page.subject.foodName(link.food));
    if (link.pointedOut) name = Health::tr("▲ stands out: %1").arg(name);
    if (link.newFood) name += Health::tr(" (new)");
    QStringList with;
    for (const std::string& other : link.alwaysWith)
      with << QString::fromStdString(page.subject.foodName(other));
    const bool any = link.days.comparable();
    rows.push_back(
        {{name, QStringLiteral("%1 / %2").arg(link.days.eatenSign).arg(link.days.eaten()),
          QStringLiteral("%1 / %2").arg(link.days.withoutSign).arg(link.days.without()),
          any ? QString::fromStdString(exchange::chanceText(link.test.twoSided))
              : Health::tr("nothing to compare"),
          any ? QString::fromStdString(exchange::chanceText(link.corrected)) : QString(),
          link.risk ? Health::tr("%1 (%2 … %3)%4")
                          .arg(number(link.risk->ratio), number(link.risk->low), number(link.risk->high),
                               link.risk->halfAdded ? Health::tr(" ½ added") : QString())
                    : QString()},
         with.isEmpty() ? QString()
                        : Health::tr("Always eaten together with %1: they cannot be told apart.")
                              .arg(with.join(QStringLiteral(", "))),
         link.pointedOut ? currentTheme().lacking : QColor()});
  }
  return rows;
}

QString lookBackText(const exchange::LookBackPage& page) {
  QStringList lines;
  lines << Health::tr("%1 of %2 on %3")
               .arg(kindText(page.kind), QString::fromStdString(page.subject.name),
                    dateText(page.lookBack.sign.day));
  lines << QString::fromStdString(exchange::comparedSentence(page));
  if (!page.lookBack.signHasIntake)
    lines << Health::tr("? No intake was recorded in the hours before this sign.");
  for (const health::Difference& difference : page.lookBack.differences)
    lines << QString::fromStdString(exchange::differenceSentence(difference, page.subject));
  lines << text(exchange::kAssociation);
  return lines.join(QLatin1Char('\n'));
}

QString reviewText(const HealthView& view) {
  const exchange::CalciumPage& page = view.page;
  QStringList lines;
  lines << QString::fromStdString(exchange::coverageSentence(page.review));
  lines << QString::fromStdString(exchange::doseSentence(page));
  for (const exchange::DietLine& diet : page.diets)
    if (!diet.diet.empty())
      lines << Health::tr("Fed by %1, version %2, from %3.")
                   .arg(QString::fromStdString(diet.diet))
                   .arg(diet.version)
                   .arg(dateText(diet.day));
  lines << QString::fromStdString(exchange::oxalateSentence(page.review.oxalate));
  for (const std::string& caution : exchange::cautionsOf(page)) lines << QString::fromStdString(caution);
  return lines.join(QLatin1Char('\n'));
}

}  // namespace tarebowl::ui
