// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string>

namespace tarebowl::ui {

/// The reason or advice of a caution that comes with the program, in the language of the window; one that the
/// house wrote itself stays as it is.
[[nodiscard]] QString cautionWords(const std::string& words);

/// A sentence of a prep sheet, "group: food: reason. advice".
[[nodiscard]] QString cautionSentence(const std::string& sentence);

}  // namespace tarebowl::ui
