// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cmath>
#include <sstream>

namespace tarebowl::app {

namespace {

constexpr double kLongestSeconds = 86'400.0;

/// Where CLI11 puts what it reads.
struct Words {
  double seconds = 10.0;
  std::size_t most = 50;
  std::optional<double> ofStep;
  std::optional<double> leastSteps;
  std::optional<double> ofBowl;
  std::optional<double> ofBody;
  std::string file;
  std::string collection;
  std::string sought;
  std::string tableFile;
  std::string mapping;
  std::string larder;
  std::string group;
  std::string day;
  std::string foods;
  std::string profile;
  std::string diet;
  std::string section;
  std::string outOfStock;
  std::string backInStock;
  std::string without;
  std::string among;
  double movePercent = 0.0;
  bool pairs = false;
  std::size_t mostSwaps = 10;
  std::string from;
  std::string nutrients;
  bool csv = false;
  HealthWords health;
  std::string theme;  // checked here, read by the window itself
  int version = 0;
  int otherVersion = 0;
  bool table = false;
  bool json = false;
  bool dryRun = false;
  bool wide = false;
  bool explain = false;
  bool asProblem = false;
  bool labels = false;
  bool confirm = false;
  std::string rules;
  int days = 0;
  std::string replan;
  std::string today;
  std::uint64_t seed = 1;
  double gapPercent = 0.0;
  std::string bound;
  std::string food;
  std::string side;
  std::string against;
  std::optional<double> rangeFrom;
  std::optional<double> rangeTo;
};

void addFile(CLI::App& command, Words& words) {
  command.add_option("FILE", words.file, "A problem file (tarebowl-problem/1), or - for standard input")
      ->required();
}

void addTable(CLI::App& command, Words& words) {
  command.add_flag("--table", words.table, "Print a table for people instead of JSON");
}

void addCollection(CLI::App& command, Words& words) {
  command.add_option("--collection", words.collection,
                     "Take foods that the problem states without per_100_g from this collection");
}

void addTableOrJson(CLI::App& command, Words& words) {
  auto* table = command.add_flag("--table", words.table, "Print a table for people instead of JSON");
  command.add_flag("--json", words.json, "Print JSON (the default)")->excludes(table);
}

void addSeconds(CLI::App& command, Words& words) {
  command
      .add_option("--seconds", words.seconds,
                  "Longest time to search; the best answer so far is printed with its gap")
      ->check(CLI::Range(0.001, kLongestSeconds))
      ->capture_default_str();
}

constexpr int kMostVersions = 1'000'000;

void addDiet(CLI::App& command, Words& words) {
  command.add_option("--diet", words.diet, "The code of a diet of the collection");
  command.add_option("--version", words.version, "Which version of it (default: the newest)")
      ->check(CLI::Range(1, kMostVersions))
      ->needs("--diet");
}

void defineCollectionCommands(CLI::App& app, Words& words) {
  CLI::App& made = *app.add_subcommand("new", "Make a new, empty collection file");
  made.add_option("COLLECTION", words.file, "The file to make, NAME.tarebowl")->required();

  CLI::App& foods = *app.add_subcommand("foods", "List the foods of a collection, or find some by name");
  foods.add_option("COLLECTION", words.file, "A collection file, NAME.tarebowl")->required();
  foods.add_option("--find", words.sought, "Words of the name, form, group or code, in any order");
  foods.add_option("--most", words.most, "How many to list")->capture_default_str();
  addTableOrJson(foods, words);
}

void defineTableCommands(CLI::App& app, Words& words) {
  const auto addSubcommand = [&](const char* name, const char* what) {
    CLI::App* command = app.add_subcommand(name, what);
    command->add_option("COLLECTION", words.file, "A collection file, NAME.tarebowl")->required();
    return command;
  };
  CLI::App& import = *addSubcommand(
      "import", "Import a table of foods; all of it or, where anything is wrong with it, nothing");
  import
      .add_option("TABLE", words.tableFile,
                  "CSV in any common form, XLSX, or a target profile or a diet (tarebowl-profile/1, "
                  "tarebowl-diet/1; NAME.json)")
      ->required();
  import.add_option("--map", words.mapping, "How the table is read (tarebowl-mapping/1); guessed without it");
  import.add_flag("--dry-run", words.dryRun, "Say what would happen and write nothing");
  CLI::App& exported = *addSubcommand("export", "Write the foods of a collection to a table");
  exported.add_option("FILE", words.tableFile, "NAME.csv or NAME.xlsx; with --profile or --diet NAME.json")
      ->required();
  exported.add_option("--profile", words.profile,
                      "Write this target profile instead: CODE, the newest version, or CODE:VERSION");
  addDiet(exported, words);
  exported.get_option("--diet")
      ->description("Write this diet with its versions instead, or the one version that is named")
      ->excludes("--profile");
  exported
      .add_flag("--problem", words.asProblem,
                "With --diet: write the problem that the version is (tarebowl-problem/1)")
      ->needs("--diet");
  exported.add_flag("--wide", words.wide,
                    "A row a food rather than a row a value; leaves out sd, n and source");
  CLI::App& check = *addSubcommand("check", "Name what a careful analyst would doubt");
  for (CLI::App* command : {&import, &check}) {
    addTableOrJson(*command, words);
  }
}

void addGroupAndDay(CLI::App& command, Words& words) {
  command.add_option("--group", words.group, "The code of a group of animals");
  command.add_option("--day", words.day, "The day it is about, YYYY-MM-DD (default: today)");
}

void defineAnimalCommands(CLI::App& app, Words& words) {
  CLI::App& animals = *app.add_subcommand(
      "animals", "List the groups of a collection, or one with its animals, masses and energy need");
  CLI::App& targets =
      *app.add_subcommand("targets", "The targets of a group with where each was stated, and by whom");
  for (CLI::App* command : {&animals, &targets}) {
    command->add_option("COLLECTION", words.file, "A collection file, NAME.tarebowl")->required();
    addGroupAndDay(*command, words);
    addTableOrJson(*command, words);
  }
  targets.get_option("--group")->required();
}

void defineDietCommands(CLI::App& app, Words& words) {
  CLI::App& diets =
      *app.add_subcommand("diets", "List the diets of a collection, or show one with its balance");
  CLI::App& compare =
      *app.add_subcommand("compare", "What one version of a diet says otherwise than another");
  CLI::App& sheet =
      *app.add_subcommand("sheet", "Write a version of a diet as a page: NAME.html or NAME.xlsx");
  for (CLI::App* command : {&diets, &compare, &sheet})
    command->add_option("COLLECTION", words.file, "A collection file, NAME.tarebowl")->required();
  sheet.add_option("FILE", words.tableFile, "NAME.html or NAME.xlsx")->required();
  for (CLI::App* command : {&diets, &sheet}) {
    addGroupAndDay(*command, words);
    addDiet(*command, words);
  }
  sheet.remove_option(sheet.get_option("--group"));
  sheet.get_option("--version")
      ->description("Which version of it (default: the one that is fed, or the newest)");
  diets.get_option("--group")->excludes("--diet");
  compare.add_option("--diet", words.diet, "The code of a diet of the collection");
  compare.add_option("--from", words.version, "The version before")
      ->required()
      ->check(CLI::Range(1, kMostVersions));
  compare.add_option("--to", words.otherVersion, "The version after (default: the newest)")
      ->check(CLI::Range(1, kMostVersions));
  compare.add_option("--day", words.day, "The day it is about, YYYY-MM-DD (default: today)");
  compare.get_option("--diet")->required();
  sheet.get_option("--diet")->required();
  for (CLI::App* command : {&diets, &compare}) addTableOrJson(*command, words);
}

void defineKitchenCommands(CLI::App& app, Words& words) {
  CLI::App& prep = *app.add_subcommand("prep", "What a section's kitchen prepares on a day");
  CLI::App& weighIn = *app.add_subcommand(
      "weigh-in", "Write down what bowls weigh: CSV with the titles group,bowl,food,g,reason");
  CLI::App& leftovers = *app.add_subcommand(
      "leftovers", "Write down what was left: CSV with the titles group,bowl,food,how,left_g,lost_g,reason");
  CLI::App& stock = *app.add_subcommand("stock", "Which foods are in the house");
  CLI::App& tolerance = *app.add_subcommand(
      "tolerance",
      "How far a weight may lie from the plan: some of a scale step, or where larger the least "
      "of so many steps, a share of the bowl and a share of body mass");
  for (CLI::App* command : {&prep, &weighIn, &leftovers, &stock, &tolerance})
    command->add_option("COLLECTION", words.file, "A collection file, NAME.tarebowl")->required();
  prep.add_option("FILE", words.tableFile, "Write a page for the wall: NAME.html");
  prep.add_option("--section,-S", words.section, "Whose kitchen (needed where there is more than one)");
  prep.add_flag("--labels", words.labels, "Write the labels of the bowls instead of the sheet")
      ->needs("FILE");
  for (CLI::App* command : {&weighIn, &leftovers})
    command->add_option("TABLE", words.tableFile, "NAME.csv, or - for standard input")->required();
  weighIn.add_flag("--confirm", words.confirm, "Keep weights as they are that would be asked about");
  for (CLI::App* command : {&prep, &weighIn, &leftovers})
    command->add_option("--day", words.day, "The day of the sheet, YYYY-MM-DD (default: today)");
  stock.add_option("--out", words.outOfStock, "Codes of foods that are not in the house, parted by commas");
  stock.add_option("--in", words.backInStock, "Codes of foods that are in the house again");
  tolerance.add_option("--of-step", words.ofStep, "Scale steps that are always allowed, such as 0.5");
  tolerance.add_option("--least-steps", words.leastSteps,
                       "Scale steps of the three of which the least counts");
  tolerance.add_option("--of-bowl", words.ofBowl, "Share of the bowl, such as 0.02");
  tolerance.add_option("--of-body", words.ofBody, "Share of body mass, such as 0.003");
  for (CLI::App* command : {&prep, &stock}) addTableOrJson(*command, words);
}

void defineSwap(CLI::App& app, Words& words) {
  CLI::App& swap =
      *app.add_subcommand("swap", "What to give instead of a food that is missing, and how many grams");
  swap.add_option("FILE", words.file,
                  "With --diet a collection; else a problem file whose \"reference\" is the approved diet")
      ->required();
  addDiet(swap, words);
  swap.get_option("--version")
      ->description("Which version of it (default: the one that is fed, or the newest)");
  swap.add_option("--day", words.day, "The day it is about, YYYY-MM-DD (default: today)");
  swap.add_option("--without", words.without, "Codes of the missing foods, parted by commas")->required();
  swap.add_option("--among", words.among, "Look only at these foods: codes parted by commas");
  swap.add_option("--larder", words.larder, "With a problem file: the foods on hand (tarebowl-larder/1)")
      ->excludes("--diet");
  addCollection(swap, words);
  swap.get_option("--collection")->excludes("--diet");
  swap.add_option("--move", words.movePercent,
                  "Let every other line move by so many percent of its grams (default: held)")
      ->check(CLI::Range(0.0, 100.0));
  swap.add_flag("--pairs", words.pairs, "Seek pairs of foods even where one food would do");
  swap.add_option("--most", words.mostSwaps, "How many swaps to show")->capture_default_str();
  addTableOrJson(swap, words);
}

void defineIntakeCommand(CLI::App& app, Words& words) {
  CLI::App& intake = *app.add_subcommand("intake", "What a group was offered, left and ate over some days");
  intake.add_option("COLLECTION", words.file, "A collection file, NAME.tarebowl")->required();
  intake.add_option("--group", words.group, "The code of a group of animals")->required();
  intake.add_option("--from", words.from, "The first day, YYYY-MM-DD (default: four weeks up to the last)");
  intake.add_option("--to", words.day, "The last day, YYYY-MM-DD (default: today)");
  intake.add_option("--nutrient", words.nutrients, "Tagnames parted by commas (default: ENERC,PROCNT,CA,P)");
  addTableOrJson(intake, words);
  intake.add_flag("--csv", words.csv, "Print a row for each day and nutrient")
      ->excludes("--table")
      ->excludes("--json");
}

void defineRotation(CLI::App& app, Words& words) {
  CLI::App& rotate = *app.add_subcommand(
      "rotate", "Plan days that vary and balance over the period; prints tarebowl-rotation/1");
  rotate
      .add_option("FILE", words.file,
                  "A problem file (tarebowl-problem/1), - for standard input, or with --diet a collection")
      ->required();
  rotate.add_option("--rules", words.rules, "What holds from day to day (tarebowl-rotation-rules/1)")
      ->required();
  addDiet(rotate, words);
  rotate.add_option("--day", words.day, "The day the diet is read on, YYYY-MM-DD (default: today)")
      ->needs("--diet");
  addCollection(rotate, words);
  constexpr int kMostDays = 28;
  rotate.add_option("--days", words.days, "How many days (default: as the rules say, or 7)")
      ->check(CLI::Range(1, kMostDays));
  rotate.add_option("--from", words.from, "The first day, YYYY-MM-DD (default: as the rules say)");
  rotate.add_option("--replan", words.replan,
                    "Days that are over stay as they were fed: an earlier plan, or a file with \"days\"");
  rotate.add_option("--today", words.today, "With --replan: plan anew from this day on, YYYY-MM-DD")
      ->needs("--replan");
  rotate.add_option("--seed", words.seed, "Where the search starts: the same seed, the same plan")
      ->capture_default_str();
  rotate
      .add_option("--gap", words.gapPercent,
                  "End the search when a plan is proven to be within so many percent")
      ->check(CLI::Range(0.0, 100.0))
      ->capture_default_str();
  addSeconds(rotate, words);
  addTableOrJson(rotate, words);
}

void defineExplore(CLI::App& app, Words& words) {
  CLI::App& explore = *app.add_subcommand(
      "explore", "What gives while one bound moves, or one thing sought is traded for another");
  explore
      .add_option("FILE", words.file,
                  "A problem file (tarebowl-problem/1), - for standard input, or with --diet a collection")
      ->required();
  auto* bound = explore.add_option("--bound", words.bound, "The id of a target, ratio or share that moves");
  auto* food = explore.add_option("--food", words.food, "The id of a food whose limit moves");
  auto* against = explore.add_option(
      "--against", words.against,
      "Trade what is sought for this: closest, lowest-cost, lowest:TAGNAME, highest:TAGNAME");
  bound->excludes(food)->excludes(against);
  food->excludes(against);
  explore.add_option("--side", words.side, "Which bound of it (default: the one there is)")
      ->check(CLI::IsMember({"min", "max"}));
  explore.add_option("--from", words.rangeFrom,
                     "Where it begins, in the bound's own unit, of a food in grams");
  explore.add_option("--to", words.rangeTo, "Where it ends");
  addDiet(explore, words);
  explore.add_option("--day", words.day, "The day it is about, YYYY-MM-DD (default: today)");
  addCollection(explore, words);
  addTableOrJson(explore, words);
}

void requireSomethingToExplore(const Command& command) {
  if (command.kind != Command::Kind::Explore) return;
  if (command.bound.empty() && command.food.empty() && command.against.empty())
    throw UsageError("explore: expected --bound ID, --food ID or --against OBJECTIVE");
  for (const auto& end : {command.rangeFrom, command.rangeTo})
    if (end && !(std::isfinite(*end) && *end >= 0.0))
      throw UsageError("--from, --to: expected numbers of 0 or more");
}

void defineHealthCommands(CLI::App& app, Words& words) {
  CLI::App& calcium = *app.add_subcommand(
      "calcium", "Calcium, phosphorus, Ca:P and vitamin D of a group or an animal, as offered and as eaten");
  CLI::App& lookBack = *app.add_subcommand(
      "look-back", "From a sign back to what was eaten before it, against days without the sign");
  CLI::App& observe = *app.add_subcommand("observe", "Write down what was seen of a group or an animal");
  for (CLI::App* command : {&calcium, &lookBack, &observe})
    command->add_option("COLLECTION", words.file, "A collection file, NAME.tarebowl")->required();
  for (CLI::App* command : {&calcium, &lookBack})
    command->add_option("FILE", words.tableFile, "Write one page for the medical file: NAME.html");
  for (CLI::App* command : {&lookBack, &observe}) addGroupAndDay(*command, words);
  calcium.add_option("--group", words.group, "The code of a group of animals");
  defineHealthOptions(calcium, lookBack, observe, words.health);
  observe.add_flag("--confirm", words.confirm, "Keep as it is what would be asked about");
  for (CLI::App* command : {&calcium, &lookBack}) addTableOrJson(*command, words);
}

/// CLI11 explains some slips over several lines; the first one says it.
std::string firstLine(const std::string& text) {
  return text.substr(0, text.find('\n'));
}

void define(CLI::App& app, Words& words) {
  app.set_version_flag("--version", "tarebowl " TAREBOWL_VERSION);
  app.set_help_flag("--help,-h", "Print this help");
  app.add_option(
      "FILE", words.file,
      "Open the window on this collection (*.tarebowl) or problem file (default: the invented sample)");
  app.add_option("--theme", words.theme, "Theme of the window, where it is not to follow the desktop")
      ->check(CLI::IsMember({"light", "dark"}));
  app.require_subcommand(0, 1);
  app.footer(
      "Exit status: 0 balanced or compromise, 3 impossible (the hard rules contradict each other),\n"
      "2 a file or a command line that cannot be read, 1 anything else.");

  CLI::App& solve =
      *app.add_subcommand("solve", "Find the grams that meet the targets; prints tarebowl-result/1");
  solve
      .add_option("FILE", words.file,
                  "A problem file (tarebowl-problem/1), - for standard input, or with --group or --diet a "
                  "collection")
      ->required();
  addGroupAndDay(solve, words);
  solve
      .add_option(
          "--foods", words.foods,
          "With --group: codes of foods of the collection, parted by commas, or a file with one a line")
      ->needs("--group");
  solve.get_option("--group")->needs("--foods");
  addDiet(solve, words);
  solve.get_option("--diet")->excludes("--group");
  addCollection(solve, words);
  addTable(solve, words);
  addSeconds(solve, words);

  solve.add_option("--larder", words.larder,
                   "Foods on hand (tarebowl-larder/1): name those that would close the gap");
  solve.add_flag("--explain", words.explain,
                 "Say what binds, what a unit of it costs, over what range, and the least changes");

  CLI::App& balance =
      *app.add_subcommand("balance", "Judge the diet as it is now (\"reference\") without solving");
  addFile(balance, words);
  addCollection(balance, words);
  addTable(balance, words);

  CLI::App& nutrients =
      *app.add_subcommand("nutrients", "List the nutrients known here, with their tagnames and units");
  addTableOrJson(nutrients, words);
  defineCollectionCommands(app, words);
  defineTableCommands(app, words);
  defineAnimalCommands(app, words);
  defineDietCommands(app, words);
  defineKitchenCommands(app, words);
  defineSwap(app, words);
  defineIntakeCommand(app, words);
  defineRotation(app, words);
  defineExplore(app, words);
  defineHealthCommands(app, words);
}

Command::Kind kindOf(const CLI::App& app) {
  if (app.got_subcommand("solve")) return Command::Kind::Solve;
  if (app.got_subcommand("balance")) return Command::Kind::Balance;
  if (app.got_subcommand("nutrients")) return Command::Kind::Nutrients;
  if (app.got_subcommand("new")) return Command::Kind::NewCollection;
  if (app.got_subcommand("foods")) return Command::Kind::Foods;
  if (app.got_subcommand("import")) return Command::Kind::Import;
  if (app.got_subcommand("export")) return Command::Kind::Export;
  if (app.got_subcommand("check")) return Command::Kind::Check;
  if (app.got_subcommand("animals")) return Command::Kind::Animals;
  if (app.got_subcommand("targets")) return Command::Kind::Targets;
  if (app.got_subcommand("diets")) return Command::Kind::Diets;
  if (app.got_subcommand("compare")) return Command::Kind::Compare;
  if (app.got_subcommand("explore")) return Command::Kind::Explore;
  if (app.got_subcommand("sheet")) return Command::Kind::Sheet;
  if (app.got_subcommand("prep")) return Command::Kind::Prep;
  if (app.got_subcommand("weigh-in")) return Command::Kind::WeighIn;
  if (app.got_subcommand("leftovers")) return Command::Kind::Leftovers;
  if (app.got_subcommand("stock")) return Command::Kind::Stock;
  if (app.got_subcommand("swap")) return Command::Kind::Swap;
  if (app.got_subcommand("intake")) return Command::Kind::Intake;
  if (app.got_subcommand("rotate")) return Command::Kind::Rotate;
  if (app.got_subcommand("calcium")) return Command::Kind::Calcium;
  if (app.got_subcommand("look-back")) return Command::Kind::LookBack;
  if (app.got_subcommand("observe")) return Command::Kind::Observe;
  if (app.got_subcommand("tolerance")) return Command::Kind::Tolerance;
  return Command::Kind::OpenWindow;
}

/// Help and version arrive as errors without a fault.
Command answerTo(const CLI::App& app, const CLI::ParseError& request) {
  std::ostringstream out;
  std::ostringstream err;
  if (app.exit(request, out, err) != 0)
    throw UsageError(firstLine(request.what()) + " (see tarebowl --help)");
  Command command;
  command.kind = Command::Kind::ShowText;
  command.text = out.str();
  return command;
}

std::optional<quantity::Date> dayFrom(const std::string& option, const std::string& text) {
  if (text.empty()) return std::nullopt;
  const auto day = quantity::parseDate(text);
  if (!day) throw UsageError(option + ": expected a day as YYYY-MM-DD, found \"" + text + "\"");
  return day;
}

}  // namespace

Command parseCommandLine(int argc, const char* const* argv) {
  CLI::App app("Diets weighed to the gram for animals in human care.", "tarebowl");
  Words words;
  define(app, words);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& request) {
    return answerTo(app, request);
  }
  if (!std::isfinite(words.seconds))
    throw UsageError("--seconds: expected a number of seconds (see tarebowl --help)");
  Command command;
  command.kind = kindOf(app);
  command.table = words.table;
  const bool opensSample = command.kind == Command::Kind::OpenWindow && words.file.empty();
  if (!opensSample) command.file = words.file;
  if (!words.collection.empty()) command.collection = words.collection;
  command.sought = words.sought;
  command.most = words.most;
  command.tableFile = words.tableFile;
  if (!words.mapping.empty()) command.mapping = words.mapping;
  command.dryRun = words.dryRun;
  command.wide = words.wide;
  if (!words.larder.empty()) command.larder = words.larder;
  command.explain = words.explain;
  command.group = words.group;
  command.day = dayFrom(command.kind == Command::Kind::Intake ? "--to" : "--day", words.day);
  command.from = dayFrom("--from", words.from);
  command.nutrients = words.nutrients;
  command.csv = words.csv;
  command.foods = words.foods;
  if (!words.profile.empty()) command.profile = words.profile;
  command.diet = words.diet;
  command.version = words.version;
  command.otherVersion = words.otherVersion;
  command.asProblem = words.asProblem;
  command.ofStep = words.ofStep;
  command.leastSteps = words.leastSteps;
  command.ofBowl = words.ofBowl;
  command.ofBody = words.ofBody;
  command.section = words.section;
  command.labels = words.labels;
  command.confirm = words.confirm;
  command.outOfStock = words.outOfStock;
  command.backInStock = words.backInStock;
  command.without = words.without;
  command.among = words.among;
  command.move = words.movePercent / 100.0;
  command.pairs = words.pairs;
  if (command.kind == Command::Kind::Swap) command.most = words.mostSwaps;
  command.rules = words.rules;
  if (words.days > 0) command.days = words.days;
  if (!words.replan.empty()) command.replan = words.replan;
  command.today = dayFrom("--today", words.today);
  command.seed = words.seed;
  command.enoughGap = words.gapPercent / 100.0;
  command.bound = words.bound;
  command.food = words.food;
  command.side = words.side;
  command.against = words.against;
  command.rangeFrom = words.rangeFrom;
  command.rangeTo = words.rangeTo;
  requireSomethingToExplore(command);
  command.health = words.health;
  command.deadline = std::chrono::milliseconds(std::max(1L, std::lround(words.seconds * 1000.0)));
  return command;
}

}  // namespace tarebowl::app
