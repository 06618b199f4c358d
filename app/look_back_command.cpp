// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/look_back_command.h"

#include "app/command_line.h"
#include "app/health_choices.h"
#include "app/health_subject.h"
#include "app/health_table.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "core/health/look_back.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>

namespace tarebowl::app {

namespace {

constexpr int kComparedDays = 120;

struct LookBackWords {
  std::string collection{};
  std::string page{};  ///< file; empty: none
  SubjectWords of{};
  std::optional<quantity::Date> day{};  ///< of the sign
  PeriodWords period{};
  long long observation = 0;  ///< number of one; 0: none
  std::string sign{};         ///< kind of an observation, instead of one
  int hours = health::LookBackRule{}.hours;
  bool table = false;
};

/// What a look-back starts from.
struct SignAsked {
  transfer::HealthSubject subject{};
  health::SignKind kind = health::SignKind::Faeces;
  quantity::Date day{};
};

SignAsked signAsked(const LookBackWords& words, const store::Collection& collection) {
  if (words.observation == 0) {
    const auto kind = animal::parseWord<health::SignKind>(words.sign);
    if (!kind || !words.day) throw UsageError("name --observation, or --sign with its --day");
    return {subjectOf(words.of), *kind, *words.day};
  }
  const auto seen = store::findObservation(collection, store::ObservationId{words.observation});
  if (!seen)
    throw UsageError(
        fmt::format("{}: there is no observation {}", collection.file().string(), words.observation));
  const health::Observation& record = seen->record;
  return {{record.group.value_or(""), record.individual.value_or("")}, record.kind, record.on};
}

int lookBack(const LookBackWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.collection);
  const SignAsked sign = signAsked(words, collection);
  const transfer::HealthPeriod period =
      readPeriod(collection, sign.subject, words.period, sign.day, kComparedDays);
  const health::LookBackRule rule{.hours = words.hours};
  auto found = transfer::lookBackFrom(period, sign.kind, sign.day, rule);
  if (!found)
    throw UsageError(fmt::format("{} showed no sign of {} on {}", period.name, animal::symbolOf(sign.kind),
                                 quantity::isoDate(sign.day)));
  const exchange::LookBackPage page = transfer::lookBackPage(period, sign.kind, std::move(*found), rule);
  return give({exchange::writeLookBack(page), lookBackTable(page), exchange::lookBackPageAsHtml(page)},
              words.page, words.table, streams);
}

}  // namespace

void defineLookBack(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<LookBackWords>();
  CLI::App& command = *app.add_subcommand(
      "look-back", "From a sign back to what was eaten before it, against days without the sign");
  addCollectionFile(command, words->collection);
  addPage(command, words->page);
  addGroup(command, words->of.group);
  addDay(command, words->day);
  addAnimal(command, words->of);
  addPeriod(command, words->period,
            {"The first day that is compared (default: 119 days before the sign)",
             "The last day that is compared (default: the day of the sign)"});
  command.add_option("--observation", words->observation,
                     "The number of the observation that it starts from");
  command.add_option("--sign", words->sign, "What was seen")
      ->check(CLI::IsMember(wordsOf<health::SignKind>()));
  command.add_option("--hours", words->hours, "How far back bowls are looked at")
      ->check(CLI::Range(health::kShortestWindow, health::kLongestWindow))
      ->capture_default_str();
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return lookBack(*words, streams); });
}

}  // namespace tarebowl::app
