// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/line_words.h"

#include "core/exchange/wording.h"
#include "core/food/nutrient.h"

#include <fmt/format.h>

namespace tarebowl::exchange {

LineWords wordsOf(const diet::BalanceProblem& problem, const diet::TargetBalance& line,
                  const PageTongue& tongue) {
  if (line.kind == diet::TargetKind::Ratio) {
    const animal::RatioTarget& ratio = problem.ratios.at(line.index);
    return {tongue.nutrient(ratio.of) + " : " + tongue.nutrient(ratio.to),
            food::describe(ratio.of).tagname + ":" + food::describe(ratio.to).tagname};
  }
  if (line.kind == diet::TargetKind::Share) {
    const diet::ShareRule& share = problem.shares.at(line.index);
    const std::string_view of = share.basis == quantity::Basis::AsFed    ? "% of as fed"
                                : share.basis == quantity::Basis::Energy ? "% of ME"
                                                                         : "% of DM";
    return {tongue.say("Group: {}", share.group), tongue.say(of), 100.0};
  }
  const animal::Target& target = problem.targets.at(line.index);
  return {tongue.nutrient(target.nutrient),
          fmt::format("{} {}", quantity::symbolOf(target.unit), tongue.say(basisText(target.basis)))};
}

bool isHard(const diet::BalanceProblem& problem, const diet::TargetBalance& line) {
  if (line.kind == diet::TargetKind::Ratio) return problem.ratios.at(line.index).hard;
  return line.kind == diet::TargetKind::Share ? problem.shares.at(line.index).hard
                                              : problem.targets.at(line.index).hard;
}

const animal::TargetOrigin& originOf(const diet::BalanceProblem& problem, const diet::TargetBalance& line) {
  if (line.kind == diet::TargetKind::Ratio) return problem.ratios.at(line.index).origin;
  return line.kind == diet::TargetKind::Share ? problem.shares.at(line.index).origin
                                              : problem.targets.at(line.index).origin;
}

std::string valueText(const diet::TargetBalance& line, double scale) {
  if (line.state == diet::TargetState::Unknown || !line.value) return "?";
  const std::string_view mark = !line.atLeast ? "" : line.kind == diet::TargetKind::Nutrient ? "≥ " : "≈ ";
  return std::string(mark) + shortNumber(*line.value * scale);
}

std::string nameOf(const diet::DietFood& food) {
  const auto says = [&](std::string_view word) { return food.name.find(word) != std::string::npos; };
  const std::string form = food.form.empty() || says(food.form) ? "" : fmt::format(" ({})", food.form);
  return food.name + form + (food.invented && !says("invented") ? " [invented]" : "");
}

}  // namespace tarebowl::exchange
