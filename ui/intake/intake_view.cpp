// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/intake_view.h"

#include "ui/diets/target_names.h"
#include "ui/shared/band_colors.h"
#include "ui/shared/days.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <utility>

namespace tarebowl::ui {
namespace {

struct Intake {
  Q_DECLARE_TR_FUNCTIONS(Intake)
};

std::vector<ChartDays> pointsOf(const transfer::IntakeTrend& trend) {
  std::vector<ChartDays> points;
  points.reserve(trend.points.size());
  for (const intake::IntakeStretch& stretch : trend.points)
    points.push_back({daysOf(stretch.from, stretch.until), stretch.days, stretch.daysKnown, stretch.bowls,
                      stretch.bowlsKnown});
  return points;
}

/// Codes by all that was offered, the most first.
std::vector<std::string> byWeight(const transfer::IntakeTrend& trend) {
  std::map<std::string, double> offered;
  for (const intake::IntakeStretch& stretch : trend.points)
    for (const intake::StretchFood& food : stretch.foods) offered[food.food] += food.offered;
  std::vector<std::pair<std::string, double>> foods(offered.begin(), offered.end());
  std::ranges::stable_sort(foods, std::ranges::greater{}, &std::pair<std::string, double>::second);
  std::vector<std::string> codes;
  for (auto& [code, grams] : foods) codes.push_back(code);
  return codes;
}

RungRef rungOf(const diet::BalanceProblem& followed, std::size_t line) {
  const std::size_t targets = followed.targets.size();
  return line < targets ? RungRef{diet::TargetKind::Nutrient, line}
                        : RungRef{diet::TargetKind::Ratio, line - targets};
}

}  // namespace

DaySpan daysOf(quantity::Date from, quantity::Date until) {
  return {toQDate(from), toQDate(until)};
}

QString foodNameIn(const transfer::IntakeTrend& trend, const std::string& code) {
  const auto found = std::ranges::find(trend.problem.foods, code, &diet::DietFood::id);
  const bool isNamed = found != trend.problem.foods.end() && !found->name.empty();
  return QString::fromStdString(isNamed ? found->name : code);
}

FoodBands foodBandsOf(const transfer::IntakeTrend& trend) {
  FoodBands shown{.points = pointsOf(trend)};
  const std::vector<std::string> codes = byWeight(trend);
  std::map<std::string, std::size_t> bandOf;
  for (std::size_t i = 0; i < codes.size(); ++i) {
    // The last band is a food of its own where nothing else would be in it.
    const bool isOther = static_cast<int>(i) >= kBands && static_cast<int>(codes.size()) > kBands + 1;
    if (!isOther || static_cast<int>(i) == kBands)
      shown.bands.push_back({.name = isOther ? Intake::tr("%1 others").arg(codes.size() - kBands)
                                             : foodNameIn(trend, codes[i])});
    bandOf[codes[i]] = shown.bands.size() - 1;
  }
  for (FoodBand& band : shown.bands) {
    band.offered.resize(trend.points.size());
    band.eaten.resize(trend.points.size());
  }
  for (std::size_t i = 0; i < trend.points.size(); ++i) {
    const intake::IntakeStretch& stretch = trend.points[i];
    if (stretch.daysKnown == 0) continue;
    const auto days = static_cast<double>(stretch.daysKnown);
    for (const intake::StretchFood& food : stretch.foods) {
      FoodBand& band = shown.bands[bandOf.at(food.food)];
      band.offered[i] += food.offered / days;
      band.eaten[i] += std::max(0.0, food.eaten / days);
    }
  }
  return shown;
}

ValueLine valueLineOf(const transfer::IntakeTrend& trend, std::size_t line) {
  const RungRef rung = rungOf(trend.followed, line);
  const Bounds bounds = boundsOf(trend.followed, rung);
  ValueLine shown{.name = rungName(trend.followed, rung),
                  .unit = rungUnit(trend.followed, rung),
                  .min = bounds.min,
                  .max = bounds.max,
                  .points = pointsOf(trend)};
  for (const intake::IntakeStretch& stretch : trend.points) {
    const intake::StretchValue value =
        stretch.values.empty() ? intake::StretchValue{} : stretch.values.at(line);
    shown.offered.push_back(value.offered);
    shown.eaten.push_back(value.eaten);
    shown.sd.push_back(value.sd);
  }
  if (line == transfer::kSubjectLine) shown.drops = trend.subjectDrops;
  return shown;
}

std::vector<std::string> choiceLabels(const transfer::IntakeTrend& trend) {
  std::map<std::string, std::size_t> told;
  for (const transfer::ChoiceStretch& stretch : trend.choices)
    for (const intake::BowlChoice& bowl : stretch.bowls)
      if (bowl.choice.neutral > 0.0) told[bowl.label] += bowl.choice.bowls;
  std::vector<std::string> labels;
  for (const auto& [label, bowls] : told) labels.push_back(label);
  std::ranges::stable_sort(labels, [&](const auto& a, const auto& b) { return told[a] > told[b]; });
  return labels;
}

ChoiceLines choiceLinesOf(const transfer::IntakeTrend& trend, const std::string& label) {
  ChoiceLines shown{.label = label};
  std::map<std::string, std::size_t> lineOf;
  for (std::size_t i = 0; i < trend.choices.size(); ++i) {
    const transfer::ChoiceStretch& stretch = trend.choices[i];
    shown.periods.push_back(daysOf(stretch.from, stretch.until));
    const auto bowl = std::ranges::find(stretch.bowls, label, &intake::BowlChoice::label);
    shown.bowls.push_back(bowl == stretch.bowls.end() ? 0 : bowl->choice.bowls);
    if (bowl == stretch.bowls.end()) continue;
    if (bowl->choice.neutral > 0.0) shown.neutral = bowl->choice.neutral;
    for (const intake::FoodChoice& food : bowl->choice.foods) {
      if (!food.alpha) continue;
      const auto [at, fresh] = lineOf.try_emplace(food.food, shown.foods.size());
      if (fresh) {
        shown.foods.push_back({.name = foodNameIn(trend, food.food)});
        shown.foods.back().alpha.resize(trend.choices.size());
        shown.foods.back().interval.resize(trend.choices.size());
      }
      shown.foods[at->second].alpha[i] = food.alpha;
      shown.foods[at->second].interval[i] = food.interval;
    }
  }
  return shown;
}

}  // namespace tarebowl::ui
