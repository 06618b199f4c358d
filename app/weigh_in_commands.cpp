// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/author.h"
#include "app/kitchen_commands.h"
#include "app/open_collection.h"
#include "core/exchange/kitchen_tables.h"
#include "core/exchange/wording.h"
#include "core/store/animal_reading.h"
#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "core/transfer/kitchen_day.h"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <istream>
#include <map>
#include <ostream>

namespace tarebowl::app {

namespace {

using intake::WeighingDoubt;

std::string_view textOf(WeighingDoubt doubt) {
  switch (doubt) {
    case WeighingDoubt::BelowNothing:
      return "is below nothing: tare the empty bowl and weigh again";
    case WeighingDoubt::TenTimes:
      return "is about ten times the plan: is the decimal point where it belongs?";
    case WeighingDoubt::TenthOf:
      return "is about a tenth of the plan: is the decimal point where it belongs?";
    case WeighingDoubt::NotInGrams:
      return "is about the plan in ounces: set the scale to grams";
    case WeighingDoubt::Under:
      return "is under the plan by more than the tolerance";
    case WeighingDoubt::Over:
      return "is over the plan by more than the tolerance";
    case WeighingDoubt::AsBowlBefore:
      return "is what the bowl before weighed within the same minute";
    case WeighingDoubt::ClockWentBack:
      return "was read before an earlier weight: is the clock right?";
    case WeighingDoubt::DayToCome:
      return "is of a day to come";
  }
  return "is doubtful";
}

/// Sheets of a day, section by section, and what is wrong with the lines of a table.
class DaySheets {
 public:
  DaySheets(const store::Collection& collection, quantity::Date day, const Command& command)
      : collection_(collection), day_(day), table_(command.tableFile) {}

  struct Place {
    const intake::PrepBowl* bowl = nullptr;
    const intake::BowlItem* item = nullptr;  ///< nothing for the bowl as a whole
  };
  /// Nothing where the sheet has no such place; then it is told.
  std::optional<Place> find(std::size_t line, const std::string& group, int bowl, const std::string& food) {
    const auto stored = store::findGroup(collection_, group);
    if (!stored) return wrong(line, "there is no group " + group);
    const intake::PrepSheet& sheet = sheetOf(stored->record.section);
    const auto found = std::ranges::find(sheet.bowls, intake::BowlKey{group, day_, bowl},
                                         [](const intake::PrepBowl& b) { return b.bowl.key; });
    if (found == sheet.bowls.end())
      return wrong(line, fmt::format("{} has no bowl {} on {}", group, bowl, quantity::isoDate(day_)));
    if (food == "*") return Place{&*found};
    for (const intake::BowlItem& item : found->bowl.items)
      if (!item.swappedOut && (item.food == food || std::to_string(item.item) == food))
        return Place{&*found, &item};
    return wrong(line, fmt::format("bowl {} of {} has no food {}", bowl, group, food));
  }
  std::nullopt_t wrong(std::size_t line, const std::string& what) {
    told_.push_back(fmt::format("{}: line {}: {}", table_, line, what));
    return std::nullopt;
  }
  /// Writes to err what was found, if anything.
  [[nodiscard]] bool isRight(std::ostream& err) const {
    for (const std::string& line : told_) err << line << '\n';
    return told_.empty();
  }
  void open(store::Collection& collection, const store::Author& author) const {
    for (const auto& [section, sheet] : sheets_) transfer::openDay(collection, sheet, author);
  }

 private:
  const intake::PrepSheet& sheetOf(const std::string& section) {
    const auto known = sheets_.find(section);
    if (known != sheets_.end()) return known->second;
    return sheets_.emplace(section, transfer::readPrepSheet(collection_, section, day_)).first->second;
  }

