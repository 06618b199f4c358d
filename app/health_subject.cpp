// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/health_subject.h"

#include "app/command_line.h"
#include "app/written_file.h"
#include "core/store/reading.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <chrono>
#include <ostream>

namespace tarebowl::app {

namespace {

constexpr std::chrono::days kLongestPeriod{3660};

struct Period {
  quantity::Date from{};
  quantity::Date to{};
};

Period periodOf(const PeriodWords& words, quantity::Date last, int days) {
  const quantity::Date to = words.to.value_or(last);
  const quantity::Date from = words.from.value_or(std::chrono::sys_days(to) - std::chrono::days(days - 1));
  if (to < from)
    throw UsageError(
        fmt::format("--from {} is after --to {}", quantity::isoDate(from), quantity::isoDate(to)));
  if (std::chrono::sys_days(to) - std::chrono::sys_days(from) > kLongestPeriod)
    throw UsageError("--from and --to: ten years at most");
  return {from, to};
}

}  // namespace

void addAnimal(CLI::App& command, SubjectWords& words) {
  command.add_option("--animal", words.animal, "The code of one animal, instead of a group");
}

void addPeriod(CLI::App& command, PeriodWords& words, const PeriodHelp& help) {
  addDay(command, "--from", words.from, help.from);
  addDay(command, "--to", words.to, help.to);
}

void addPage(CLI::App& command, std::string& file) {
  command.add_option("FILE", file, "Write one page for the medical file: NAME.html");
}

transfer::HealthSubject subjectOf(const SubjectWords& words) {
  if (words.group.empty() == words.animal.empty()) throw UsageError("name one of --group and --animal");
  return {words.group, words.animal};
}

transfer::HealthPeriod readPeriod(const store::Collection& collection, const transfer::HealthSubject& subject,
                                  const PeriodWords& words, quantity::Date last, int days) {
  const Period asked = periodOf(words, last, days);
  auto period = store::readTogether(collection, [&](const store::Collection& whole) {
    return transfer::readHealth(whole, subject, asked.from, asked.to);
  });
  if (period) return std::move(*period);
  throw UsageError(subject.individual.empty()
                       ? fmt::format("{}: there is no group {}", collection.file().string(), subject.group)
                       : fmt::format("{}: there is no animal {} in a group on {}", collection.file().string(),
                                     subject.individual, quantity::isoDate(asked.to)));
}

int give(const HealthAnswer& answer, const std::string& file, bool asTable, const Streams& streams) {
  if (file.empty()) {
    streams.out << (asTable ? answer.table : answer.json);
  } else {
    writeWhole(file, answer.page);
    streams.out << file << '\n';
  }
  return kDone;
}

}  // namespace tarebowl::app
