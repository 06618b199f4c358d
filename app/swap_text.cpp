// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/swap_text.h"

#include "app/text_table.h"
#include "core/exchange/line_words.h"
#include "core/exchange/wording.h"
#include "core/food/nutrient.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace tarebowl::app {

namespace {

using diet::SwapEffect;
using diet::SwapRequest;
using exchange::gramsText;
using exchange::nameOf;
using exchange::shortNumber;
using exchange::stateText;

constexpr std::size_t kMostNamed = 3;  // in a list within a line

std::string joined(const std::vector<std::string>& texts, std::string_view separator) {
  std::string text;
  for (const std::string& part : texts) text += (text.empty() ? "" : std::string(separator)) + part;
  return text;
}

/// "iron, zinc, copper and 4 more".
std::string fewOf(const std::vector<std::string>& names, std::string_view separator = ", ") {
  if (names.size() <= kMostNamed) return joined(names, separator);
  const std::vector<std::string> first(names.begin(), names.begin() + kMostNamed);
  return fmt::format("{} and {} more", joined(first, separator), names.size() - kMostNamed);
}

std::string twoDigits(std::optional<double> ratio) {
  return ratio ? fmt::format("{:.2f}", *ratio) : "?";
}

std::string_view zoneWords(diet::TargetState before, diet::TargetState after) {
  const auto isIn = [](diet::TargetState state) {
    return state == diet::TargetState::Met || state == diet::TargetState::AtMin ||
           state == diet::TargetState::AtMax;
  };
  if (after == diet::TargetState::Unknown) return ", not known";
  if (isIn(after)) return isIn(before) ? ", still in zone" : ", now in zone";
  if (after == diet::TargetState::Over) return isIn(before) ? ", ▲ now over" : ", ▲ over";
  return isIn(before) ? ", ▼ now short" : ", ▼ short";
}

std::string calciumText(const SwapEffect& effect) {
  const diet::CalciumToPhosphorus& ratio = effect.calciumToPhosphorus;
  if (!ratio.before && !ratio.after) return {};
  std::string text = fmt::format("Ca:P {} → {}{}", twoDigits(ratio.before), ratio.isKnown ? "" : "≈ ",
                                 twoDigits(ratio.after));
  if (ratio.rung)
    text += zoneWords(effect.rungs[*ratio.rung].before.state, effect.rungs[*ratio.rung].after.state);
  return text;
}

std::string energyText(const diet::BeforeAfter& energy) {
  return fmt::format("energy {} → {}{:.0f} kcal", shortNumber(std::round(energy.before)),
                     energy.afterAtLeast ? "≥ " : "", energy.after);
}

/// Rungs that change their state, Ca:P left out, what is lost first.
std::string changesText(const SwapEffect& effect) {
  std::vector<std::string> lost;
  std::vector<std::string> others;
  for (std::size_t i = 0; i < effect.rungs.size(); ++i) {
    const diet::RungChange& rung = effect.rungs[i];
    if (!rung.changesState() || effect.calciumToPhosphorus.rung == i) continue;
    const bool isLost = std::ranges::find(effect.approval.lost, i) != effect.approval.lost.end();
    (isLost ? lost : others)
        .push_back(fmt::format("{} {} → {}", exchange::wordsOf(effect.problem, rung.before).subject,
                               stateText(rung.before.state), stateText(rung.after.state)));
  }
  lost.insert(lost.end(), others.begin(), others.end());
  return fewOf(lost, "; ");
}

std::string movesText(const SwapRequest& request, const diet::Swap& swap) {
  std::vector<std::string> moves;
  for (const diet::MovedLine& line : swap.moved) {
    const diet::DietFood& food = request.problem.foods[line.food];
    moves.push_back(fmt::format("{} {} → {} g", nameOf(food),
                                gramsText(request.approved[line.food], food.scaleStep),
                                gramsText(line.grams, food.scaleStep)));
  }
  return moves.empty() ? std::string() : "with " + joined(moves, ", ");
}

std::string eatenText(const SwapEffect& effect) {
  std::vector<std::string> texts;
  for (const auto& eaten : effect.eatenBefore)
    texts.push_back(
        eaten ? fmt::format("{} in {}", exchange::percentText(eaten->fraction),
                            exchange::counted(static_cast<std::size_t>(eaten->bowls), "bowl", "bowls"))
              : "?");
  return joined(texts, " + ");
}

std::string cautionText(const SwapEffect& effect) {
  std::vector<std::string> texts;
  for (const diet::FoodFinding& finding : effect.cautions)
    texts.push_back(finding.inForce ? finding.reason : fmt::format("{} (animal not known)", finding.reason));
  return texts.empty() ? std::string() : "! " + joined(texts, "; ");
}

std::string gramsOf(const SwapRequest& request, const diet::Swap& swap) {
  std::vector<std::string> texts;
  for (const diet::SwapPart& part : swap.parts)
    texts.push_back(gramsText(part.grams, request.candidates[part.candidate].scaleStep) + " g");
  return joined(texts, " + ");
}

std::string foodsOf(const SwapRequest& request, const diet::Swap& swap) {
  std::vector<std::string> texts;
  for (const diet::SwapPart& part : swap.parts) texts.push_back(nameOf(request.candidates[part.candidate]));
  return joined(texts, " + ");
}

void addRow(TextTable& table, const std::string& number, const SwapRequest& request, const diet::Swap& swap) {
  const SwapEffect effect = diet::effectOf(request, swap);
  std::vector<std::string> does;
  for (std::string part : {effectText(effect), movesText(request, swap), cautionText(effect)})
    if (!part.empty()) does.push_back(std::move(part));
  table.addRow({number, gramsOf(request, swap), foodsOf(request, swap), joined(does, "; "), eatenText(effect),
                approvalText(effect)});
}

bool isCountedAsEaten(const SwapRequest& request) {
  return std::ranges::any_of(request.problem.foods,
                             [](const diet::DietFood& food) { return food.eatenFraction < 1.0; });
}

std::string headText(const SwapRequest& request) {
  std::string text = request.problem.title.empty() ? std::string() : request.problem.title + '\n';
  if (request.problem.invented) text += "INVENTED SAMPLE: names, masses and house rules are made up.\n";
  for (const std::size_t line : request.missing) {
    const diet::DietFood& food = request.problem.foods[line];
    text += fmt::format("Not there: {}, {} g per animal and day\n", nameOf(food),
                        gramsText(request.approved[line], food.scaleStep));
  }
  if (isCountedAsEaten(request))
    text +=
        "Energy and targets are of what is eaten of each food; where nobody knows how well one is eaten, it "
        "counts as eaten whole.\n";
  return text + '\n';
}

std::string refusedText(const diet::SwapRanking& ranking) {
  using Why = diet::SwapRefusal::Why;
  const auto of = [&](Why why) {
    return static_cast<std::size_t>(std::ranges::count(ranking.refused, why, &diet::SwapRefusal::why));
  };
  std::vector<std::string> texts;
  const auto add = [&](Why why, std::string_view words) {
    if (const std::size_t count = of(why)) texts.push_back(fmt::format("{} {}", count, words));
  };
  add(Why::Banned, "not for this animal");
  add(Why::Structure, "against a structure rule");
  add(Why::HardRule, "in no amount within the hard rules");
  add(Why::NoAmount, "left no amount by their limits");
  add(Why::NoWater, "of unknown water");
  return texts.empty() ? std::string() : "Will not do: " + joined(texts, ", ") + ".\n";
}

/// Of the few that were asked about, each with its reason.
std::string refusalsByName(const SwapRequest& request, const diet::SwapRanking& ranking) {
  constexpr std::size_t kFew = 12;
  if (ranking.refused.size() > kFew) return {};
  std::string text;
  for (const diet::SwapRefusal& refusal : ranking.refused)
    text += fmt::format("  {}: {}{}{}\n", nameOf(request.candidates[refusal.candidate]), refusal.rule,
                        refusal.reason.empty() ? "" : ": ", refusal.reason);
  return text;
}

}  // namespace

