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
    RowQuery rows(collection.inner().connection,
                  "SELECT id, diet, number, state, fed_from FROM diet_version ORDER BY diet, number");
    std::vector<VersionLine> lines;
    while (rows.next(id, line.diet, line.number, line.state, line.fedFrom)) {
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
  // The newest that had begun: of one day the higher number.
  auto newest = readAll<StoredVersion>(
      collection,
      "WHERE fed_from <= :day AND NOT EXISTS (SELECT 1 FROM diet_version AS later WHERE later.diet = "
      "diet_version.diet AND later.fed_from <= :same AND (later.fed_from > diet_version.fed_from OR "
      "(later.fed_from = diet_version.fed_from AND later.number > diet_version.number)))",
      day, day);
  std::map<std::string, StoredVersion> fed;
  for (StoredVersion& version : newest) {
    const std::string diet = version.record.diet;
    if (version.record.version.state != diet::VersionState::Retired)
      fed.emplace(diet, std::move(version));
    else if (auto before = fedOn(collection, diet, day))
      fed.emplace(diet, std::move(*before));
  }
  return fed;
}

}  // namespace tarebowl::store
