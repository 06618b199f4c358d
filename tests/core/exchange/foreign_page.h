// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/page_tongue.h"

#include <set>
#include <string>
#include <vector>

namespace tarebowl::exchange {

/// A language of which nobody knows a word: each letter is an x, the decimal mark a comma. What it was asked
/// for is kept.
[[nodiscard]] PageTongue foreignTongue(std::set<std::string>& asked);

/// Words of at least three letters that stand on the page and were not asked for, nor are they among these.
[[nodiscard]] std::vector<std::string> wordsNotAskedFor(const std::string& html,
                                                        const std::set<std::string>& ofTheData);

/// Those of them that the languages of the window know nothing of (resources/languages/data_strings.h).
[[nodiscard]] std::vector<std::string> unknownToLanguages(const std::set<std::string>& asked);

}  // namespace tarebowl::exchange
