// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target.h"
#include "core/exchange/json_reader.h"

#include <nlohmann/json_fwd.hpp>

#include <string_view>

namespace tarebowl::exchange {

/// Where a rule comes from: the keys "source", "provenance" and "model_species" of its entry, each optional.
[[nodiscard]] animal::TargetOrigin readOrigin(const JsonReader& reader);
void writeOrigin(const animal::TargetOrigin& origin, nlohmann::ordered_json& json);

/// Leaves out what is empty.
void putText(nlohmann::ordered_json& object, const char* key, std::string_view text);

}  // namespace tarebowl::exchange
