// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/diet_reading.h"

#include "core/store/diet_tables.h"
#include "core/store/record_reading.h"

namespace tarebowl::store {

namespace {

/// Retired, it was fed until the day on which that was written down.
bool wasRetiredBy(const diet::DietVersion& version, quantity::Date day) {
  if (version.state != diet::VersionState::Retired || version.steps.empty()) return false;
  const auto retired = quantity::dayOfTime(version.steps.back().at);
  return !retired || *retired <= day;
}

}  // namespace

std::vector<StoredDiet> listDiets(const Collection& collection) {
  return readAll<StoredDiet>(collection, "ORDER BY group_code, name, code");
}

std::optional<StoredDiet> findDiet(const Collection& collection, const std::string& code) {
  return readByCode<StoredDiet>(collection, code);
}

std::vector<VersionLine> listVersions(const Collection& collection) {
  return guarded(collection.file(), [&] {
    long long id = 0;
    VersionLine line;
    soci::statement rows =
        (collection.inner().sql().prepare
             << "SELECT id, diet, number, state, fed_from FROM diet_version ORDER BY diet, number",
         soci::into(id), soci::into(line.diet), soci::into(line.number), soci::into(line.state),
         soci::into(line.fedFrom));
    rows.execute();
    std::vector<VersionLine> lines;
    while (rows.fetch()) {
      line.id = VersionId{id};
      lines.push_back(line);
    }
    return lines;
  });
}

std::vector<StoredVersion> versionsOfDiet(const Collection& collection, const std::string& dietCode) {
  return readAll<StoredVersion>(collection, "WHERE diet = :diet ORDER BY number", dietCode);
}

std::optional<StoredVersion> findVersion(const Collection& collection, VersionId id) {
  return readById<StoredVersion>(collection, id);
}

std::optional<StoredVersion> fedOn(const Collection& collection, const std::string& dietCode,
                                   quantity::Date day) {
  auto begun = readAll<StoredVersion>(
      collection, "WHERE diet = :diet AND fed_from <= :day ORDER BY fed_from DESC, number DESC", dietCode,
      day);
  for (StoredVersion& version : begun)
    if (!wasRetiredBy(version.record.version, day)) return std::move(version);
  return std::nullopt;
}

std::map<std::string, StoredVersion> everyDietFedOn(const Collection& collection, quantity::Date day) {
  std::map<std::string, VersionLine> newest;
  for (VersionLine& line : listVersions(collection)) {  // by diet and number: the newer of one day comes last
    if (!line.fedFrom || *line.fedFrom > day) continue;
    VersionLine& place = newest[line.diet];
    if (!place.fedFrom || *place.fedFrom <= *line.fedFrom) place = std::move(line);
  }
  std::vector<long long> ids;
  std::vector<std::string> retired;
  for (const auto& [diet, line] : newest)
    if (line.state == diet::VersionState::Retired)
      retired.push_back(diet);
    else
      ids.push_back(static_cast<long long>(line.id));
  std::map<std::string, StoredVersion> fed;
  if (!ids.empty())
    for (StoredVersion& version :
         readAll<StoredVersion>(collection, fmt::format("WHERE id IN ({})", fmt::join(ids, ", "))))
      fed.emplace(version.record.diet, std::move(version));
  for (const std::string& diet : retired)
    if (auto version = fedOn(collection, diet, day)) fed.emplace(diet, std::move(*version));
  return fed;
}

}  // namespace tarebowl::store
