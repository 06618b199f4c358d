// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/exchange/numbers.h"
#include "core/exchange/origin_json.h"

#include <nlohmann/json.hpp>

#include <optional>

/// Rules as entries of a file, which rule_reader.h reads back.
namespace tarebowl::exchange {

using Json = nlohmann::ordered_json;

[[nodiscard]] Json writeTarget(const animal::Target& target);
[[nodiscard]] Json writeRatio(const animal::RatioTarget& ratio);
[[nodiscard]] Json writeShare(const animal::ShareRule& share);
[[nodiscard]] Json writeChoice(const animal::ChoiceRule& choice);

/// A number that is missing is left out.
void put(Json& object, const char* key, std::optional<double> number);

template <class List, class Write>
[[nodiscard]] Json writeList(const List& list, Write write) {
  Json json = Json::array();
  for (const auto& entry : list) json.push_back(write(entry));
  return json;
}

}  // namespace tarebowl::exchange
