// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"
#include "core/store/opening.h"
#include "core/store/server_address.h"

#include <algorithm>
#include <array>
#include <utility>

namespace tarebowl::store {

namespace {

LogPlace lastEntry(Collection::Inner& inner) {
  LogPlace last;
  inner.sql() << "SELECT id, at, verb FROM change_log WHERE id = (SELECT MAX(id) FROM change_log)",
      soci::into(last.number), soci::into(last.at), soci::into(last.verb);
  return last;
}

/// A backup that was put in the collection's place may end before what was read, or go on otherwise.
bool goesOnFrom(const Collection& collection, const LogPlace& seen) {
  if (seen.number == 0) return true;
  const auto entry = findChange(collection, seen.number);
  return entry && entry->author.at == seen.at && entry->verb == seen.verb;
}

/// The kitchen's always: weights that are read stand in its rows alone, not in the log.
Touched touchedSince(Collection::Inner& inner, long long seen, const std::vector<long long>& own) {
  std::set<Part> parts{Part::Kitchen};
  long long number = 0;
  std::string subject;
  soci::statement entries = (inner.sql().prepare << "SELECT id, subject FROM change_log WHERE id > :seen",
                             soci::use(seen), soci::into(number), soci::into(subject));
  entries.execute();
  while (entries.fetch()) {
    if (std::ranges::find(own, number) != own.end()) continue;
    const auto part = partOf(subject);
    if (!part) return {};
    parts.insert(*part);
  }
  return Touched(std::move(parts));
}

}  // namespace

std::optional<Part> partOf(std::string_view subject) {
  constexpr std::array<std::pair<std::string_view, Part>, 22> kParts{{
      {"food", Part::Foods},
      {"sample", Part::Foods},
      {"table", Part::Foods},
      {"lot", Part::Foods},
      {"species", Part::Animals},
      {"individual", Part::Animals},
      {"group", Part::Animals},
      {"membership", Part::Animals},
      {"mass", Part::Animals},
      {"condition", Part::Animals},
      {"target profile", Part::Targets},
      {"energy plan", Part::Targets},
      {"house caution", Part::Targets},
      {"diet", Part::Diets},
      {"diet version", Part::Diets},
      {"rotation", Part::Diets},
      {"feeding", Part::Kitchen},
      {"swap", Part::Kitchen},
      {"control pan", Part::Kitchen},
      {"tolerance", Part::Kitchen},
      {"observation", Part::Health},
      {"faeces", Part::Health},
  }};
  const auto* const found = std::ranges::find(kParts, subject, &std::pair<std::string_view, Part>::first);
  return found == kParts.end() ? std::nullopt : std::optional(found->second);
}

/// Another collection stands under the name by now, as a program that keeps copies in step puts it there.
/// Where it may be opened as it is, it is read from here on; otherwise the one that is gone stays open, and
/// every verb refuses. Or a server that had hung up answers again.
bool Collection::tookReplacement() {
  try {
    if (!isServerAddress(file()))
      (void)Collection::open(file(), {}, {.access = OpenOptions::Access::ReadOnly});
    inner_->connection.takeUpAgain();
  } catch (const StoreError&) {
    return false;
  }
  inner_->components.forget();
  return true;
}

Collection::Heard Collection::listen(std::span<const int> writers) {
  Connection& connection = inner_->connection;
  const auto afterLoss = [this] { return tookReplacement() ? Heard::Replacement : Heard::Nothing; };
  if (connection.isLost()) return afterLoss();
  bool heard = false;
  try {
    heard = guarded(file(), [&] { return connection.heardOfWrite(); });
  } catch (const StoreError& error) {
    if (error.code() != StoreErrorCode::NoServer || !connection.isLost()) throw;
    return afterLoss();
  }
  const auto isOther = [self = connection.number()](int writer) { return writer != self; };
  if (!heard && !std::ranges::any_of(writers, isOther)) return Heard::Nothing;
  inner_->components.forget();
  return Heard::Write;
}

bool Collection::changedElsewhere() {
  return listen({}) != Heard::Nothing;
}

std::optional<Touched> Collection::changesElsewhere(std::span<const int> writers) {
  const Heard heard = listen(writers);
  if (heard == Heard::Nothing && inner_->seen) return std::nullopt;
  const auto look = [&]() -> std::optional<Touched> {
    const auto before = std::exchange(inner_->seen, lastEntry(*inner_));
    const auto own = inner_->connection.takeOwnEntries();
    if (heard == Heard::Nothing) return std::nullopt;
    if (heard == Heard::Replacement || !before || !goesOnFrom(*this, *before)) return Touched();
    return touchedSince(*inner_, before->number, own);
  };
  try {
    return guarded(file(), look);
  } catch (const StoreError& error) {
    // That a server has hung up may turn out only when something is asked.
    if (error.code() != StoreErrorCode::NoServer || !inner_->connection.isLost() || !tookReplacement()) throw;
  }
  inner_->seen = guarded(file(), [&] { return lastEntry(*inner_); });
  return Touched();
}

}  // namespace tarebowl::store
