// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/why_text.h"

#include "core/exchange/line_words.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <optional>
#include <vector>

namespace tarebowl::app {

namespace {

using exchange::gramsText;
using exchange::LineWords;
using exchange::nameOf;
using exchange::percentText;
using exchange::shortNumber;
using exchange::wordsOf;

using diet::BalanceProblem;
using diet::BoundSide;
using diet::DietSolution;
using diet::DietStatus;
using diet::Explanation;
using diet::LeastChange;
using diet::Remedy;
using diet::TargetBalance;
using diet::TargetKind;

constexpr std::string_view kChoice = "choice:";

/// "a, b and c"; "a, raw; b and c" where a name has a comma of its own.
std::string listed(const std::vector<std::string>& words) {
  if (words.empty()) return {};
  const bool hasCommas =
      std::ranges::any_of(words, [](const std::string& word) { return word.find(',') != std::string::npos; });
  std::string text = words.front();
  for (std::size_t i = 1; i < words.size(); ++i)
    text += (i + 1 == words.size() ? " and " : hasCommas ? "; " : ", ") + words[i];
  return text;
}

/// Within a sentence: "calcium", "vitamin D", but "DHA".
std::string within(std::string name) {
  const bool isWord = name.size() > 1 && std::islower(static_cast<unsigned char>(name[1])) != 0;
  if (isWord) name[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(name[0])));
  return name;
}

std::string starting(std::string sentence) {
  if (!sentence.empty())
    sentence[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(sentence[0])));
  return sentence;
}

/// The line of the balance with this id, as far as its words need it.
std::optional<TargetBalance> lineOf(const BalanceProblem& problem, const std::string& id) {
  TargetBalance line;
  line.id = id;
  const auto find = [&](const auto& rules, TargetKind kind) {
    const auto found = std::ranges::find_if(rules, [&](const auto& rule) { return rule.id == id; });
    if (found == rules.end()) return false;
    line.kind = kind;
    line.index = static_cast<std::size_t>(found - rules.begin());
    line.min = found->min;
    line.max = found->max;
    return true;
  };
  const bool known = find(problem.targets, TargetKind::Nutrient) || find(problem.ratios, TargetKind::Ratio) ||
                     find(problem.shares, TargetKind::Share);
  return known ? std::optional(line) : std::nullopt;
}

/// "calcium", "calcium : phosphorus", "share of fruit".
std::string subjectOf(const BalanceProblem& problem, const TargetBalance& line) {
  if (line.kind == TargetKind::Share) return "share of " + problem.shares[line.index].group;
  if (line.kind == TargetKind::Nutrient) return within(wordsOf(problem, line).subject);
  const animal::RatioTarget& ratio = problem.ratios[line.index];
  return within(food::describe(ratio.of).name) + " : " + within(food::describe(ratio.to).name);
}

std::string boundName(const BalanceProblem& problem, const TargetBalance& line, BoundSide side) {
  const std::string_view word = side == BoundSide::Min ? "minimum" : "maximum";
  const std::string subject = subjectOf(problem, line);
  if (line.kind == TargetKind::Share) return fmt::format("the {} {}", word, subject);
  return fmt::format("the {} {}", subject, word);
}

/// "the calcium minimum"; where a rule has both bounds, the one that is known to fight, else "range".
std::string ruleName(const BalanceProblem& problem, const std::string& id,
                     const std::vector<LeastChange>& changes) {
  const auto line = lineOf(problem, id);
  if (!line) return "the choice among " + id.substr(std::min(id.size(), kChoice.size()));
  if (!line->max) return boundName(problem, *line, BoundSide::Min);
  if (!line->min) return boundName(problem, *line, BoundSide::Max);
  const auto ofRule = [&](const LeastChange& change) { return change.id == id; };
  const auto first = std::ranges::find_if(changes, ofRule);
  const bool isOne = first != changes.end() && std::count_if(first, changes.end(), ofRule) == 1;
  return isOne ? boundName(problem, *line, first->side)
               : fmt::format("the {}{}", subjectOf(problem, *line),
                             line->kind == TargetKind::Share ? "" : " range");
}

