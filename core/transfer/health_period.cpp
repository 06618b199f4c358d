// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/health_period.h"

#include "core/animal/condition_score.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/animal_reading.h"
#include "core/store/feeding_reading.h"
#include "core/store/food_reading.h"
#include "core/store/lot_verbs.h"
#include "core/store/member_reading.h"
#include "core/store/reading.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <span>

namespace tarebowl::transfer {

namespace {

using quantity::Date;

constexpr int kMorning = 8 * 60;
constexpr int kNoon = 12 * 60;

/// The group whose bowl an animal eats from on a day.
std::optional<std::string> groupOn(const store::Collection& collection, const std::string& individual,
                                   Date day) {
  const auto stays = store::staysOf(store::membershipsOfIndividual(collection, individual));
  for (const animal::Membership& stay : stays)
    if (stay.from <= day && (!stay.until || day < *stay.until)) return stay.group;
  return std::nullopt;
}

std::vector<health::BowlEaten> bowlsEaten(const store::Collection& collection, const IntakePeriod& period,
                                          std::span<const store::BowlGiven> bowls) {
  std::vector<health::BowlEaten> made;
  const std::vector<intake::FoodLot> lots = store::lotsOf(store::listLots(collection));
  for (std::size_t i = 0; i < bowls.size() && i < period.eaten.size(); ++i) {
    health::BowlEaten& bowl = made.emplace_back();
    bowl.day = bowls[i].day;
    bowl.minute = givenAt(bowls[i].meal);
    auto fed = period.fed[i].items.begin();
    for (const intake::EatenItem& item : period.eaten[i].items) {
      health::FoodEaten& food = bowl.foods.emplace_back();
      food.food = item.food;
      food.offered = item.offered;
      if (item.eaten) food.eaten = item.eaten->value();
      food.swappedIn = (fed++)->swappedIn;
      if (const auto lot = intake::lotOn(lots, food.food, bowl.day)) food.lot = lot->lot;
    }
  }
  return made;
}

std::vector<DietBegun> dietsBegun(std::span<const store::BowlGiven> bowls) {
  std::vector<DietBegun> begun;
  for (const store::BowlGiven& bowl : bowls) {
    if (bowl.diet.empty() && !begun.empty()) continue;  // a reward beside the diet
    if (begun.empty() || begun.back().diet != bowl.diet || begun.back().version != bowl.version)
      begun.push_back({bowl.day, bowl.diet, bowl.version});
  }
  return begun;
}

void addObservations(const store::Collection& collection, HealthPeriod& period) {
  const auto add = [&](const std::vector<store::StoredObservation>& more) {
    period.observations.insert(period.observations.end(), more.begin(), more.end());
  };
  if (!period.subject.individual.empty()) {
    add(store::observationsOfIndividual(collection, period.subject.individual, period.from, period.to));
  } else {
    add(store::observationsOfGroup(collection, period.subject.group, period.from, period.to));
    const auto ofMembers =
        store::observationsOfMembers(collection, period.subject.group, period.from, period.to);
    for (const std::string& member : period.intake.group.members) add(store::ofMember(ofMembers, member));
  }
  std::ranges::stable_sort(period.observations, {}, [](const store::StoredObservation& observation) {
    return std::pair(observation.record.on, observation.record.time);
  });
}

void addMasses(const store::Collection& collection, HealthPeriod& period) {
  const auto add = [&](const std::string& who, const std::vector<store::StoredMass>& masses) {
    for (const store::StoredMass& mass : masses) {
      const animal::MassReading& reading = mass.record.reading;
      if (!reading.excluded && reading.on >= period.from && reading.on <= period.to)
        period.masses.push_back({who, reading.on, reading.mass.value()});
    }
  };
  if (!period.subject.individual.empty()) {
    const auto masses = store::massesOfIndividual(collection, period.subject.individual);
    add(period.subject.individual, masses);
    if (const auto mass = animal::massOn(store::readingsOf(masses), period.to)) period.bodyMass = mass->mass;
  } else {
    const auto ofMembers = store::massesOfMembers(collection, period.subject.group, period.from, period.to);
    for (const std::string& member : period.intake.group.members)
      add(member, store::ofMember(ofMembers, member));
    add(period.subject.group, store::massesOfGroup(collection, period.subject.group));
    period.bodyMass = period.intake.group.bodyMass;
  }
  std::ranges::stable_sort(period.masses, {}, &MassSeen::day);
}

void addConditions(const store::Collection& collection, HealthPeriod& period) {
  const auto add = [&](const std::string& who, const std::vector<store::StoredCondition>& conditions) {
    for (const store::StoredCondition& condition : conditions) {
      const animal::ConditionReading& reading = condition.record.reading;
      const animal::ScoreScale* scale = animal::findConditionScale(reading.scale);
      if (scale != nullptr && reading.on >= period.from && reading.on <= period.to)
        period.conditions.push_back(
            {who, reading.on, std::string(scale->name), reading.score, scale->lowest, scale->highest});
    }
  };
  if (!period.subject.individual.empty()) {
    add(period.subject.individual, store::conditionsOfIndividual(collection, period.subject.individual));
  } else {
    const auto ofMembers =
        store::conditionsOfMembers(collection, period.subject.group, period.from, period.to);
    for (const std::string& member : period.intake.group.members)
      add(member, store::ofMember(ofMembers, member));
    add(period.subject.group, store::conditionsOfGroup(collection, period.subject.group));
  }
  std::ranges::stable_sort(period.conditions, {}, &ConditionSeen::day);
}

void countAnimals(const store::Collection& collection, HealthPeriod& period) {
  const auto stays = store::staysOf(store::membershipsOfGroup(collection, period.subject.group));
  for (std::chrono::sys_days day = period.from; day <= std::chrono::sys_days(period.to);
       day += std::chrono::days(1))
    if (const auto count = animal::headcountOn(period.intake.group.group.record, stays, Date(day)))
      period.animals[Date(day)] = *count;
}

/// What is read of an animal, or of a group and all in it: what was observed, weighed and scored.
void askForSubject(const store::Collection& collection, const HealthSubject& subject, Date from, Date to) {
  const std::string& code = subject.individual;
  const std::string& group = subject.group;
  if (!code.empty())
    store::askAhead(
        collection, [&] { return store::observationsOfIndividual(collection, code, from, to); },
        [&] { return store::massesOfIndividual(collection, code); },
        [&] { return store::conditionsOfIndividual(collection, code); });
  else
    store::askAhead(
        collection, [&] { return store::observationsOfMembers(collection, group, from, to); },
        [&] { return store::massesOfMembers(collection, group, from, to); },
        [&] { return store::conditionsOfMembers(collection, group, from, to); },
        [&] { return store::observationsOfGroup(collection, group, from, to); },
        [&] { return store::massesOfGroup(collection, group); },
        [&] { return store::conditionsOfGroup(collection, group); });
}

/// What of a period rests on the group or the animal alone.
void askForHealth(const store::Collection& collection, const HealthPeriod& period) {
  const std::string& group = period.subject.group;
  store::askFirst(
      collection, [&] { return store::bowlsGiven(collection, group, period.from, period.to); },
      [&] { return store::listLots(collection); },
      [&] { askForSubject(collection, period.subject, period.from, period.to); });
  askForPeriod(collection, group, period.from, period.to);
}

/// The later of a day and those of the readings that lie up to another.
template <class Stored>
void takeLater(const std::vector<Stored>& readings, Date until, Date& last) {
  for (const Stored& reading : readings)
    if (const Date on = reading.record.reading.on; on <= until) last = std::max(last, on);
}

bool isDust(const diet::DietFood& food) {
  const auto classes = classesWithoutPans();
  return std::ranges::find(classes, food.group) != classes.end();
}

}  // namespace

std::optional<HealthPeriod> readHealth(const store::Collection& collection, const HealthSubject& subject,
                                       Date from, Date to) {
  HealthPeriod period{.subject = subject, .from = from, .to = to};
  if (!subject.individual.empty()) {
    const auto group = groupOn(collection, subject.individual, to);
    if (!group) return std::nullopt;
    period.subject.group = *group;
  }
  if (store::gathers(collection)) askForHealth(collection, period);
  auto read = readIntake(collection, period.subject.group, from, to);
  if (!read) return std::nullopt;
  period.intake = std::move(*read);
  period.name = subject.individual.empty() ? period.intake.group.group.record.name : subject.individual;
  const auto bowls = store::bowlsGiven(collection, period.subject.group, from, to);
  period.bowls = bowlsEaten(collection, period.intake, bowls);
  period.diets = dietsBegun(bowls);
  for (const diet::DietFood& food : period.intake.problem.foods)
    period.foodNames[food.id] = food.form.empty() ? food.name : food.name + ", " + food.form;
  addObservations(collection, period);
  addMasses(collection, period);
  addConditions(collection, period);
  countAnimals(collection, period);
  return period;
}

std::optional<Date> lastRecordOf(const store::Collection& collection, const HealthSubject& subject,
                                 Date until) {
  const Date first = intake::dayOfNumber(0);
  const std::string& code = subject.individual;
  const std::string& group = subject.group;
  Date last = first;
  store::askAhead(
      collection, [&] { return store::fedSpan(collection, group, first, until); },
      [&] { return store::membershipsOfGroup(collection, group); });
  if (const auto fed = store::fedSpan(collection, group, first, until)) last = fed->last;
  const Date since = last;  // the same for all, so that none waits for another's answer
  askForSubject(collection, subject, since, until);
  const auto look = [&](const std::vector<store::StoredObservation>& seen,
                        const std::vector<store::StoredMass>& masses,
                        const std::vector<store::StoredCondition>& conditions) {
    if (!seen.empty()) last = std::max(last, seen.back().record.on);
    takeLater(masses, until, last);
    takeLater(conditions, until, last);
  };
  if (!code.empty()) {
    look(store::observationsOfIndividual(collection, code, since, until),
         store::massesOfIndividual(collection, code), store::conditionsOfIndividual(collection, code));
  } else {
    look(store::observationsOfGroup(collection, group, since, until), store::massesOfGroup(collection, group),
         store::conditionsOfGroup(collection, group));
    const auto seen = store::observationsOfMembers(collection, group, since, until);
    const auto masses = store::massesOfMembers(collection, group, since, until);
    const auto conditions = store::conditionsOfMembers(collection, group, since, until);
    const auto stays = store::staysOf(store::membershipsOfGroup(collection, group));
    for (const std::string& member : animal::membersOn(stays, group, until))
      look(store::ofMember(seen, member), store::ofMember(masses, member),
           store::ofMember(conditions, member));
  }
  return last == first ? std::nullopt : std::optional(last);
}

health::CalciumReview calciumOf(const store::Collection& collection, const HealthPeriod& period,
                                const CalciumAsked& asked) {
  health::CalciumQuestion question{
      .from = period.from, .to = period.to, .bowls = period.intake.eaten, .problem = period.intake.problem};
  question.problem.eater.bodyMass = period.bodyMass;
  std::vector<diet::DietFood>& foods = question.problem.foods;
  if (!asked.supplement.empty() &&
      std::ranges::find(foods, asked.supplement, &diet::DietFood::id) == foods.end())
    if (auto supplement = store::dietFood(collection, asked.supplement))
      foods.push_back(std::move(*supplement));
  for (diet::DietFood& food : foods) food.eatenFraction = 1.0;  // what is eaten was weighed
  question.animals = period.animals;
  for (const diet::DietFood& food : period.intake.problem.foods)
    if (isDust(food)) question.retained[food.id] = asked.retained;
  question.supplement = asked.supplement;
  question.supplementRetained = asked.retained;
  question.supplementEaten = asked.eaten;
  return health::reviewCalcium(question);
}

int givenAt(const std::string& meal) {
  constexpr std::array<std::pair<std::string_view, int>, 5> kMeals{{{"morning", kMorning},
                                                                    {"noon", kNoon},
                                                                    {"afternoon", 15 * 60},
                                                                    {"evening", 17 * 60},
                                                                    {"night", 20 * 60}}};
  const auto* const found = std::ranges::find(kMeals, meal, &std::pair<std::string_view, int>::first);
  return found == kMeals.end() ? kMorning : found->second;
}

std::vector<health::LookedOn> looksFor(const HealthPeriod& period, health::SignKind kind) {
  std::map<Date, health::LookedOn> days;
  if (kind != health::SignKind::Faeces && kind != health::SignKind::Appetite)
    for (std::chrono::sys_days day = period.from; day <= std::chrono::sys_days(period.to);
         day += std::chrono::days(1))
      days[Date(day)] = {Date(day), kMorning, false};
  for (const store::StoredObservation& stored : period.observations) {
    const health::Observation& seen = stored.record;
    if (seen.kind != kind) continue;
    const int minute = health::minuteOf(seen).value_or(kMorning);
    auto [day, fresh] = days.try_emplace(seen.on, health::LookedOn{seen.on, kMorning, false});
    if (!health::isSign(seen) || day->second.sign) continue;
    day->second.sign = true;
    day->second.minute = minute < kNoon ? kMorning : minute;
  }
  std::vector<health::LookedOn> looks;
  looks.reserve(days.size());
  for (const auto& [day, look] : days) looks.push_back(look);
  return looks;
}

std::optional<health::LookBack> lookBackFrom(const HealthPeriod& period, health::SignKind kind, Date day,
                                             const health::LookBackRule& rule) {
  const std::vector<health::LookedOn> looks = looksFor(period, kind);
  const auto sign = std::ranges::find(looks, day, &health::LookedOn::day);
  if (sign == looks.end() || !sign->sign) return std::nullopt;
  return health::lookBack(*sign, looks, period.bowls, rule);
}

}  // namespace tarebowl::transfer
