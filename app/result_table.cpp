// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/result_table.h"

#include "app/text_table.h"
#include "app/why_text.h"
#include "core/exchange/line_words.h"
#include "core/exchange/wording.h"
#include "core/food/nutrient.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace tarebowl::app {

namespace {

using exchange::gramsText;
using exchange::isHard;
using exchange::kCaution;
using exchange::LineWords;
using exchange::nameOf;
using exchange::percentText;
using exchange::shortNumber;
using exchange::stateText;
using exchange::valueText;
using exchange::wordsOf;
using exchange::zoneText;

using diet::BalanceProblem;
using diet::DietSolution;
using diet::DietStatus;
using diet::TargetBalance;
using diet::TargetKind;
using Align = TextTable::Align;

std::string verdict(const DietSolution& solution) {
  switch (solution.status) {
    case DietStatus::Balanced:
      return "Balanced: every target holds.";
    case DietStatus::Compromise:
      return fmt::format("Compromise: not every target holds; shortfall {} in all.",
                         shortNumber(solution.shortfall));
    case DietStatus::Impossible:
      return "Impossible: the hard rules contradict each other.";
    case DietStatus::Unbounded:
      return fmt::format("No answer: nothing limits what is sought ({}).", solution.reason);
    case DietStatus::Stopped:
      return fmt::format("No answer in the time given ({}); allow more with --seconds.", solution.reason);
    case DietStatus::Failed:
      break;
  }
  return fmt::format("No answer that passed its own checks ({}).", solution.reason);
}

std::string gramsTable(const BalanceProblem& problem, const diet::Diet& diet) {
  const int count = problem.eater.count;
  std::vector<TextTable::Column> columns{
      {"Food", Align::Left}, {"Group", Align::Left}, {"g per animal and day", Align::Right}};
  if (count > 1) columns.push_back({fmt::format("g for {}", count), Align::Right});
  TextTable table(columns);
  const auto addRow = [&](const std::string& name, const std::string& group, quantity::Grams grams,
                          quantity::Grams step) {
    std::vector<std::string> cells{name, group, gramsText(grams, step)};
    if (count > 1) cells.push_back(gramsText(grams * count, step));
    table.addRow(std::move(cells));
  };
  quantity::Grams sum;
  quantity::Grams finest{1.0};
  for (std::size_t i = 0; i < diet.size(); ++i) {
    sum += diet[i];
    finest = std::min(finest, problem.foods[i].scaleStep);
    if (diet[i].value() != 0.0)
      addRow(nameOf(problem.foods[i]), problem.foods[i].group, diet[i], problem.foods[i].scaleStep);
  }
  table.addRule();
  addRow("As offered, in all", "", sum, finest);
  return table.text();
}

std::string unused(const BalanceProblem& problem, const diet::Diet& diet) {
  std::string names;
  for (std::size_t i = 0; i < diet.size(); ++i) {
    if (diet[i].value() == 0.0) names += (names.empty() ? "" : "; ") + problem.foods[i].name;
  }
  return names.empty() ? names : "Not used: " + names + ".\n";
}

std::optional<double> scaled(std::optional<double> number, double scale) {
  return number ? std::optional(*number * scale) : std::nullopt;
}

/// What is unknown can only help a minimum and only harm a maximum; where it may do either, no chance can be
/// named.
std::string chanceText(const TargetBalance& line) {
  if (!line.chance) return "?";
  std::string chance = percentText(*line.chance);
  if (!line.atLeast) return chance;
  if (line.kind != TargetKind::Nutrient || (line.min && line.max)) return "?";
  const bool isBare = chance.front() != '>' && chance.front() != '<' && chance != "100 %";
  if (line.min) return (isBare ? "≥ " : "") + chance;
  return isBare ? "≤ " + chance : "?";
}

std::string gapText(const DietSolution& solution) {
  if (solution.provenGap <= 0.0) return {};
  return fmt::format("Not proven the best: it may be off by up to {}; allow more time with --seconds.\n",
                     percentText(solution.provenGap));
}

/// Which species stand in, and how many target values were recalled rather than read.
std::string originText(const BalanceProblem& problem) {
  std::set<std::string> species;
  int recalled = 0;
  const auto note = [&](const animal::TargetOrigin& origin) {
    if (!origin.modelSpecies.empty()) species.insert(origin.modelSpecies);
    if (origin.provenance == animal::Provenance::FromMemory) ++recalled;
  };
  for (const auto& target : problem.targets) note(target.origin);
  for (const auto& ratio : problem.ratios) note(ratio.origin);
  for (const auto& share : problem.shares) note(share.origin);
  std::string text;
  if (!species.empty()) text += fmt::format("Model species that stand in: {}.\n", fmt::join(species, "; "));
  if (recalled > 0)
    text += fmt::format("Targets written down from memory, to be checked at the source: {}.\n", recalled);
  return text;
}

std::string wholeTable(const BalanceProblem& problem, const DietSolution& solution,
                       const std::string& verdict) {
  std::string text = problemHeading(problem) + verdict + '\n';
  if (!solution.grams.empty()) {
    text += gramsTable(problem, solution.grams) + unused(problem, solution.grams) + '\n';
  }
  if (!solution.balance.targets.empty()) {
    text += ladderTable(problem, solution.balance);
    text +=
        "Known: the share of the eaten dry matter whose value is known. What is unknown could only add to a "
        "value with ≥; one with ≈ it could move either way.\n\n";
  }
  return text + originText(problem) + std::string(kCaution);
}

}  // namespace

