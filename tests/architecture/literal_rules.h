// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/architecture/source_tree.h"

#include <span>
#include <string>
#include <vector>

namespace tarebowl::architecture {

/// Words that a source of the window says outside of tr(), translate() and Qt's marks for translators.
struct Literal {
  std::size_t line = 0;
  std::string text;
  bool operator==(const Literal&) const = default;
};

/// Literals that read like language: two words of at least two letters with a space between. Markup and
/// style sheets do not, nor formats of days.
[[nodiscard]] std::vector<Literal> untranslatedWords(const SourceFile& source);

/// Such literals in ui/, without those that are known to be no text of the window.
[[nodiscard]] std::vector<Finding> checkTranslated(std::span<const SourceFile> sources);

}  // namespace tarebowl::architecture
