// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/observation_file.h"

#include "core/exchange/fixed_table.h"
#include "core/health/health_words.h"

#include <array>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 8> kTitles{"date",  "time",  "group", "kind",
                                                  "scale", "score", "note",  "by"};

/// The ids of the scales that are known, for a message.
std::string scaleIds() {
  std::string ids;
  for (const health::FaecalScale& scale : health::faecalScales())
    ids += (ids.empty() ? "" : ", ") + std::string(scale.id);
  return ids;
}

health::FaecalScore scoreAt(const FixedRecord& record) {
  const health::FaecalScale* scale = health::findFaecalScale(record.row[4]);
  if (scale == nullptr) record.refuse(4, "the scale of the score: " + scaleIds());
  health::FaecalScore score = health::scoreOn(*scale, record.number(5));
  if (health::problemWith(score)) record.refuse(5, "a score that is on the scale");
  return score;
}

health::Observation observationOf(const FixedRecord& record) {
  health::Observation observation;
  observation.on = record.date(0);
  observation.time = record.text(1);
  observation.group = record.text(2);
  const auto kind = animal::parseWord<health::SignKind>(record.row[3]);
  if (!kind || *kind == health::SignKind::Appetite || *kind == health::SignKind::Blood)
    record.refuse(3, "faeces, vomiting, limping, fracture, treatment or other");
  observation.kind = *kind;
  if (observation.kind == health::SignKind::Faeces || !record.row[5].empty())
    observation.faeces = scoreAt(record);
  observation.note = record.text(6);
  observation.who = record.text(7);
  if (const auto problem = health::problemWith(observation))
    record.refuse(*problem == health::ObservationProblem::BadTime ? 1 : 3,
                  *problem == health::ObservationProblem::BadTime ? "HH:MM or nothing"
                                                                  : "a kind that goes with what is said");
  return observation;
}

}  // namespace

std::vector<health::Observation> readObservations(const std::filesystem::path& file) {
  return readFixedTable(file, kTitles, observationOf);
}

}  // namespace tarebowl::exchange
