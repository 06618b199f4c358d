// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/choice.h"

#include "core/intake/choice_indices.h"
#include "core/intake/student.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace tarebowl::intake {

namespace {

constexpr double kMostBowls = 0.5;
constexpr std::size_t kBowlsForInterval = 3;

/// Everything taken, within what a scale of 1 part in 10,000 could tell.
bool isEatenUp(const EatenItem& item) {
  constexpr double kNothing = 1e-9;
  return item.allEaten || (item.eaten && item.eaten->value() >= item.offered * (1.0 - kNothing));
}

bool isOffered(const EatenItem& item) {
  return item.offered > 0.0;
}

/// ln of what is left: 0 where nothing was eaten, above 0 where something was.
double depletion(const EatenItem& item) {
  return -std::log1p(-item.eaten->value() / item.offered);
}

/// Bowls have their foods mostly in one order: looked for from where the last one stood on.
const EatenItem* itemOf(const EatenBowl& bowl, const std::string& food, std::size_t& next) {
  const std::size_t count = bowl.items.size();
  for (std::size_t k = 0; k < count; ++k) {
    const std::size_t i = (next + k) % count;
    if (bowl.items[i].food != food || !isOffered(bowl.items[i])) continue;
    next = i + 1;
    return &bowl.items[i];
  }
  return nullptr;
}

/// Bowls x foods.
using Depletions = std::vector<std::vector<double>>;

class ChoiceMaker {
 public:
  ChoiceMaker(std::vector<const EatenBowl*> bowls, const ChoiceRule& rule)
      : bowls_(std::move(bowls)), rule_(rule) {}

  Choice make() {
    countFoods();
    chooseFoods();
    const Depletions depletions = gather();
    choice_.bowls = depletions.size();
    fillAlpha(depletions);
    for (FoodChoice& food : choice_.foods) food.ivlev = ivlevOf(food);
    std::ranges::stable_sort(choice_.foods, std::ranges::greater{}, &FoodChoice::alpha);
    return std::move(choice_);
  }

 private:
  void countFoods() {
    std::map<std::string, std::size_t> index;
    for (const EatenBowl* bowl : bowls_)
      for (const EatenItem& item : bowl->items) {
        if (!isOffered(item) || isLeftOut(item)) continue;
        const auto [at, fresh] = index.try_emplace(item.food, choice_.foods.size());
        if (fresh) choice_.foods.push_back({.food = item.food});
        FoodChoice& food = choice_.foods[at->second];
        if (!item.eaten) continue;
        ++food.bowls;
        food.bowlsAllEaten += isEatenUp(item) ? 1 : 0;
        food.offered += item.offered;
        food.eaten += item.eaten->value();
      }
  }

  [[nodiscard]] bool isLeftOut(const EatenItem& item) const {
    const auto names = [](const std::vector<std::string>& list, const std::string& text) {
      return std::ranges::find(list, text) != list.end();
    };
    return names(rule_.leaveOut, item.food) || names(rule_.leaveOutClasses, item.foodClass);
  }

  void chooseFoods() {
    const auto most = kMostBowls * static_cast<double>(bowls_.size());
    for (std::size_t i = 0; i < choice_.foods.size(); ++i) {
      FoodChoice& food = choice_.foods[i];
      if (static_cast<double>(food.bowls) < most || food.bowls == 0)
        food.state = ChoiceState::RarelyOffered;
      else if (static_cast<double>(food.bowlsAllEaten) > kMostBowls * static_cast<double>(food.bowls))
        food.state = ChoiceState::AllEaten;
      else
        compared_.push_back(i);
    }
    if (compared_.size() == 1) choice_.foods[compared_.front()].state = ChoiceState::Alone;
    if (compared_.size() < 2) compared_.clear();
  }

  Depletions gather() {
    Depletions depletions;
    if (compared_.empty()) return depletions;
    for (const EatenBowl* bowl : bowls_) {
      std::vector<double> row;
      row.reserve(compared_.size());
      bool emptied = false;
      std::size_t next = 0;
      for (const std::size_t food : compared_) {
        const EatenItem* item = itemOf(*bowl, choice_.foods[food].food, next);
        if (item == nullptr || !item->eaten) break;
        emptied = emptied || isEatenUp(*item);
        row.push_back(isEatenUp(*item) ? 0.0 : depletion(*item));
      }
      if (row.size() < compared_.size())
        ++choice_.bowlsNotKnown;
      else if (emptied)
        ++choice_.bowlsEmptied;
      else
        depletions.push_back(std::move(row));
    }
    return depletions;
  }

