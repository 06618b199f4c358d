// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/intake_desk.h"

#include "core/animal/name_order.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/animal_reading.h"
#include "core/store/feeding_reading.h"
#include "core/store/reading.h"
#include "core/transfer/intake_study.h"
#include "ui/shared/days.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kRestMilliseconds = 120;
constexpr int kMostPoints = 240;  // of what is read: half as many again as a chart shows at once
constexpr int kShortestSpan = 7;

std::vector<IntakeGroup> readAll(const store::Collection& collection, quantity::Date today) {
  std::vector<IntakeGroup> groups;
  const auto fedSpan = [&](const std::string& code) {
    return store::fedSpan(collection, code, intake::dayOfNumber(0), today);
  };
  const auto all = store::listGroups(collection);
  for (const store::StoredGroup& group : all)
    store::askAhead(collection, [&] { return fedSpan(group.record.code); });
  for (const store::StoredGroup& group : all) {
    IntakeGroup& made = groups.emplace_back();
    made.code = group.record.code;
    made.name = QString::fromStdString(group.record.name);
    made.section = QString::fromStdString(group.record.section);
    if (const auto fed = fedSpan(made.code)) made.fed = daysOf(fed->first, fed->last);
  }
  std::ranges::stable_sort(groups, [](const IntakeGroup& a, const IntakeGroup& b) {
    if (a.section != b.section) return animal::goesBefore(a.section.toStdString(), b.section.toStdString());
    return animal::goesBefore(a.name.toStdString(), b.name.toStdString());
  });
  return groups;
}

}  // namespace

IntakeDesk::IntakeDesk(OpenCollection& collection, Clock today, QObject* parent)
    : QObject(parent), collection_(collection), today_(std::move(today)) {
  timer_.setSingleShot(true);
  timer_.setInterval(kRestMilliseconds);
  connect(&timer_, &QTimer::timeout, this, &IntakeDesk::read);
  collection_.whenOpened(this, [this] { startAnew(); });
  connect(&collection_, &OpenCollection::outdated, this, &IntakeDesk::refresh);
  connect(&collection_, &OpenCollection::written, this, &IntakeDesk::refresh);
}

void IntakeDesk::startAnew() {
  groups_.clear();
  shown_.clear();
  trend_.reset();
  timer_.stop();
  emit groupsChanged();
  emit trendChanged();
  refresh();
  collection_.readAhead(this, [this] {
    if (old_ && !inSight_) readGroups();
  });
}

void IntakeDesk::refresh() {
  old_ = collection_.file().has_value();
  if (old_ && inSight_) readGroups();
}

void IntakeDesk::setInSight(bool inSight) {
  inSight_ = inSight;
  if (inSight_ && old_) readGroups();
}

const IntakeGroup* IntakeDesk::group() const {
  const auto found = std::ranges::find(groups_, shown_, &IntakeGroup::code);
  return found == groups_.end() ? nullptr : &*found;
}

void IntakeDesk::readGroups() {
  old_ = false;
  collection_.ask(store::inOneReading([today = today_()](store::Collection& collection) {
                    return readAll(collection, today);
                  }),
                  [this](std::vector<IntakeGroup> groups) {
                    const bool changed = groups != groups_;
                    groups_ = std::move(groups);
                    if (changed) emit groupsChanged();
                    const auto fed = std::ranges::find_if(
                        groups_, [](const IntakeGroup& group) { return group.fed.has_value(); });
                    if (group() == nullptr && fed != groups_.end()) return show(fed->code);
                    read();
                  });
}

void IntakeDesk::show(const std::string& code) {
  if (code == shown_) return;
  shown_ = code;
  trend_.reset();
  emit groupsChanged();
  emit trendChanged();
  if (lastDays_ >= 0) return showLast(lastDays_);
  look(span_);
}

DaySpan IntakeDesk::within(DaySpan span) const {
  if (group() == nullptr || !group()->fed) return span;
  const DaySpan& fed = *group()->fed;
  const int days = std::clamp(span.days(), std::min(kShortestSpan, fed.days()), fed.days());
  if (span.from < fed.from) span.from = fed.from;
  span.until = span.from.addDays(days - 1);
  if (span.until > fed.until) span = {fed.until.addDays(1 - days), fed.until};
  return span;
}

void IntakeDesk::showLast(int days) {
  if (group() != nullptr && group()->fed) {
    const DaySpan& fed = *group()->fed;
    look(days == 0 ? fed : DaySpan{fed.until.addDays(1 - days), fed.until});
  }
  lastDays_ = days;
  if (!timer_.isActive()) timer_.start();
}

void IntakeDesk::look(const DaySpan& span) {
  lastDays_ = -1;
  span_ = within(span);
  emit spanChanged();
  timer_.start();
}

void IntakeDesk::follow(const transfer::TrendSubject& subject) {
  subject_ = subject;
  read();
}

void IntakeDesk::study(const DaySpan& days, const std::function<void(const exchange::IntakeToWrite&)>& then) {
  if (group() == nullptr || !collection_.file()) return;
  std::vector<food::NutrientId> nutrients = transfer::nutrientsOfReport();
  const auto* followed = std::get_if<food::NutrientId>(&subject_);
  if (followed != nullptr && std::ranges::find(nutrients, *followed) == nutrients.end())
    nutrients.push_back(*followed);
  collection_.ask(store::inOneReading([group = shown_, from = toDate(days.from), to = toDate(days.until),
                                       nutrients](store::Collection& collection) {
                    return transfer::intakeStudy(collection, group, from, to, nutrients);
                  }),
                  [then](const std::optional<exchange::IntakeToWrite>& study) {
                    if (study) then(*study);
                  });
}

/// A quarter more on either side, so that a chart that is moved has something to show at once.
transfer::TrendAsked IntakeDesk::asked() const {
  const int margin = span_.days() / 4;
  const DaySpan& fed = *group()->fed;
  return {.group = shown_,
          .from = toDate(std::max(fed.from, span_.from.addDays(-margin))),
          .to = toDate(std::min(fed.until, span_.until.addDays(margin))),
          .mostPoints = kMostPoints,
          .subject = subject_};
}

void IntakeDesk::read() {
  if (group() == nullptr || !group()->fed || !collection_.file() || !span_.from.isValid()) {
    trend_.reset();
    return emit trendChanged();
  }
  reading_ = true;
  collection_.ask(store::inOneReading([asked = asked()](store::Collection& collection) {
                    return transfer::readTrend(collection, asked);
                  }),
                  [this, asked = asked()](std::optional<transfer::IntakeTrend> trend) {
                    if (group() == nullptr || !group()->fed || asked != this->asked()) return;
                    reading_ = false;
                    trend_ = std::move(trend);
                    emit trendChanged();
                  });
}

}  // namespace tarebowl::ui
