// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/water_pans.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <utility>

namespace tarebowl::intake {

namespace {

int dayNumber(quantity::Date day) {
  return static_cast<int>(std::chrono::sys_days(day).time_since_epoch().count());
}

/// Squared deviations from the mean of some losses.
struct Squares {
  double sum = 0.0;
  std::size_t freedom = 0;

  void add(std::span<const double> values) {
    if (values.size() < 2) return;
    double mean = 0.0;
    for (const double value : values) mean += value / static_cast<double>(values.size());
    for (const double value : values) sum += (value - mean) * (value - mean);
    freedom += values.size() - 1;
  }
  /// Two degrees of freedom are the least that say anything.
  [[nodiscard]] std::optional<double> sd() const {
    if (freedom < 2) return std::nullopt;
    return std::sqrt(sum / static_cast<double>(freedom));
  }
};

}  // namespace

bool isBorrowed(WaterFrom from) {
  return from == WaterFrom::SameFoodOtherDays || from == WaterFrom::SameClassOtherDays;
}

std::optional<PanDefect> defectOf(const WaterPan& pan) {
  if (!(pan.start.grams.value() > 0.0)) return PanDefect::StartedEmpty;
  if (!(pan.end.grams.value() > 0.0)) return PanDefect::EndedEmpty;
  return std::nullopt;
}

double waterLoss(const WaterPan& pan) {
  return 1.0 - pan.end.grams / pan.start.grams;
}

double waterLossSd(const WaterPan& pan) {
  const double kept = pan.end.grams / pan.start.grams;
  return std::hypot(readingSd(pan.end), kept * readingSd(pan.start)) / pan.start.grams.value();
}

PanBook::PanBook(std::span<const WaterPan> pans, BorrowRule rule, std::vector<std::string> unchanged)
    : rule_(rule), unchanged_(std::move(unchanged)) {
  for (std::size_t i = 0; i < pans.size(); ++i) {
    const WaterPan& pan = pans[i];
    if (const auto defect = defectOf(pan)) {
      unsound_.push_back({i, *defect});
      continue;
    }
    Shelf& shelf = shelves_[pan.place][pan.foodClass];
    shelf.losses.push_back({dayNumber(pan.day), pan.food, waterLoss(pan), waterLossSd(pan)});
    shelf.namesFoods = shelf.namesFoods || !pan.food.empty();
  }
  for (auto& [place, classes] : shelves_)
    for (auto& [foodClass, shelf] : classes) {
      std::ranges::stable_sort(shelf.losses, {}, &Loss::day);
      learnScatter(shelf);
    }
}

void PanBook::DayMean::add(double lossOfPan, double sd) {
  ++pans;
  loss += lossOfPan;
  scaleVariance += sd * sd;
}

void PanBook::DayMean::divide() {
  const auto count = static_cast<double>(pans);
  loss /= count;
  scaleVariance /= count * count;
}

std::vector<PanBook::DayMean> PanBook::dayMeans(std::span<const Loss> losses, const std::string* food) {
  std::vector<DayMean> means;
  for (const Loss& loss : losses) {
    if (food != nullptr && loss.food != *food) continue;
    if (means.empty() || means.back().day != loss.day) means.push_back({.day = loss.day});
    means.back().add(loss.loss, loss.sd);
  }
  for (DayMean& mean : means) mean.divide();
  return means;
}

void PanBook::learnScatter(Shelf& shelf) {
  Squares within;
  Squares between;
  std::vector<double> means;
  auto at = shelf.losses.begin();
  for (const DayMean& day : dayMeans(shelf.losses, nullptr)) {
    std::vector<double> ofDay;
    for (; at != shelf.losses.end() && at->day == day.day; ++at) ofDay.push_back(at->loss);
    within.add(ofDay);
    means.push_back(day.loss);
  }
  between.add(means);
  shelf.withinDay = within.sd();
  shelf.dayToDay = between.sd();
}

std::optional<PanBook::DayMean> PanBook::meanOn(const Shelf& shelf, int day, const std::string* food) {
  DayMean mean{.day = day};
  for (auto at = std::ranges::lower_bound(shelf.losses, day, {}, &Loss::day);
       at != shelf.losses.end() && at->day == day; ++at)
    if (food == nullptr || at->food == *food) mean.add(at->loss, at->sd);
  if (mean.pans == 0) return std::nullopt;
  mean.divide();
  return mean;
}

std::vector<PanBook::DayMean> PanBook::nearest(const Shelf& shelf, int day, const std::string* food) const {
  const auto first = std::ranges::lower_bound(shelf.losses, day - rule_.daysApart, {}, &Loss::day);
  const auto last = std::ranges::upper_bound(shelf.losses, day + rule_.daysApart, {}, &Loss::day);
  std::vector<DayMean> near = dayMeans({first, last}, food);
  const auto apart = [&](const DayMean& mean) { return std::abs(mean.day - day); };
  // Asked for every leftover: a sort that takes no room of its own. Of days as far apart the earlier goes
  // first.
  std::ranges::sort(near, {}, [&](const DayMean& mean) { return std::pair(apart(mean), mean.day); });
  if (near.size() > rule_.days) {
    const int farthest = apart(near[rule_.days - 1]);
    std::erase_if(near, [&](const DayMean& mean) { return apart(mean) > farthest; });
  }
  return near;
}

WaterChange PanBook::pooled(std::span<const DayMean> near, int day, WaterFrom from, const Shelf& shelf) {
  const auto days = static_cast<double>(near.size());
  WaterChange change{.from = from};
  double scale = 0.0;
  for (const DayMean& mean : near) {
    change.loss += mean.loss / days;
    scale += mean.scaleVariance / (days * days);
    change.daysApart = std::max(change.daysApart, std::abs(mean.day - day));
    change.pans += mean.pans;
  }
  const double pansADay = static_cast<double>(change.pans) / days;
  const double s = shelf.dayToDay.value_or(0.0);
  // Where no day had two pans, how days differ stands in: pans of one day differ less.
  const double w = shelf.withinDay.value_or(s);
  const double variance = isBorrowed(from) ? s * s * (1.0 + 1.0 / days) + w * w * (1.0 - 1.0 / pansADay)
                                           : w * w * (1.0 + 1.0 / pansADay);
  change.scatterKnown = shelf.dayToDay || (shelf.withinDay && !isBorrowed(from));
  change.sd = std::sqrt(std::max(scale, variance));
  return change;
}

std::optional<WaterChange> PanBook::find(const std::string& place, quantity::Date day,
                                         const std::string& food, const std::string& foodClass) const {
  if (std::ranges::find(unchanged_, foodClass) != unchanged_.end())
    return WaterChange{.from = WaterFrom::Stated};
  const auto ofPlace = shelves_.find(place);
  if (ofPlace == shelves_.end()) return std::nullopt;
  const auto found = ofPlace->second.find(foodClass);
  if (found == ofPlace->second.end()) return std::nullopt;
  const int number = dayNumber(day);
  const Shelf& shelf = found->second;
  const std::string* const only = shelf.namesFoods ? &food : nullptr;
  if (only != nullptr)
    if (const auto ofDay = meanOn(shelf, number, only))
      return pooled({&*ofDay, 1}, number, WaterFrom::SameFood, shelf);
  if (const auto ofDay = meanOn(shelf, number, nullptr))
    return pooled({&*ofDay, 1}, number, WaterFrom::SameClass, shelf);
  if (only != nullptr)
    if (const auto near = nearest(shelf, number, only); !near.empty())
      return pooled(near, number, WaterFrom::SameFoodOtherDays, shelf);
  if (const auto near = nearest(shelf, number, nullptr); !near.empty())
    return pooled(near, number, WaterFrom::SameClassOtherDays, shelf);
  return std::nullopt;
}

}  // namespace tarebowl::intake
