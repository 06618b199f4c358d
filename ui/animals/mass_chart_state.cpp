// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/mass_chart_state.h"

#include "ui/animals/animal_text.h"
#include "ui/shared/days.h"
#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <map>

namespace tarebowl::ui {
namespace {

struct Chart {
  Q_DECLARE_TR_FUNCTIONS(Chart)
};

constexpr double kGramsAKilogram = 1000.0;

ReadingTrust trustOf(const MeasuredSeries& series, std::size_t reading) {
  if (series.masses[reading].record.reading.excluded) return ReadingTrust::LeftOut;
  const bool doubted =
      std::any_of(series.doubts.begin(), series.doubts.end(),
                  [&](const animal::DoubtedReading& doubt) { return doubt.reading == reading; });
  return doubted ? ReadingTrust::Doubtful : ReadingTrust::Counts;
}

MassLine lineOf(const MeasuredSeries& series) {
  MassLine line{.name = series.ofGroup ? Chart::tr("group") : QString::fromStdString(series.code)};
  for (std::size_t i = 0; i < series.masses.size(); ++i) {
    const animal::MassReading& reading = series.masses[i].record.reading;
    line.points.push_back({reading.on, reading.mass.value(), trustOf(series, i)});
  }
  return line;
}

/// On each day on which an animal was weighed, the mean of what counts for each of them then.
MassLine meanOf(const std::vector<MassLine>& lines) {
  std::map<quantity::Date, bool> days;
  for (const MassLine& line : lines)
    for (const MassPoint& point : line.points)
      if (point.trust == ReadingTrust::Counts) days[point.on] = true;
  MassLine mean{.name = Chart::tr("mean")};
  for (const auto& [day, weighed] : days) {
    double sum = 0.0;
    int animals = 0;
    for (const MassLine& line : lines) {
      std::optional<double> last;
      for (const MassPoint& point : line.points)
        if (point.trust == ReadingTrust::Counts && point.on <= day) last = point.mass;
      if (!last) continue;
      sum += *last;
      ++animals;
    }
    mean.points.push_back({day, sum / animals, ReadingTrust::Counts});
  }
  return mean;
}

void takeScores(MassChartState& state, const AnimalPage& page) {
  for (const MeasuredSeries& series : page.series)
    for (const store::StoredCondition& stored : series.conditions) {
      const animal::ScoreScale* scale = animal::findConditionScale(stored.record.reading.scale);
      if (scale == nullptr) continue;
      const QString name = QString::fromUtf8(scale->name.data(), static_cast<qsizetype>(scale->name.size()));
      if (state.scale.isEmpty()) {
        state.scale = name;
        state.scaleLow = scale->lowest;
        state.scaleHigh = scale->highest;
        state.scaleIdeal = scale->ideal;
      }
      // Two scales do not share an axis: the first one's scores are drawn, the table lists all.
      if (state.scale == name)
        state.scores.push_back({stored.record.reading.on, stored.record.reading.score});
    }
  std::sort(state.scores.begin(), state.scores.end(),
            [](const ConditionPoint& a, const ConditionPoint& b) { return a.on < b.on; });
}

QString trustWord(ReadingTrust trust) {
  if (trust == ReadingTrust::Doubtful) return Chart::tr(" (doubtful)");
  return trust == ReadingTrust::LeftOut ? Chart::tr(" (left out)") : QString();
}

void speak(MassChartState& state) {
  QStringList words;
  for (const MassLine& line : state.lines) {
    QStringList points;
    for (const MassPoint& point : line.points)
      points << QStringLiteral("%1 %2 %3%4")
                    .arg(dateText(point.on), measured(point.mass), state.unit, trustWord(point.trust));
    words << QStringLiteral("%1: %2").arg(line.name, points.join(QStringLiteral(", ")));
  }
  for (const ConditionPoint& score : state.scores)
    words << Chart::tr("condition on %1: %2 of %3")
                 .arg(dateText(score.on), stated(score.score), stated(state.scaleHigh));
  state.spoken = words.join(QStringLiteral("; "));
}

void toGrams(MassChartState& state) {
  for (MassLine& line : state.lines)
    for (MassPoint& point : line.points) point.mass *= kGramsAKilogram;
}

}  // namespace

std::optional<MassSpan> spanOf(const MassChartState& state) {
  std::optional<MassSpan> span;
  for (const MassLine& line : state.lines)
    for (const MassPoint& point : line.points) {
      if (point.trust != ReadingTrust::Counts) continue;
      if (!span) span = MassSpan{point.mass, point.mass};
      span->low = std::min(span->low, point.mass);
      span->high = std::max(span->high, point.mass);
    }
  if (!span) return std::nullopt;
  // At least a tenth of the mass is in sight, so that a gram of scatter does not look like a fall.
  const double room = std::max(0.12 * (span->high - span->low), 0.05 * span->high);
  span->low = std::max(0.0, span->low - room);
  span->high += room;
  return span;
}

MassChartState massChartState(const AnimalPage& page, MassView view) {
  MassChartState state;
  for (const MeasuredSeries& series : page.series)
    if (!series.masses.empty()) state.lines.push_back(lineOf(series));
  if (view == MassView::Mean && !state.lines.empty()) {
    std::vector<MassLine> animals;
    for (const MeasuredSeries& series : page.series)
      if (!series.ofGroup && !series.masses.empty()) animals.push_back(lineOf(series));
    if (!animals.empty()) state.lines = {meanOf(animals)};
  }
  const auto span = spanOf(state);
  const bool small = !span || span->high < 1.1;
  state.unit = small ? unitText(quantity::Unit::Gram) : Chart::tr("kg");
  if (small) toGrams(state);
  takeScores(state, page);
  speak(state);
  return state;
}

}  // namespace tarebowl::ui
