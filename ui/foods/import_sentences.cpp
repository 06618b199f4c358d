// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/import_sentences.h"

#include "ui/shared/decimal_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace tarebowl::ui {
namespace {

using exchange::FoodChange;
using exchange::ImportIssue;
using exchange::NumberFault;

struct Import {
  Q_DECLARE_TR_FUNCTIONS(Import)
};

QString count(std::size_t number) {
  return countText(static_cast<std::int64_t>(number));
}

/// many: "%1 values".
QString counted(std::size_t number, const QString& one, const QString& many) {
  return number == 1 ? one : many.arg(count(number));
}

QString values(std::size_t number) {
  return counted(number, Import::tr("1 value"), Import::tr("%1 values"));
}

QString newFoods(std::size_t number) {
  return counted(number, Import::tr("1 food new"), Import::tr("%1 foods new"));
}

QString newValues(std::size_t number) {
  return counted(number, Import::tr("1 value new"), Import::tr("%1 values new"));
}

QString changedValues(std::size_t number) {
  return counted(number, Import::tr("1 value changed"), Import::tr("%1 values changed"));
}

QString text(const std::string& words) {
  return QString::fromStdString(words).simplified();
}

QString faultText(NumberFault fault, const QString& found) {
  switch (fault) {
    case NumberFault::NotANumber:
      return Import::tr("“%1” is no number").arg(found);
    case NumberFault::MisplacedGrouping:
      return Import::tr("“%1” does not group its thousands by three").arg(found);
    case NumberFault::Formula:
      return Import::tr("“%1” is a formula; what it was worked out to is not in the table").arg(found);
    case NumberFault::SpreadsheetError:
      return Import::tr("“%1” is a spreadsheet's error").arg(found);
    case NumberFault::Date:
      return Import::tr("“%1” is a date; a spreadsheet made one of a number").arg(found);
    case NumberFault::NotFinite:
      return Import::tr("“%1” is no finite number").arg(found);
    case NumberFault::Negative:
      return Import::tr("“%1” is below 0").arg(found);
  }
  return {};
}

QString repeatedText(ImportIssue issue, const exchange::Remark& remark, const QString& found) {
  const QString line = count(remark.earlierLine);
  if (issue == ImportIssue::RepeatedFood)
    return Import::tr("%1 stands on line %2 already, with a record of its own").arg(found, line);
  if (remark.earlierLine == 0)
    return Import::tr("a second value of %1 for %2").arg(text(remark.title), found);
  return Import::tr("“%1” is another value than on line %2").arg(found, line);
}

QString countsText(const exchange::ImportPlan& plan) {
  QStringList foods;
  const auto of = [&](FoodChange change) { return plan.foods.at(static_cast<std::size_t>(change)); };
  foods << newFoods(of(FoodChange::New));
  foods << Import::tr("%1 changed").arg(count(of(FoodChange::Changed)));
  foods << Import::tr("%1 unchanged").arg(count(of(FoodChange::Unchanged)));
  QStringList values;
  values << newValues(plan.valuesNew);
  values << Import::tr("%1 changed").arg(count(plan.valuesChanged));
  values << Import::tr("%1 unchanged").arg(count(plan.valuesUnchanged));
  if (plan.valuesOther > 0)
    values << Import::tr("%1 of these kept under the table's own name").arg(count(plan.valuesOther));
  QStringList parts{foods.join(QStringLiteral(", ")), values.join(QStringLiteral(", "))};
  if (const std::size_t leftOut = plan.valuesLeftOut(); leftOut > 0)
    parts << Import::tr("%1 left out").arg(count(leftOut));
  return parts.join(QStringLiteral("; "));
}

QString unknownText(const exchange::ImportPlan& plan) {
  const std::size_t unknown = plan.nothingKnown + plan.zerosUnknown;
  return unknown == 0 ? QString()
                      : counted(unknown, Import::tr(" 1 cell says that nothing is known, and stays unknown."),
                                Import::tr(" %1 cells say that nothing is known, and stay unknown."));
}

std::size_t refused(const exchange::ImportPlan& plan) {
  std::size_t lines = 0;
  for (std::size_t i = 0; i < plan.remarks.size(); ++i)
    if (refuses(static_cast<ImportIssue>(i))) lines += plan.remarks.at(i).count;
  return lines;
}

}  // namespace

