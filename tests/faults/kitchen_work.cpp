// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/kitchen_work.h"

#include "core/intake/time_of_sheet.h"
#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "tests/core/store/diets.h"

#include <algorithm>

namespace tarebowl::faults {

using namespace tarebowl::store;
using quantity::Grams;

namespace {

constexpr int kStepsADay = 4;
constexpr int kFoods = 8;
constexpr int kFirstDay = 20'000;  // 2024-10-04
constexpr std::string_view kEdited = "after day ";
const char* const kDiet = "lemur-morning";

intake::Bowl bowlOf(int day) {
  intake::Bowl bowl{
      .key = {"family", intake::dayOfNumber(kFirstDay + day), 1}, .label = "Family", .animals = 5};
  for (int item = 1; item <= kFoods; ++item)
    bowl.items.push_back({.item = item, .food = "food " + std::to_string(item), .planned = Grams(10 + item)});
  return bowl;
}

void openSheetOf(Collection& collection, int day) {
  const std::vector<intake::Bowl> bowls{bowlOf(day)};
  openSheet(collection, "Small Mammals", bowls[0].key.day, bowls, kKeeper);
}

void weighInAllOf(Collection& collection, int day) {
  const intake::Bowl bowl = bowlOf(day);
  std::vector<WeightRead> weights;
  for (const intake::BowlItem& item : bowl.items) weights.push_back({{bowl.key, item.item}, item.planned});
  weighIn(collection, weights, kKeeper);
}

void noteAllLeftoversOf(Collection& collection, int day) {
  const intake::Bowl bowl = bowlOf(day);
  std::vector<LeftoverFound> leftovers;
  for (const intake::BowlItem& item : bowl.items)
    leftovers.push_back(
        {.item = {bowl.key, item.item}, .kind = intake::LeftoverKind::Weighed, .left = Grams(1)});
  noteLeftovers(collection, leftovers, kKeeper);
}

/// The draft after the edit of this day: the day stands in each of its tables.
diet::DietVersion draftOf(int day) {
  diet::DietVersion version = fullVersion();
  version.note = std::string(kEdited) + std::to_string(day);
  for (diet::DietLine& line : version.lines) line.amount = Grams(20 + day % 100);
  version.allowances[0].note = version.note;
  version.changedBounds[0].reason = version.note;
  return version;
}

StoredVersion draftIn(const Collection& collection) {
  return versionsOfDiet(collection, kDiet).at(0);
}

void editDraft(Collection& collection, int day) {
  const StoredVersion draft = draftIn(collection);
  editVersion(collection, draft.id, draft.revision, draftOf(day), kKeeper);
}

Found foundOf(std::size_t count, std::size_t all) {
  if (count == 0) return Found::Nothing;
  return count == all ? Found::Whole : Found::Half;
}

/// How many foods of the bowl have what is looked for.
template <class Has>
Found findInBowl(const Collection& collection, int day, Has has) {
  const auto bowl = findBowl(collection, bowlOf(day).key);
  if (!bowl) return Found::Nothing;
  if (bowl->items.size() != kFoods) return Found::Half;
  return foundOf(static_cast<std::size_t>(std::ranges::count_if(bowl->items, has)), kFoods);
}

/// A later edit has gone over this one; the one that stands must stand as a whole.
Found findEdit(const Collection& collection, int day) {
  const diet::DietVersion found = draftIn(collection).record.version;
  if (found == fullVersion()) return Found::Nothing;
  if (!found.note.starts_with(kEdited)) return Found::Half;
  const int stands = std::stoi(found.note.substr(kEdited.size()));
  if (found != draftOf(stands)) return Found::Half;
  return stands < day ? Found::Nothing : Found::Whole;
}

}  // namespace

void makeKitchen(const std::filesystem::path& file) {
  Collection collection = Collection::create(file, kKeeper);
  addSpecies(collection, lemurSpecies(), kKeeper);
  addGroup(collection, lemurGroup("family"), kKeeper);
  const Written profile = addProfile(collection, primateProfile(), kKeeper);
  putInForce(collection, ProfileId{profile.id}, 1, day("2026-01-01"), "approved", kKeeper);
  addDiet(collection, morningBowl(), kKeeper);
  addVersion(collection, kDiet, fullVersion(), kKeeper);
}

void writeStep(Collection& collection, int step) {
  const int day = step / kStepsADay;
  switch (step % kStepsADay) {
    case 0:
      return openSheetOf(collection, day);
    case 1:
      return weighInAllOf(collection, day);
    case 2:
      return noteAllLeftoversOf(collection, day);
    default:
      return editDraft(collection, day);
  }
}

Found findStep(const Collection& collection, int step) {
  const int day = step / kStepsADay;
  switch (step % kStepsADay) {
    case 0:
      return findInBowl(collection, day, [](const intake::BowlItem&) { return true; });
    case 1:
      return findInBowl(collection, day, [](const auto& item) { return !item.weighings.empty(); });
    case 2:
      return findInBowl(collection, day, [](const auto& item) { return !item.leftovers.empty(); });
    default:
      return findEdit(collection, day);
  }
}

}  // namespace tarebowl::faults
