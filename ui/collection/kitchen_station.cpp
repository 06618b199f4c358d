// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/kitchen_station.h"

#include <QDateTime>
#include <QSysInfo>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

/// Others write bowl after bowl: the copy is taken once for many.
constexpr int kLaterMs = 20'000;

}  // namespace

KitchenStation::KitchenStation(Place place, Clock today, store::Author author, QObject* parent)
    : QObject(parent),
      place_(std::move(place)),
      today_(std::move(today)),
      author_(std::move(author)),
      desk_([file = place_.file, author = author_] { return store::openStation(file, author); }),
      courier_([file = place_.file, author = author_] { return store::openStation(file, author); }) {
  connect(&desk_, &Clerk::refused, this, &KitchenStation::refused);
  connect(&courier_, &Clerk::refused, this, [this](const Refusal& refusal) {
    problem_ = refusal.isServerAway ? QString() : refusal.why;
    look();
  });
  later_.setSingleShot(true);
  later_.setInterval(kLaterMs);
  connect(&later_, &QTimer::timeout, this, [this] {
    store::Author now = author_;
    now.at = QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString();
    send(now);
  });
  look();
}

KitchenStation::State KitchenStation::stateOf(store::Collection& station) {
  State state{.copy = store::stationCopy(station), .count = store::countWaiting(station)};
  if (state.count == store::WaitingCount{}) return state;
  state.entries = store::entriesOf(station);
  std::erase_if(state.entries, [](const store::WaitingEntry& entry) {
    return entry.state != store::EntryState::Waiting && entry.state != store::EntryState::Conflict;
  });
  return state;
}

void KitchenStation::take(State state) {
  copy_ = std::move(state.copy);
  count_ = state.count;
  entries_ = std::move(state.entries);
  emit changed();
  if (state.sent > 0) emit sent();
}

void KitchenStation::look() {
  desk_.ask([](store::Collection& station) { return stateOf(station); },
            [this](State state) { take(std::move(state)); });
}

void KitchenStation::follow(const store::KitchenEntry& entry) {
  desk_.ask(
      [entry](store::Collection& station) {
        try {
          (void)store::writeDown(station, entry);
        } catch (const store::StoreError& error) {
          if (error.code() != store::StoreErrorCode::Refused) throw;  // the copy is older than the sheet
        }
        return true;
      },
      [](bool /*done*/) {});
}

std::function<store::Collection()> KitchenStation::server(const store::Author& now) const {
  return [address = place_.address, password = place_.password, at = now.at] {
    return store::Collection::open(address, at, {.password = password});
  };
}

void KitchenStation::send(const store::Author& now) {
  later_.stop();
  const store::CopyExtent extent =
      copy_ ? std::exchange(extent_, store::CopyExtent::Kitchen) : store::CopyExtent::All;
  courier_.ask(
      [open = server(now), today = today_(), at = now.at, extent](store::Collection& station) {
        store::Collection server = open();
        const store::SendReport report =
            store::sendWaiting(station, server, QSysInfo::machineHostName().toStdString());
        store::takeCopy(station, store::ServerRows::read(server, today, extent, at));
        State state = stateOf(station);
        state.sent = report.sent + report.conflicts;
        return state;
      },
      [this](State state) {
        problem_.clear();
        take(std::move(state));
      });
}

void KitchenStation::sendLater(store::CopyExtent extent) {
  if (extent == store::CopyExtent::All) extent_ = extent;
  if (!later_.isActive()) later_.start();
}

void KitchenStation::settle(std::int64_t number, store::Choice choice, const QString& why,
                            const store::Author& author) {
  courier_.ask(
      [open = server(author), number, choice, why = why.toStdString(), author](store::Collection& station) {
        store::Collection server = open();
        store::settle(station, server, QSysInfo::machineHostName().toStdString(), number, choice, why,
                      author);
        State state = stateOf(station);
        state.sent = 1;
        return state;
      },
      [this](State state) {
        problem_.clear();
        take(std::move(state));
      });
}

}  // namespace tarebowl::ui
