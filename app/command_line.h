// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/health_words.h"
#include "core/quantity/date.h"

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>

namespace tarebowl::app {

/// What the program was asked to do.
struct Command {
  enum class Kind {
    OpenWindow,  ///< on file, or on the sample
    Solve,
    Balance,
    Nutrients,
    NewCollection,  ///< at file
    Foods,          ///< of the collection at file
    Import,         ///< tableFile into the collection at file
    Export,         ///< the collection at file into tableFile
    Check,          ///< the collection at file
    Animals,        ///< of the collection at file
    Targets,        ///< of a group of the collection at file
    Diets,          ///< of the collection at file, or one version
    Compare,        ///< two versions of a diet
    Explore,        ///< what gives while a bound of the problem in file moves
    Sheet,          ///< of a version of a diet, into tableFile
    Prep,           ///< of a section on a day, or into tableFile
    WeighIn,        ///< tableFile into the sheets of a day
    Leftovers,      ///< the same
    Stock,          ///< of the collection at file
    Swap,           ///< what to give instead of the foods in without
    Intake,         ///< of a group of the collection at file, from a day to a day
    Rotate,         ///< days of a problem, or of a version of a diet
    Calcium,        ///< review of a group or an animal, or into tableFile
    LookBack,       ///< from a sign, or into tableFile
    Observe,        ///< into the collection at file
    Tolerance,      ///< of the collection at file, shown or set
    ShowText        ///< help or version, in text
  };
  Kind kind = Kind::OpenWindow;
  std::optional<std::string> file;  ///< "-" is standard input
  bool table = false;               ///< for people rather than for programs
  std::chrono::milliseconds deadline{10'000};
  std::optional<std::string> collection{};  ///< where a problem's foods come from
  std::string sought{};                     ///< part of a food's name
  std::size_t most = 50;                    ///< foods to list
  std::string tableFile{};                  ///< CSV or XLSX
  std::optional<std::string> mapping{};     ///< how the table is read; guessed where it is not given
  bool dryRun = false;                      ///< say what an import would do, and do not do it
  bool wide = false;                        ///< export a row a food
  bool explain = false;
  bool asProblem = false;                ///< export the problem of a version, not the diet
  bool labels = false;                   ///< the labels of bowls instead of the sheet
  bool confirm = false;                  ///< keep what would be asked about
  std::optional<std::string> larder{};   ///< foods on hand, for remedies
  std::string group{};                   ///< of animals
  std::optional<quantity::Date> day{};   ///< nothing: today
  std::string foods{};                   ///< codes parted by commas, or a file with one a line
  std::optional<std::string> profile{};  ///< "CODE" or "CODE:VERSION", instead of foods
  std::string diet{};                    ///< code of a diet of the collection
  int version = 0;                       ///< of the diet; 0: the newest, on a sheet the one that is fed
  int otherVersion = 0;                  ///< compared with; 0: the newest
  std::optional<double> ofStep{};        ///< of the tolerance (core/intake/tolerance.h); nothing: as it is
  std::optional<double> leastSteps{};
  std::optional<double> ofBowl{};
  std::optional<double> ofBody{};
  std::string section{};     ///< whose kitchen
  std::string outOfStock{};  ///< codes of foods parted by commas
  std::string backInStock{};
  std::string without{};                  ///< codes of missing foods, parted by commas
  std::string among{};                    ///< codes of the only candidates; empty: all that is on hand
  double move = 0.0;                      ///< share by which other lines may move
  bool pairs = false;                     ///< seek pairs though one food would do
  std::optional<quantity::Date> from{};   ///< the first day
  std::string nutrients{};                ///< tagnames parted by commas
  bool csv = false;                       ///< for a spreadsheet
  std::string rules{};                    ///< of a rotation
  std::optional<int> days{};              ///< of a rotation; nothing: as its rules say
  std::optional<std::string> replan{};    ///< a plan, or what was fed
  std::optional<quantity::Date> today{};  ///< the first day that is planned anew; nothing: after what was fed
  std::uint64_t seed = 1;
  double enoughGap = 0.0;             ///< a search ends at it
  std::string bound{};                ///< id of a target, ratio or share that moves
  std::string food{};                 ///< id of a food whose limit moves
  std::string side{};                 ///< "min", "max"; empty: whichever there is
  std::string against{};              ///< another objective, to trade for
  std::optional<double> rangeFrom{};  ///< of the range that is traced
  std::optional<double> rangeTo{};
  HealthWords health{};
  std::string text;
};

/// A command line that cannot be understood; what() is one line.
class UsageError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

/// Throws UsageError.
[[nodiscard]] Command parseCommandLine(int argc, const char* const* argv);

}  // namespace tarebowl::app
