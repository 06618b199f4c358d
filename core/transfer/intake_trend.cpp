// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/intake_trend.h"

#include "core/intake/time_of_sheet.h"
#include "core/store/feeding_reading.h"
#include "core/store/reading.h"
#include "core/transfer/judged_problem.h"

#include <algorithm>
#include <utility>

namespace tarebowl::transfer {

namespace {

using intake::dayNumber;
using intake::dayOfNumber;
using quantity::Date;

constexpr int kWeek = 7;
constexpr int kLongestChoice = 182;  // also the most days of bowls that are in memory at once
constexpr int kChoicesInRange = 12;
constexpr std::size_t kSlipsTold = 5;
constexpr double kNoScatter = 2.0;  // standard deviations

/// Points of more than three days are whole weeks: what is fed on Sundays alone falls into each of them.
int daysAPointOf(int days, int mostPoints) {
  const int least = (days + mostPoints - 1) / std::max(1, mostPoints);
  constexpr int kMostLooseDays = 3;
  return least <= kMostLooseDays ? std::max(1, least) : (least + kWeek - 1) / kWeek * kWeek;
}

animal::Target aDay(food::NutrientId nutrient) {
  const auto& known = food::describe(nutrient);
  return {.id = std::string(known.tagname),
          .nutrient = nutrient,
          .min = {},
          .max = {},
          .unit = known.unit,
          .basis = quantity::Basis::Day,
          .origin = {}};
}

/// The zone of the group where it has one.
animal::RatioTarget calciumToPhosphorus(const diet::BalanceProblem& problem) {
  const auto found = std::ranges::find_if(problem.ratios, [](const animal::RatioTarget& ratio) {
    return ratio.of == food::nutrients::calcium() && ratio.to == food::nutrients::phosphorus();
  });
  if (found != problem.ratios.end()) return *found;
  return {.id = "ca-p",
          .of = food::nutrients::calcium(),
          .to = food::nutrients::phosphorus(),
          .min = {},
          .max = {},
          .origin = {}};
}

void addSubject(diet::BalanceProblem& followed, const diet::BalanceProblem& all,
                const TrendSubject& subject) {
  if (const auto* nutrient = std::get_if<food::NutrientId>(&subject))
    return followed.targets.push_back(aDay(*nutrient));
  const auto& id = std::get<std::string>(subject);
  const auto target = std::ranges::find(all.targets, id, &animal::Target::id);
  if (target != all.targets.end()) return followed.targets.push_back(*target);
  const auto ratio = std::ranges::find(all.ratios, id, &animal::RatioTarget::id);
  if (ratio != all.ratios.end()) return followed.ratios.push_back(*ratio);
  const auto calcium = std::ranges::find(all.targets, food::nutrients::calcium(), &animal::Target::nutrient);
  followed.targets.push_back(calcium != all.targets.end() ? *calcium : aDay(food::nutrients::calcium()));
}

constexpr int kHistoryDays = static_cast<int>(intake::DropRule().historyDays);

/// The stretches of days that are read one after another.
struct Stretches {
  explicit Stretches(const TrendAsked& asked)
      : first(dayNumber(asked.from)),
        last(dayNumber(asked.to)),
        daysAPoint(daysAPointOf(last - first + 1, asked.mostPoints)),
        step(std::max(1,
                      std::clamp((last - first + 1) / kChoicesInRange, kWeek, kLongestChoice) / daysAPoint) *
             daysAPoint) {}
  /// Whether they are few enough to be read at once, with the history before them.
  [[nodiscard]] bool areHeld() const { return last - first + 1 + kHistoryDays <= kLongestChoice; }
  void holdIn(IntakeReader& reader) const {
    reader.hold(dayOfNumber(first - kHistoryDays), dayOfNumber(last));
  }
  int first;
  int last;  ///< of all
  int daysAPoint;
  int step;  ///< days from one to the next
};

/// All that rests on the group's code and the days alone, before it is known which foods were fed.
void askForTrend(const store::Collection& collection, const TrendAsked& asked) {
  const Stretches days(asked);
  store::askAhead(
      collection, [&] { return store::knowGroup(collection, asked.group, asked.to); },
      [&] { return store::fedSpan(collection, asked.group, asked.from, asked.to); });
  IntakeReader reader(collection, asked.group, {});
  if (days.areHeld()) {
    bool isHeld = false;
    store::askAhead(collection, [&] {
      days.holdIn(reader);
      isHeld = true;
    });
    if (!isHeld) return;
  }
  const auto read = [&](int from, int to) {
    store::askAhead(collection, [&] { return reader.askFor(dayOfNumber(from), dayOfNumber(to)); });
  };
  store::askAhead(collection, [&] {
    if (const auto fed = store::fedSpan(collection, asked.group, asked.from, asked.to))
      askForIntake(collection, reader, dayOfNumber(dayNumber(fed->last) - kWeek + 1), fed->last);
  });
  read(days.first - kHistoryDays, days.first - 1);
  for (int first = days.first; first <= days.last; first += days.step)
    read(first, std::min(days.last, first + days.step - 1));
}

class TrendReader {
 public:
  TrendReader(const store::Collection& collection, const TrendAsked& asked, store::KnownGroup group)
      : collection_(collection),
        asked_(asked),
        days_(asked),
        reader_(collection, asked.group, group.group.record.section) {
    trend_.group = std::move(group);
    trend_.from = asked.from;
    trend_.to = asked.to;
    trend_.invented = trend_.group.group.record.invented;
    trend_.masses = trend_.group.memberMasses;
    trend_.daysAPoint = days_.daysAPoint;
  }