std::string effectText(const SwapEffect& effect) {
  std::vector<std::string> texts;
  if (std::string calcium = calciumText(effect); !calcium.empty()) texts.push_back(std::move(calcium));
  texts.push_back(energyText(effect.energy));
  if (std::string changes = changesText(effect); !changes.empty()) texts.push_back(std::move(changes));
  if (!effect.unknown.empty()) {
    std::vector<std::string> names;
    for (const food::NutrientId nutrient : effect.unknown) names.push_back(food::describe(nutrient).name);
    texts.push_back("? unknown: " + fewOf(names));
  }
  return joined(texts, "; ");
}

std::string approvalText(const SwapEffect& effect) {
  const diet::SwapApproval& approval = effect.approval;
  if (approval.keeperMay()) return "keeper";
  const auto named = [&](const std::vector<std::size_t>& rungs) {
    std::vector<std::string> names;
    names.reserve(rungs.size());
    for (const std::size_t rung : rungs)
      names.push_back(exchange::wordsOf(effect.problem, effect.rungs[rung].before).subject);
    return fewOf(names);
  };
  std::vector<std::string> reasons;
  if (!approval.isSameGroup) reasons.emplace_back("another food group");
  if (!approval.lost.empty()) reasons.push_back("no longer met: " + named(approval.lost));
  if (!approval.doubtful.empty()) reasons.push_back("may not be met: " + named(approval.doubtful));
  if (approval.isCautioned) reasons.emplace_back("a caution");
  return "nutritionist (" + joined(reasons, "; ") + ")";
}

std::string swapTable(const SwapRequest& request, const diet::SwapRanking& ranking, std::size_t most) {
  using Align = TextTable::Align;
  TextTable table(
      {{"", Align::Right}, {"give", Align::Right}, {"of"}, {"what it does"}, {"eaten before"}, {"ask"}});
  const std::size_t shown = std::min(most, ranking.singles.size());
  for (std::size_t i = 0; i < shown; ++i) addRow(table, std::to_string(i + 1), request, ranking.singles[i]);
  if (shown > 0 && !ranking.pairs.empty()) table.addRule();
  for (std::size_t i = 0; i < ranking.pairs.size(); ++i)
    addRow(table, std::to_string(shown + i + 1), request, ranking.pairs[i]);
  std::string text = headText(request);
  if (ranking.singles.empty() && ranking.pairs.empty())
    text += "Nothing on hand will do.\n";
  else
    text += table.text();
  if (shown < ranking.singles.size())
    text += fmt::format("and {} more that are further from the approved balance\n",
                        ranking.singles.size() - shown);
  text += refusedText(ranking) + refusalsByName(request, ranking);
  return text + '\n' + std::string(exchange::kCaution);
}

}  // namespace tarebowl::app
