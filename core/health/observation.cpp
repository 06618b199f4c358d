// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/observation.h"

#include <algorithm>
#include <string_view>

namespace tarebowl::health {

namespace {

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

/// What a kind of observation must say.
bool saysSomething(const Observation& observation) {
  switch (observation.kind) {
    case SignKind::Faeces:
      return observation.faeces.has_value();
    case SignKind::Appetite:
      return observation.appetite.has_value();
    case SignKind::Blood:
      return !observation.blood.empty() || !observation.attachments.empty();
    case SignKind::Treatment:
    case SignKind::Other:
      return !observation.note.empty();
    case SignKind::Vomiting:
    case SignKind::Limping:
    case SignKind::Fracture:
      break;
  }
  return true;
}

bool isOfItsKind(const Observation& observation) {
  return (!observation.faeces || observation.kind == SignKind::Faeces) &&
         (!observation.appetite || observation.kind == SignKind::Appetite) &&
         (observation.blood.empty() || observation.kind == SignKind::Blood);
}

bool isPlainPart(std::string_view part) {
  return !part.empty() && part != "." && part != "..";
}

}  // namespace

bool staysInside(const std::string& path) {
  constexpr std::string_view kElsewhere = "\\:";  // Windows: drives and its own separator
  if (path.empty() || path.find_first_of(kElsewhere) != std::string::npos) return false;
  if (std::ranges::any_of(path, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; }))
    return false;
  std::string_view rest = path;
  for (;;) {
    const std::size_t slash = rest.find('/');
    if (!isPlainPart(rest.substr(0, slash))) return false;
    if (slash == std::string_view::npos) return true;
    rest.remove_prefix(slash + 1);
  }
}

std::optional<ObservationProblem> problemWith(const Observation& observation) {
  if (observation.individual.has_value() == observation.group.has_value())
    return ObservationProblem::NotOneSubject;
  if (!observation.time.empty() && !minuteOf(observation)) return ObservationProblem::BadTime;
  if (!isOfItsKind(observation)) return ObservationProblem::OfAnotherKind;
  if (!saysSomething(observation)) return ObservationProblem::NothingSaid;
  return std::nullopt;
}

std::optional<int> minuteOf(const Observation& observation) {
  const std::string& time = observation.time;
  if (time.size() != 5 || time[2] != ':' || !isDigit(time[0]) || !isDigit(time[1]) || !isDigit(time[3]) ||
      !isDigit(time[4]))
    return std::nullopt;
  const int hour = (time[0] - '0') * 10 + (time[1] - '0');
  const int minute = (time[3] - '0') * 10 + (time[4] - '0');
  if (hour > 23 || minute > 59) return std::nullopt;
  return hour * 60 + minute;
}

bool isSign(const Observation& observation) {
  switch (observation.kind) {
    case SignKind::Faeces:
      return observation.faeces && isSoft(*observation.faeces);
    case SignKind::Appetite:
      return observation.appetite && *observation.appetite < Appetite::Usual;
    case SignKind::Vomiting:
    case SignKind::Limping:
    case SignKind::Fracture:
      return true;
    case SignKind::Blood:
    case SignKind::Treatment:
    case SignKind::Other:
      break;
  }
  return false;
}

}  // namespace tarebowl::health
