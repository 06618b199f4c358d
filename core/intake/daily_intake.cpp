// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/daily_intake.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::intake {

namespace {

Uncertain brings(const Uncertain& eaten, const Content& content) {
  Uncertain amount = eaten * *content.perGram;
  if (content.sdPerGram > 0.0)
    amount.addShared({Origin::Composition, content.source}, eaten.value() * content.sdPerGram);
  return amount;
}

/// Adds up one day.
class DaySum {
 public:
  explicit DaySum(quantity::Date day) {
    sum_.day = day;
    sum_.eaten = Uncertain();
  }

  void add(const EatenBowl& bowl, const Contents& contents) {
    sum_.animals = std::max(sum_.animals, bowl.animals);
    ++sum_.bowls;
    sum_.findings += bowl.findings.size();
    for (const EatenItem& item : bowl.items) add(item, contents.find(item.food));
  }

  [[nodiscard]] DayIntake done() {
    if (weight_ > 0.0) sum_.coverage = known_ / weight_;
    return std::move(sum_);
  }

 private:
  void add(const EatenItem& item, const Content* content) {
    sum_.estimated = sum_.estimated || item.estimated;
    if (!item.eaten) ++sum_.itemsNotKnown;
    const double weight = std::max(0.0, item.atMost) * (content == nullptr ? 1.0 : content->weightPerGram);
    weight_ += weight;
    if (content == nullptr || !content->perGram) {
      if (!item.eaten) sum_.eaten.reset();
      return;
    }
    known_ += weight;
    sum_.offered += item.offered * *content->perGram;
    sum_.lost += (item.spilled + item.stolen) * *content->perGram;
    sum_.atLeast += item.atLeast * *content->perGram;
    sum_.atMost += item.atMost * *content->perGram;
    if (!item.eaten)
      sum_.eaten.reset();
    else if (sum_.eaten)
      *sum_.eaten += brings(*item.eaten, *content);
  }

  DayIntake sum_;
  double weight_ = 0.0;
  double known_ = 0.0;
};

/// With the errors of each bowl still told apart.
std::vector<DayIntake> unsettled(std::span<const EatenBowl> bowls, const Contents& contents) {
  std::vector<DayIntake> days;
  for (std::size_t i = 0; i < bowls.size();) {
    DaySum sum(bowls[i].day);
    const quantity::Date day = bowls[i].day;
    for (; i < bowls.size() && bowls[i].day == day; ++i) sum.add(bowls[i], contents);
    days.push_back(sum.done());
  }
  return days;
}

}  // namespace

DayIntake perAnimal(DayIntake day) {
  const double share = 1.0 / day.animals;
  day.offered *= share;
  if (day.eaten) *day.eaten *= share;
  day.atLeast *= share;
  day.atMost *= share;
  day.lost *= share;
  day.animals = 1;
  return day;
}

std::vector<DayIntake> dailyIntake(std::span<const EatenBowl> bowls, const Contents& contents) {
  std::vector<DayIntake> days = unsettled(bowls, contents);
  for (DayIntake& day : days) {
    if (!day.eaten) continue;
    for (const Origin origin : {Origin::Weighing, Origin::Water, Origin::Parts}) day.eaten->settle(origin);
  }
  return days;
}

PeriodIntake overPeriod(std::span<const DayIntake> days) {
  PeriodIntake period;
  period.days = days.size();
  double squares = 0.0;
  double mean = 0.0;
  for (const DayIntake& day : days) {
    if (!day.eaten) continue;
    ++period.known;
    period.total += *day.eaten;
    period.coverage = std::min(period.coverage, day.coverage);
    const double step = day.eaten->value() - mean;
    mean += step / static_cast<double>(period.known);
    squares += step * (day.eaten->value() - mean);
  }
  if (period.known > 0) period.meanPerDay = period.total * (1.0 / static_cast<double>(period.known));
  if (period.known > 1) period.dayToDaySd = std::sqrt(squares / static_cast<double>(period.known - 1));
  return period;
}

std::vector<DayRatio> dailyRatio(std::span<const EatenBowl> bowls, const Contents& of, const Contents& to) {
  const std::vector<DayIntake> above = unsettled(bowls, of);
  const std::vector<DayIntake> below = unsettled(bowls, to);
  std::vector<DayRatio> ratios;
  for (std::size_t i = 0; i < above.size(); ++i) {
    DayRatio& ratio = ratios.emplace_back();
    ratio.day = above[i].day;
    ratio.coverage = std::min(above[i].coverage, below[i].coverage);
    if (below[i].offered > 0.0) ratio.offered = above[i].offered / below[i].offered;
    if (!above[i].eaten || !below[i].eaten || !(below[i].eaten->value() > 0.0)) continue;
    ratio.eaten = quotient(*above[i].eaten, *below[i].eaten);
    for (const Origin origin : {Origin::Weighing, Origin::Water, Origin::Parts}) ratio.eaten->settle(origin);
  }
  return ratios;
}

}  // namespace tarebowl::intake