  const store::Collection& collection_;
  quantity::Date day_;
  std::string table_;
  std::map<std::string, intake::PrepSheet> sheets_;
  std::vector<std::string> told_;
};

template <class Lines>
Lines readTable(const Command& command, const Streams& streams,
                Lines (*read)(std::istream&, const std::string&)) {
  if (command.tableFile == "-") return read(streams.in, "standard input");
  std::ifstream table(command.tableFile, std::ios::binary);
  if (!table) throw UsageError(command.tableFile + ": cannot be read");
  return read(table, command.tableFile);
}

int nothingWritten(std::ostream& err, const char* advice) {
  err << "nothing was written; " << advice << '\n';
  return kUnreadable;
}

void tellKept(const Streams& streams, const std::vector<store::Kept>& kept, std::size_t corrected) {
  const auto second = static_cast<std::size_t>(std::ranges::count(kept, store::Kept::Second));
  streams.out << fmt::format("{} kept, {} corrected\n", exchange::counted(kept.size(), "entry", "entries"),
                             corrected);
  if (second > 0)
    streams.out << fmt::format(
        "{} had an entry already: both are kept, and the first one counts until it is corrected\n", second);
}

std::string askedAbout(const exchange::WeightLine& line, const DaySheets::Place& place,
                       const transfer::JudgedBy& by) {
  std::string text;
  for (const WeighingDoubt doubt : transfer::doubtsIn(*place.bowl, *place.item, line.actual, nowInUtc(), by))
    text += fmt::format(
        "line {}: {} g {} for {}, planned {} g ± {} g, {}\n", line.line, line.actual.value(),
        place.item->food, place.bowl->bowl.label, exchange::shortNumber(place.item->planned.value()),
        exchange::shortNumber(transfer::toleranceIn(*place.bowl, place.item->food, by).value()),
        textOf(doubt));
  return text;
}

}  // namespace

int weighInTable(const Command& command, const Streams& streams) {
  const auto lines = readTable(command, streams, &exchange::readWeights);
  store::Collection collection = openForWriting(command.file.value());
  const transfer::JudgedBy by{store::toleranceRule(collection), transfer::kitchenFoods(collection)};
  DaySheets sheets(collection, dayOf(command), command);
  std::vector<store::WeightRead> weights;
  std::vector<std::pair<store::WeightRead, std::string>> corrections;
  std::string asked;
  for (const exchange::WeightLine& line : lines) {
    const auto place = sheets.find(line.line, line.group, line.bowl, line.food);
    if (!place) continue;
    if (place->item == nullptr) {
      sheets.wrong(line.line, "a bowl is weighed in food by food");
      continue;
    }
    asked += askedAbout(line, *place, by);
    const store::WeightRead weight{{place->bowl->bowl.key, place->item->item}, line.actual};
    if (line.reason.empty())
      weights.push_back(weight);
    else
      corrections.emplace_back(weight, line.reason);
  }
  if (!sheets.isRight(streams.err)) return nothingWritten(streams.err, "put the table right");
  streams.err << asked;
  if (!asked.empty() && !command.confirm)
    return nothingWritten(streams.err, "put the table right, or keep it as it is with --confirm");
  const store::Author author{whoIsThere(), nowInUtc()};
  sheets.open(collection, author);
  const auto kept = store::weighIn(collection, weights, author);
  for (const auto& [weight, reason] : corrections)
    (void)store::correctWeight(collection, weight, reason, author);
  tellKept(streams, kept, corrections.size());
  return kDone;
}

int takeLeftovers(const Command& command, const Streams& streams) {
  const auto lines = readTable(command, streams, &exchange::readLeftovers);
  store::Collection collection = openForWriting(command.file.value());
  DaySheets sheets(collection, dayOf(command), command);
  struct Found {
    DaySheets::Place place{};
    const exchange::LeftoverLine* line = nullptr;
  };
  std::vector<Found> found;
  for (const exchange::LeftoverLine& line : lines) {
    const auto place = sheets.find(line.line, line.group, line.bowl, line.food);
    if (!place) continue;
    if (place->item == nullptr && (line.kind != intake::LeftoverKind::Weighed || !line.left))
      sheets.wrong(line.line, "what is left of all together is weighed: how is weighed, with left_g");
    if (!place->bowl->opened) sheets.wrong(line.line, "this bowl was never put on a sheet");
    found.push_back({*place, &line});
  }
  if (!sheets.isRight(streams.err)) return nothingWritten(streams.err, "put the table right");
  const store::Author author{whoIsThere(), nowInUtc()};
  std::vector<store::LeftoverFound> leftovers;
  std::vector<store::Kept> remainders;
  std::size_t corrected = 0;
  for (const auto& [place, line] : found) {
    const intake::BowlKey& bowl = place.bowl->bowl.key;
    const bool corrects = !line->reason.empty();
    corrected += corrects ? 1 : 0;
    if (place.item == nullptr) {
      if (corrects)
        (void)store::correctRemainder(collection, bowl, *line->left, line->reason, author);
      else
        remainders.push_back(store::noteRemainder(collection, bowl, *line->left, author));
      continue;
    }
    const store::LeftoverFound leftover{{bowl, place.item->item}, line->kind, line->left, line->lost};
    if (corrects)
      (void)store::correctLeftover(collection, leftover, line->reason, author);
    else
      leftovers.push_back(leftover);
  }
  auto kept = store::noteLeftovers(collection, leftovers, author);
  kept.insert(kept.end(), remainders.begin(), remainders.end());
  tellKept(streams, kept, corrected);
  return kDone;
}

}  // namespace tarebowl::app
