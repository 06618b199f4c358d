// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/trace_text.h"

#include "ui/diets/food_label.h"
#include "ui/diets/sought_button.h"
#include "ui/diets/target_names.h"
#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>
#include <set>

namespace tarebowl::ui {
namespace {

using diet::BoundSide;
using Kind = diet::Objective::Kind;
using Of = diet::TracedBound::Of;

struct TraceWords {
  Q_DECLARE_TR_FUNCTIONS(TraceWords)
};

bool hasCosts(const diet::BalanceProblem& problem) {
  return std::ranges::any_of(problem.foods, [](const auto& food) { return food.costPerKg.has_value(); });
}

/// What can be traded for: closeness, cost, and the least of what has a maximum.
std::vector<diet::Objective> tradable(const diet::BalanceProblem& problem) {
  std::vector<diet::Objective> others{{Kind::Closest, {}}};
  if (hasCosts(problem)) others.push_back({Kind::LowestCost, {}});
  std::set<food::NutrientId> seen;
  for (const animal::Target& target : problem.targets)
    if (seen.insert(target.nutrient).second)
      others.push_back({target.max && !target.min ? Kind::Lowest : Kind::Highest, target.nutrient});
  std::erase(others, problem.objective);
  return others;
}

QString sideText(BoundSide side) {
  return side == BoundSide::Min ? TraceWords::tr("minimum") : TraceWords::tr("maximum");
}

/// Foods that are in the bowl here, by name.
QStringList foodsAt(const diet::BalanceProblem& problem, const diet::TracePoint& point) {
  constexpr double kSeen = 0.005;
  QStringList parts;
  for (std::size_t j = 0; j < point.grams.size(); ++j)
    if (point.grams[j].value() >= kSeen)
      parts << TraceWords::tr("%1 %2 g").arg(distinctName(problem, j), measured(point.grams[j].value()));
  return parts;
}

QStringList missedAt(const diet::BalanceProblem& problem, const diet::TracePoint& point) {
  QStringList parts;
  for (std::size_t i = 0; i < point.shortfalls.size(); ++i)
    if (point.shortfalls[i] > 0.0)
      parts << TraceWords::tr("%1 missed by %2")
                   .arg(rungName(problem, rungOfLine(problem, i)), percent(point.shortfalls[i]));
  return parts;
}

QString placeText(const diet::BalanceProblem& problem, const TraceSubject& subject, double at) {
  const QString unit = subjectUnit(problem, subject);
  const QString number = measured(at * subjectScale(problem, subject));
  return unit.isEmpty() ? number : number + QLatin1Char(' ') + unit;
}

QString changesText(const diet::BalanceProblem& problem, const diet::Trace& trace) {
  QStringList rising;
  QStringList falling;
  const diet::TracePoint& first = trace.points.front();
  const diet::TracePoint& last = trace.points.back();
  for (std::size_t j = 0; j < first.grams.size(); ++j) {
    const double change = last.grams[j].value() - first.grams[j].value();
    if (std::abs(change) < 0.05) continue;
    (change > 0.0 ? rising : falling) << TraceWords::tr("%1 %2 to %3 g")
                                             .arg(distinctName(problem, j), measured(first.grams[j].value()),
                                                  measured(last.grams[j].value()));
  }
  QStringList parts;
  if (!falling.isEmpty()) parts << TraceWords::tr("what gives: %1").arg(falling.join(QStringLiteral(", ")));
  if (!rising.isEmpty()) parts << TraceWords::tr("what comes in: %1").arg(rising.join(QStringLiteral(", ")));
  return parts.isEmpty() ? TraceWords::tr("no food changes") : parts.join(QStringLiteral("; "));
}

QString troubleText(const diet::Trace& trace) {
  switch (trace.status) {
    case diet::Trace::Status::Impossible:
      return TraceWords::tr("Over all of this range the hard rules contradict each other.");
    case diet::Trace::Status::Unbounded:
      return TraceWords::tr("Nothing limits what is sought: give a maximum to a food or a target.");
    case diet::Trace::Status::Stopped:
      return TraceWords::tr("No answer in time.");
    default:
      if (constexpr std::string_view kNoPrice = "no-price: "; trace.reason.starts_with(kNoPrice))
        return TraceWords::tr("No price: %1. Cost cannot be traded, for unknown is not free of charge.")
            .arg(QString::fromStdString(trace.reason.substr(kNoPrice.size())));
      return TraceWords::tr("Nothing can be traced here (%1).").arg(QString::fromStdString(trace.reason));
  }
}

}  // namespace

RungRef rungOfLine(const diet::BalanceProblem& problem, std::size_t line) {
  if (line < problem.targets.size()) return {diet::TargetKind::Nutrient, line};
  line -= problem.targets.size();
  if (line < problem.ratios.size()) return {diet::TargetKind::Ratio, line};
  return {diet::TargetKind::Share, line - problem.ratios.size()};
}

std::size_t lineOfRung(const diet::BalanceProblem& problem, RungRef rung) {
  if (rung.kind == diet::TargetKind::Nutrient) return rung.index;
  if (rung.kind == diet::TargetKind::Ratio) return problem.targets.size() + rung.index;
  return problem.targets.size() + problem.ratios.size() + rung.index;
}

std::vector<TraceSubject> traceSubjects(const diet::BalanceProblem& problem) {
  std::vector<TraceSubject> subjects;
  const std::size_t lines = problem.targets.size() + problem.ratios.size() + problem.shares.size();
  for (std::size_t line = 0; line < lines; ++line)
    for (const BoundSide side : {BoundSide::Min, BoundSide::Max}) {
      const diet::TracedBound moved{Of::Rule, line, side};
      if (diet::boundNow(problem, moved)) subjects.push_back({moved, std::nullopt});
    }
  for (std::size_t food = 0; food < problem.foods.size(); ++food)
    for (const BoundSide side : {BoundSide::Max, BoundSide::Min})
      subjects.push_back({{Of::Food, food, side}, std::nullopt});
  for (const diet::Objective& other : tradable(problem)) subjects.push_back({{}, other});
  return subjects;
}

QString subjectText(const diet::BalanceProblem& problem, const TraceSubject& subject) {
  if (subject.against)
    return TraceWords::tr("%1 against %2")
        .arg(objectiveText(problem.objective), objectiveText(*subject.against).toLower());
  if (subject.moved.of == Of::Food)
    return TraceWords::tr("%1, %2").arg(distinctName(problem, subject.moved.index),
                                        sideText(subject.moved.side));
  return TraceWords::tr("%1, %2").arg(rungName(problem, rungOfLine(problem, subject.moved.index)),
                                      sideText(subject.moved.side));
}

QString objectiveAxisText(const diet::Objective& objective) {
  if (objective.kind == Kind::LowestCost) return TraceWords::tr("cost a day");
  if (!objective.nutrient) return TraceWords::tr("distance from now");
  return TraceWords::tr("%1 %2").arg(unitText(food::describe(*objective.nutrient).unit),
                                     nutrientWithin(*objective.nutrient));
}

QString subjectUnit(const diet::BalanceProblem& problem, const TraceSubject& subject) {
  if (subject.against) return objectiveAxisText(*subject.against);
  if (subject.moved.of == Of::Food) return TraceWords::tr("g");
  return rungUnit(problem, rungOfLine(problem, subject.moved.index));
}

double subjectScale(const diet::BalanceProblem& problem, const TraceSubject& subject) {
  if (subject.against || subject.moved.of == Of::Food) return 1.0;
  return shownValue(rungOfLine(problem, subject.moved.index), 1.0);
}

QString readingText(const diet::BalanceProblem& problem, const TraceSubject& subject,
                    const diet::TracePoint& point) {
  QStringList parts{foodsAt(problem, point).join(QStringLiteral(", "))};
  if (parts.front().isEmpty()) parts.front() = TraceWords::tr("an empty bowl");
  parts << QStringLiteral("%1 %2").arg(objectiveAxisText(problem.objective), measured(point.objective));
  parts << missedAt(problem, point);
  return TraceWords::tr("At %1: %2.")
      .arg(placeText(problem, subject, point.at), parts.join(QStringLiteral("; ")));
}

QString traceSentence(const diet::BalanceProblem& problem, const TraceSubject& subject,
                      const diet::Trace& trace) {
  if (trace.status != diet::Trace::Status::Traced || trace.points.empty()) return troubleText(trace);
  QStringList sentences;
  sentences << TraceWords::tr("%1 from %2 to %3: %4.")
                   .arg(subjectText(problem, subject), placeText(problem, subject, trace.points.front().at),
                        placeText(problem, subject, trace.points.back().at), changesText(problem, trace));
  QStringList breaks;
  for (const diet::TracePoint& point : trace.points)
    if (point.isBreakpoint) breaks << measured(point.at * subjectScale(problem, subject));
  breaks.removeDuplicates();
  if (!breaks.isEmpty())
    sentences
        << TraceWords::tr("Something else begins to give at %1.").arg(breaks.join(QStringLiteral(", ")));
  if (trace.endsLow)
    sentences << TraceWords::tr("Below %1 the hard rules contradict each other.")
                     .arg(placeText(problem, subject, trace.points.front().at));
  if (trace.endsHigh)
    sentences << TraceWords::tr("Beyond %1 the hard rules contradict each other.")
                     .arg(placeText(problem, subject, trace.points.back().at));
  if (trace.ofAnyAmounts) sentences << TraceWords::tr("In amounts between the scale's steps.");
  return sentences.join(QLatin1Char(' '));
}

}  // namespace tarebowl::ui
