// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/cell_painting.h"

#include <QFontMetrics>
#include <QPainter>
#include <QStyle>

namespace tarebowl::ui {
namespace {

constexpr int kPadding = 7;
constexpr int kGap = 4;

}  // namespace

void paintRowGround(QPainter& painter, const QStyleOptionViewItem& option, const Theme& theme) {
  if (option.state.testFlag(QStyle::State_Selected)) painter.fillRect(option.rect, theme.selected);
  painter.fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1), theme.line);
  const QStyle::State focus = QStyle::State_HasFocus | QStyle::State_Active;
  if ((option.state & focus) == focus && option.state.testFlag(QStyle::State_Selected)) {
    painter.setPen(theme.accent);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(option.rect.adjusted(0, 0, -1, -1));
  }
}

void paintText(QPainter& painter, const QStyleOptionViewItem& option, const QString& name,
               const QString& remark, const Theme& theme) {
  const QRect box = option.rect.adjusted(kPadding, 0, -kGap, 0);
  const QFontMetrics metrics(option.font);
  const QString shown = metrics.elidedText(name, Qt::ElideRight, box.width());
  painter.setFont(option.font);
  painter.setPen(theme.ink);
  painter.drawText(box, Qt::AlignVCenter | Qt::AlignLeft, shown);
  if (remark.isEmpty()) return;
  QFont plain = option.font;
  plain.setBold(false);
  const QRect rest = box.adjusted(metrics.horizontalAdvance(shown) + kGap, 0, 0, 0);
  if (rest.width() <= 0) return;
  painter.setFont(plain);
  painter.setPen(theme.soft);
  painter.drawText(rest, Qt::AlignVCenter | Qt::AlignLeft,
                   QFontMetrics(plain).elidedText(remark, Qt::ElideRight, rest.width()));
}

void paintValue(QPainter& painter, const QStyleOptionViewItem& option, const QString& value,
                const QString& unit, const Theme& theme) {
  const QFont unitFont = smaller(option.font);
  const int unitWidth = unit.isEmpty() ? 0 : QFontMetrics(unitFont).horizontalAdvance(unit) + kGap;
  const QRect box = option.rect.adjusted(kGap, 0, -kPadding, 0);
  painter.setFont(option.font);
  painter.setPen(theme.ink);
  painter.drawText(box.adjusted(0, 0, -unitWidth, 0), Qt::AlignVCenter | Qt::AlignRight, value);
  if (unit.isEmpty()) return;
  // Both stand on one baseline, though their sizes differ.
  const QFontMetrics metrics(option.font);
  const int baseline = box.top() + (box.height() - metrics.height()) / 2 + metrics.ascent();
  painter.setFont(unitFont);
  painter.setPen(theme.soft);
  painter.drawText(box.right() + 1 - QFontMetrics(unitFont).horizontalAdvance(unit), baseline, unit);
}

int valueWidth(const QStyleOptionViewItem& option, const QString& value, const QString& unit) {
  const int unitWidth =
      unit.isEmpty() ? 0 : QFontMetrics(smaller(option.font)).horizontalAdvance(unit) + kGap;
  return QFontMetrics(option.font).horizontalAdvance(value) + unitWidth;
}

QFont smaller(const QFont& font) {
  QFont small = font;
  small.setBold(false);
  if (font.pointSizeF() > 0.0)
    small.setPointSizeF(font.pointSizeF() * 0.85);
  else
    small.setPixelSize(font.pixelSize() * 85 / 100);
  return small;
}

}  // namespace tarebowl::ui
