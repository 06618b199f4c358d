// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::food {

/// Text (UTF-8) as it is compared in a search: small letters, without accents, punctuation as a space. Latin,
/// Greek and Cyrillic letters are folded, others stay; "Rübe, süß" becomes "rube suss".
[[nodiscard]] std::string folded(std::string_view text);

[[nodiscard]] std::vector<std::string> wordsOf(std::string_view foldedText);

}  // namespace tarebowl::food
