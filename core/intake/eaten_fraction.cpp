// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/eaten_fraction.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace tarebowl::intake {

namespace {

constexpr std::size_t kFoodsToLearnFrom = 4;

/// A food's own bowls.
struct OwnHistory {
  double offered = 0.0;
  double eaten = 0.0;
  std::vector<double> fractions{};

  void add(const EatenItem& item) {
    if (!item.eaten || !(item.offered > 0.0)) return;
    offered += item.offered;
    eaten += item.eaten->value();
    fractions.push_back(item.eaten->value() / item.offered);
  }
  [[nodiscard]] double count() const { return static_cast<double>(fractions.size()); }
  [[nodiscard]] double fraction() const { return eaten / offered; }
  [[nodiscard]] double squares() const {
    double sum = 0.0;
    for (const double value : fractions) sum += (value - fraction()) * (value - fraction());
    return sum;
  }
};

/// What the foods of a class have in common.
struct ClassHistory {
  std::map<std::string, OwnHistory> foods{};
  double bowlVariance = 0.0;  ///< s²
  double tauSquared = 0.0;
  double mean = 0.0;
  double meanVariance = 0.0;
  double count = 0.0;  ///< K, foods with bowls
  bool shrinks = false;

  void learn() {
    double freedom = 0.0;
    std::vector<const OwnHistory*> known;
    for (const auto& [name, food] : foods) {
      if (food.fractions.empty()) continue;
      known.push_back(&food);
      bowlVariance += food.squares();
      freedom += food.count() - 1.0;
    }
    bowlVariance = freedom > 0.0 ? bowlVariance / freedom : 0.0;
    count = static_cast<double>(known.size());
    shrinks = known.size() >= kFoodsToLearnFrom && freedom > 0.0;
    if (shrinks) learnBetween(known);
  }

  void learnBetween(const std::vector<const OwnHistory*>& known) {
    // Foods that never varied still are not known to the last digit.
    const double least = 1e-12;
    double w = 0.0;
    double ww = 0.0;
    double wf = 0.0;
    const auto fixedWeight = [&](const OwnHistory& food) {
      return food.count() / std::max(bowlVariance, least);
    };
    for (const OwnHistory* food : known) {
      w += fixedWeight(*food);
      ww += fixedWeight(*food) * fixedWeight(*food);
      wf += fixedWeight(*food) * food->fraction();
    }
    double q = 0.0;
    for (const OwnHistory* food : known)
      q += fixedWeight(*food) * (food->fraction() - wf / w) * (food->fraction() - wf / w);
    tauSquared = std::max(0.0, (q - static_cast<double>(known.size() - 1)) / (w - ww / w));
    double sum = 0.0;
    for (const OwnHistory* food : known) {
      const double weight = 1.0 / (tauSquared + std::max(bowlVariance, least) / food->count());
      sum += weight;
      mean += weight * food->fraction();
    }
    mean /= sum;
    meanVariance = 1.0 / sum;
  }

  void fill(EatenFraction& entry) const {
    entry.dayScatter = std::sqrt(bowlVariance);
    const auto found = foods.find(entry.food);
    const bool hasOwn = found != foods.end() && !found->second.fractions.empty();
    if (!hasOwn) {
      entry.from = FractionFrom::Class;
      entry.ownWeight = 0.0;
      entry.fraction = mean;
      entry.sd = std::sqrt(tauSquared + meanVariance);
      return;
    }
    const OwnHistory& own = found->second;
    const double v = bowlVariance / own.count();
    entry.own = own.fraction();
    entry.fraction = own.fraction();
    entry.bowls = own.fractions.size();
    entry.sd = std::sqrt(v);
    if (!shrinks) return;
    const double toClass = v > 0.0 ? (count - 3.0) / (count - 1.0) * v / (v + tauSquared) : 0.0;
    const double away = own.fraction() - mean;
    entry.from = FractionFrom::Shrunk;
    entry.ownWeight = 1.0 - toClass;
    entry.fraction = own.fraction() - toClass * away;
    entry.sd = std::sqrt(v * (1.0 - toClass * (count - 1.0) / count) +
                         2.0 / (count - 3.0) * toClass * toClass * away * away);
  }
};

void scatterWith(diet::DietFood& food, double relative) {
  for (const food::NutrientId nutrient : food.composition.knownNutrients()) {
    food::NutrientValue value = *food.composition.find(nutrient);
    if (nutrient == food::nutrients::water()) continue;  // a share of the food, however much is eaten
    const double c = value.amount.value();
    const double s = value.sd ? value.sd->value() : 0.0;
    value.sd = quantity::AsFedContent(std::sqrt(s * s + (c * c + s * s) * relative * relative));
    food.composition.set(nutrient, std::move(value));
  }
}

}  // namespace

std::vector<EatenFraction> learnFractions(std::span<const EatenBowl> bowls,
                                          std::span<const FoodOfClass> alsoAsked) {
  std::map<std::string, ClassHistory> classes;
  std::vector<FoodOfClass> asked;
  const auto ask = [&](const std::string& food, const std::string& foodClass) {
    if (std::ranges::find(asked, food, &FoodOfClass::food) == asked.end()) asked.push_back({food, foodClass});
  };
  for (const EatenBowl& bowl : bowls)
    for (const EatenItem& item : bowl.items) {
      classes[item.foodClass].foods[item.food].add(item);
      ask(item.food, item.foodClass);
    }
  for (const FoodOfClass& also : alsoAsked) ask(also.food, also.foodClass);
  for (auto& [name, history] : classes) history.learn();

  std::vector<EatenFraction> fractions;
  for (const FoodOfClass& food : asked) {
    const ClassHistory& history = classes[food.foodClass];
    const auto own = history.foods.find(food.food);
    const bool hasOwn = own != history.foods.end() && !own->second.fractions.empty();
    if (!hasOwn && !history.shrinks) continue;
    EatenFraction& entry = fractions.emplace_back();
    entry.food = food.food;
    entry.foodClass = food.foodClass;
    history.fill(entry);
  }
  return fractions;
}

diet::BalanceProblem onWhatIsEaten(diet::BalanceProblem problem, std::span<const EatenFraction> fractions) {
  for (diet::DietFood& food : problem.foods) {
    const auto found = std::ranges::find(fractions, food.id, &EatenFraction::food);
    if (found == fractions.end()) continue;
    food.eatenFraction = std::clamp(found->fraction, 0.0, 1.0);
    if (food.eatenFraction > 0.0 && found->sd > 0.0) scatterWith(food, found->sd / food.eatenFraction);
  }
  return problem;
}

}  // namespace tarebowl::intake
