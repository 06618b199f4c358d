// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/theme.h"

#include <QString>
#include <QStyleOptionViewItem>

class QPainter;

/// What the cells of our tables have in common.
namespace tarebowl::ui {

/// Ground of a chosen row, the rule under every row and the focus frame of the current cell.
void paintRowGround(QPainter& painter, const QStyleOptionViewItem& option, const Theme& theme);

/// A name, elided where it does not fit, followed by a softer remark.
void paintText(QPainter& painter, const QStyleOptionViewItem& option, const QString& name,
               const QString& remark, const Theme& theme);

/// A number with its smaller unit, flush right.
void paintValue(QPainter& painter, const QStyleOptionViewItem& option, const QString& value,
                const QString& unit, const Theme& theme);
[[nodiscard]] int valueWidth(const QStyleOptionViewItem& option, const QString& value, const QString& unit);

/// The font for units and remarks.
[[nodiscard]] QFont smaller(const QFont& font);

}  // namespace tarebowl::ui
