// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/health_desk.h"

#include "core/animal/name_order.h"
#include "core/store/animal_reading.h"
#include "core/store/food_reading.h"
#include "core/store/health_verbs.h"
#include "core/store/reading.h"

#include <algorithm>
#include <chrono>
#include <string_view>
#include <utility>

namespace tarebowl::ui {
namespace {

struct Patients {
  std::vector<HealthPatient> list{};
  std::vector<std::pair<std::string, QString>> supplements{};
};

/// Groups with their members under them.
Patients readAll(const store::Collection& collection, quantity::Date today) {
  Patients found;
  store::askAhead(
      collection, [&] { return store::listMemberships(collection); },
      [&] { return store::listGroups(collection); }, [&] { return store::listFoods(collection); });
  const auto stays = store::staysOf(store::listMemberships(collection));
  std::vector<store::StoredGroup> groups = store::listGroups(collection);
  std::ranges::stable_sort(groups, animal::goesBefore, [](const store::StoredGroup& group) {
    return std::string_view(group.record.name);
  });
  for (const store::StoredGroup& group : groups) {
    const std::string& code = group.record.code;
    found.list.push_back({{code, ""}, QString::fromStdString(group.record.name)});
    for (const std::string& member : animal::membersOn(stays, code, today))
      found.list.push_back({{code, member}, QStringLiteral("      ") + QString::fromStdString(member)});
  }
  for (const food::FoodLine& food : store::listFoods(collection))
    if (food.group == "supplement")
      found.supplements.emplace_back(food.code, QString::fromStdString(food.name));
  return found;
}

/// Records that are older lie behind; younger ones are followed up to today.
constexpr std::chrono::days kStillFollowed{7};

/// The last of the days that are shown: a subject of which nobody has written anything for long is shown as
/// it was when somebody did.
quantity::Date lastDayOf(const store::Collection& collection, const transfer::HealthSubject& subject,
                         quantity::Date today) {
  const auto last = transfer::lastRecordOf(collection, subject, today);
  if (!last || std::chrono::sys_days(today) - std::chrono::sys_days(*last) <= kStillFollowed) return today;
  return *last;
}

std::optional<HealthView> readView(const store::Collection& collection,
                                   const transfer::HealthSubject& subject, quantity::Date today, int days,
                                   const transfer::CalciumAsked& asked) {
  const auto upTo = [&](quantity::Date to) {
    const quantity::Date from = std::chrono::sys_days(to) - std::chrono::days(days - 1);
    return transfer::readHealth(collection, subject, from, to);
  };
  // Mostly there are records of these days.
  store::askAhead(
      collection, [&] { return lastDayOf(collection, subject, today); },
      [&] { return upTo(today).has_value(); });
  const quantity::Date last = lastDayOf(collection, subject, today);
  auto period = upTo(last);
  if (!period && last != today) period = upTo(today);  // it came to its group later
  if (!period) return std::nullopt;
  HealthView view;
  view.page = transfer::calciumPage(*period, transfer::calciumOf(collection, *period, asked));
  view.period = std::move(*period);
  return view;
}

}  // namespace

HealthDesk::HealthDesk(OpenCollection& collection, Clock today, QObject* parent)
    : QObject(parent), collection_(collection), today_(std::move(today)) {
  collection_.whenOpened(this, [this] { startAnew(); });
  connect(&collection_, &OpenCollection::outdated, this, &HealthDesk::refresh);
  connect(&collection_, &OpenCollection::written, this, [this](const QObject* by) {
    if (by != this) refresh();
  });
  connect(&collection_, &OpenCollection::refused, this, [this] { undoStack_.clear(); });
}

HealthDesk::~HealthDesk() {
  undoStack_.disconnect();
}

void HealthDesk::startAnew() {
  undoStack_.clear();
  patients_.clear();
  shown_.reset();
  view_.reset();
  lookBack_.reset();
  emit patientsChanged();
  emit viewChanged();
  emit lookBackChanged();
  refresh();
  collection_.readAhead(this, [this] {
    if (old_ && !inSight_) readAnew();
  });
}

void HealthDesk::refresh() {
  old_ = collection_.file().has_value();
  if (old_ && inSight_) readAnew();
}

void HealthDesk::setInSight(bool inSight) {
  inSight_ = inSight;
  if (inSight_ && old_) readAnew();
}

void HealthDesk::readAnew() {
  old_ = false;
  readPatients();
  read();
}

void HealthDesk::readPatients() {
  collection_.ask(store::inOneReading([today = today_()](store::Collection& collection) {
                    return readAll(collection, today);
                  }),
                  [this](Patients found) {
                    if (found.list == patients_) return;
                    patients_ = std::move(found.list);
                    supplements_ = std::move(found.supplements);
                    emit patientsChanged();
                    if (!shown_ && !patients_.empty()) show(0);
                  });
}

void HealthDesk::show(int patient) {
  if (patient < 0 || static_cast<std::size_t>(patient) >= patients_.size()) return;
  shown_ = patient;
  lookBack_.reset();
  emit lookBackChanged();
  read();
}

void HealthDesk::setDays(int days) {
  days_ = days;
  read();
}

void HealthDesk::ask(const transfer::CalciumAsked& asked) {
  asked_ = asked;
  read();
}

void HealthDesk::read() {
  if (!shown_ || !collection_.file()) return;
  const transfer::HealthSubject subject = patients_[static_cast<std::size_t>(*shown_)].subject;
  collection_.ask(store::inOneReading([subject, today = today_(), days = days_,
                                       asked = asked_](store::Collection& collection) {
                    return readView(collection, subject, today, days, asked);
                  }),
                  [this, patient = *shown_](std::optional<HealthView> view) {
                    if (shown_ != patient) return;
                    view_ = std::move(view);
                    emit viewChanged();
                  });
}

void HealthDesk::lookBackFrom(health::SignKind kind, quantity::Date day, int hours) {
  if (!shown_ || !collection_.file()) return;
  constexpr int kComparedDays = 120;
  const transfer::HealthSubject subject = patients_[static_cast<std::size_t>(*shown_)].subject;
  const quantity::Date from = std::chrono::sys_days(day) - std::chrono::days(kComparedDays - 1);
  collection_.ask(
      store::inOneReading([subject, from, kind, day,
                           hours](store::Collection& collection) -> std::optional<exchange::LookBackPage> {
        const auto period = transfer::readHealth(collection, subject, from, day);
        const health::LookBackRule rule{.hours = hours};
        auto found = period ? transfer::lookBackFrom(*period, kind, day, rule) : std::nullopt;
        if (!found) return std::nullopt;
        return transfer::lookBackPage(*period, kind, std::move(*found), rule);
      }),
      [this, patient = *shown_](std::optional<exchange::LookBackPage> page) {
        if (shown_ != patient) return;
        lookBack_ = std::move(page);
        emit lookBackChanged();
      });
}

void HealthDesk::add(health::Observation observation, store::Confirmed confirmed) {
  observation.who = collection_.author().who;
  if (confirmed == store::Confirmed::No)
    if (const std::string doubt = store::doubtAbout(observation, today_()); !doubt.empty())
      return emit questioned(QString::fromStdString(doubt));
  collection_.perform(undoStack_, this,
                      {.verb =
                           [observation](store::Collection& collection, const store::Author& author) {
                             return store::addObservation(collection, observation, store::Confirmed::Yes,
                                                          author);
                           },
                       .further = {},
                       .what = tr("write down what was seen"),
                       .done =
                           [this](const store::Written&) {
                             emit kept();
                             read();
                           },
                       .takenBack = [this] { read(); }});
}

}  // namespace tarebowl::ui
