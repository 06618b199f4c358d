// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/prep_sheet.h"

#include "core/diet/phase_in.h"
#include "core/intake/time_of_sheet.h"

#include <algorithm>

namespace tarebowl::intake {

using diet::DietLine;
using quantity::Grams;

namespace {

/// A food of one meal and purpose goes its own way while a diet is phased in.
std::string keyOf(const DietLine& line) {
  return line.food + '\n' + line.meal + '\n' + std::string(symbolOf(line.purpose));
}

std::vector<diet::FoodGrams> waysOf(std::span<const DietLine> lines) {
  std::vector<diet::FoodGrams> ways;
  for (const DietLine& line : lines) ways.push_back({keyOf(line), line.amount});
  return ways;
}

std::vector<DietLine> mixed(const DietOfDay& diet, int phaseDay, const FoodLookup& foodOf) {
  const auto stepOf = [&](const std::string& key) { return foodOf(key.substr(0, key.find('\n'))).step; };
  const auto plan =
      diet::phaseIn(waysOf(diet.linesBefore), waysOf(diet.version.lines), diet.version.phaseInDays, stepOf);
  std::vector<DietLine> lines = diet.version.lines;  // in the new diet's order, the old one's after it
  for (const DietLine& old : diet.linesBefore)
    if (std::ranges::find(lines, keyOf(old), keyOf) == lines.end()) lines.push_back(old);
  for (DietLine& line : lines) {
    const auto& day = plan.at(static_cast<std::size_t>(phaseDay) - 1);
    const auto way = std::ranges::find(day, keyOf(line), &diet::FoodGrams::food);
    line.amount = way == day.end() ? Grams(0) : way->amount;
  }
  return lines;
}

int phaseDayOf(const DietOfDay& diet, quantity::Date day) {
  if (!diet.version.fedFrom || diet.linesBefore.empty()) return 0;
  const int since = dayNumber(day) - dayNumber(*diet.version.fedFrom);
  return since >= 0 && since < diet.version.phaseInDays ? since + 1 : 0;
}

std::string purposeMark(diet::Purpose purpose) {
  return purpose == diet::Purpose::Bowl ? std::string() : " (" + std::string(symbolOf(purpose)) + ")";
}

/// What a label ends with where the bowl is no meal.
std::string purposeIn(const std::string& label) {
  using diet::Purpose;
  for (const Purpose purpose :
       {Purpose::Treat, Purpose::TrainingReward, Purpose::Enrichment, Purpose::Browse})
    if (label.ends_with(purposeMark(purpose))) return purposeMark(purpose);
  return {};
}

bool isOfOneMeal(const Bowl& a, const Bowl& b) {
  return a.key.group == b.key.group && a.meal == b.meal && a.diet == b.diet;
}

std::string labelOf(const GroupOfDay& group, const DietOfDay& diet, const DietLine& line) {
  std::string label = group.name;
  if (group.diets.size() > 1) label += ", " + diet.diet.name;
  if (!line.meal.empty()) label += ", " + line.meal;
  return label + purposeMark(line.purpose);
}

PrepBowl emptyBowl(const GroupOfDay& group, const DietOfDay& diet, const DietLine& line, quantity::Date day) {
  PrepBowl made{.groupName = group.name, .bodyMass = group.bodyMass};
  Bowl& bowl = made.bowl;
  bowl.key = {group.code, day, 0};
  bowl.meal = line.meal;
  bowl.label = labelOf(group, diet, line);
  bowl.diet = diet.diet.code;
  bowl.version = diet.version.number;
  bowl.animals = group.animals.value_or(0);
  if (line.purpose != diet::Purpose::Bowl) made.purpose = symbolOf(line.purpose);
  made.phaseDays = diet.version.phaseInDays;
  return made;
}

void addDiet(const GroupOfDay& group, const DietOfDay& diet, quantity::Date day, const FoodLookup& foodOf,
             std::vector<PrepBowl>& bowls) {
  const LinesOfDay lines = linesOn(diet, day, foodOf);
  const std::size_t first = bowls.size();
  for (const DietLine& line : lines.lines) {
    if (!(line.amount > Grams(0))) continue;
    const std::string label = labelOf(group, diet, line);
    auto bowl = std::find_if(bowls.begin() + static_cast<std::ptrdiff_t>(first), bowls.end(),
                             [&](const PrepBowl& b) { return b.bowl.label == label; });
    if (bowl == bowls.end()) {
      bowl = bowls.insert(bowls.end(), emptyBowl(group, diet, line, day));
      bowl->phaseDay = lines.phaseDay;
    }
    bowl->bowl.items.push_back({.item = static_cast<int>(bowl->bowl.items.size()) + 1,
                                .food = line.food,
                                .planned = line.amount * *group.animals,
                                .preparation = line.preparation});
  }
  if (bowls.size() > first) bowls[first].allowances = diet.version.allowances;
}

}  // namespace

LinesOfDay linesOn(const DietOfDay& diet, quantity::Date day, const FoodLookup& foodOf) {
  if (diet.dayPlan) return {*diet.dayPlan, 0};
  const int phaseDay = phaseDayOf(diet, day);
  if (phaseDay == 0) return {diet.version.lines, 0};
  return {mixed(diet, phaseDay, foodOf), phaseDay};
}

Grams PrepBowl::total() const {
  Grams sum;
  for (const BowlItem& item : bowl.items)
    if (!item.swappedOut) sum += item.planned;
  return sum;
}

std::vector<std::optional<std::size_t>> sameBowls(std::span<const Bowl> bowls, std::span<const Bowl> there) {
  std::vector<std::optional<std::size_t>> found(bowls.size());
  std::vector<bool> isTaken(there.size(), false);
  const auto findAll = [&](const auto& isSame) {
    for (std::size_t i = 0; i < bowls.size(); ++i)
      for (std::size_t j = 0; j < there.size() && !found[i]; ++j)
        if (!isTaken[j] && isOfOneMeal(bowls[i], there[j]) && isSame(bowls[i], there[j])) {
          found[i] = j;
          isTaken[j] = true;
        }
  };
  findAll([](const Bowl& a, const Bowl& b) { return a.label == b.label; });
  findAll([](const Bowl& a, const Bowl& b) {
    return !a.diet.empty() && purposeIn(a.label) == purposeIn(b.label);
  });
  return found;
}

std::vector<PrepBowl> bowlsOf(const GroupOfDay& group, quantity::Date day, const FoodLookup& foodOf) {
  std::vector<PrepBowl> bowls;
  if (group.animals.value_or(0) < 1) return bowls;
  for (const DietOfDay& diet : group.diets) addDiet(group, diet, day, foodOf, bowls);
  int number = 0;
  for (PrepBowl& bowl : bowls) bowl.bowl.key.bowl = ++number;
  return bowls;
}

std::optional<NoBowl> noBowlOf(const GroupOfDay& group) {
  if (group.diets.empty()) return group.animals == 0 ? std::nullopt : std::optional(NoBowl::NoDiet);
  if (!group.animals) return NoBowl::HeadcountUnknown;
  return *group.animals == 0 ? NoBowl::NoAnimals : NoBowl::NothingPlanned;
}

}  // namespace tarebowl::intake