std::string problemHeading(const BalanceProblem& problem) {
  const diet::Eater& eater = problem.eater;
  std::string text = problem.title.empty() ? std::string() : problem.title + '\n';
  text += fmt::format("{}: {} {}", eater.name.empty() ? "For" : eater.name, eater.count,
                      eater.count == 1 ? "animal" : "animals");
  if (eater.bodyMass) text += fmt::format(" of {} kg body mass", shortNumber(eater.bodyMass->value()));
  text += fmt::format("; energy by the method {}\n", food::symbolOf(problem.energyMethod));
  if (problem.invented) text += "INVENTED SAMPLE: names, masses and house rules are made up.\n";
  return text;
}

std::string ladderTable(const BalanceProblem& problem, const diet::Balance& balance) {
  TextTable table({{"Target", Align::Left},
                   {"Of", Align::Left},
                   {"Value", Align::Right},
                   {"Zone", Align::Right},
                   {"Unit and basis", Align::Left},
                   {"State", Align::Left},
                   {"By", Align::Right},
                   {"Known", Align::Right},
                   {"Chance", Align::Right}});
  for (const TargetBalance& line : balance.targets) {
    const LineWords words = wordsOf(problem, line);
    const bool missed = line.state == diet::TargetState::Short || line.state == diet::TargetState::Over;
    table.addRow({line.id + (isHard(problem, line) ? " (hard)" : ""), words.subject,
                  valueText(line, words.scale),
                  zoneText(scaled(line.min, words.scale), scaled(line.max, words.scale)), words.unit,
                  std::string(stateText(line.state)), missed ? percentText(line.shortfall) : "",
                  percentText(line.coverage), chanceText(line)});
  }
  return table.text();
}

std::string solutionTable(const BalanceProblem& problem, const DietSolution& solution,
                          const exchange::Reasons& reasons) {
  return wholeTable(problem, solution,
                    verdict(solution) + '\n' + gapText(solution) + whyText(problem, solution, reasons));
}

std::string judgementTable(const BalanceProblem& problem, const DietSolution& judged) {
  const std::string which =
      problem.reference ? "The diet as it is now" : "No diet is given as it is now; equal grams of all foods";
  const std::string how =
      judged.status == DietStatus::Balanced
          ? "every target holds"
          : fmt::format("not every target holds; shortfall {} in all", shortNumber(judged.shortfall));
  return wholeTable(problem, judged, which + ": " + how + ".\n");
}

std::string nutrientTable() {
  TextTable table(
      {{"Tagname", Align::Left}, {"Name", Align::Left}, {"Unit", Align::Left}, {"Group", Align::Left}});
  for (const food::Nutrient& nutrient : food::allNutrients()) {
    table.addRow({nutrient.tagname, nutrient.name, std::string(quantity::symbolOf(nutrient.unit)),
                  std::string(food::symbolOf(nutrient.group))});
  }
  return table.text();
}

}  // namespace tarebowl::app
