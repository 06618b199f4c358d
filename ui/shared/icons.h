// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QIcon>
#include <QString>

class QColor;
class QPainter;
class QRectF;

/// Our own line drawings in resources/icons, inked in a colour of the theme.
namespace tarebowl::ui {

/// name without folder and ending: "lock". An unknown name gives an empty icon. It is drawn when it is first
/// painted, at the size at which it is.
[[nodiscard]] QIcon icon(const QString& name, const QColor& ink);
/// One ink while the button is off, another while it is on.
[[nodiscard]] QIcon icon(const QString& name, const QColor& off, const QColor& on);
void paintIcon(QPainter& painter, const QRectF& box, const QString& name, const QColor& ink);

/// Mark of the program, in its own colours.
[[nodiscard]] QIcon programIcon();

}  // namespace tarebowl::ui
