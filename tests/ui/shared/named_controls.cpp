// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/shared/named_controls.h"

#include <QAbstractButton>
#include <QLabel>
#include <QWidget>

#include <gtest/gtest.h>

namespace tarebowl::ui {

void expectNamedControls(const QWidget& within) {
  for (const QWidget* widget : within.findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus) continue;
    // Inner parts of Qt's own controls speak through their owners.
    if (widget->parentWidget()->inherits("QLineEdit") || widget->inherits("QScrollBar") ||
        widget->inherits("QSplitterHandle"))
      continue;
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    const auto* label = qobject_cast<const QLabel*>(widget);
    const bool named = !widget->accessibleName().isEmpty() ||
                       (button != nullptr && !button->text().isEmpty()) ||
                       (label != nullptr && !label->text().isEmpty());
    EXPECT_TRUE(named) << widget->metaObject()->className() << " in "
                       << widget->parentWidget()->metaObject()->className();
  }
}

}  // namespace tarebowl::ui
