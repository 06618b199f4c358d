// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/explore_pane.h"

#include "core/diet/locked.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/food_label.h"
#include "ui/diets/trace_chart.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <memory>
#include <utility>

namespace tarebowl::ui {
namespace {

using Of = diet::TracedBound::Of;

constexpr std::size_t kMostLines = 7;

/// What is traced may move, whatever holds it on the desk.
diet::BalanceProblem problemFor(const DietDraft& draft, const TraceSubject& subject) {
  std::vector<bool> locked = draft.locked;
  if (!subject.against && subject.moved.of == Of::Food) locked.at(subject.moved.index) = false;
  return diet::withLocked(draft.problem, draft.grams, locked);
}

double mostOf(const diet::Trace& trace, std::size_t food) {
  double most = 0.0;
  for (const diet::TracePoint& point : trace.points) most = std::max(most, point.grams[food].value());
  return most;
}

double spanOf(const diet::Trace& trace, std::size_t food) {
  double least = mostOf(trace, food);
  const double most = least;
  for (const diet::TracePoint& point : trace.points) least = std::min(least, point.grams[food].value());
  return most - least;
}

/// Those that change most.
std::vector<std::size_t> drawnFoods(const diet::Trace& trace) {
  std::vector<std::size_t> foods;
  const std::size_t count = trace.points.empty() ? 0 : trace.points.front().grams.size();
  for (std::size_t j = 0; j < count; ++j)
    if (mostOf(trace, j) > 0.005) foods.push_back(j);
  std::ranges::stable_sort(foods,
                           [&](std::size_t a, std::size_t b) { return spanOf(trace, a) > spanOf(trace, b); });
  if (foods.size() > kMostLines) foods.resize(kMostLines);
  return foods;
}

TraceChartState chartOf(const diet::BalanceProblem& problem, const TraceSubject& subject,
                        const diet::TraceRange& range, const diet::Trace& trace) {
  const double scale = subjectScale(problem, subject);
  TraceChartState state;
  if (trace.points.empty()) return state;
  for (const diet::TracePoint& point : trace.points) {
    state.at.push_back(point.at * scale);
    state.isBreakpoint.push_back(point.isBreakpoint);
    state.objective.values.push_back(point.objective);
  }
  for (const std::size_t j : drawnFoods(trace)) {
    TraceLine line{distinctName(problem, j), {}};
    for (const diet::TracePoint& point : trace.points) line.values.push_back(point.grams[j].value());
    state.grams.push_back(std::move(line));
  }
  state.objective.name = objectiveAxisText(problem.objective);
  TraceLine missed{ExplorePane::tr("missed in all"), {}};
  for (const diet::TracePoint& point : trace.points) missed.values.push_back(point.shortfall);
  if (std::ranges::any_of(missed.values, [](double value) { return value > 0.0; }))
    state.shortfall = std::move(missed);
  if (!subject.against)
    if (const auto now = diet::boundNow(problem, subject.moved)) state.now = *now * scale;
  state.low = subject.against ? state.at.front() : range.from * scale;
  state.high = subject.against ? state.at.back() : range.to * scale;
  if (!(state.low < state.high)) state.high = state.low + 1.0;
  state.axis = QStringLiteral("%1 (%2)").arg(subjectText(problem, subject), subjectUnit(problem, subject));
  if (subject.against || subjectUnit(problem, subject).isEmpty())
    state.axis = subject.against ? subjectUnit(problem, subject) : subjectText(problem, subject);
  return state;
}

QLineEdit* endField(const QString& name) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setAlignment(Qt::AlignRight);
  field->setFixedWidth(field->fontMetrics().averageCharWidth() * 9 + 16);
  return field;
}

}  // namespace

