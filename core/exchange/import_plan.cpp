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

using Consumer = std::function<FoodOutcome(const ImportedFood&)>;

void count(ImportPlan& plan, const ImportedFood& food, const FoodOutcome& outcome, std::size_t kept) {
  ++plan.foods.at(static_cast<std::size_t>(outcome.change));
  plan.valuesNew += outcome.valuesNew;
  plan.valuesChanged += outcome.valuesChanged;
  plan.valuesUnchanged += outcome.valuesUnchanged;
  if (plan.firstFoods.size() < kept)
    plan.firstFoods.push_back({food.line, food.code, food.name, food.values.size(), outcome});
}

ImportPlan read(const TableInput& table, const TableMapping& mapping, const Consumer& consume,
                const ImportOptions& options, bool foodsReturn) {
  if (!mapping.decimalMark)
    throw FormatError(table.name, "", "a mapping that says whether the decimal mark is a point or a comma");
  ImportPlan plan;
  plan.foodsReturn = foodsReturn;
  FoodStream stream(table, mapping, plan, options.firstOfEachKind, foodsReturn);
  constexpr std::size_t kBetweenReports = 64;
  ImportedFood food;
  for (std::size_t i = 0; stream.next(food); ++i) {
    if (options.stop.stop_requested()) {
      plan.stopped = true;
      return plan;
    }
    if (options.progress && i % kBetweenReports == 0) options.progress(stream.progress());
    count(plan, food, consume(food), options.firstOfEachKind);
  }
  if (options.progress) options.progress(1.0);
  return plan;
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
  return issue == ImportIssue::RaggedRow || issue == ImportIssue::RepeatedFood;
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

ImportPlan planImport(const TableInput& table, const TableMapping& mapping, ImportSink& sink,
                      const ImportOptions& options) {
  const Consumer weigh = [&](const ImportedFood& food) { return sink.weigh(food); };
  try {
    return read(table, mapping, weigh, options, false);
  } catch (const FoodStream::FoodReturns&) {
    // Only now is it worth the memory to keep every value's place.
    return read(table, mapping, weigh, options, true);
  }
}

ImportPlan runImport(const TableInput& table, const TableMapping& mapping, const ImportPlan& plan,
                     ImportSink& sink, const ImportOptions& options) {
  const Consumer put = [&](const ImportedFood& food) { return sink.put(food); };
  try {
    return read(table, mapping, put, options, plan.foodsReturn);
  } catch (const FoodStream::FoodReturns&) {
    throw FormatError(table.name, "", "the table that was planned, found another");
  }
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
