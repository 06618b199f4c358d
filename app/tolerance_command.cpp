// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/tolerance_command.h"

#include "app/author.h"
#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

/// Of the rule (core/intake/tolerance.h); nothing: as it is.
struct ToleranceWords {
  std::string collection{};
  std::optional<double> ofStep{};
  std::optional<double> leastSteps{};
  std::optional<double> ofBowl{};
  std::optional<double> ofBody{};
};

int showTolerance(const ToleranceWords& words, const Streams& streams) {
  const bool writes = words.ofStep || words.leastSteps || words.ofBowl || words.ofBody;
  store::Collection collection = writes ? openForWriting(words.collection) : openForReading(words.collection);
  intake::ToleranceRule rule = store::toleranceRule(collection);
  rule.ofStep = words.ofStep.value_or(rule.ofStep);
  rule.leastSteps = words.leastSteps.value_or(rule.leastSteps);
  rule.ofBowl = words.ofBowl.value_or(rule.ofBowl);
  rule.ofBody = words.ofBody.value_or(rule.ofBody);
  if (writes) (void)store::setToleranceRule(collection, rule, {whoIsThere(), nowInUtc()});
  const nlohmann::ordered_json json{{"format", "tarebowl-tolerance/1"},
                                    {"of_step", rule.ofStep},
                                    {"least_steps", rule.leastSteps},
                                    {"of_bowl", rule.ofBowl},
                                    {"of_body", rule.ofBody}};
  streams.out << toText(json);
  return kDone;
}

}  // namespace

void defineTolerance(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<ToleranceWords>();
  CLI::App& command = *app.add_subcommand(
      "tolerance",
      "How far a weight may lie from the plan: some of a scale step, or where larger the least "
      "of so many steps, a share of the bowl and a share of body mass");
  addCollectionFile(command, words->collection);
  command.add_option("--of-step", words->ofStep, "Scale steps that are always allowed, such as 0.5");
  command.add_option("--least-steps", words->leastSteps,
                     "Scale steps of the three of which the least counts");
  command.add_option("--of-bowl", words->ofBowl, "Share of the bowl, such as 0.02");
  command.add_option("--of-body", words->ofBody, "Share of body mass, such as 0.003");
  runWhenNamed(command, chosen, [words](const Streams& streams) { return showTolerance(*words, streams); });
}

}  // namespace tarebowl::app
