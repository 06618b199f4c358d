// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/feeding_import.h"

#include "core/exchange/feeding_file.h"
#include "core/exchange/observation_file.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/animal_reading.h"
#include "core/store/feeding_verbs.h"
#include "core/store/health_verbs.h"
#include "core/store/swap_verbs.h"
#include "core/store/together.h"

#include <algorithm>
#include <map>
#include <span>
#include <vector>

namespace tarebowl::transfer {

namespace {

using exchange::FeedingLine;

constexpr long long kOpened = (6 * 60 + 30) * 60;
constexpr long long kWeighed = (7 * 60 + 30) * 60;
constexpr long long kLeftFound = (24 + 8) * 3600;

/// Who wrote it, at so many seconds after the beginning of the day.
store::Author at(const std::string& who, quantity::Date day, long long seconds) {
  return {who, intake::timeFrom(day, seconds)};
}

std::string labelOf(const animal::Group& group, const FeedingLine& line) {
  std::string label = group.name;
  if (!line.meal.empty()) label += ", " + line.meal;
  if (!line.purpose.empty()) label += " (" + line.purpose + ")";
  return label;
}

/// The lines of one group on one day.
class GroupDay {
 public:
  GroupDay(const animal::Group& group, std::span<const FeedingLine> lines) : group_(group), lines_(lines) {}

  void write(store::Collection& collection) const {
    const quantity::Date day = lines_.front().day;
    const std::string& who = lines_.front().by;
    (void)store::openSheet(collection, group_.section, day, bowls(), at(who, day, kOpened));
    std::vector<store::WeightRead> weights;
    std::vector<store::LeftoverFound> leftovers;
    for (const FeedingLine& line : lines_) {
      const intake::ItemKey item{{group_.code, day, line.bowl}, line.item};
      if (line.weighed) weights.push_back({item, *line.weighed});
      if (line.leftover) leftovers.push_back({item, *line.leftover, line.left, line.lost});
    }
    (void)store::weighIn(collection, weights, at(who, day, kWeighed));
    (void)store::noteLeftovers(collection, leftovers, at(who, day, kLeftFound));
  }

 private:
  [[nodiscard]] std::vector<intake::Bowl> bowls() const {
    std::vector<intake::Bowl> made;
    for (const FeedingLine& line : lines_) {
      if (made.empty() || made.back().key.bowl != line.bowl) {
        intake::Bowl& bowl = made.emplace_back();
        bowl.key = {group_.code, line.day, line.bowl};
        bowl.meal = line.meal;
        bowl.label = labelOf(group_, line);
        bowl.diet = line.diet;
        bowl.version = line.version;
        bowl.animals = line.animals;
      }
      intake::BowlItem& item = made.back().items.emplace_back();
      item.item = line.item;
      item.food = line.food;
      item.planned = line.planned;
    }
    return made;
  }

  const animal::Group& group_;
  std::span<const FeedingLine> lines_;
};

void addGroupDays(store::Collection& collection, const animal::Group& group,
                  std::span<const FeedingLine> lines) {
  while (!lines.empty()) {
    const quantity::Date day = lines.front().day;
    const auto end = std::ranges::find_if(lines, [&](const FeedingLine& line) { return line.day != day; });
    const auto count = static_cast<std::size_t>(end - lines.begin());
    GroupDay(group, lines.first(count)).write(collection);
    lines = lines.subspan(count);
  }
}

}  // namespace

void importFeeding(store::Collection& collection, const std::filesystem::path& folder,
                   const store::Author& author) {
  if (!std::filesystem::exists(folder)) return;
  store::together(collection, [&] {
    for (const store::StoredGroup& group : store::listGroups(collection)) {
      const std::filesystem::path file = folder / (group.record.code + ".csv");
      if (std::filesystem::exists(file))
        addGroupDays(collection, group.record, exchange::readFeedingLines(file));
    }
    for (const exchange::RemainderLine& line : exchange::readRemainders(folder / "remainders.csv"))
      (void)store::noteRemainder(collection, line.bowl, line.left, at(line.by, line.bowl.day, kLeftFound));
    for (const intake::ControlPan& pan : exchange::readControlPans(folder / "pans.csv"))
      (void)store::addControlPan(collection, pan, author);
    if (const auto seen = folder / "observations.csv"; std::filesystem::exists(seen))
      (void)store::addObservations(collection, exchange::readObservations(seen), author);
  });
}

}  // namespace tarebowl::transfer