  void fillAlpha(const Depletions& depletions) {
    if (compared_.empty() || depletions.empty()) return;
    choice_.neutral = 1.0 / static_cast<double>(compared_.size());
    std::vector<double> sums(compared_.size());
    double all = 0.0;
    for (const auto& row : depletions)
      for (std::size_t i = 0; i < row.size(); ++i) {
        sums[i] += row[i];
        all += row[i];
      }
    const bool isEnough = depletions.size() >= kBowlsForInterval;
    const double t = isEnough ? quantileFor(depletions.size()) : 0.0;
    for (std::size_t i = 0; i < compared_.size(); ++i) {
      FoodChoice& food = choice_.foods[compared_[i]];
      if (!(all > 0.0)) {
        food.state = ChoiceState::NothingEaten;
        continue;
      }
      food.alpha = sums[i] / all;
      if (isEnough)
        food.interval = intervalOf(*food.alpha, t, standardError(depletions, i, *food.alpha, all));
    }
  }

  static double standardError(const Depletions& depletions, std::size_t food, double alpha, double all) {
    double squares = 0.0;
    for (const auto& row : depletions) {
      double ofBowl = 0.0;
      for (const double value : row) ofBowl += value;
      const double residual = row[food] - alpha * ofBowl;
      squares += residual * residual;
    }
    const auto count = static_cast<double>(depletions.size());
    return std::sqrt(squares * count / (count - 1.0)) / all;
  }

  [[nodiscard]] double quantileFor(std::size_t bowls) const {
    return studentQuantile((1.0 + rule_.confidence) / 2.0, static_cast<double>(bowls) - 1.0);
  }

  static Interval intervalOf(double alpha, double t, double error) {
    if (!(alpha > 0.0 && alpha < 1.0))  // errors of weighing about an untouched food
      return {std::clamp(alpha - t * error, 0.0, 1.0), std::clamp(alpha + t * error, 0.0, 1.0)};
    const double middle = std::log(alpha / (1.0 - alpha));
    const double half = t * error / (alpha * (1.0 - alpha));
    const auto back = [](double logit) { return 1.0 / (1.0 + std::exp(-logit)); };
    return {back(middle - half), back(middle + half)};
  }

  /// Its share of all that was offered, and eaten, in the bowls of the period.
  [[nodiscard]] std::optional<double> ivlevOf(const FoodChoice& food) const {
    double offered = 0.0;
    double eaten = 0.0;
    for (const FoodChoice& other : choice_.foods) {
      offered += other.offered;
      eaten += other.eaten;
    }
    if (!(offered > 0.0) || !(eaten > 0.0) || food.bowls == 0) return std::nullopt;
    return ivlevE(std::max(0.0, food.eaten) / eaten, food.offered / offered);
  }

  std::vector<const EatenBowl*> bowls_;
  const ChoiceRule& rule_;
  Choice choice_;
  std::vector<std::size_t> compared_;
};

}  // namespace

Choice choiceIn(std::span<const EatenBowl> bowls, const ChoiceRule& rule) {
  std::vector<const EatenBowl*> list;
  list.reserve(bowls.size());
  for (const EatenBowl& bowl : bowls) list.push_back(&bowl);
  return ChoiceMaker(std::move(list), rule).make();
}

std::vector<BowlChoice> choiceByLabel(std::span<const EatenBowl> bowls, const ChoiceRule& rule) {
  using OfLabel = std::pair<std::string, std::vector<const EatenBowl*>>;
  std::vector<OfLabel> labels;
  for (const EatenBowl& bowl : bowls) {
    auto found = std::ranges::find(labels, bowl.label, &OfLabel::first);
    if (found == labels.end()) found = labels.insert(found, {bowl.label, {}});
    found->second.push_back(&bowl);
  }
  std::vector<BowlChoice> choices;
  choices.reserve(labels.size());
  for (auto& [label, ofLabel] : labels)
    choices.push_back({label, ChoiceMaker(std::move(ofLabel), rule).make()});
  return choices;
}

std::vector<ChoicePeriod> choiceOverTime(std::span<const EatenBowl> bowls, int days, const ChoiceRule& rule) {
  std::vector<ChoicePeriod> periods;
  std::size_t first = 0;
  while (first < bowls.size()) {
    const auto start = std::chrono::sys_days(bowls.front().day);
    const auto passed = (std::chrono::sys_days(bowls[first].day) - start).count() / days;
    const std::chrono::sys_days from = start + std::chrono::days(passed * days);
    const std::chrono::sys_days end = from + std::chrono::days(days);
    std::size_t last = first;
    while (last < bowls.size() && std::chrono::sys_days(bowls[last].day) < end) ++last;
    periods.push_back({from, end - std::chrono::days(1), choiceIn(bowls.subspan(first, last - first), rule)});
    first = last;
  }
  return periods;
}

}  // namespace tarebowl::intake
