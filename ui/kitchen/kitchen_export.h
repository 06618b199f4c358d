// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_sheet.h"

#include <QString>

#include <filesystem>
#include <optional>

namespace tarebowl::ui {

enum class KitchenPage { Sheet, Labels };

/// Writes the sheet or the labels of its bowls as .pdf, on as many pages as it takes, or .html. Nothing on
/// success, else why it was not written.
[[nodiscard]] std::optional<QString> writeKitchenPage(const KitchenSheet& sheet, KitchenPage page,
                                                      const std::filesystem::path& file);

}  // namespace tarebowl::ui
