// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/health_words.h"

#include "core/animal/animal_words.h"
#include "core/health/health_words.h"
#include "core/health/look_back.h"

#include <CLI/CLI.hpp>

namespace tarebowl::app {

namespace {

template <class Enum>
std::vector<std::string> wordsOf() {
  const auto& words = animal::Words<Enum>::kWords;
  return {words.begin(), words.end()};
}

void addPeriod(CLI::App& command, HealthWords& words, const char* from, const char* to) {
  command.add_option("--from", words.from, from);
  command.add_option("--to", words.to, to);
}

}  // namespace

void defineHealthOptions(CLI::App& calcium, CLI::App& lookBack, CLI::App& observe, HealthWords& words) {
  for (CLI::App* command : {&calcium, &lookBack, &observe})
    command->add_option("--animal", words.animal, "The code of one animal, instead of a group");
  addPeriod(calcium, words, "The first day, YYYY-MM-DD (default: four weeks)",
            "The last day (default: today)");
  calcium.add_option("--supplement", words.supplement,
                     "The code of a food: how little of it brings calcium and Ca:P into zone");
  const auto share = CLI::Range(0.01, 1.0);
  calcium.add_option("--retained", words.retained, "The share of a dust that stays on and reaches the mouth")
      ->check(share)
      ->capture_default_str();
  calcium.add_option("--eaten", words.eaten, "The share of what is retained that is eaten")
      ->check(share)
      ->capture_default_str();
  addPeriod(lookBack, words, "The first day that is compared (default: 119 days before the sign)",
            "The last day that is compared (default: the day of the sign)");
  lookBack.add_option("--observation", words.observation,
                      "The number of the observation that it starts from");
  lookBack.add_option("--sign", words.sign, "What was seen")
      ->check(CLI::IsMember(wordsOf<health::SignKind>()));
  lookBack.add_option("--hours", words.hours, "How far back bowls are looked at")
      ->check(CLI::Range(health::kShortestWindow, health::kLongestWindow))
      ->capture_default_str();
  observe.add_option("--sign", words.sign, "What was seen")
      ->check(CLI::IsMember(wordsOf<health::SignKind>()))
      ->required();
  observe.add_option("--scale", words.scale, "The scale of the score: faeces-7 (7 liquid), faeces-5 …");
  observe.add_option_function<double>(
      "--score",
      [&words](double score) {
        words.score = score;
        words.scored = true;
      },
      "A faecal score; needs its scale");
  observe.add_option("--appetite", words.appetite, "How it ate")
      ->check(CLI::IsMember(wordsOf<health::Appetite>()));
  observe.add_option(
      "--blood", words.blood,
      "A result with its unit and, where known, the lab's range: \"calcium 2.4 mmol/l 2.2 3.0\"");
  observe.add_option("--time", words.time, "HH:MM");
  observe.add_option("--note", words.note, "What else there is to say");
  observe.add_option("--attach", words.attachments, "A file beside the collection, by its path from there");
}

}  // namespace tarebowl::app