ExplorePane::ExplorePane(DietDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      subject_(new QComboBox),
      from_(endField(tr("The range begins at"))),
      to_(endField(tr("The range ends at"))),
      unit_(new QLabel),
      sentence_(new QLabel),
      chart_(new TraceChart),
      reading_(new QLabel),
      try_(new QPushButton(tr("Try it"))) {
  build();
  connect(subject_, &QComboBox::activated, this, [this] { begin(true); });
  for (QLineEdit* field : {from_, to_})
    connect(field, &QLineEdit::editingFinished, this, [this, field] {
      if (!field->isModified()) return;
      field->setModified(false);
      begin(false);
    });
  connect(chart_, &TraceChart::readAt, this, &ExplorePane::showReading);
  connect(chart_, &TraceChart::tried, this, &ExplorePane::tryReading);
  connect(try_, &QPushButton::clicked, this, [this] {
    if (const auto at = chart_->reading()) tryReading(*at);
  });
  connect(&desk, &DietDesk::opened, this, [this] {
    errand_.cancel();
    trace_.reset();
    chart_->setReading(std::nullopt);
    fillSubjects();
  });
  connect(&desk, &DietDesk::settled, this, [this] {
    fillSubjects();
    if (isVisible()) begin(false);
  });
  fillSubjects();
}

void ExplorePane::build() {
  subject_->setAccessibleName(tr("What moves"));
  subject_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  subject_->setMinimumContentsLength(22);
  subject_->setMaxVisibleItems(20);
  subject_->setStyleSheet(QStringLiteral("QComboBox { combobox-popup: 0; }"));
  unit_->setProperty("soft", true);
  sentence_->setWordWrap(true);
  sentence_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  reading_->setWordWrap(true);
  reading_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  reading_->setAccessibleDescription(tr("What the chart reads"));
  chart_->setAccessibleName(tr("What gives: %1").arg(QStringLiteral("?")));  // nothing is traced yet
  chart_->setToolTip(
      tr("Arrow keys read it, Ctrl with an arrow goes from breakpoint to breakpoint, Enter or a "
         "click tries what is read"));
  try_->setToolTip(tr("Tries on the diet what is read; Ctrl+Z takes it back"));
  auto* row = new QHBoxLayout;
  row->setSpacing(7);
  row->addWidget(subject_, 1);
  for (const auto& [word, field] : {std::pair(tr("from"), from_), std::pair(tr("to"), to_)}) {
    auto* label = new QLabel(word);
    label->setProperty("soft", true);
    row->addWidget(label);
    row->addWidget(field);
  }
  row->addWidget(unit_);
  row->addWidget(try_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(11, 8, 11, 9);
  layout->setSpacing(6);
  layout->addLayout(row);
  layout->addWidget(chart_, 1);
  layout->addWidget(makeWords());
}

/// A few lines in sight, the rest by scrolling: the chart needs the height more.
QWidget* ExplorePane::makeWords() {
  constexpr int kLines = 3;
  auto* words = new QWidget;
  auto* layout = new QVBoxLayout(words);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addWidget(reading_);
  layout->addWidget(sentence_);
  auto* scroll = new QScrollArea;
  scroll->setAccessibleName(tr("What the chart reads"));
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFixedHeight(kLines * fontMetrics().lineSpacing() + 4);
  scroll->setWidget(words);
  return scroll;
}

void ExplorePane::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  begin(false);
}

/// The list is filled anew only where it would read otherwise: it may be open under a hand.
void ExplorePane::fillSubjects() {
  const auto chosen = subject();
  const QString chosenText = subject_->currentText();
  subjects_ = traceSubjects(desk_.problem());
  QStringList words;
  for (const TraceSubject& one : subjects_) words << subjectText(desk_.problem(), one);
  if (words == shownSubjects_) return;
  shownSubjects_ = words;
  subject_->clear();
  subject_->addItems(words);
  if (chosen) subject_->setCurrentIndex(std::max(0, subject_->findText(chosenText)));
}

std::optional<TraceSubject> ExplorePane::subject() const {
  const int row = subject_->currentIndex();
  if (row < 0 || row >= static_cast<int>(subjects_.size())) return std::nullopt;
  return subjects_[static_cast<std::size_t>(row)];
}

void ExplorePane::choose(const TraceSubject& subject) {
  fillSubjects();
  const auto found = std::ranges::find(subjects_, subject);
  if (found == subjects_.end()) return;
  subject_->setCurrentIndex(static_cast<int>(found - subjects_.begin()));
  begin(true);
  chart_->setFocus();
}

void ExplorePane::exploreRung(RungRef rung) {
  const diet::BalanceProblem& problem = desk_.problem();
  diet::TracedBound moved{Of::Rule, lineOfRung(problem, rung), diet::BoundSide::Min};
  if (!diet::boundNow(problem, moved)) moved.side = diet::BoundSide::Max;
  choose({moved, std::nullopt});
}

void ExplorePane::exploreFood(std::size_t food) {
  choose({{Of::Food, food, diet::BoundSide::Max}, std::nullopt});
}

std::optional<diet::TraceRange> ExplorePane::typedRange() const {
  const auto from = readNumber(from_->text());
  const auto to = readNumber(to_->text());
  if (!from || !to || *from >= *to) return std::nullopt;
  const double scale = subjectScale(desk_.problem(), *subject());
  return diet::TraceRange{*from / scale, *to / scale};
}

/// fresh: something else moves than before; the range is one that is worth looking at.
void ExplorePane::begin(bool fresh) {
  const auto subject = this->subject();
  const bool isTrade = subject && subject->against;
  for (QLineEdit* field : {from_, to_}) field->setEnabled(!isTrade);
  if (!subject || desk_.isEmpty()) return;
  const diet::BalanceProblem problem = problemFor(desk_.draft(), *subject);
  auto range = fresh || isTrade ? std::nullopt : typedRange();
  if (!range) {
    range = diet::rangeWorthTracing(problem, subject->moved, desk_.draft().grams);
    const double scale = subjectScale(problem, *subject);
    from_->setText(isTrade ? QString() : stated(range->from * scale));
    to_->setText(isTrade ? QString() : stated(range->to * scale));
  }
  unit_->setText(isTrade ? QString() : subjectUnit(problem, *subject));
  if (fresh) chart_->setReading(std::nullopt);
  errand_.run(
      [problem = std::make_shared<const diet::BalanceProblem>(problem), subject = *subject, range = *range,
       bowl = desk_.draft().grams](const Errand::Terms& terms) {
        diet::TraceOptions options;
        options.bowl = bowl;
        options.stop = terms.stop;
        return subject.against ? diet::tradeOff(*problem, *subject.against, options)
                               : diet::explore(*problem, subject.moved, range.from, range.to, options);
      },
      [this, subject = *subject, range = *range](diet::Trace trace) {
        take(subject, range, std::move(trace));
      });
}

void ExplorePane::take(const TraceSubject& subject, diet::TraceRange range, diet::Trace trace) {
  if (this->subject() != subject) return;
  const diet::BalanceProblem& problem = desk_.problem();
  trace_ = std::move(trace);
  const bool hasPoints = !trace_->points.empty();
  const QString words = traceSentence(problem, subject, *trace_);
  sentence_->setText(words);
  chart_->setAccessibleName(tr("What gives: %1").arg(subjectText(problem, subject)));
  chart_->setAccessibleDescription(words);
  chart_->show(chartOf(problem, subject, range, *trace_));
  try_->setEnabled(hasPoints && !desk_.isReadOnly());
  if (!hasPoints) return reading_->clear();
  const double scale = subjectScale(problem, subject);
  const auto now = subject.against ? std::nullopt : diet::boundNow(problem, subject.moved);
  chart_->setReading(chart_->reading().value_or(now ? *now * scale : trace_->points.front().at * scale));
}

void ExplorePane::showReading(double at) {
  const auto subject = this->subject();
  if (!trace_ || !subject) return;
  const double scale = subjectScale(desk_.problem(), *subject);
  const auto point = diet::readAt(*trace_, at / scale);
  if (point) reading_->setText(readingText(desk_.problem(), *subject, *point));
}

void ExplorePane::tryReading(double at) {
  const auto subject = this->subject();
  if (!trace_ || !subject || desk_.isReadOnly()) return;
  const diet::BalanceProblem& problem = desk_.problem();
  const double place = at / subjectScale(problem, *subject);
  if (subject->against) {
    if (const auto point = diet::readAt(*trace_, place)) desk_.setAllGrams(point->grams);
    return;
  }
  if (subject->moved.of == Of::Rule) {
    const RungRef rung = rungOfLine(problem, subject->moved.index);
    Bounds bounds = boundsOf(problem, rung);
    auto& bound = subject->moved.side == diet::BoundSide::Min ? bounds.min : bounds.max;
    // Three figures, as they are read: nobody means the pixel that a hand happened to meet.
    const double figure = std::pow(10.0, std::floor(std::log10(std::max(std::abs(at), 1e-9))) - 2.0);
    bound = std::round(at / figure) * figure / subjectScale(problem, *subject);
    desk_.setBounds(rung, bounds);
    return;
  }
  const diet::DietFood& food = problem.foods.at(subject->moved.index);
  const quantity::Grams limit = onScale(problem, subject->moved.index, quantity::Grams(place));
  if (subject->moved.side == diet::BoundSide::Max)
    desk_.setLimits(subject->moved.index, food.min, limit);
  else
    desk_.setLimits(subject->moved.index, limit, food.max);
}

}  // namespace tarebowl::ui
