// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/conflict.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

void addMeasures(std::vector<DietRule>& rules, const Formulation& formulation,
                 std::span<const Measure> measures, bool hardOnly) {
  for (std::size_t row = 0; row < formulation.rows.size(); ++row) {
    const std::size_t measure = formulation.rows[row].measure;
    if (hardOnly && !measures[measure].hard) continue;
    if (rules.empty() || rules.back().measure != measure)
      rules.push_back({measures[measure].id, measure, {}, {}});
    rules.back().rule.rows.push_back(static_cast<Eigen::Index>(row));
  }
}

void addChoices(std::vector<DietRule>& rules, const Formulation& formulation) {
  for (std::size_t choice = 0; choice < formulation.choices.size(); ++choice) {
    const std::string& group = formulation.choices[choice];
    auto same =
        std::ranges::find_if(rules, [&](const DietRule& r) { return !r.measure && r.group == group; });
    if (same == rules.end()) {
      rules.push_back({"choice:" + group, std::nullopt, group, {}});
      same = rules.end() - 1;
    }
    same->rule.choices.push_back(choice);
  }
}

}  // namespace

std::vector<DietRule> rulesOf(const Formulation& formulation, std::span<const Measure> measures,
                              bool hardOnly) {
  std::vector<DietRule> rules;
  addMeasures(rules, formulation, measures, hardOnly);
  addChoices(rules, formulation);
  return rules;
}

DietConflict findConflict(const Formulation& formulation, std::span<const Measure> measures, bool hardOnly,
                          const solver::Limits& limits) {
  const std::vector<DietRule> rules = rulesOf(formulation, measures, hardOnly);
  std::vector<solver::Rule> plain;
  plain.reserve(rules.size());
  for (const DietRule& rule : rules) plain.push_back(rule.rule);
  const solver::Conflict found = solver::findConflict(formulation.program, plain, true, limits);
  DietConflict conflict{{}, found.minimal, found.onlyOnGrid};
  for (const std::size_t rule : found.rules) conflict.ids.push_back(rules[rule].id);
  return conflict;
}

}  // namespace tarebowl::diet
