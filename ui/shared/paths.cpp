// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/paths.h"

#include <QCoreApplication>
#include <QDir>

namespace tarebowl::ui {

QString toText(const std::filesystem::path& path) {
  return QString::fromStdU16String(path.generic_u16string());
}

std::filesystem::path toPath(const QString& text) {
  return {text.toStdU16String()};
}

std::filesystem::path sampleFolder() {
  if (qEnvironmentVariableIsSet("TAREBOWL_SAMPLE_DATA"))
    return toPath(qEnvironmentVariable("TAREBOWL_SAMPLE_DATA"));
  const QDir program(QCoreApplication::applicationDirPath());
  const QString installed = program.absoluteFilePath(QStringLiteral("../share/tarebowl/sample-data"));
  return toPath(QDir(installed).exists() ? installed : QStringLiteral(TAREBOWL_SOURCE_SAMPLE_DATA));
}

}  // namespace tarebowl::ui
