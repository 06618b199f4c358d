// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plan_lines.h"

#include <algorithm>
#include <limits>
#include <map>

namespace tarebowl::exchange {

namespace {

constexpr std::uint8_t kFirstIssue = 3;  // after the kinds of FoodChange
constexpr std::size_t kLongestText = 200;

template <class Small>
Small clamped(std::size_t value) {
  return static_cast<Small>(std::min<std::size_t>(value, std::numeric_limits<Small>::max()));
}

}  // namespace

std::uint32_t PlanLines::numberOf(std::string_view text) {
  const auto [place, isNew] =
      numbers_.emplace(std::string(text.substr(0, kLongestText)), clamped<std::uint32_t>(texts_.size()));
  if (isNew) texts_.push_back(place->first);
  return place->second;
}

void PlanLines::keep(const Line& line) {
  lines_.push_back(line);
}

void PlanLines::add(const PlannedFood& food) {
  if (lines_.size() >= kMostLines) {
    ++notKept_;
    return;
  }
  Line line{.line = clamped<std::uint32_t>(food.line), .name = numberOf(food.name)};
  line.other = numberOf(food.code);
  line.extra = clamped<std::uint32_t>(food.outcome.valuesUnchanged);
  line.valuesNew = clamped<std::uint16_t>(food.outcome.valuesNew);
  line.valuesChanged = clamped<std::uint16_t>(food.outcome.valuesChanged);
  line.kind = static_cast<std::uint8_t>(food.outcome.change);
  keep(line);
}

void PlanLines::add(ImportIssue issue, const Remark& remark) {
  if (lines_.size() >= kMostLines) {
    ++notKept_;
    return;
  }
  Line line{.line = clamped<std::uint32_t>(remark.line), .name = numberOf(remark.title)};
  line.other = numberOf(remark.found);
  line.extra = clamped<std::uint32_t>(remark.earlierLine);
  line.column = clamped<std::uint16_t>(remark.column);
  line.kind = static_cast<std::uint8_t>(kFirstIssue + static_cast<std::size_t>(issue));
  line.fault = static_cast<std::uint8_t>(remark.fault);
  keep(line);
}

void PlanLines::finish() {
  std::ranges::stable_sort(lines_, {}, [](const Line& it) {
    return std::pair(it.line, it.kind >= kFirstIssue);  // a food before what is said of it
  });
  for (auto& places : byKind_) places.clear();
  for (std::size_t i = 0; i < lines_.size(); ++i)
    byKind_.at(static_cast<std::size_t>(kindOf(lines_[i]))).push_back(static_cast<std::uint32_t>(i));
  numbers_.clear();
}

PlanLineKind PlanLines::kindOf(const Line& line) {
  if (line.kind < kFirstIssue) return static_cast<PlanLineKind>(line.kind);
  const auto issue = static_cast<ImportIssue>(line.kind - kFirstIssue);
  if (refuses(issue)) return PlanLineKind::Problem;
  const bool isTaken = issue == ImportIssue::KeptByName || issue == ImportIssue::ScatterUnread;
  return isTaken ? PlanLineKind::Noted : PlanLineKind::LeftOut;
}

PlanLineKind PlanLines::kindOf(std::size_t place) const {
  return kindOf(lines_.at(place));
}

std::variant<PlannedFood, PlannedRemark> PlanLines::at(std::size_t place) const {
  const Line& line = lines_.at(place);
  if (line.kind < kFirstIssue) {
    PlannedFood food{.line = line.line, .code = texts_[line.other], .name = texts_[line.name]};
    food.outcome = {.change = static_cast<FoodChange>(line.kind),
                    .valuesNew = line.valuesNew,
                    .valuesChanged = line.valuesChanged,
                    .valuesUnchanged = line.extra};
    food.values = food.outcome.valuesNew + food.outcome.valuesChanged + food.outcome.valuesUnchanged;
    return food;
  }
  return PlannedRemark{static_cast<ImportIssue>(line.kind - kFirstIssue),
                       {.line = line.line,
                        .column = line.column,
                        .title = texts_[line.name],
                        .found = texts_[line.other],
                        .fault = static_cast<NumberFault>(line.fault),
                        .earlierLine = line.extra}};
}

std::vector<std::pair<std::string, std::size_t>> PlanLines::foundIn(ImportIssue issue) const {
  std::map<std::string, std::size_t> counts;
  for (const Line& line : lines_)
    if (line.kind == kFirstIssue + static_cast<std::size_t>(issue)) ++counts[texts_[line.other]];
  return {counts.begin(), counts.end()};
}

}  // namespace tarebowl::exchange
