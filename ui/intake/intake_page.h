// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/intake_view.h"

#include <QImage>
#include <QString>

#include <filesystem>
#include <optional>
#include <vector>

namespace tarebowl::ui {

/// What is shown, ready to leave the room.
struct IntakePage {
  const transfer::IntakeTrend& trend;
  DaySpan span{};
  std::vector<QImage> charts{};  ///< with their headings
};

/// Writes it as .png (the charts), .pdf (charts, tables and what was noticed on a page) or .csv (the
/// numbers). Nothing on success, else why it was not written.
[[nodiscard]] std::optional<QString> writeIntake(const IntakePage& page, const std::filesystem::path& file);
[[nodiscard]] QString intakePageAsHtml(const IntakePage& page);

}  // namespace tarebowl::ui
