// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/intake_stretch.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace tarebowl::intake {

namespace {

bool isKnown(std::span<const EatenBowl> day) {
  return std::ranges::all_of(day, [](const EatenBowl& bowl) {
    return std::ranges::all_of(bowl.items, [](const EatenItem& item) { return item.eaten.has_value(); });
  });
}

/// Day after day: take(bowls of the day, whether all of it is known).
template <class Take>
void eachDay(std::span<const EatenBowl> bowls, Take take) {
  for (std::size_t first = 0; first < bowls.size();) {
    std::size_t end = first;
    while (end < bowls.size() && bowls[end].day == bowls[first].day) ++end;
    const auto day = bowls.subspan(first, end - first);
    take(day, isKnown(day));
    first = end;
  }
}

int animalsOf(std::span<const EatenBowl> day) {
  int most = 1;
  for (const EatenBowl& bowl : day) most = std::max(most, bowl.animals);
  return most;
}

/// Bowls have their foods mostly in one order: looked for first where the one after the last stands.
StretchFood& foodIn(std::vector<StretchFood>& foods, const std::string& code, std::size_t& next) {
  if (next >= foods.size() || foods[next].food != code)
    next = static_cast<std::size_t>(std::ranges::find(foods, code, &StretchFood::food) - foods.begin());
  if (next == foods.size()) foods.push_back({.food = code});
  return foods[next++];
}

diet::Diet asDiet(const Eigen::VectorXd& grams) {
  diet::Diet diet;
  diet.reserve(static_cast<std::size_t>(grams.size()));
  for (const double amount : grams) diet.emplace_back(std::max(0.0, amount));
  return diet;
}

}  // namespace

/// Per animal and day, over the problem's foods.
struct Followed::Grams {
  Eigen::VectorXd offered;        ///< on known days
  Eigen::VectorXd offeredAlways;  ///< on all days
  Eigen::VectorXd eaten;          ///< on known days
  double knownDays = 0.0;         ///< animal days
  double allDays = 0.0;
  std::vector<Eigen::Index> places{};  ///< in the problem, of every item of the bowls in their order
};

Followed::Followed(diet::BalanceProblem problem) : problem_(std::move(problem)) {
  for (std::size_t i = 0; i < problem_.foods.size(); ++i) {
    problem_.foods[i].eatenFraction = 1.0;
    places_.emplace(problem_.foods[i].id, i);
  }
  measures_ = diet::measuresOf(problem_);
}

std::size_t Followed::placeOf(const std::string& food) const {
  const auto found = places_.find(food);
  return found == places_.end() ? problem_.foods.size() : found->second;
}

Followed::Grams Followed::gramsOf(std::span<const EatenBowl> bowls) const {
  // The last place is that of foods that the problem lacks.
  const auto places = static_cast<Eigen::Index>(problem_.foods.size()) + 1;
  Grams grams{.offered = Eigen::VectorXd::Zero(places),
              .offeredAlways = Eigen::VectorXd::Zero(places),
              .eaten = Eigen::VectorXd::Zero(places)};
  eachDay(bowls, [&](std::span<const EatenBowl> day, bool known) {
    grams.allDays += animalsOf(day);
    if (known) grams.knownDays += animalsOf(day);
    for (const EatenBowl& bowl : day)
      for (const EatenItem& item : bowl.items) {
        const auto place = static_cast<Eigen::Index>(placeOf(item.food));
        grams.places.push_back(place);
        grams.offeredAlways[place] += item.offered;
        if (!known) continue;
        grams.offered[place] += item.offered;
        grams.eaten[place] += item.eaten->value();
      }
  });
  for (Eigen::VectorXd* all : {&grams.offered, &grams.offeredAlways, &grams.eaten})
    all->conservativeResize(places - 1);
  if (grams.allDays > 0.0) grams.offeredAlways /= grams.allDays;
  if (!(grams.knownDays > 0.0)) return grams;
  grams.offered /= grams.knownDays;
  grams.eaten /= grams.knownDays;
  return grams;
}

