// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/diet_reading.h"

#include "core/store/diet_tables.h"
#include "core/store/record_reading.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

/// Retired, it was fed until the day on which that was written down.
bool wasRetiredBy(const diet::DietVersion& version, quantity::Date day) {
  if (version.state != diet::VersionState::Retired || version.steps.empty()) return false;
  const auto retired = quantity::dayOfTime(version.steps.back().at);
  return !retired || *retired <= day;
}

std::vector<VersionLine> versionLines(const Collection& collection, const std::string& condition) {
  return guarded(collection.file(), [&] {
    long long id = 0;
    VersionLine line;
    RowQuery rows(
        collection.inner().connection,
        fmt::format("SELECT id, diet, number, state, fed_from FROM diet_version {} ORDER BY diet, number",
                    condition));
    std::vector<VersionLine> lines;
    while (rows.next(id, line.diet, line.number, line.state, line.fedFrom)) {
      line.id = VersionId{id};
      lines.push_back(line);
    }
    return lines;
  });
}

}  // namespace

std::vector<StoredDiet> listDiets(const Collection& collection) {
  return readAll<StoredDiet>(collection, "ORDER BY group_code, name, code");
}

std::optional<StoredDiet> findDiet(const Collection& collection, const std::string& code) {
  return readByCode<StoredDiet>(collection, code);
}

std::vector<VersionLine> listVersions(const Collection& collection) {
  return versionLines(collection, "");
}

std::vector<VersionLine> submittedVersions(const Collection& collection) {
  return versionLines(collection, "WHERE state = 'submitted'");
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

std::optional<food::EnergyMethod> energyMethodFed(const Collection& collection, const std::string& dietCode,
                                                  quantity::Date day) {
  const auto newest = readAll<StoredBareVersion>(
      collection, "WHERE diet = :diet AND fed_from <= :day ORDER BY fed_from DESC, number DESC LIMIT 1",
      dietCode, day);
  if (newest.empty()) return std::nullopt;
  const diet::DietVersion& begun = newest.front().record.version;
  if (begun.state != diet::VersionState::Retired) return begun.energyMethod;
  const auto before = fedOn(collection, dietCode, day);
  return before ? std::optional(before->record.version.energyMethod) : std::nullopt;
}

std::map<std::string, diet::DietVersion> everyDietFedOn(const Collection& collection, quantity::Date day,
                                                        const std::optional<std::string>& section) {
  // Of each diet the newest that had begun: of one day the higher number.
  const std::string condition = fmt::format(
      "WHERE id IN (SELECT (SELECT begun.id FROM diet_version AS begun WHERE begun.diet = diet.code AND "
      "begun.fed_from <= :day ORDER BY begun.fed_from DESC, begun.number DESC LIMIT 1) FROM diet{})",
      section ? " WHERE group_code IN (SELECT code FROM animal_group WHERE section = :section)" : "");
  auto newest = section ? readAll<StoredFedVersion>(collection, condition, day, *section)
                        : readAll<StoredFedVersion>(collection, condition, day);
  std::map<std::string, diet::DietVersion> fed;
  for (StoredFedVersion& version : newest) {
    const std::string& diet = version.record.diet;
    if (version.record.version.state != diet::VersionState::Retired)
      fed.emplace(diet, std::move(version.record.version));
    else if (auto before = fedOn(collection, diet, day))
      fed.emplace(diet, std::move(before->record.version));
  }
  return fed;
}

}  // namespace tarebowl::store
