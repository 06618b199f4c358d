// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/value_reader.h"

#include "core/exchange/plain_text.h"
#include "core/exchange/problem_words.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <utility>

namespace tarebowl::exchange {

namespace {

/// Grams in 100 g; tables print 100.01 g of fat in an oil. As much as a problem file allows.
constexpr double kWholeFood = 105.0;
constexpr int kMostDeterminations = 1'000'000'000;

std::optional<food::Qualifier> qualifierIn(std::string_view text) {
  const std::string folded = foldedText(trimmed(text));
  if (folded == "<loq") return food::Qualifier::BelowQuantification;
  if (folded == "tr" || folded == "trace") return food::Qualifier::Trace;
  if (folded == "≥" || folded == "min") return food::Qualifier::AtLeast;
  if (folded == "≤" || folded == "max") return food::Qualifier::AtMost;
  return parseQualifier(folded);
}

}  // namespace

ValueReader::ValueReader(const TableMapping& mapping, ImportPlan& plan, const ImportOptions& options)
    : mapping_(mapping),
      mark_(mapping.decimalMark.value_or(DecimalMark::Point)),
      plan_(plan),
      options_(options) {}

void ValueReader::remark(ImportIssue issue, Remark remark) {
  RemarkGroup& group = plan_.remarks.at(static_cast<std::size_t>(issue));
  ++group.count;
  if (options_.onRemark) options_.onRemark(issue, remark);
  if (group.first.size() >= options_.firstOfEachKind) return;
  // What becomes of a nutrient becomes of it in every food: it is named once.
  const bool byName = issue == ImportIssue::UnknownNutrient || issue == ImportIssue::KeptByName ||
                      issue == ImportIssue::LeftOut;
  const auto same = [&](const Remark& it) { return it.found == remark.found; };
  if (byName && std::ranges::any_of(group.first, same)) return;
  group.first.push_back(std::move(remark));
}

void ValueReader::remark(ImportIssue issue, const TableRow& row, std::size_t column, std::string_view title) {
  remark(issue, {.line = row.line(),
                 .column = column + 1,
                 .title = std::string(title),
                 .found = std::string(row[column])});
}

void ValueReader::read(const TableRow& row, const Places& places, const ValueReading& reading,
                       ImportedFood& food) {
  if (auto stated = readStated(row, places, reading))
    food.values.push_back({reading.nutrient, std::move(*stated), row.line(), places.value + 1});
}

std::optional<food::StatedValue> ValueReader::readStated(const TableRow& row, const Places& places,
                                                         const ValueReading& reading) {
  const NumberReading cell = readNumber(row[places.value], mark_);
  if (std::holds_alternative<NothingKnown>(cell)) {
    ++plan_.nothingKnown;
    return std::nullopt;
  }
  Remark here{.line = row.line(), .column = places.value + 1, .title = places.title};
  if (const auto* fault = std::get_if<NumberFault>(&cell)) {
    here.found = row[places.value];
    here.fault = *fault;
    remark(ImportIssue::BadNumber, std::move(here));
    return std::nullopt;
  }
  const auto& number = std::get<NumberText>(cell);
  if (mapping_.zeroIsUnknown && number.amount == 0.0 && number.qualifier == food::Qualifier::Equal) {
    ++plan_.zerosUnknown;
    return std::nullopt;
  }
  if (!reading.fits || number.amount * reading.toGramsPer100 > kWholeFood) {
    const auto issue = reading.fits ? ImportIssue::MoreThanFood : ImportIssue::UnitDoesNotFit;
    remark(issue, row, places.value, places.title);
    return std::nullopt;
  }
  food::StatedValue stated{.amount = number.amount * reading.unit.factor,
                           .sd = number.sd,
                           .unit = reading.unit.unit,
                           .per = reading.unit.per.value_or(mapping_.per),
                           .basis = reading.unit.basis.value_or(mapping_.basis),
                           .qualifier = number.qualifier};
  if (!readQualifier(row, places, stated) || !readCount(row, places, stated) ||
      !readScatter(row, places, stated))
    return std::nullopt;
  if (stated.sd) *stated.sd *= reading.unit.factor;
  if (places.source) stated.source = sourceIn(row[*places.source]);
  return stated;
}

std::string ValueReader::sourceIn(std::string_view cell) const {
  const std::string text(trimmed(cell));
  const auto meant = mapping_.sources.find(text);
  return meant == mapping_.sources.end() ? text : meant->second;
}

bool ValueReader::readQualifier(const TableRow& row, const Places& places, food::StatedValue& stated) {
  if (!places.qualifier || row[*places.qualifier].empty()) return true;
  const auto qualifier = qualifierIn(row[*places.qualifier]);
  if (!qualifier) {
    remark(ImportIssue::BadWord, row, *places.qualifier);
    return false;
  }
  stated.qualifier = *qualifier;
  return true;
}

bool ValueReader::readCount(const TableRow& row, const Places& places, food::StatedValue& stated) {
  if (!places.count) return true;
  const auto count = readPart(row, *places.count);
  if (!count) return false;
  // Tables write 0 where a value was worked out and not measured.
  if (!*count || **count == 0.0) return true;
  if (**count != std::floor(**count) || **count > kMostDeterminations) {
    remark(ImportIssue::BadWord, row, *places.count);
    return false;
  }
  stated.sampleCount = static_cast<int>(**count);
  return true;
}

bool ValueReader::readScatter(const TableRow& row, const Places& places, food::StatedValue& stated) {
  if (places.sd) {
    const auto sd = readPart(row, *places.sd);
    if (!sd) return false;
    const bool known = *sd && !(mapping_.zeroIsUnknown && **sd == 0.0);
    if (known) stated.sd = **sd * places.sdScale;
  }
  if (!places.standardError || stated.sd) return true;
  const auto error = readPart(row, *places.standardError);
  if (!error) return false;
  if (!*error) return true;
  if (stated.sampleCount) {
    stated.sd = **error * std::sqrt(static_cast<double>(*stated.sampleCount));
  } else {
    remark(ImportIssue::ScatterUnread, row, *places.standardError);
  }
  return true;
}

std::optional<std::optional<double>> ValueReader::readPart(const TableRow& row, std::size_t column) {
  const NumberReading cell = readNumber(row[column], mark_);
  if (const auto* number = std::get_if<NumberText>(&cell)) return std::optional<double>(number->amount);
  if (std::holds_alternative<NothingKnown>(cell)) return std::optional<double>();
  remark(ImportIssue::BadNumber, {.line = row.line(),
                                  .column = column + 1,
                                  .found = std::string(row[column]),
                                  .fault = std::get<NumberFault>(cell)});
  return std::nullopt;
}

}  // namespace tarebowl::exchange
