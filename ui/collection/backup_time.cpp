// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/backup_time.h"

#include "ui/shared/date_text.h"

#include <QDateTime>
#include <QLocale>
#include <QTimeZone>

namespace tarebowl::ui {

QString backupTimeText(const std::string& at) {
  QDateTime when = QDateTime::fromString(QString::fromStdString(at), QStringLiteral("yyyyMMdd'T'HHmmss'Z'"));
  when.setTimeZone(QTimeZone::utc());
  if (!when.isValid()) return QString::fromStdString(at);
  return QLocale().toString(when.toLocalTime(), momentFormat());
}

}  // namespace tarebowl::ui