std::string missText(const BalanceProblem& problem, const DietSolution& solution) {
  std::vector<std::string> misses;
  for (const TargetBalance& line : solution.balance.targets) {
    if (line.shortfall <= 10 * diet::kNoShortfall) continue;
    const bool isShort = line.state == diet::TargetState::Short;
    const bool isOver = line.state == diet::TargetState::Over;
    if (!isShort && !isOver) continue;
    misses.push_back(fmt::format("{} is {} by {}", subjectOf(problem, line), isShort ? "short" : "over",
                                 line.kind == TargetKind::Share
                                     ? fmt::format("{} points", shortNumber(100.0 * line.shortfall))
                                     : percentText(line.shortfall)));
  }
  return misses.empty() ? std::string() : starting(listed(misses));
}

std::string conflictText(const BalanceProblem& problem, const DietSolution& solution,
                         const std::vector<LeastChange>& changes) {
  if (solution.conflict.empty()) return {};
  std::vector<std::string> names;
  for (const std::string& id : solution.conflict) names.push_back(ruleName(problem, id, changes));
  std::string text = fmt::format("with these foods and limits {} cannot hold{}.", listed(names),
                                 names.size() > 1 ? " together" : "");
  if (!solution.conflictIsSmallest)
    text += " Not all of them need be part of it: time ran out before that was seen.";
  if (solution.conflictOnlyOnGrid)
    text += " Only the scale's steps are to blame: amounts between them would do.";
  return text;
}

/// "Calcium is short by 18 %: with these foods … cannot hold together."
std::string openingText(const BalanceProblem& problem, const DietSolution& solution,
                        const std::vector<LeastChange>& changes) {
  if (solution.status != DietStatus::Compromise && solution.status != DietStatus::Impossible) return {};
  const std::string miss = missText(problem, solution);
  const std::string conflict = conflictText(problem, solution, changes);
  if (miss.empty() && conflict.empty()) return {};
  if (conflict.empty()) return miss + ".\n";
  return (miss.empty() ? starting(conflict) : miss + ": " + conflict) + '\n';
}

std::string changeText(const BalanceProblem& problem, const LeastChange& change) {
  const auto line = lineOf(problem, change.id);
  if (!line) {
    return fmt::format("the choice among {} asked for {} {:.0f} instead of {:.0f}",
                       change.id.substr(kChoice.size()),
                       change.side == BoundSide::Min ? "at least" : "at most", change.to, change.from);
  }
  const LineWords words = wordsOf(problem, *line);
  return fmt::format("{} were {} instead of {} {}", boundName(problem, *line, change.side),
                     shortNumber(exchange::givenWay(change.to * words.scale, change.side)),
                     shortNumber(change.from * words.scale), words.unit);
}

std::string leastChangesText(const BalanceProblem& problem, const DietSolution& solution,
                             const std::vector<LeastChange>& changes) {
  std::string text;
  for (const LeastChange& change : changes) {
    const std::string_view what = !change.resolvesAll                         ? "These could hold together"
                                  : solution.status == DietStatus::Impossible ? "The hard rules would hold"
                                                                              : "Every target would hold";
    const std::string_view how = change.onGrid ? "" : ", in amounts between the scale's steps";
    const std::string_view but = change.resolvesAll ? "" : "; others would still fight";
    text +=
        fmt::format("{} if {}{}{}.\n", what, changeText(problem, change), problem.wholeSteps ? how : "", but);
  }
  return text;
}

/// "0.4 g limestone", "12 g kale in place of cucumber".
std::string remedyName(const BalanceProblem& problem, const Remedy& remedy,
                       const exchange::Reasons& reasons) {
  const bool raises = remedy.kind == Remedy::Kind::Raise;
  const diet::DietFood& food = raises ? problem.foods[remedy.food] : reasons.larder[remedy.food];
  const std::string grams =
      remedy.grams.value() > 0.0
          ? gramsText(remedy.grams, problem.wholeSteps ? food.scaleStep : quantity::Grams(0.01)) + " g "
          : "";
  std::string text = grams + nameOf(food);
  if (raises && food.max)
    text += fmt::format(" where at most {} g is allowed", gramsText(*food.max, food.scaleStep));
  if (remedy.kind == Remedy::Kind::Replace) text += " in place of " + nameOf(problem.foods[remedy.inPlaceOf]);
  if (remedy.known < 1.0) text += fmt::format(" (known for {} of the rules)", percentText(remedy.known));
  return text;
}