  IntakeTrend read() {
    if (days_.areHeld()) days_.holdIn(reader_);
    prepare();
    readHistory();
    for (int first = days_.first; first <= days_.last; first += days_.step)
      readStretch(first, std::min(days_.last, first + days_.step - 1), first + days_.step > days_.last);
    findDrops();
    trend_.problem = judgedProblem(trend_.group, foodsKnown(reader_), method_);
    for (const auto& [code, food] : reader_.foods())
      if (!food) trend_.unknownFoods.push_back(code);
    return std::move(trend_);
  }

 private:
  /// What is followed, as the diet of the last week has it.
  void prepare() {
    if (const auto fed = store::fedSpan(collection_, asked_.group, trend_.from, trend_.to))
      method_ =
          energyMethodOf(collection_, reader_.read(dayOfNumber(dayNumber(fed->last) - kWeek + 1), fed->last));
    const diet::BalanceProblem all = judgedProblem(trend_.group, foodsKnown(reader_), method_);
    trend_.followed.eater = all.eater;
    trend_.followed.energyMethod = method_;
    addSubject(trend_.followed, all, asked_.subject);
    trend_.followed.ratios.push_back(calciumToPhosphorus(all));
  }

  [[nodiscard]] intake::Followed followed() const {
    diet::BalanceProblem problem = trend_.followed;
    problem.foods = foodsKnownOrNot(reader_);
    return intake::Followed(std::move(problem));
  }

  /// The days before the first one that drops are judged by.
  void readHistory() {
    const int first = dayNumber(trend_.from);
    const auto read = reader_.read(dayOfNumber(first - kHistoryDays), dayOfNumber(first - 1));
    noteDays(read.eaten, followed());
  }

  void noteDays(std::span<const intake::EatenBowl> bowls, const intake::Followed& follow) {
    for (std::size_t first = 0; first < bowls.size();) {
      std::size_t end = first;
      while (end < bowls.size() && bowls[end].day == bowls[first].day) ++end;
      const auto values = follow.onDay(bowls.subspan(first, end - first));
      grams_.push_back({bowls[first].day, values.at(0)});
      subject_.push_back({bowls[first].day, values.at(1 + kSubjectLine)});
      first = end;
    }
  }

  void readStretch(int first, int last, bool isLast) {
    const auto read = reader_.read(dayOfNumber(first), dayOfNumber(last));
    const intake::Followed follow = followed();
    std::span<const intake::EatenBowl> rest(read.eaten);
    for (int from = first; from <= last; from += trend_.daysAPoint) {
      const Date until = dayOfNumber(std::min(last, from + trend_.daysAPoint - 1));
      std::size_t count = 0;
      while (count < rest.size() && rest[count].day <= until) ++count;
      trend_.points.push_back(follow.over(dayOfNumber(from), until, rest.first(count)));
      rest = rest.subspan(count);
    }
    noteDays(read.eaten, follow);
    noteFindings(read.eaten);
    trend_.pans += read.pansOfDays;
    trend_.choices.push_back({dayOfNumber(first), dayOfNumber(last),
                              intake::choiceByLabel(read.eaten, {.leaveOutClasses = classesWithoutPans()})});
    if (isLast) trend_.fractions = intake::learnFractions(read.eaten);
  }

  void noteFindings(std::span<const intake::EatenBowl> bowls) {
    for (const intake::EatenBowl& bowl : bowls)
      for (const intake::Finding& finding : bowl.findings) {
        ++trend_.findings[finding.kind];
        if (finding.kind != intake::FindingKind::LeftoverAboveOffered || finding.sds < kNoScatter) continue;
        if (trend_.slips.size() == kSlipsTold) trend_.slips.erase(trend_.slips.begin());
        trend_.slips.push_back({bowl.day, bowl.items[finding.item].food, finding.amount});
      }
  }

  void findDrops() {
    trend_.foodDrops = dropsSince(grams_);
    trend_.subjectDrops = dropsSince(subject_);
  }

  [[nodiscard]] std::vector<intake::Drop> dropsSince(const std::vector<intake::DayValue>& days) const {
    std::vector<intake::Drop> drops = intake::dropsIn(intake::onCalendar(days), trend_.dropRule);
    std::erase_if(drops, [&](const intake::Drop& drop) { return drop.until < trend_.from; });
    return drops;
  }

  const store::Collection& collection_;
  const TrendAsked& asked_;
  Stretches days_;
  IntakeReader reader_;
  food::EnergyMethod method_ = food::EnergyMethod::ModifiedAtwater;
  std::vector<intake::DayValue> grams_;
  std::vector<intake::DayValue> subject_;
  IntakeTrend trend_;
};

}  // namespace

std::optional<IntakeTrend> readTrend(const store::Collection& collection, const TrendAsked& asked) {
  if (store::gathers(collection)) askForTrend(collection, asked);
  auto group = store::knowGroup(collection, asked.group, asked.to);
  if (!group || asked.from > asked.to) return std::nullopt;
  return TrendReader(collection, asked, std::move(*group)).read();
}

}  // namespace tarebowl::transfer
