// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/exchange/json_reader.h"

namespace tarebowl::exchange {

/// One entry of a problem's "targets", "ratios", "shares" or "choices". Each reads what stands in the entry
/// itself; whether it fits the foods is judged by checkProblem. Throw FormatError.
[[nodiscard]] animal::Target readTarget(const JsonReader& reader);
[[nodiscard]] animal::RatioTarget readRatio(const JsonReader& reader);
[[nodiscard]] diet::ShareRule readShare(const JsonReader& reader);
[[nodiscard]] diet::ChoiceRule readChoice(const JsonReader& reader);

}  // namespace tarebowl::exchange
