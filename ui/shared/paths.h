// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <filesystem>

namespace tarebowl::ui {

[[nodiscard]] QString toText(const std::filesystem::path& path);
[[nodiscard]] std::filesystem::path toPath(const QString& text);

}  // namespace tarebowl::ui
