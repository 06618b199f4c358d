// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/version_problem.h"
#include "core/exchange/page_tongue.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

/// A diet on one page, for the wall of the kitchen and the file of the group: what is fed, how it is
/// prepared, how it stands against its targets and who decided on it.
namespace tarebowl::exchange {

/// Whose diet it is.
struct SheetSubject {
  diet::NamedDiet diet{};
  std::string species{};  ///< "Echinops telfairi"
  std::string section{};
};

struct SheetFood {
  std::string name{};
  std::string meal{};
  std::string purpose{};  ///< empty for what is in the bowl
  quantity::Grams perAnimal{};
  quantity::Grams step{1};               ///< of the scale
  std::optional<quantity::Grams> low{};  ///< an allowance: between low and high
  std::optional<quantity::Grams> high{};
  std::string preparation{};
  double eatenFraction = 1.0;          ///< that its energy and the targets are judged by
  std::optional<double> costPerDay{};  ///< of one animal
};

struct SheetTarget {
  std::string id{};
  std::string subject{};
  std::string unit{};
  std::optional<double> value{};  ///< in this unit; nothing where it is unknown
  std::string valueText{};
  std::optional<double> min{};
  std::optional<double> max{};
  std::string state{};  ///< shape and word
  double coverage = 1.0;
  bool hard = false;
  std::size_t source = 0;  ///< place in DietSheet::sources, from 1; 0: none is stated
};

struct SheetCaution {
  std::string food{};
  std::string severity{};
  std::string reason{};
  std::string advice{};
  std::string lifted{};  ///< why it was set aside
};

struct DietSheet {
  std::string title{};
  std::string species{};
  std::string section{};
  std::optional<quantity::Kilograms> bodyMass{};
  diet::DietVersion version{};     ///< state, steps, first day, note
  std::vector<SheetFood> foods{};  ///< in the order of the meals as the version names them
  quantity::Grams total{};         ///< per animal
  std::optional<double> energy{};  ///< kcal per animal and day; nothing where no food's is known
  std::string energyMethod{};
  std::optional<double> costPerDay{};  ///< of one animal, of the foods that have a price
  std::size_t unpriced = 0;            ///< foods in it without a price
  std::vector<SheetTarget> targets{};
  std::vector<diet::RuleNotCounted> notJudged{};  ///< rules of the targets that nothing here can be judged by
  std::vector<std::string> sources{};
  std::vector<SheetCaution> cautions{};
  int animals = 1;
  bool invented = false;
  bool energyAtLeast = false;  ///< some food's energy is unknown
};

/// The version's own grams as they stand. Foods of which nothing is given are left out. Its words are in that
/// language, in which it is then written.
[[nodiscard]] DietSheet sheetOf(const SheetSubject& subject, const diet::DietVersion& version,
                                const diet::ProblemOfVersion& made, const PageTongue& tongue = {});

/// A page of its own, style included; every text is escaped.
[[nodiscard]] std::string sheetAsHtml(const DietSheet& sheet, const PageTongue& tongue = {});
/// Numbers as numbers, their units in the titles. Throws FormatError (problem_json.h) where the file cannot
/// be written.
void writeSheetXlsx(const DietSheet& sheet, const std::filesystem::path& file, const PageTongue& tongue = {});

}  // namespace tarebowl::exchange
