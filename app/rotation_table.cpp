// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/rotation_table.h"

#include "app/result_table.h"
#include "app/text_table.h"
#include "core/diet/rotation_purchase.h"
#include "core/exchange/line_words.h"
#include "core/exchange/rotation_json.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace tarebowl::app {

namespace {

using diet::RotationPlan;
using diet::RotationProblem;
using diet::RotationStatus;
using exchange::shortNumber;
using Align = TextTable::Align;

std::string verdict(const RotationPlan& plan) {
  switch (plan.status) {
    case RotationStatus::Balanced:
      return "Balanced: the period's zones and each day's hold.\n";
    case RotationStatus::Compromise:
      return fmt::format("Compromise: shortfall {} over the period, {} on the days.\n",
                         shortNumber(plan.period.value), shortNumber(plan.daily.value));
    case RotationStatus::Impossible:
      return fmt::format("Impossible: no plan keeps these rules ({}).\n", plan.reason);
    case RotationStatus::Stopped:
      return fmt::format("No plan in the time given ({}); allow more with --seconds.\n", plan.reason);
    case RotationStatus::Failed:
      break;
  }
  return fmt::format("No plan that passed its own checks ({}).\n", plan.reason);
}

/// What is proven of one question, where anything is left open.
std::string openText(std::string_view of, const diet::Reached& reached) {
  if (reached.gap() <= 0.0) return {};
  return fmt::format("  {}: {}, and nothing betters {}\n", of, shortNumber(reached.value),
                     shortNumber(reached.bound));
}

std::string howGood(const RotationPlan& plan) {
  const std::string open =
      openText("shortfall of the period", plan.period) + openText("shortfall of the days", plan.daily) +
      openText("what lacks to variety and stock", plan.wishes) + openText("what is sought", plan.objective);
  if (open.empty()) return "Proven: no plan is better.\n";
  return "Not proven the best:\n" + open;
}

bool isOver(const RotationProblem& problem, int day) {
  return std::ranges::find(problem.rules.fed, day, &diet::FedDay::day) != problem.rules.fed.end();
}

std::string dayTitle(const RotationProblem& problem, int day, std::optional<quantity::Date> from) {
  const std::string mark = isOver(problem, day) ? " fed" : "";
  if (from) return quantity::isoDate(exchange::dateOfDay(*from, day)).substr(5) + mark;
  return fmt::format("day {}{}", day + 1, mark);
}

std::string calendar(const RotationProblem& problem, const RotationPlan& plan,
                     std::optional<quantity::Date> from) {
  constexpr int kDaysOfWeek = 7;
  std::string text = "Grams per animal:\n";
  const int count = static_cast<int>(plan.days.size());
  for (int first = 0; first < count; first += kDaysOfWeek) {
    const int end = std::min(count, first + kDaysOfWeek);
    std::vector<TextTable::Column> columns{{"Food", Align::Left}};
    for (int day = first; day < end; ++day) columns.push_back({dayTitle(problem, day, from), Align::Right});
    TextTable table(columns);
    for (std::size_t j = 0; j < problem.base.foods.size(); ++j) {
      const diet::DietFood& food = problem.base.foods[j];
      std::vector<std::string> cells{exchange::nameOf(food)};
      bool isFed = false;
      for (int day = first; day < end; ++day) {
        const quantity::Grams grams = plan.days[std::size_t(day)][j];
        isFed = isFed || grams.value() > 0.0;
        cells.push_back(grams.value() > 0.0 ? exchange::gramsText(grams, food.scaleStep) : "·");
      }
      if (isFed) table.addRow(std::move(cells));
    }
    text += table.text() + '\n';
  }
  return text;
}

/// What a day lacks against its own, wider zones.
std::string dayLacks(const RotationProblem& problem, const RotationPlan& plan,
                     std::optional<quantity::Date> from) {
  std::string text;
  for (std::size_t day = 0; day < plan.dayBalances.size(); ++day) {
    std::string missed;
    for (const diet::TargetBalance& line : plan.dayBalances[day].targets)
      if (line.shortfall > diet::kNoShortfall)
        missed += fmt::format("{}{} {} by {}", missed.empty() ? "" : ", ", line.id,
                              exchange::stateText(line.state), exchange::percentText(line.shortfall));
    if (!missed.empty())
      text += fmt::format("  {}: {}\n", dayTitle(problem, static_cast<int>(day), from), missed);
  }
  return text.empty() ? text : "Outside the days' own zones:\n" + text + '\n';
}

std::string purchaseTable(const RotationProblem& problem, const RotationPlan& plan) {
  TextTable table({{"Week", Align::Right},
                   {"Group", Align::Left},
                   {"Food", Align::Left},
                   {"Offered, kg", Align::Right},
                   {"To buy, kg", Align::Right}});
  bool isAllKnown = true;
  for (const diet::PurchaseLine& line : diet::purchaseList(problem, plan.days)) {
    const diet::DietFood& food = problem.base.foods[line.food];
    isAllKnown = isAllKnown && line.lossIsKnown;
    table.addRow({std::to_string(line.week + 1), food.group, exchange::nameOf(food),
                  fmt::format("{:.3f}", line.offered.value()),
                  fmt::format("{:.3f}{}", line.bought.value(), line.lossIsKnown ? "" : " ?")});
  }
  for (const diet::PurchaseOfGroup& group : diet::byGroup(problem, diet::purchaseList(problem, plan.days)))
    table.addRow({std::to_string(group.week + 1), group.group, "in all",
                  fmt::format("{:.3f}", group.offered.value()),
                  fmt::format("{:.3f}{}", group.bought.value(), group.lossIsKnown ? "" : " ?")});
  const std::string note = isAllKnown ? "" : "?: how much of it is lost in trimming is not known.\n";
  return fmt::format("To buy for {}:\n",
                     exchange::counted(std::size_t(problem.base.eater.count), "animal", "animals")) +
         table.text() + note + '\n';
}

}  // namespace

std::string rotationTable(const RotationProblem& problem, const RotationPlan& plan,
                          std::optional<quantity::Date> from) {
  std::string text = problemHeading(problem.base) + verdict(plan);
  if (plan.days.empty()) return text;
  text += howGood(plan) + '\n' + calendar(problem, plan, from);
  text += fmt::format("The mean of the {} days against the period's zones:\n", plan.days.size()) +
          ladderTable(diet::zonedProblem(problem.base, problem.rules.period), plan.periodBalance) + '\n';
  return text + dayLacks(problem, plan, from) + purchaseTable(problem, plan) +
         std::string(exchange::kCaution);
}

}  // namespace tarebowl::app
