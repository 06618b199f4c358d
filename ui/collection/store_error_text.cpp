// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/store_error_text.h"

#include "ui/shared/paths.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

struct Store {
  Q_DECLARE_TR_FUNCTIONS(Store)
};

/// "is damaged (the page 7 …)": what stands in brackets is for who mends it.
QString detailText(const std::string& detail) {
  const std::size_t bracket = detail.find(" (");
  const QString words = Store::tr(detail.substr(0, bracket).c_str());
  return bracket == std::string::npos ? words : words + QString::fromStdString(detail.substr(bracket));
}

}  // namespace

QString storeErrorText(const store::StoreError& error) {
  QString file = toText(error.file());
  for (QChar& letter : file)  // a line break in a name must not make two lines of it
    if (!letter.isPrint()) letter = QLatin1Char(' ');
  const QString text = QStringLiteral("%1: %2").arg(file, detailText(error.detail()));
  return error.backup() ? Store::tr("%1; a backup lies in %2").arg(text, toText(*error.backup())) : text;
}

}  // namespace tarebowl::ui
