// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/observe_command.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/health_choices.h"
#include "app/health_subject.h"
#include "app/open_collection.h"
#include "app/options.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>
#include <ostream>
#include <sstream>

namespace tarebowl::app {

namespace {

struct ObserveWords {
  std::string collection{};
  SubjectWords of{};
  std::optional<quantity::Date> day{};
  std::string sign{};             ///< kind of the observation
  std::string scale{};            ///< of the score
  std::optional<double> score{};  ///< of faeces
  std::string appetite{};
  std::vector<std::string> blood{};  ///< "calcium 2.4 mmol/l", with the lab's range "… 2.2 3.0"
  std::string time{};
  std::string note{};
  std::vector<std::string> attachments{};
  bool confirm = false;  ///< keep what would be asked about
};

health::FaecalScore scoreOf(const std::string& named, double score) {
  const health::FaecalScale* scale = health::findFaecalScale(named);
  if (scale != nullptr) return health::scoreOn(*scale, score);
  std::string known;
  for (const health::FaecalScale& one : health::faecalScales())
    known += fmt::format("{}{}", known.empty() ? "" : ", ", one.id);
  throw UsageError(
      named.empty()
          ? "--score needs its --scale: 2 is hard on one and nearly liquid on another; known are " + known
          : fmt::format("--scale: {} is not known here; known are {}", named, known));
}

/// "calcium 2.4 mmol/l 2.2 3.0"
health::BloodValue bloodFrom(const std::string& text) {
  std::istringstream words(text);
  words.imbue(std::locale::classic());
  std::string analyte;
  std::string unit;
  health::BloodValue value;
  words >> analyte >> value.value >> unit;
  const auto known = animal::parseWord<health::Analyte>(analyte);
  const auto parsed = health::parseBloodUnit(unit);
  if (!words || !known || !parsed)
    throw UsageError(
        fmt::format("--blood: expected \"calcium 2.4 mmol/l\" (or ionised-calcium, phosphorus, "
                    "magnesium, 25-oh-d3, alkaline-phosphatase; mg/dl, mmol/l, ng/ml, nmol/l, "
                    "U/l), found \"{}\"",
                    text));
  value.analyte = *known;
  value.unit = *parsed;
  double low = 0.0;
  double high = 0.0;
  if (words >> low) {
    if (!(words >> high)) throw UsageError("--blood: the lab's range has two ends: \"" + text + "\"");
    value.low = low;
    value.high = high;
  }
  return value;
}

health::Observation observationOf(const ObserveWords& words) {
  const transfer::HealthSubject subject = subjectOf(words.of);
  health::Observation seen;
  if (subject.individual.empty())
    seen.group = subject.group;
  else
    seen.individual = subject.individual;
  seen.on = dayOf(words.day);
  seen.time = words.time;
  seen.kind = animal::parseWord<health::SignKind>(words.sign).value();
  if (words.score) seen.faeces = scoreOf(words.scale, *words.score);
  if (!words.appetite.empty()) seen.appetite = animal::parseWord<health::Appetite>(words.appetite);
  for (const std::string& blood : words.blood) seen.blood.push_back(bloodFrom(blood));
  seen.note = words.note;
  for (const std::string& path : words.attachments) seen.attachments.push_back({path, ""});
  seen.who = whoIsThere();
  return seen;
}

int observe(const ObserveWords& words, const Streams& streams) {
  const health::Observation seen = observationOf(words);
  store::Collection collection = openForWriting(words.collection);
  const auto confirmed = words.confirm ? store::Confirmed::Yes : store::Confirmed::No;
  try {
    const store::Written written =
        store::addObservation(collection, seen, confirmed, {whoIsThere(), nowInUtc()});
    streams.out << fmt::format("observation {} kept\n", written.id);
  } catch (const store::DoubtfulObservation& doubt) {
    streams.err << doubt.detail()
                << "\nnothing was written; put it right, or keep it as it is with --confirm\n";
    return kUnreadable;
  }
  return kDone;
}

}  // namespace

void defineObserve(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<ObserveWords>();
  CLI::App& command = *app.add_subcommand("observe", "Write down what was seen of a group or an animal");
  addCollectionFile(command, words->collection);
  addGroup(command, words->of.group);
  addDay(command, words->day);
  addAnimal(command, words->of);
  command.add_option("--sign", words->sign, "What was seen")
      ->check(CLI::IsMember(wordsOf<health::SignKind>()))
      ->required();
  command.add_option("--scale", words->scale, "The scale of the score: faeces-7 (7 liquid), faeces-5 …");
  command.add_option("--score", words->score, "A faecal score; needs its scale");
  command.add_option("--appetite", words->appetite, "How it ate")
      ->check(CLI::IsMember(wordsOf<health::Appetite>()));
  command.add_option(
      "--blood", words->blood,
      "A result with its unit and, where known, the lab's range: \"calcium 2.4 mmol/l 2.2 3.0\"");
  command.add_option("--time", words->time, "HH:MM");
  command.add_option("--note", words->note, "What else there is to say");
  command.add_option("--attach", words->attachments, "A file beside the collection, by its path from there");
  command.add_flag("--confirm", words->confirm, "Keep as it is what would be asked about");
  runWhenNamed(command, chosen, [words](const Streams& streams) { return observe(*words, streams); });
}

}  // namespace tarebowl::app
