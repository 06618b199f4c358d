// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/health_commands.h"

#include "app/author.h"
#include "app/health_table.h"
#include "app/open_collection.h"
#include "app/written_file.h"
#include "core/health/health_words.h"
#include "core/transfer/health_pages.h"

#include <fmt/format.h>

#include <chrono>
#include <ostream>
#include <sstream>

namespace tarebowl::app {

namespace {

using quantity::Date;

constexpr int kReviewDays = 28;
constexpr int kComparedDays = 120;

Date daysBefore(Date day, int days) {
  return std::chrono::sys_days(day) - std::chrono::days(days);
}

std::optional<Date> dayIn(const std::string& text, const char* option) {
  if (text.empty()) return std::nullopt;
  const auto day = quantity::parseDate(text);
  if (!day) throw UsageError(fmt::format("{}: expected a day as YYYY-MM-DD, found \"{}\"", option, text));
  return day;
}

struct Period {
  Date from{};
  Date to{};
};

Period periodOf(const HealthWords& words, Date last, int days) {
  const Date to = dayIn(words.to, "--to").value_or(last);
  const Date from = dayIn(words.from, "--from").value_or(daysBefore(to, days - 1));
  if (to < from)
    throw UsageError(
        fmt::format("--from {} is after --to {}", quantity::isoDate(from), quantity::isoDate(to)));
  if (std::chrono::sys_days(to) - std::chrono::sys_days(from) > std::chrono::days(3660))
    throw UsageError("--from and --to: ten years at most");
  return {from, to};
}

transfer::HealthSubject subjectOf(const Command& command) {
  if (command.group.empty() == command.health.animal.empty())
    throw UsageError("name one of --group and --animal");
  return {command.group, command.health.animal};
}

transfer::HealthPeriod readPeriod(const store::Collection& collection, const transfer::HealthSubject& subject,
                                  const Period& days) {
  auto period = transfer::readHealth(collection, subject, days.from, days.to);
  if (period) return std::move(*period);
  throw UsageError(subject.individual.empty()
                       ? fmt::format("{}: there is no group {}", collection.file().string(), subject.group)
                       : fmt::format("{}: there is no animal {} in a group on {}", collection.file().string(),
                                     subject.individual, quantity::isoDate(days.to)));
}

int give(const Command& command, const Streams& streams, const std::string& json, const std::string& table,
         const std::string& page) {
  if (command.tableFile.empty()) {
    streams.out << (command.table ? table : json);
  } else {
    writeWhole(command.tableFile, page);
    streams.out << command.tableFile << '\n';
  }
  return kDone;
}

/// What a look-back starts from.
struct SignAsked {
  transfer::HealthSubject subject{};
  health::SignKind kind = health::SignKind::Faeces;
  Date day{};
};

SignAsked signAsked(const Command& command, const store::Collection& collection) {
  if (command.health.observation == 0) {
    const auto kind = animal::parseWord<health::SignKind>(command.health.sign);
    if (!kind || !command.day) throw UsageError("name --observation, or --sign with its --day");
    return {subjectOf(command), *kind, *command.day};
  }
  const auto seen = store::findObservation(collection, store::ObservationId{command.health.observation});
  if (!seen)
    throw UsageError(fmt::format("{}: there is no observation {}", collection.file().string(),
                                 command.health.observation));
  const health::Observation& record = seen->record;
  return {{record.group.value_or(""), record.individual.value_or("")}, record.kind, record.on};
}

health::FaecalScore scoreOf(const HealthWords& words) {
  const health::FaecalScale* scale = health::findFaecalScale(words.scale);
  if (scale != nullptr) return health::scoreOn(*scale, words.score);
  std::string known;
  for (const health::FaecalScale& one : health::faecalScales())
    known += fmt::format("{}{}", known.empty() ? "" : ", ", one.id);
  throw UsageError(
      words.scale.empty()
          ? "--score needs its --scale: 2 is hard on one and nearly liquid on another; known are " + known
          : fmt::format("--scale: {} is not known here; known are {}", words.scale, known));
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

health::Observation observationOf(const Command& command) {
  const HealthWords& words = command.health;
  const transfer::HealthSubject subject = subjectOf(command);
  health::Observation seen;
  if (subject.individual.empty())
    seen.group = subject.group;
  else
    seen.individual = subject.individual;
  seen.on = dayOf(command);
  seen.time = words.time;
  seen.kind = animal::parseWord<health::SignKind>(words.sign).value();
  if (words.scored) seen.faeces = scoreOf(words);
  if (!words.appetite.empty()) seen.appetite = animal::parseWord<health::Appetite>(words.appetite);
  for (const std::string& blood : words.blood) seen.blood.push_back(bloodFrom(blood));
  seen.note = words.note;
  for (const std::string& path : words.attachments) seen.attachments.push_back({path, ""});
  seen.who = whoIsThere();
  return seen;
}

}  // namespace

int reviewCalcium(const Command& command, const Streams& streams) {
  const store::Collection collection = openForReading(command.file.value());
  const transfer::HealthPeriod period =
      readPeriod(collection, subjectOf(command), periodOf(command.health, today(), kReviewDays));
  const HealthWords& words = command.health;
  auto review = transfer::calciumOf(collection, period, {words.supplement, words.retained, words.eaten});
  if (!words.supplement.empty() && !review.advice && review.completeDays > 0)
    throw UsageError(fmt::format("{}: there is no food {}", collection.file().string(), words.supplement));
  const exchange::CalciumPage page = transfer::calciumPage(period, std::move(review));
  return give(command, streams, exchange::writeCalcium(page), calciumTable(page),
              exchange::calciumPageAsHtml(page));
}

int lookBack(const Command& command, const Streams& streams) {
  const store::Collection collection = openForReading(command.file.value());
  const SignAsked sign = signAsked(command, collection);
  const Period days = periodOf(command.health, sign.day, kComparedDays);
  const transfer::HealthPeriod period = readPeriod(collection, sign.subject, days);
  const health::LookBackRule rule{.hours = command.health.hours};
  auto found = transfer::lookBackFrom(period, sign.kind, sign.day, rule);
  if (!found)
    throw UsageError(fmt::format("{} showed no sign of {} on {}", period.name, animal::symbolOf(sign.kind),
                                 quantity::isoDate(sign.day)));
  const exchange::LookBackPage page = transfer::lookBackPage(period, sign.kind, std::move(*found), rule);
  return give(command, streams, exchange::writeLookBack(page), lookBackTable(page),
              exchange::lookBackPageAsHtml(page));
}

int observe(const Command& command, const Streams& streams) {
  const health::Observation seen = observationOf(command);
  store::Collection collection = openForWriting(command.file.value());
  const auto confirmed = command.confirm ? store::Confirmed::Yes : store::Confirmed::No;
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

}  // namespace tarebowl::app
