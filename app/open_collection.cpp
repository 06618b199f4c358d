// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_collection.h"

#include "app/author.h"
#include "core/store/backup.h"

#include <fmt/format.h>

namespace tarebowl::app {

namespace {

std::string groupsOf(const store::Collection& collection) {
  std::string codes;
  for (const store::StoredGroup& group : store::listGroups(collection))
    codes += (codes.empty() ? "" : ", ") + group.record.code;
  return codes.empty() ? "it has none" : "it has " + codes;
}

}  // namespace

store::Collection openForReading(const std::string& file) {
  return store::Collection::open(file, nowInUtc(), {.access = store::OpenOptions::Access::ReadOnly});
}

store::Collection openForWriting(const std::string& file) {
  store::Collection collection = store::Collection::open(file, nowInUtc());
  store::makeDailyBackup(file, nowInUtc());
  return collection;
}

quantity::Date dayOf(const Command& command) {
  return command.day.value_or(today());
}

store::KnownGroup groupOf(const Command& command, const store::Collection& collection) {
  auto known = store::knowGroup(collection, command.group, dayOf(command));
  if (!known)
    throw UsageError(fmt::format("{}: there is no group {}; {}", collection.file().string(), command.group,
                                 groupsOf(collection)));
  return std::move(*known);
}

store::KnownGroup fedGroupOf(const Command& command, const store::Collection& collection) {
  store::KnownGroup known = groupOf(command, collection);
  if (known.profile) return known;
  const std::string& profile = known.group.record.profile;
  const std::string day = quantity::isoDate(dayOf(command));
  throw UsageError(fmt::format(
      "{}: the group {} {}", collection.file().string(), command.group,
      profile.empty() ? "has no target profile yet"
                      : fmt::format("is fed by {}, of which no version is in force on {}", profile, day)));
}

}  // namespace tarebowl::app
