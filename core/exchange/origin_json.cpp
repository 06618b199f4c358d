// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/origin_json.h"

#include "core/exchange/problem_words.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

animal::TargetOrigin readOrigin(const JsonReader& reader) {
  animal::TargetOrigin origin;
  if (const auto source = reader.find("source")) origin.source = source->text();
  if (const auto provenance = reader.find("provenance")) {
    origin.provenance = provenance->word(animal::parseWord<animal::Provenance>, kProvenanceWords);
  }
  if (const auto species = reader.find("model_species")) origin.modelSpecies = species->text();
  return origin;
}

void writeOrigin(const animal::TargetOrigin& origin, nlohmann::ordered_json& json) {
  putText(json, "source", origin.source);
  putText(json, "provenance", animal::symbolOf(origin.provenance));
  putText(json, "model_species", origin.modelSpecies);
}

void putText(nlohmann::ordered_json& object, const char* key, std::string_view text) {
  if (!text.empty()) object[key] = text;
}

}  // namespace tarebowl::exchange
