// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_diet.h"

#include "app/not_counted.h"
#include "app/open_collection.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace tarebowl::app {

using store::Collection;
using transfer::DeskDiet;

std::vector<store::StoredVersion> versionsOf(const Command& command, const Collection& collection) {
  if (!store::findDiet(collection, command.diet))
    throw UsageError(fmt::format("--diet: there is no diet {} in {} (see tarebowl diets)", command.diet,
                                 collection.file().string()));
  return store::versionsOfDiet(collection, command.diet);
}

DeskDiet deskOf(const Command& command, const Collection& collection, int number) {
  const auto versions = versionsOf(command, collection);
  const auto found = std::find_if(versions.rbegin(), versions.rend(), [number](const auto& version) {
    return number == 0 || version.record.version.number == number;
  });
  if (found == versions.rend())
    throw UsageError(number == 0 ? command.diet + " has no version yet"
                                 : fmt::format("there is no version {} of {}", number, command.diet));
  return transfer::readDesk(collection, found->id, dayOf(command)).value();
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
