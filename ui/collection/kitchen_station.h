// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/server_address.h"
#include "core/store/station_copy.h"
#include "core/store/station_outbox.h"
#include "ui/collection/clerk.h"

#include <QObject>
#include <QTimer>

#include <filesystem>
#include <functional>
#include <optional>
#include <vector>

namespace tarebowl::ui {

/// This desk's own copy of a collection on a server, and what waits in it to be sent (core/store/station_*).
/// One thread of its own reads and writes the copy for the kitchen, another speaks with the server: what the
/// kitchen does never waits for the network.
class KitchenStation : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<quantity::Date()>;
  struct Place {
    std::filesystem::path address{};
    std::filesystem::path file{};
    store::PasswordAsker password{};
  };
  KitchenStation(Place place, Clock today, store::Author author, QObject* parent = nullptr);

  /// What the copy holds; nothing where none was taken yet.
  [[nodiscard]] const std::optional<store::StationCopy>& copy() const { return copy_; }
  [[nodiscard]] const store::WaitingCount& count() const { return count_; }
  /// What waits, and conflicts; the oldest first.
  [[nodiscard]] const std::vector<store::WaitingEntry>& entries() const { return entries_; }
  /// Why nothing could be sent or copied, where it is not that the server is away.
  [[nodiscard]] const QString& problem() const { return problem_; }

  /// As Clerk::ask, of the copy.
  template <class Job, class Then>
  void ask(Job job, Then then) {
    desk_.ask(std::move(job), std::move(then));
  }
  /// What was written to the server stands in the copy, too, should the server go away before it is taken
  /// anew.
  void follow(const store::KitchenEntry& entry);
  /// Reads what waits again, after something was kept.
  void look();

  /// Sends what waits, then takes the copy anew.
  void send(const store::Author& now);
  /// The same after a while, once for all that is written meanwhile.
  void sendLater(store::CopyExtent extent);
  /// Ends a conflict on the server. why: the reason of a correction.
  void settle(std::int64_t number, store::Choice choice, const QString& why, const store::Author& author);

 signals:
  /// What waits, or the copy, is another.
  void changed();
  /// Something of what waited was sent.
  void sent();
  void refused(const tarebowl::ui::Refusal& refusal);

 private:
  struct State {
    std::optional<store::StationCopy> copy{};
    store::WaitingCount count{};
    std::vector<store::WaitingEntry> entries{};
    std::size_t sent = 0;
  };
  [[nodiscard]] static State stateOf(store::Collection& station);
  [[nodiscard]] std::function<store::Collection()> server(const store::Author& now) const;
  void take(State state);

  Place place_;
  Clock today_;
  store::Author author_;
  std::optional<store::StationCopy> copy_;
  store::WaitingCount count_;
  std::vector<store::WaitingEntry> entries_;
  QString problem_;
  QTimer later_;
  store::CopyExtent extent_ = store::CopyExtent::All;  ///< of what is to be copied next
  Clerk desk_;
  Clerk courier_;
};

}  // namespace tarebowl::ui
