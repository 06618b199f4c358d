// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/rotation_view.h"
#include "ui/shared/rows_model.h"

#include <QString>

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

class QPagedPaintDevice;

namespace tarebowl::ui {

/// The calendar with what is bought, on a printer or whatever has pages.
void printRotation(const RotationView& view, QPagedPaintDevice& device);
/// As .pdf, .html or .json (tarebowl-kept-rotation/1), as the file's name asks. Nothing on success, else why
/// it was not written; then no file is left half written.
[[nodiscard]] std::optional<QString> writeRotation(const RotationView& view,
                                                   const std::filesystem::path& file);

/// What is bought: week, group, food, kilograms offered and to buy; each group's sum after its foods.
[[nodiscard]] std::vector<RowsModel::Row> purchaseRows(const RotationView& view);

}  // namespace tarebowl::ui
