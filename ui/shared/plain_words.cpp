// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/plain_words.h"

#include <QEvent>
#include <QLabel>

namespace tarebowl::ui {

bool PlainWords::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Polish)
    if (auto* label = qobject_cast<QLabel*>(watched); label != nullptr && label->textFormat() == Qt::AutoText)
      label->setTextFormat(Qt::PlainText);
  return QObject::eventFilter(watched, event);
}

}  // namespace tarebowl::ui
