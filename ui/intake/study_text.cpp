// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/study_text.h"

#include "ui/foods/sample_values_model.h"
#include "ui/intake/intake_text.h"
#include "ui/shared/days.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"
#include "ui/shared/nutrient_text.h"

#include <QCoreApplication>
#include <QStringList>

namespace tarebowl::ui {
namespace {

struct Study {
  Q_DECLARE_TR_FUNCTIONS(Study)
};

QString unitOf(const exchange::StudyPlanToWrite& plan) {
  return plan.nutrient ? unitText(food::describe(*plan.nutrient).unit) : Study::tr("g");
}

QString subjectOf(const exchange::StudyPlanToWrite& plan) {
  return plan.nutrient ? nutrientName(*plan.nutrient) : Study::tr("all food as fed");
}

QString foodsOf(const exchange::StudyPlanToWrite& plan, const std::vector<std::string>& foods) {
  QStringList names;
  for (const std::string& food : foods) {
    const auto known = plan.foodNames.find(food);
    names << QString::fromStdString(known == plan.foodNames.end() ? food : known->second);
  }
  return names.join(QStringLiteral(", "));
}

QString valueText(const intake::FaecesValue& value) {
  const auto& known = food::describe(value.nutrient);
  const QString amount =
      value.sd ? QStringLiteral("%1 ± %2").arg(stated(value.per100gDryMatter), stated(*value.sd))
               : stated(value.per100gDryMatter);
  return QStringLiteral("%1 %2 %3").arg(nutrientName(value.nutrient), amount, unitText(known.unit));
}

/// "Ca 1850 ± 90".
std::optional<intake::FaecesValue> readValue(const QString& text, QString& complaint) {
  const QString trimmed = text.simplified();
  const QStringList halves = trimmed.split(QStringLiteral("±"));
  const qsizetype gap = halves.front().trimmed().lastIndexOf(QLatin1Char(' '));
  const QString name = halves.front().trimmed().left(std::max<qsizetype>(gap, 0));
  const auto nutrient = nutrientCalled(name);
  const auto amount = readNumber(halves.front().trimmed().mid(gap + 1));
  const auto sd = halves.size() == 2 ? readNumber(halves[1].trimmed()) : std::nullopt;
  if (!nutrient)
    complaint =
        Study::tr("“%1”: no nutrient is called “%2”. Write a name and a number: Ca 1850.").arg(trimmed, name);
  else if (!amount || halves.size() > 2 || (halves.size() == 2 && !sd))
    complaint =
        Study::tr("“%1”: after the nutrient comes its number, and its scatter if it is known: Ca 1850 ± 90.")
            .arg(trimmed);
  if (!complaint.isEmpty()) return std::nullopt;
  return intake::FaecesValue{*nutrient, *amount, sd};
}

}  // namespace

DaySpan daysOfPlan(const exchange::StudyPlanToWrite& plan) {
  return {toQDate(plan.first), toQDate(plan.last())};
}

QString planHeading(const exchange::StudyPlanToWrite& plan) {
  const QString days = plan.plan.days == 1 ? Study::tr("1 day") : Study::tr("%1 days").arg(plan.plan.days);
  return QStringLiteral("%1, %2").arg(days, spanText(daysOfPlan(plan)));
}

QString planReason(const exchange::StudyPlanToWrite& plan) {
  const intake::DayVariation& seen = plan.plan.variation;
  const QString unit = unitOf(plan);
  QString text =
      Study::tr(
          "So that the mean of %1 is known to ± %2 %3 with %4 confidence. On %5 days from %6 to %7 it was "
          "%8 %3 per animal and day, and went up and down by %9 %3 (standard deviation).")
          .arg(subjectOf(plan), measured(plan.plan.precision.halfWidth), unit,
               percent(plan.plan.precision.confidence))
          .arg(seen.days)
          .arg(dateText(plan.learnedFrom), dateText(plan.learnedUntil), measured(seen.mean),
               measured(seen.sd));
  if (seen.lag1 > 0.0)
    text += Study::tr(" A day resembles the one before it, so that each tells less: %1 %2 is planned with.")
                .arg(measured(seen.sdForPlanning()), unit);
  return text;
}

QStringList planSteps(const exchange::StudyPlanToWrite& plan) {
  QStringList steps;
  steps << Study::tr("Sheets: print that of %1 for each day, and weigh every food into its bowl.")
               .arg(plan.section.empty() ? Study::tr("the section") : QString::fromStdString(plan.section));
  steps << Study::tr("Weigh back, food by food: %1.").arg(foodsOf(plan, plan.plan.foods));
  for (const intake::PanWanted& pan : plan.plan.pans)
    steps << Study::tr("A control pan each day in %1, any %2: one of %3.")
                 .arg(pan.place.empty() ? Study::tr("the same place") : QString::fromStdString(pan.place),
                      pan.foodClass.empty() ? Study::tr("food") : QString::fromStdString(pan.foodClass),
                      foodsOf(plan, pan.foods));
  steps << Study::tr("The last leftovers and pans come back on %1.")
               .arg(dateText(std::chrono::sys_days(plan.last()) + std::chrono::days(1)));
  return steps;
}

QString noPlanText(const transfer::NoStudyPlan& none) {
  using Why = transfer::NoStudyPlan::Why;
  switch (none.why) {
    case Why::NoGroup:
      return Study::tr("The group is no longer in the collection: choose another.");
    case Why::NoBowl:
      return Study::tr(
          "It had no bowl in the week before the first day: nobody knows what it is fed. Choose a first day "
          "that "
          "follows days which were weighed.");
    case Why::TooFewDays:
      return Study::tr(
                 "Of the eight weeks before, what it ate is known on %1 of the days: weigh back at least two "
                 "in full first.")
          .arg(none.daysKnown);
    case Why::NothingEaten:
      return Study::tr("It ate none of it in the eight weeks before: follow something else.");
    case Why::OutOfReach:
      break;
  }
  return Study::tr("More than ten years would be needed: ask for less precision.");
}

QString faecesText(const intake::FaecesCollected& faeces) {
  QString text = Study::tr("%1: %2 g fresh, %3 g DM in 100 g")
                     .arg(spanText({toQDate(faeces.from), toQDate(faeces.until)}),
                          stated(faeces.fresh.value()), stated(faeces.dryMatter));
  QStringList values;
  for (const intake::FaecesValue& value : faeces.values) values << valueText(value);
  if (!values.isEmpty()) text += Study::tr("; %1 per 100 g DM").arg(values.join(QStringLiteral(", ")));
  if (!faeces.source.empty()) text += QStringLiteral(" (%1)").arg(QString::fromStdString(faeces.source));
  return text;
}

QString faecesProblemText(intake::FaecesProblem problem) {
  using intake::FaecesProblem;
  switch (problem) {
    case FaecesProblem::DaysBackwards:
      return Study::tr("The last day lies before the first: turn them round.");
    case FaecesProblem::NothingWeighed:
      return Study::tr("Faeces that weigh nothing say nothing: type the grams as found.");
    case FaecesProblem::NoDryMatter:
      return Study::tr("Dry matter is more than 0 and at most 100 g in 100 g fresh.");
    case FaecesProblem::BadValue:
      return Study::tr("A content is 0 or more.");
    case FaecesProblem::TwiceTheSame:
      return Study::tr("A nutrient stands there twice: leave one of them out.");
    case FaecesProblem::Energy:
      break;
  }
  return Study::tr("Metabolizable energy is no property of faeces: leave energy out.");
}

ReadValues readFaecesValues(const QString& text) {
  ReadValues read;
  for (const QString& part : text.split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
    if (part.trimmed().isEmpty()) continue;
    const auto value = readValue(part, read.complaint);
    if (!value) return read;
    read.values.push_back(*value);
  }
  return read;
}

}  // namespace tarebowl::ui
