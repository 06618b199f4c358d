// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"
#include "core/quantity/date.h"

#include <chrono>
#include <optional>
#include <string>

/// Options that several commands have, each with one name and one wording. What is bound must live as long as
/// the command.
namespace tarebowl::app {

/// A version of a diet of a collection.
struct DietWords {
  std::string diet{};  ///< its code; empty where none is named
  int version = 0;     ///< 0: where none is named, the newest or the one that is fed
};

struct GroupAndDay {
  std::string group{};                  ///< its code; empty where none is named
  std::optional<quantity::Date> day{};  ///< nothing: today
};

inline constexpr int kMostVersions = 1'000'000;

/// While the line is parsed, the command that it names puts into chosen what is to be run.
void runWhenNamed(CLI::App& command, Run& chosen, Run run);

CLI::Option* addCollectionFile(CLI::App& command, std::string& file);
/// A problem file, or with --diet a collection.
CLI::Option* addProblemOrCollection(CLI::App& command, std::string& file);
CLI::Option* addTable(CLI::App& command, bool& table);
void addTableOrJson(CLI::App& command, bool& table);
/// --collection, where a problem's foods come from.
CLI::Option* addCollection(CLI::App& command, std::string& collection);
/// A finite time to search, 10 s where it is not told.
void addSeconds(CLI::App& command, double& seconds);
[[nodiscard]] std::chrono::milliseconds deadlineOf(double seconds);
CLI::Option* addGroup(CLI::App& command, std::string& group);
/// --diet with its --version, where none is named the newest.
void addDiet(CLI::App& command, DietWords& words);
/// The same, where none is named the one that is fed.
void addFedDiet(CLI::App& command, DietWords& words);
/// Throws UsageError, while the line is parsed, for what is no day.
CLI::Option* addDay(CLI::App& command, const std::string& option, std::optional<quantity::Date>& day,
                    const std::string& what);
/// --day, "The day it is about".
CLI::Option* addDay(CLI::App& command, std::optional<quantity::Date>& day);
void addGroupAndDay(CLI::App& command, GroupAndDay& words);

/// Today where no day is named.
[[nodiscard]] quantity::Date dayOf(const std::optional<quantity::Date>& day);

}  // namespace tarebowl::app
