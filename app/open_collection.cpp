// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_collection.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/password.h"
#include "core/store/backup.h"
#include "core/store/reading.h"
#include "core/store/server_address.h"
#include "core/store/server_clock.h"

#include <fmt/format.h>

#include <chrono>

namespace tarebowl::app {

namespace {

std::string groupsOf(const store::Collection& collection) {
  std::string codes;
  for (const store::StoredGroup& group : store::listGroups(collection))
    codes += (codes.empty() ? "" : ", ") + group.record.code;
  return codes.empty() ? "it has none" : "it has " + codes;
}

}  // namespace

store::OpenOptions openingByHand() {
  return {.password = store::askedOnce([](const std::filesystem::path& address) {
            return typedPassword("The password for " + address.string());
          })};
}

store::Collection openForReading(const std::string& file) {
  store::OpenOptions options = openingByHand();
  options.access = store::OpenOptions::Access::ReadOnly;
  return store::Collection::open(file, nowInUtc(), options);
}

store::Collection openForWriting(const std::string& file) {
  store::Collection collection = store::Collection::open(file, nowInUtc(), openingByHand());
  store::refuseOtherTime(collection, &std::chrono::system_clock::now);
  store::makeDailyBackup(file, nowInUtc());
  return collection;
}

store::KnownGroup groupOf(const store::Collection& collection, const std::string& code, quantity::Date day) {
  auto known = store::readTogether(
      collection, [&](const store::Collection& whole) { return store::knowGroup(whole, code, day); });
  if (!known)
    throw UsageError(
        fmt::format("{}: there is no group {}; {}", collection.file().string(), code, groupsOf(collection)));
  return std::move(*known);
}

store::KnownGroup fedGroupOf(const store::Collection& collection, const std::string& code,
                             quantity::Date day) {
  store::KnownGroup known = groupOf(collection, code, day);
  if (known.profile) return known;
  const std::string& profile = known.group.record.profile;
  throw UsageError(fmt::format("{}: the group {} {}", collection.file().string(), code,
                               profile.empty()
                                   ? "has no target profile yet"
                                   : fmt::format("is fed by {}, of which no version is in force on {}",
                                                 profile, quantity::isoDate(day))));
}

}  // namespace tarebowl::app