/// d(part / whole) = sum of (part_j - value whole_j) / whole · dE_j over what was eaten of each food.
double Followed::measuringSd(const diet::Measure& measure, const Grams& grams, double value,
                             std::span<const EatenBowl> bowls) const {
  const double whole = measure.whole.at(grams.eaten) * grams.knownDays;
  const Eigen::VectorXd moves = (measure.part.perGram - value * measure.whole.perGram) / whole;
  double variance = 0.0;
  auto place = grams.places.begin();
  eachDay(bowls, [&](std::span<const EatenBowl> day, bool known) {
    for (const EatenBowl& bowl : day) {
      const auto places = std::span(place, bowl.items.size());
      place += static_cast<std::ptrdiff_t>(bowl.items.size());
      if (!known) continue;
      Uncertain moved;  // bowls share no error of measuring
      for (std::size_t i = 0; i < places.size(); ++i)
        if (places[i] < moves.size()) moved.addScaled(*bowl.items[i].eaten, moves[places[i]]);
      const double sd = moved.sd();
      variance += sd * sd;
    }
  });
  return std::sqrt(variance);
}

IntakeStretch Followed::over(quantity::Date from, quantity::Date until,
                             std::span<const EatenBowl> bowls) const {
  IntakeStretch stretch{.from = from, .until = until, .bowls = bowls.size()};
  eachDay(bowls, [&](std::span<const EatenBowl> day, bool known) {
    ++stretch.days;
    stretch.daysKnown += known ? 1 : 0;
    stretch.bowlsKnown += known ? day.size() : 0;
    for (const EatenBowl& bowl : day) {
      std::size_t next = 0;
      for (const EatenItem& item : bowl.items) {
        StretchFood& food = foodIn(stretch.foods, item.food, next);
        ++(item.eaten ? food.bowls : food.bowlsNotKnown);
        if (!known) continue;
        food.offered += item.offered;
        food.eaten += item.eaten->value();
      }
    }
  });
  if (stretch.days == 0) return stretch;
  const Grams grams = gramsOf(bowls);
  stretch.animalDays = grams.knownDays;
  const bool known = stretch.daysKnown > 0;
  const diet::Balance offered = diet::balance(problem_, asDiet(known ? grams.offered : grams.offeredAlways));
  const diet::Balance eaten = diet::balance(problem_, asDiet(grams.eaten));
  for (std::size_t i = 0; i < measures_.size(); ++i) {
    StretchValue& value = stretch.values.emplace_back();
    value.id = measures_[i].id;
    if (offered.targets[i].coverage > 0.0) value.offered = offered.targets[i].value;
    const diet::TargetBalance& judged = eaten.targets[i];
    if (!known || !judged.value || !(judged.coverage > 0.0)) continue;
    value.eaten = judged.value;
    value.coverage = judged.coverage;
    value.atLeast = judged.atLeast;
    value.state = judged.state;
    value.sd = std::hypot(judged.sd, measuringSd(measures_[i], grams, *judged.value, bowls));
  }
  return stretch;
}

std::vector<std::optional<double>> Followed::onDay(std::span<const EatenBowl> bowls) const {
  std::vector<std::optional<double>> values(1 + measures_.size());
  if (bowls.empty() || !isKnown(bowls)) return values;
  const Grams grams = gramsOf(bowls);
  double all = 0.0;
  for (const EatenBowl& bowl : bowls)
    for (const EatenItem& item : bowl.items) all += item.eaten->value();
  values.front() = all / animalsOf(bowls);
  for (std::size_t i = 0; i < measures_.size(); ++i) {
    const double whole = measures_[i].whole.at(grams.eaten);
    if (measures_[i].defect.empty() && whole > 0.0) values[1 + i] = measures_[i].part.at(grams.eaten) / whole;
  }
  return values;
}

}  // namespace tarebowl::intake
