// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/paths.h"

namespace tarebowl::ui {

QString toText(const std::filesystem::path& path) {
  return QString::fromStdU16String(path.generic_u16string());
}

std::filesystem::path toPath(const QString& text) {
  return {text.toStdU16String()};
}

}  // namespace tarebowl::ui
