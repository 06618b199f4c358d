// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/kitchen_delivery.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What a desk wrote down while its server was away, in the desk's own file (station_copy.h), until the
/// server has it: in order, each once. Every call throws StoreError.
namespace tarebowl::store {

enum class EntryState {
  Waiting,
  Conflict,  ///< the server has something else; a person chooses
  Sent,
  SetAside  ///< by a person
};

struct WaitingEntry {
  std::int64_t number = 0;              ///< 1, 2 … in the order in which they were written down
  std::int64_t id = 0;                  ///< KitchenEntry::id
  std::optional<KitchenEntry> entry{};  ///< nothing where it cannot be read any more
  std::string body{};                   ///< as it stands in the file
  EntryState state = EntryState::Waiting;
  std::string why{};                    ///< of a conflict, or who set it aside
  std::optional<SignedValue> theirs{};  ///< what counts on the server, of a conflict
};

/// All that stand in the desk's file, the oldest first. What was sent is forgotten after a while.
[[nodiscard]] std::vector<WaitingEntry> entriesOf(const Collection& station);

struct WaitingCount {
  std::size_t waiting = 0;
  std::size_t conflicts = 0;
  bool operator==(const WaitingCount&) const = default;
};
[[nodiscard]] WaitingCount countWaiting(const Collection& station);

/// Writes it on the desk's copy and notes it as waiting, both or none.
Kept keepForLater(Collection& station, const KitchenEntry& entry);

struct SendReport {
  std::size_t sent = 0;
  std::size_t conflicts = 0;  ///< new ones
};
/// Sends what waits, in its order; what the server has something else for becomes a conflict, and the next
/// one follows. Throws where the server goes away; what was not sent by then still waits.
SendReport sendWaiting(Collection& station, Collection& server, const std::string& name);

/// Ends a conflict. why: the reason of the correction that an entry becomes. Throws StoreError (Refused)
/// where the server cannot take what is mine; then it stays a conflict.
void settle(Collection& station, Collection& server, const std::string& name, std::int64_t number,
            Choice choice, const std::string& why, const Author& author);

}  // namespace tarebowl::store