QString outcomeText(const exchange::PlannedFood& food) {
  const exchange::FoodOutcome& outcome = food.outcome;
  if (outcome.change == FoodChange::New) return Import::tr("new: %1").arg(values(outcome.valuesNew));
  if (outcome.change == FoodChange::Unchanged)
    return Import::tr("as it was: %1").arg(values(outcome.valuesUnchanged));
  QStringList parts;
  if (outcome.valuesNew > 0) parts << newValues(outcome.valuesNew);
  if (outcome.valuesChanged > 0) parts << changedValues(outcome.valuesChanged);
  if (outcome.valuesUnchanged > 0) parts << Import::tr("%1 unchanged").arg(count(outcome.valuesUnchanged));
  return parts.join(QStringLiteral(", "));
}

QString placeText(const exchange::Remark& remark) {
  if (remark.column == 0) return Import::tr("whole line");
  const QString title = text(remark.title);
  const QString column = Import::tr("column %1").arg(count(remark.column));
  return title.isEmpty() ? column : QStringLiteral("%1 (%2)").arg(column, title);
}

QString reasonText(const exchange::PlannedRemark& planned) {
  const exchange::Remark& remark = planned.remark;
  const QString found = text(remark.found);
  switch (planned.issue) {
    case ImportIssue::BadNumber:
      return faultText(remark.fault, found);
    case ImportIssue::RaggedRow:
      return Import::tr("%1 cells, where the header has %2").arg(found, text(remark.title));
    case ImportIssue::NoFood:
      return Import::tr("neither name nor code of a food");
    case ImportIssue::RepeatedFood:
    case ImportIssue::RepeatedValue:
      return repeatedText(planned.issue, remark, found);
    case ImportIssue::UnknownUnit:
      return Import::tr("“%1” is no unit known here").arg(found);
    case ImportIssue::UnitDoesNotFit:
      return Import::tr("“%1”: this nutrient is not measured in the column's unit").arg(found);
    case ImportIssue::MoreThanFood:
      return Import::tr("“%1” would be more than 105 g in 100 g: is the unit right?").arg(found);
    case ImportIssue::BadWord:
      return Import::tr("“%1” is no nutrient, qualifier, basis or number of samples").arg(found);
    case ImportIssue::BadName:
      return Import::tr("“%1” is no name: a formula, or longer than 500 characters").arg(found);
    case ImportIssue::Unlisted:
      return Import::tr("the list of foods has no code “%1”").arg(found);
    case ImportIssue::UnknownNutrient:
      return Import::tr("left out: no nutrient is called “%1” here, and its unit is none known here")
          .arg(found);
    case ImportIssue::KeptByName:
      return Import::tr("kept under its own name: no nutrient is called “%1” here").arg(found);
    case ImportIssue::LeftOut:
      return Import::tr("left out as the mapping says: %1").arg(found);
    case ImportIssue::SaidTwice:
      return Import::tr("left out: the same value stands on line %1").arg(count(remark.earlierLine));
    case ImportIssue::NoValues:
      return Import::tr("left out: “%1” has no value").arg(found);
    case ImportIssue::ScatterUnread:
      return Import::tr("a standard error without n says no SD; the value is taken without it");
  }
  return {};
}

QString planText(const exchange::ImportPlan& plan) {
  if (const std::size_t lines = refused(plan); lines > 0)
    return counted(lines,
                   Import::tr("1 place is in the way; nothing is imported while it stands as it is. Change "
                              "the mapping, leave the column out, or mend the table and open it again."),
                   Import::tr("%1 places are in the way; nothing is imported while they stand as they are. "
                              "Change the mapping, leave the column out, or mend the table and open it "
                              "again."));
  if (plan.valuesRead() == 0) return Import::tr("There is no value of a food in it.");
  if (plan.valuesNew + plan.valuesChanged == 0)
    return counted(plan.valuesUnchanged,
                   Import::tr("Importing it changes nothing: its 1 value is here already."),
                   Import::tr("Importing it changes nothing: all of its %1 values are here already."));
  return Import::tr("This will happen: %1.").arg(countsText(plan)) + unknownText(plan);
}

QString doneText(const exchange::ImportPlan& plan) {
  return Import::tr("Imported: %1. Undo takes all of it back.").arg(countsText(plan));
}

}  // namespace tarebowl::ui
