// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/checks.h"

#include <functional>
#include <string>
#include <string_view>

/// The words of the checks, in one place for window and command line. Each names its facts in braces; whoever
/// shows them translates the words first and then fills in the facts as it writes numbers:
///
///   {Nutrient} {nutrient}   the finding's first nutrient, at the beginning of a sentence and within one
///   {parts}                 the others
///   {found} {against}       with the nutrient's unit
///   {number} {limit}        found and against without one
///   {other}                 the food that this one equals, at the beginning of a sentence
namespace tarebowl::food {

struct CheckWords {
  const char* what;    ///< a sentence: what is doubtful
  const char* advice;  ///< a sentence: what to do about it
};

[[nodiscard]] CheckWords wordsOf(CheckCode code);

/// The words with every fact in its place. Throws std::invalid_argument for a brace that is not closed.
[[nodiscard]] std::string withFacts(std::string_view words,
                                    const std::function<std::string(std::string_view)>& fact);

}  // namespace tarebowl::food
