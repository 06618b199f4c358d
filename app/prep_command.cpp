// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/prep_command.h"

#include "app/command_line.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "app/written_file.h"
#include "core/exchange/prep_sheet_page.h"
#include "core/exchange/wording.h"
#include "core/store/reading.h"
#include "core/transfer/kitchen_day.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using Align = TextTable::Align;
using intake::PrepSheet;

struct PrepWords {
  std::string collection{};
  std::string file{};     ///< the page that is written; empty: none
  std::string section{};  ///< whose kitchen
  std::optional<quantity::Date> day{};
  bool labels = false;  ///< of bowls, instead of the sheet
  bool table = false;
};

/// The only one where none is named and there is no other.
std::string sectionNamed(const std::string& named, const store::Collection& collection) {
  const auto sections = transfer::sectionsOf(collection);
  if (named.empty() && sections.size() == 1) return sections.front();
  if (std::ranges::find(sections, named) != sections.end()) return named;
  std::string names;
  for (const std::string& section : sections) names += (names.empty() ? "" : ", ") + section;
  throw UsageError(fmt::format("{}: --section must name one of its sections; it has {}",
                               collection.file().string(), names.empty() ? "none" : names));
}

void addAhead(std::string& text, const char* what, const std::vector<intake::KitchenTotal>& totals) {
  for (const intake::KitchenTotal& total : totals)
    text += fmt::format("{}: {}\n", what, exchange::aheadText(total));
}

std::string bowlsText(const PrepSheet& sheet, const intake::FoodLookup& foodOf) {
  std::string text;
  for (const intake::PrepBowl& bowl : sheet.bowls) {
    TextTable table({{"to weigh", Align::Right}, {"food"}, {"preparation"}, {"weighed", Align::Right}});
    for (const intake::BowlItem& item : bowl.bowl.items) {
      if (item.swappedOut) continue;
      const intake::KitchenFood food = foodOf(item.food);
      const auto weighed = intake::entryThatCounts(item.weighings);
      table.addRow({exchange::portionText(item.planned, food), exchange::foodTitle(food), item.preparation,
                    weighed ? exchange::gramsText(weighed->actual, food.step) : "-"});
    }
    text += fmt::format(
        "{} (bowl {} of {}, {} animals{})\n{}\n", bowl.bowl.label, bowl.bowl.key.bowl, bowl.bowl.key.group,
        bowl.bowl.animals,
        bowl.phaseDay > 0 ? fmt::format(", phase-in day {} of {}", bowl.phaseDay, bowl.phaseDays) : "",
        table.text());
  }
  return text;
}

std::string prepText(const PrepSheet& sheet, const intake::FoodLookup& foodOf) {
  std::string text = fmt::format("{}, {}\n\n", sheet.section, quantity::isoDate(sheet.day));
  text += bowlsText(sheet, foodOf);
  TextTable totals({{"kitchen total", Align::Right}, {"food"}, {"raw, bought"}, {"bowls", Align::Right}});
  for (const intake::KitchenTotal& total : sheet.totals)
    totals.addRow({exchange::portionText(total.amount, total.food), exchange::foodTitle(total.food),
                   exchange::rawText(total), std::to_string(total.bowls)});
  text += totals.text() + '\n';
  addAhead(text, "out of the freezer for tomorrow", sheet.thawForTomorrow);
  addAhead(text, "feed well today, live food of tomorrow", sheet.gutLoadForTomorrow);
  for (const intake::GroupWithoutBowl& group : sheet.withoutBowl)
    text += fmt::format("no bowl for {}: {}\n", group.name, exchange::reasonText(group.why));
  for (const std::string& caution : sheet.cautions) text += "caution: " + caution + '\n';
  return text;
}

/// With what is printed or written of it.
struct Prepared {
  PrepSheet sheet{};
  std::string text{};
};

Prepared prepared(const store::Collection& collection, const PrepWords& words) {
  const intake::FoodLookup foodOf = transfer::kitchenFoods(collection);
  Prepared made{.sheet = transfer::readPrepSheet(collection, sectionNamed(words.section, collection),
                                                 dayOf(words.day))};
  if (words.labels)
    made.text = exchange::bowlLabelsAsHtml(made.sheet);
  else if (!words.file.empty())
    made.text = exchange::prepSheetAsHtml(made.sheet, foodOf);
  else
    made.text = words.table ? prepText(made.sheet, foodOf) : exchange::prepSheetAsJson(made.sheet, foodOf);
  return made;
}

int prepare(const PrepWords& words, const Streams& streams) {
  if (!words.file.empty() && std::filesystem::path(words.file).extension() != ".html")
    throw UsageError(words.file + ": expected NAME.html (the window writes PDF)");
  const store::Collection collection = openForReading(words.collection);
  const auto [sheet, text] = store::readTogether(
      collection, [&words](const store::Collection& whole) { return prepared(whole, words); });
  if (words.file.empty()) {
    streams.out << text;
    return kDone;
  }
  writeWhole(words.file, text);
  streams.out << fmt::format("{} of {} on {} is written to {}\n",
                             exchange::counted(sheet.bowls.size(), "bowl", "bowls"), sheet.section,
                             quantity::isoDate(sheet.day), words.file);
  return kDone;
}

}  // namespace

void definePrep(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<PrepWords>();
  CLI::App& command = *app.add_subcommand("prep", "What a section's kitchen prepares on a day");
  addCollectionFile(command, words->collection);
  command.add_option("FILE", words->file, "Write a page for the wall: NAME.html");
  command.add_option("--section,-S", words->section, "Whose kitchen (needed where there is more than one)");
  command.add_flag("--labels", words->labels, "Write the labels of the bowls instead of the sheet")
      ->needs("FILE");
  addDay(command, "--day", words->day, "The day of the sheet, YYYY-MM-DD (default: today)");
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return prepare(*words, streams); });
}

}  // namespace tarebowl::app
