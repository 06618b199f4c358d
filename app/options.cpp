// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/options.h"

#include "app/author.h"
#include "app/command_line.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

namespace tarebowl::app {

namespace {

constexpr double kLongestSeconds = 86'400.0;

/// CLI11's ranges let through what is no number; what is not even one word has been refused before.
std::string complainUnlessFinite(const std::string& text) {
  double value = 0.0;
  const bool isNumber = CLI::detail::lexical_cast(text, value) && std::isfinite(value);
  return isNumber ? "" : "expected a number of seconds";
}

std::optional<quantity::Date> dayFrom(const std::string& option, const std::string& text) {
  if (text.empty()) return std::nullopt;
  const auto day = quantity::parseDate(text);
  if (!day) throw UsageError(option + ": expected a day as YYYY-MM-DD, found \"" + text + "\"");
  return day;
}

}  // namespace

void runWhenNamed(CLI::App& command, Run& chosen, Run run) {
  command.callback([&chosen, run = std::move(run)] { chosen = run; });
}

CLI::Option* addCollectionFile(CLI::App& command, std::string& file) {
  return command
      .add_option("COLLECTION", file,
                  "A collection: a file, NAME.tarebowl, or an address on a server, "
                  "postgresql://PERSON@SERVER/DATABASE")
      ->required();
}

CLI::Option* addProblemOrCollection(CLI::App& command, std::string& file) {
  return command
      .add_option("FILE", file,
                  "A problem file (tarebowl-problem/1), - for standard input, or with --diet a collection")
      ->required();
}

CLI::Option* addTable(CLI::App& command, bool& table) {
  return command.add_flag("--table", table, "Print a table for people instead of JSON");
}

void addTableOrJson(CLI::App& command, bool& table) {
  CLI::Option* forPeople = addTable(command, table);  // first, as the help lists them
  command.add_flag("--json")->description("Print JSON (the default)")->excludes(forPeople);
}

CLI::Option* addCollection(CLI::App& command, std::string& collection) {
  return command.add_option("--collection", collection,
                            "Take foods that the problem states without per_100_g from this collection");
}

void addSeconds(CLI::App& command, double& seconds) {
  command
      .add_option("--seconds", seconds,
                  "Longest time to search; the best answer so far is printed with its gap")
      ->check(CLI::Range(0.001, kLongestSeconds))
      ->check(complainUnlessFinite)
      ->capture_default_str();
}

std::chrono::milliseconds deadlineOf(double seconds) {
  return std::chrono::milliseconds(std::max(1L, std::lround(seconds * 1000.0)));
}

CLI::Option* addGroup(CLI::App& command, std::string& group) {
  return command.add_option("--group", group, "The code of a group of animals");
}

void addDiet(CLI::App& command, DietWords& words) {
  command.add_option("--diet", words.diet, "The code of a diet of the collection");
  command.add_option("--version", words.version, "Which version of it (default: the newest)")
      ->check(CLI::Range(1, kMostVersions))
      ->needs("--diet");
}

void addFedDiet(CLI::App& command, DietWords& words) {
  addDiet(command, words);
  command.get_option("--version")
      ->description("Which version of it (default: the one that is fed, or the newest)");
}

CLI::Option* addDay(CLI::App& command, const std::string& option, std::optional<quantity::Date>& day,
                    const std::string& what) {
  return command.add_option_function<std::string>(
      option, [&day, option](const std::string& text) { day = dayFrom(option, text); }, what);
}

CLI::Option* addDay(CLI::App& command, std::optional<quantity::Date>& day) {
  return addDay(command, "--day", day, "The day it is about, YYYY-MM-DD (default: today)");
}

void addGroupAndDay(CLI::App& command, GroupAndDay& words) {
  addGroup(command, words.group);
  addDay(command, words.day);
}

quantity::Date dayOf(const std::optional<quantity::Date>& day) {
  return day.value_or(today());
}

}  // namespace tarebowl::app
