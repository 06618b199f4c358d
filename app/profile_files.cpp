// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/profile_files.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/open_collection.h"
#include "app/written_file.h"
#include "core/exchange/profile_json.h"
#include "core/store/profile_verbs.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <ostream>

namespace tarebowl::app {

namespace {

/// "CODE" (the newest version) or "CODE:VERSION".
store::StoredProfile profileNamed(const store::Collection& collection, const std::string& name) {
  const std::size_t colon = name.rfind(':');
  int version = 0;
  if (colon != std::string::npos)
    std::from_chars(name.data() + colon + 1, name.data() + name.size(), version);
  const std::string code = version > 0 ? name.substr(0, colon) : name;
  const auto versions = store::versionsOfProfile(collection, code);
  const auto found = std::find_if(versions.rbegin(), versions.rend(), [version](const auto& stored) {
    return version == 0 || stored.record.profile.version == version;
  });
  if (found != versions.rend()) return *found;
  throw UsageError(fmt::format("{}: there is no target profile {}", collection.file().string(), name));
}

/// The same but for its version: importing what is there already adds nothing.
bool isThere(const std::vector<store::StoredProfile>& versions, animal::TargetProfile profile) {
  for (const store::StoredProfile& version : versions) {
    profile.version = version.record.profile.version;
    if (version.record.profile == profile) return true;
  }
  return false;
}

store::Written keep(store::Collection& collection, const animal::TargetProfile& profile,
                    const std::vector<store::StoredProfile>& versions) {
  const store::Author author{whoIsThere(), nowInUtc()};
  if (profile.starter) return store::adoptStarter(collection, profile, author);
  if (versions.empty()) return store::addProfile(collection, profile, author);
  return store::draftNextVersion(collection, versions.back().id, profile, author);
}

}  // namespace

int exportProfile(const ExportWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.collection);
  const store::StoredProfile profile = profileNamed(collection, words.profile);
  writeWhole(words.file, exchange::writeProfile(profile.record.profile));
  streams.out << fmt::format("{} {} is written to {}\n", profile.record.profile.code,
                             profile.record.profile.version, words.file);
  return kDone;
}

int importProfile(const ImportWords& words, const Streams& streams) {
  const animal::TargetProfile profile = exchange::readProfile(words.file);
  store::Collection collection =
      words.dryRun ? openForReading(words.collection) : openForWriting(words.collection);
  const auto versions = store::versionsOfProfile(collection, profile.code);
  if (isThere(versions, profile)) {
    streams.out << fmt::format("{} is there already; nothing was written\n", profile.code);
    return kDone;
  }
  if (words.dryRun) {
    streams.out << fmt::format("planned, nothing written: {} as version {}\n", profile.code,
                               versions.empty() ? 1 : versions.back().record.profile.version + 1);
    return kDone;
  }
  const store::Written written = keep(collection, profile, versions);
  const auto kept = store::findProfile(collection, store::ProfileId{written.id}).value();
  streams.out << fmt::format("{} {} is {}\n", profile.code, kept.record.profile.version,
                             kept.record.steps.empty() ? "a draft" : "in force");
  return kDone;
}

}  // namespace tarebowl::app
