// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/paths.h"

#include "core/store/server_address.h"

namespace tarebowl::ui {

QString toText(const std::filesystem::path& path) {
  // In what is written the generic way, two slashes are one: no address stays one.
  if (store::isServerAddress(path)) return QString::fromStdU16String(path.u16string());
  return QString::fromStdU16String(path.generic_u16string());
}

std::filesystem::path toPath(const QString& text) {
  return {text.toStdU16String()};
}

}  // namespace tarebowl::ui
