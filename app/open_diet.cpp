// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_diet.h"

#include "app/command_line.h"
#include "app/not_counted.h"
#include "core/store/reading.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace tarebowl::app {

using store::Collection;
using transfer::DeskDiet;

std::vector<store::StoredVersion> versionsOf(const Collection& collection, const std::string& diet) {
  if (!store::findDiet(collection, diet))
    throw UsageError(fmt::format("--diet: there is no diet {} in {} (see tarebowl diets)", diet,
                                 collection.file().string()));
  return store::versionsOfDiet(collection, diet);
}

namespace {

DeskDiet readNamed(const Collection& collection, const DietWords& words, quantity::Date day,
                   transfer::CountedAs counted) {
  const auto versions = versionsOf(collection, words.diet);
  const auto found = std::find_if(versions.rbegin(), versions.rend(), [&words](const auto& version) {
    return words.version == 0 || version.record.version.number == words.version;
  });
  if (found == versions.rend())
    throw UsageError(words.version == 0
                         ? words.diet + " has no version yet"
                         : fmt::format("there is no version {} of {}", words.version, words.diet));
  return transfer::readDesk(collection, found->id, day, counted).value();
}

}  // namespace

DeskDiet deskOf(const Collection& collection, const DietWords& words, quantity::Date day,
                transfer::CountedAs counted) {
  return store::readTogether(collection,
                             [&](const Collection& from) { return readNamed(from, words, day, counted); });
}

DeskDiet fedDeskOf(const Collection& collection, const DietWords& words, quantity::Date day,
                   transfer::CountedAs counted) {
  return store::readTogether(collection, [&](const Collection& from) {
    DietWords fedWords = words;
    if (words.version == 0)
      if (const auto fed = store::fedOn(from, words.diet, day)) fedWords.version = fed->record.version.number;
    return readNamed(from, fedWords, day, counted);
  });
}

void tellNotices(const DeskDiet& desk, std::ostream& out) {
  for (const std::string& food : desk.made.missingFoods)
    out << fmt::format("left out: {} (there is no such food in the collection)\n", food);
  if (desk.profileMissing) out << "the version names no targets that are there: only energy is judged\n";
  if (desk.newerProfile)
    out << fmt::format("the group is fed by {} {} now, and this version is judged by {} {}\n",
                       desk.newerProfile->code, desk.newerProfile->version,
                       desk.version.record.version.profile.code, desk.version.record.version.profile.version);
  for (const std::string& food : desk.foodsChanged)
    out << fmt::format("changed since the approval: values of {}\n", food);
  for (const std::string& rule : desk.made.boundsOfNoRule)
    out << fmt::format("not counted: the bound of {} (the targets state no such rule)\n", rule);
  tellNotCounted(desk.made.notCounted, out);
}

}  // namespace tarebowl::app
