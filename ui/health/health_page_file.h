// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/health_page.h"

#include <QString>

#include <filesystem>
#include <optional>

namespace tarebowl::ui {

/// Writes the calcium review or the look-back as .pdf (one page), .html or .json. Nothing on success, else
/// why it was not written.
[[nodiscard]] std::optional<QString> writeHealthPage(const exchange::CalciumPage& page,
                                                     const std::filesystem::path& file);
[[nodiscard]] std::optional<QString> writeHealthPage(const exchange::LookBackPage& page,
                                                     const std::filesystem::path& file);

}  // namespace tarebowl::ui