std::string remediesText(const BalanceProblem& problem, const exchange::Reasons& reasons) {
  std::string closing;
  std::string nearing;
  for (const Remedy& remedy : reasons.remedies) {
    const std::string name = remedyName(problem, remedy, reasons);
    if (remedy.closes())
      closing += closing.empty() ? name + " would close it" : "; so would " + name;
    else if (!remedy.possible)
      nearing += fmt::format("{} would help, but the hard rules would still contradict each other.\n", name);
    else
      nearing += fmt::format("{} would leave a shortfall of {}.\n", name, shortNumber(remedy.shortfall));
  }
  return (closing.empty() ? closing : closing + ".\n") + nearing;
}

std::string costText(const BalanceProblem& problem, const Explanation& explanation, double rate) {
  if (explanation.ofShortfall)
    return fmt::format("{} {} the sum of shortfalls", rate > 0.0 ? "adds" : "takes",
                       shortNumber(std::abs(rate)) + (rate > 0.0 ? " to" : " from"));
  const std::string_view more = rate > 0.0 ? "more" : "less";
  switch (problem.objective.kind) {
    case diet::Objective::Kind::LowestCost:
      return fmt::format("costs {} {} per animal and day", shortNumber(std::abs(rate)), more);
    case diet::Objective::Kind::Lowest:
    case diet::Objective::Kind::Highest:
      if (problem.objective.nutrient)
        return fmt::format("means {} {} {} of {}", shortNumber(std::abs(rate)),
                           quantity::symbolOf(food::describe(*problem.objective.nutrient).unit), more,
                           within(food::describe(*problem.objective.nutrient).name));
      break;
    case diet::Objective::Kind::Closest:
    case diet::Objective::Kind::FewestFoods:
      break;
  }
  return "moves the diet";
}

std::string movesText(const BalanceProblem& problem, const diet::BindingBound& binding, double scale) {
  std::vector<std::string> moves;
  for (const diet::Move& move : binding.moves) {
    const double grams = move.gramsPerUnit / scale;
    moves.push_back(fmt::format("{} {}{} g", nameOf(problem.foods[move.food]), grams > 0.0 ? "+" : "−",
                                shortNumber(std::abs(grams))));
  }
  return moves.empty() ? std::string() : " (" + listed(moves) + ")";
}

std::string rangeText(const std::optional<diet::Range>& range, double scale) {
  if (!range || (!range->low && !range->high)) return {};
  const auto shown = [&](double end) { return shortNumber(end * scale); };
  if (!range->high) return fmt::format(", from {} upwards", shown(*range->low));
  if (!range->low) return fmt::format(", up to {}", shown(*range->high));
  return fmt::format(", between {} and {}", shown(*range->low), shown(*range->high));
}

std::string pricesText(const BalanceProblem& problem, const DietSolution& solution,
                       const Explanation& explanation) {
  std::string text;
  for (const diet::BindingBound& binding : explanation.bounds) {
    const TargetBalance& line = solution.balance.targets.at(binding.line);
    const LineWords words = wordsOf(problem, line);
    text += fmt::format("Raising {} by 1 {} {}{}{}.\n", boundName(problem, line, binding.side), words.unit,
                        costText(problem, explanation, binding.perUnit / words.scale),
                        movesText(problem, binding, words.scale), rangeText(binding.range, words.scale));
  }
  for (const diet::BindingFood& binding : explanation.foods) {
    const diet::DietFood& food = problem.foods[binding.food];
    text += fmt::format("{} is held at its {} of {} g: 1 g more {}.\n", nameOf(food),
                        binding.side == BoundSide::Min ? "minimum" : "maximum",
                        gramsText(binding.limit, food.scaleStep),
                        costText(problem, explanation, binding.perGram));
  }
  if (!text.empty() && explanation.ofAnyAmounts)
    text += "These rates are those of amounts between the scale's steps, with the foods chosen as here.\n";
  return text;
}

}  // namespace

std::string whyText(const BalanceProblem& problem, const DietSolution& solution,
                    const exchange::Reasons& reasons) {
  static const std::vector<LeastChange> kNone;
  const auto& changes = reasons.explanation != nullptr ? reasons.explanation->leastChanges : kNone;
  std::string text = openingText(problem, solution, changes);
  text += leastChangesText(problem, solution, changes);
  text += remediesText(problem, reasons);
  if (reasons.explanation != nullptr) text += pricesText(problem, solution, *reasons.explanation);
  return text;
}

}  // namespace tarebowl::app
