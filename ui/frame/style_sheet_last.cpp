// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/style_sheet_last.h"

#include <QApplication>

#include <utility>

namespace tarebowl::ui {

StyleSheetLast::StyleSheetLast() : sheet_(qApp->styleSheet()) {
  qApp->setStyleSheet(QString());
}

void StyleSheetLast::putOn() {
  if (!sheet_.isEmpty()) qApp->setStyleSheet(std::exchange(sheet_, {}));
}

}  // namespace tarebowl::ui
