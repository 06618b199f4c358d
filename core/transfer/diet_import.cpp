// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/diet_import.h"

#include "core/store/diet_verbs.h"
#include "core/transfer/desk_diet.h"
#include "core/transfer/json_files.h"

#include <algorithm>

namespace tarebowl::transfer {

namespace {

/// The day on which the version was approved; nothing where it was not.
std::optional<quantity::Date> approvalOf(const diet::DietVersion& version) {
  const auto step = std::ranges::find(version.steps, diet::VersionState::Approved, &diet::VersionStep::to);
  return step == version.steps.end() ? std::nullopt : quantity::dayOfTime(step->at);
}

void importVersion(store::Collection& collection, const std::string& diet, const diet::DietVersion& version,
                   const store::Author& author) {
  store::VersionRecord record{.diet = diet, .version = version};
  if (const auto day = approvalOf(version))
    if (const auto desk = readDesk(collection, record, *day)) record.decided = decisionOn(desk->made);
  store::importVersion(collection, record, author);
}

}  // namespace

void importDiet(store::Collection& collection, const exchange::DietFile& file, const store::Author& author) {
  store::addDiet(collection, file.diet, author);
  for (const diet::DietVersion& version : file.versions)
    importVersion(collection, file.diet.code, version, author);
}

void importDiets(store::Collection& collection, const std::filesystem::path& folder,
                 const store::Author& author) {
  for (const auto& file : jsonFilesIn(folder)) importDiet(collection, exchange::readDiet(file), author);
}

}  // namespace tarebowl::transfer
