// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"

#include "core/exchange/food_stream.h"
#include "core/exchange/problem_json.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace tarebowl::exchange {

namespace {

Remark saidTwiceOf(const ImportedFood& food, std::size_t place) {
  if (place >= food.values.size()) {
    const ImportedOther& other = food.others.at(place - food.values.size());
    return {.line = other.line, .column = other.column, .title = other.name, .found = food.name};
  }
  const ImportedValue& value = food.values[place];
  return {.line = value.line,
          .column = value.column,
          .title = food::describe(value.nutrient).tagname,
          .found = food.name};
}

void count(ImportPlan& plan, const ImportedFood& food, FoodOutcome outcome, const ImportOptions& options) {
  ++plan.foods.at(static_cast<std::size_t>(outcome.change));
  plan.valuesNew += outcome.valuesNew;
  plan.valuesChanged += outcome.valuesChanged;
  plan.valuesUnchanged += outcome.valuesUnchanged;
  plan.valuesOther += food.others.size();
  RemarkGroup& twice = plan.remarks.at(static_cast<std::size_t>(ImportIssue::RepeatedValue));
  twice.count += outcome.saidTwice.size();
  for (const std::size_t place : outcome.saidTwice) {
    const Remark remark = saidTwiceOf(food, place);
    if (options.onRemark) options.onRemark(ImportIssue::RepeatedValue, remark);
    if (twice.first.size() < options.firstOfEachKind) twice.first.push_back(remark);
  }
  const bool keep = plan.firstFoods.size() < options.firstOfEachKind;
  if (!keep && !options.onFood) return;
  PlannedFood planned{food.line, food.code, food.name, food.values.size() + food.others.size(),
                      std::move(outcome)};
  if (options.onFood) options.onFood(planned);
  if (keep) plan.firstFoods.push_back(std::move(planned));
}

std::string expectationOf(ImportIssue issue, const Remark& remark) {
  switch (issue) {
    case ImportIssue::BadNumber:
      return std::string(expectationOf(remark.fault));
    case ImportIssue::RaggedRow:
      return fmt::format("{} cells as in the header, found {}", remark.title, remark.found);
    case ImportIssue::NoFood:
      return "the name or code of a food";
    case ImportIssue::RepeatedFood:
      return fmt::format("one record of {}, found another on line {}", shownText(remark.found),
                         remark.earlierLine);
    case ImportIssue::RepeatedValue:
      if (remark.earlierLine == 0) return "one value for a nutrient of a food, found a second";
      return fmt::format("one value, found another on line {}", remark.earlierLine);
    case ImportIssue::UnknownUnit:
      return "a unit such as mg, g/kg or % dry matter";
    case ImportIssue::UnitDoesNotFit:
      return "a unit that this nutrient has";
    case ImportIssue::MoreThanFood:
      return "at most 105 g in 100 g (is the unit right?)";
    case ImportIssue::BadWord:
      return "a nutrient, a qualifier, a basis or a whole number of samples";
    case ImportIssue::BadName:
      return "a name of at most 500 characters and no formula";
    case ImportIssue::Unlisted:
      return "a code that the list of foods has";
    default:
      return "another table";
  }
}

/// Those whose sentence already says what was found.
bool saysWhatWasFound(ImportIssue issue) {
  return issue == ImportIssue::RaggedRow || issue == ImportIssue::RepeatedFood ||
         issue == ImportIssue::RepeatedValue;
}

}  // namespace

bool ImportPlan::isRefused() const {
  for (std::size_t issue = 0; issue <= static_cast<std::size_t>(kLastRefusal); ++issue)
    if (remarks.at(issue).count > 0) return true;
  return false;
}

bool ImportPlan::mayBeWritten() const {
  return !stopped && !isRefused() && valuesRead() > 0;
}

ImportPlan importTable(const TableInput& table, const TableMapping& mapping, ImportSink& sink,
                       const ImportOptions& options) {
  if (!mapping.decimalMark)
    throw FormatError(table.name, "", "a mapping that says whether the decimal mark is a point or a comma");
  ImportPlan plan;
  FoodStream stream(table, mapping, plan, options);
  ImportedFood food;
  while (stream.next(food)) count(plan, food, sink.put(food), options);
  if (options.progress && !plan.stopped) options.progress(1.0);
  return plan;
}

void throwFirstRefusal(const ImportPlan& plan, const std::string& name) {
  const Remark* first = nullptr;
  auto kind = ImportIssue::BadNumber;
  for (std::size_t issue = 0; issue <= static_cast<std::size_t>(kLastRefusal); ++issue) {
    const RemarkGroup& group = plan.remarks.at(issue);
    if (group.first.empty() || (first != nullptr && group.first.front().line >= first->line)) continue;
    first = &group.first.front();
    kind = static_cast<ImportIssue>(issue);
  }
  if (first == nullptr) throw FormatError(name, "", "a table with values of foods, found none");
  std::string expected = expectationOf(kind, *first);
  if (!saysWhatWasFound(kind)) expected += ", found " + shownText(first->found);
  const bool titled = kind != ImportIssue::RaggedRow;
  throw FormatError(
      name, placeText(first->line, std::max<std::size_t>(first->column, 1), titled ? first->title : ""),
      expected);
}

}  // namespace tarebowl::exchange
