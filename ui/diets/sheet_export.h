// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/diet_sheet.h"

#include <QString>

#include <filesystem>
#include <optional>

class QPagedPaintDevice;

namespace tarebowl::ui {

/// Writes the page of a diet in the format that the file's name asks for: .pdf, .xlsx or .html; a PDF
/// is one page, set smaller where it must be. It speaks as the window does, as the sheet has to. Nothing on
/// success, else why it was not written; then no file is left half written.
[[nodiscard]] std::optional<QString> writeSheet(const exchange::DietSheet& sheet,
                                                const std::filesystem::path& file);

/// The same page as the PDF, on a printer or whatever has pages.
void printSheet(const exchange::DietSheet& sheet, QPagedPaintDevice& device);

}  // namespace tarebowl::ui
