// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/version_difference.h"

#include <QString>

#include <functional>

namespace tarebowl::ui {

/// "Kale, raw: 20 g → 25 g". nameOf: of a food by its code.
[[nodiscard]] QString differenceText(const diet::VersionDifference& difference,
                                     const std::function<QString(const std::string& code)>& nameOf);

}  // namespace tarebowl::ui
