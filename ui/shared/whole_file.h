// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/paths.h"

#include <QCoreApplication>
#include <QSaveFile>
#include <QString>

#include <filesystem>
#include <optional>

namespace tarebowl::ui {

/// Writes a file as a whole or not at all: fill(QIODevice&) gives its content. Nothing on success, else why
/// it was not written.
template <class Fill>
[[nodiscard]] std::optional<QString> writeWholeFile(const std::filesystem::path& file, Fill fill) {
  QSaveFile out(toText(file));
  if (out.open(QIODevice::WriteOnly)) {
    fill(out);
    if (out.commit()) return std::nullopt;
  }
  return QCoreApplication::translate("WholeFile", "%1 was not written: %2")
      .arg(toText(file), out.errorString());
}

}  // namespace tarebowl::ui
