// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/animal_words.h"
#include "core/health/health_words.h"

#include <string>
#include <vector>

namespace tarebowl::app {

/// The words of an enumeration, as an option offers them.
template <class Enum>
[[nodiscard]] std::vector<std::string> wordsOf() {
  const auto& words = animal::Words<Enum>::kWords;
  return {words.begin(), words.end()};
}

}  // namespace tarebowl::app
