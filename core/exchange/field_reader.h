// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/animal_words.h"
#include "core/diet/problem.h"
#include "core/exchange/json_reader.h"
#include "core/quantity/date.h"

#include <optional>
#include <string>
#include <vector>

/// Fields that files of the house have in common. Throw FormatError.
namespace tarebowl::exchange {

/// What may be missing: empty, no, nothing.
[[nodiscard]] std::string textOf(const JsonReader& reader, const char* key);
[[nodiscard]] bool flagOf(const JsonReader& reader, const char* key);
[[nodiscard]] std::optional<double> numberOf(const JsonReader& reader, const char* key,
                                             const NumberRange& range);
[[nodiscard]] std::optional<quantity::Date> dateOf(const JsonReader& reader, const char* key);

/// A day as YYYY-MM-DD.
[[nodiscard]] quantity::Date dateOf(const JsonReader& reader);
[[nodiscard]] diet::Objective readObjective(const JsonReader& reader);
[[nodiscard]] double readConfidence(const JsonReader& reader);

template <class Enum>
[[nodiscard]] Enum wordOf(const JsonReader& reader) {
  return reader.word(animal::parseWord<Enum>, animal::Words<Enum>::kWords);
}

/// Throws FormatError for more entries than kMostEntries (problem_json.h).
[[nodiscard]] std::vector<JsonReader> entriesOf(const JsonReader& reader, const char* key);

template <class Read>
[[nodiscard]] auto listOf(const JsonReader& reader, const char* key, Read read) {
  std::vector<decltype(read(reader))> list;
  for (const JsonReader& entry : entriesOf(reader, key)) list.push_back(read(entry));
  return list;
}

}  // namespace tarebowl::exchange
