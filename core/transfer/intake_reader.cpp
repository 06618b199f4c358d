// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/intake_reader.h"

#include "core/food/proximates.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/reading.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tarebowl::transfer {

namespace {

using quantity::Date;
using quantity::Grams;

/// The coarsest of 1 g, 0.1 g … 0.001 g of which the grams are a whole number.
double fineness(double grams, double step) {
  constexpr double kFinest = 1e-3;
  while (step > kFinest && std::abs(grams / step - std::round(grams / step)) > 1e-6) step /= 10.0;
  return step;
}

double finest(const intake::CountedBowl& bowl, double step) {
  for (const intake::CountedItem& item : bowl.items) {
    if (item.weighed) step = fineness(item.weighed->value(), step);
    if (item.leftover && item.leftover->left) step = fineness(item.leftover->left->value(), step);
  }
  return step;
}

constexpr Grams kCoarsest{1.0};

/// Readings were taken for whole grams until all were seen; what is no reading of a scale has no step.
void readWith(intake::FedBowl& bowl, Grams step) {
  const auto refine = [step](intake::ScaleReading& reading) {
    if (reading.step == kCoarsest) reading.step = step;
  };
  for (intake::FedItem& item : bowl.items) {
    refine(item.offered);
    if (auto* left = std::get_if<intake::ScaleReading>(&item.remains)) refine(*left);
  }
  if (bowl.remainder) refine(*bowl.remainder);
}

std::vector<food::NutrientId> everyNutrient() {
  std::vector<food::NutrientId> nutrients;
  for (std::size_t i = 0; i < food::allNutrients().size(); ++i) nutrients.emplace_back(i);
  return nutrients;
}

std::vector<food::NutrientId> withProximates(std::span<const food::NutrientId> nutrients) {
  std::vector<food::NutrientId> read = food::proximates();
  read.insert(read.end(), nutrients.begin(), nutrients.end());
  return read;
}

}  // namespace

std::vector<std::string> classesWithoutPans() {
  return {"supplement"};
}

IntakeReader::IntakeReader(const store::Collection& collection, std::string group, std::string place)
    : collection_(collection),
      bowls_(collection),
      foodOf_(collection, everyNutrient(), store::ValueSources::Kept),
      group_(std::move(group)),
      place_(std::move(place)) {}

IntakeReader::IntakeReader(const store::Collection& collection, std::span<const food::NutrientId> nutrients)
    : collection_(collection), bowls_(collection), foodOf_(collection, withProximates(nutrients)) {}

const std::optional<diet::DietFood>& IntakeReader::food(const std::string& code) {
  const auto known = foods_.find(code);
  if (known != foods_.end()) return known->second;
  return foods_.emplace(code, foodOf_.find(code)).first->second;
}

intake::FoodKind IntakeReader::kindOf(const std::string& code, Grams step) {
  const std::optional<diet::DietFood>& known = food(code);
  return {known ? known->group : std::string(), step};
}

void IntakeReader::hold(Date from, Date to) {
  held_.reset();
  store::askAhead(
      collection_, [&] { return bowls_.fed(group_, from, to); }, [&] { return pansAround(from, to); });
  std::vector<intake::CountedBowl> bowls;
  bowls_.read(group_, from, to, [&](const intake::CountedBowl& bowl) { bowls.push_back(bowl); });
  held_.emplace(from, to, std::move(bowls), pansAround(from, to));
}

void IntakeReader::readBowls(Date from, Date to,
                             const std::function<void(const intake::CountedBowl&)>& take) {
  if (holds(from, to)) return held_->read(from, to, take);
  bowls_.read(group_, from, to, take);
}

store::CountedBowlReader::Fed IntakeReader::fedIn(Date from, Date to) {
  return holds(from, to) ? held_->fed(from, to) : bowls_.fed(group_, from, to);
}

void IntakeReader::expectFoods(const store::CountedBowlReader::Fed& fed) {
  foodOf_.expect(held_ ? held_->foods() : fed.foods);
}

std::vector<intake::ControlPan> IntakeReader::pansAround(Date from, Date to) const {
  const int apart = intake::BorrowRule().daysApart;
  const Date first = intake::dayOfNumber(intake::dayNumber(from) - apart);
  const Date last = intake::dayOfNumber(intake::dayNumber(to) + apart);
  if (holds(from, to)) return held_->pans(first, last);
  return turns_ ? store::pansOfPlace(collection_, place_, first, last)
                : store::pansOfGroup(collection_, group_, first, last);
}

void IntakeReader::turnTo(std::string group, std::string place) {
  turns_ = true;
  held_.reset();
  group_ = std::move(group);
  place_ = std::move(place);
}

const IntakeReader::Pans& IntakeReader::pansOf(Date from, Date to, Grams step) {
  if (pans_ && pans_->place == place_ && pans_->from == from && pans_->to == to && pans_->step == step)
    return *pans_;
  std::vector<intake::WaterPan> pans;
  for (const intake::ControlPan& pan : pansAround(from, to))
    if (auto sound = intake::waterPan(pan, [&](const std::string& code) { return kindOf(code, step); }))
      pans.push_back(std::move(*sound));
  const auto ofDays = std::ranges::count_if(
      pans, [&](const intake::WaterPan& pan) { return from <= pan.day && pan.day <= to; });
  pans_ = Pans{place_,
               from,
               to,
               step,
               pans.size(),
               static_cast<std::size_t>(ofDays),
               intake::PanBook(pans, {}, classesWithoutPans())};
  return *pans_;
}

store::CountedBowlReader::Fed IntakeReader::askFor(Date from, Date to) {
  store::CountedBowlReader::Fed fed;
  store::askAhead(
      collection_, [&] { fed = fedIn(from, to); }, [&] { return pansAround(from, to); });
  bool areThere = turns_;
  if (!turns_)
    store::askAhead(collection_, [&] {
      expectFoods(fed);
      areThere = true;
    });
  if (!areThere) return fed;
  for (const std::string& code : fed.foods)
    if (askedFor_.insert(code).second) store::askAhead(collection_, [&] { return food(code).has_value(); });
  return fed;
}

IntakeReader::Stretch IntakeReader::read(Date from, Date to) {
  if (store::gathers(collection_))
    (void)askFor(from, to);
  else if (!turns_ && store::asksTogether(collection_))
    expectFoods(fedIn(from, to));
  Stretch stretch;
  double step = kCoarsest.value();
  readBowls(from, to, [&](const intake::CountedBowl& bowl) {
    step = finest(bowl, step);
    stretch.fed.push_back(
        intake::fedBowl(bowl, place_, [&](const std::string& code) { return kindOf(code, kCoarsest); }));
    if (bowl.diet.empty()) return;
    stretch.diet = bowl.diet;
    stretch.fedOn = bowl.day;
  });
  const Grams shown(step);
  for (intake::FedBowl& bowl : stretch.fed) readWith(bowl, shown);
  const Pans& pans = pansOf(from, to, shown);
  stretch.pans = pans.count;
  stretch.pansOfDays = pans.ofDays;
  stretch.eaten.reserve(stretch.fed.size());
  for (const intake::FedBowl& bowl : stretch.fed)
    stretch.eaten.push_back(
        intake::eatenFrom(bowl, pans.book, static_cast<std::uint32_t>(stretch.eaten.size())));
  return stretch;
}

}  // namespace tarebowl::transfer
