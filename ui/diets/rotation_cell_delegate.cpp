// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_cell_delegate.h"

#include "ui/diets/rotation_calendar_model.h"
#include "ui/shared/cell_painting.h"
#include "ui/shared/format.h"
#include "ui/shared/icons.h"
#include "ui/shared/number_field.h"
#include "ui/shared/state_mark.h"
#include "ui/shared/theme.h"

#include <QPainter>

#include <algorithm>

namespace tarebowl::ui {

namespace {

constexpr int kPadding = 7;
constexpr int kMark = 10;
constexpr double kMostGrams = 1e6;

void paintGround(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index,
                 const Theme& theme) {
  if (index.data(RotationCalendarModel::OverRole).toBool()) painter.fillRect(option.rect, theme.paper);
  if (index.data(RotationCalendarModel::LockedRole).toBool()) painter.fillRect(option.rect, theme.zone);
  paintRowGround(painter, option, theme);
}

void paintLock(QPainter& painter, const QRect& rect, const Theme& theme) {
  constexpr double kSide = 11.0;
  paintIcon(painter, QRectF(rect.left() + 4, rect.center().y() - kSide / 2, kSide, kSide),
            QStringLiteral("lock"), theme.ink);
}

void paintState(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index, Mark mark,
                const Theme& theme) {
  const QString word = index.data().toString();
  const QFont font = smaller(option.font);
  const int width = QFontMetrics(font).horizontalAdvance(word);
  const QRect box = option.rect.adjusted(kPadding, 0, -kPadding, 0);
  painter.setFont(font);
  painter.setPen(colorOf(mark, theme));
  painter.drawText(box, Qt::AlignVCenter | Qt::AlignRight, word);
  paintMark(painter,
            QRectF(box.right() - width - kMark - 4, box.center().y() - kMark / 2.0 + 1, kMark, kMark), mark,
            theme);
}

}  // namespace

void RotationCellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
  const Theme& theme = currentTheme();
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  paintGround(*painter, option, index, theme);
  const QVariant mark = index.data(RotationCalendarModel::MarkRole);
  if (mark.isValid()) {
    paintState(*painter, option, index, static_cast<Mark>(mark.toInt()), theme);
  } else {
    const QString text = index.data().toString();
    const bool isLocked = index.data(RotationCalendarModel::LockedRole).toBool();
    const bool isSoft =
        !isLocked && (index.data(RotationCalendarModel::OverRole).toBool() || text == QStringLiteral("·"));
    painter->setFont(option.font);
    painter->setPen(isSoft ? theme.soft : theme.ink);
    painter->drawText(option.rect.adjusted(kPadding, 0, -kPadding, 0), Qt::AlignVCenter | Qt::AlignRight,
                      text);
    if (isLocked) paintLock(*painter, option.rect, theme);
  }
  painter->restore();
}

QSize RotationCellDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const QFontMetrics metrics(option.font);
  const int text = metrics.horizontalAdvance(index.data().toString());
  return {text + 2 * kPadding + kMark + 6, metrics.height() + 9};
}

QWidget* RotationCellDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                            const QModelIndex& index) const {
  const quantity::Grams step(index.data(RotationCalendarModel::StepRole).toDouble());
  auto* spin = new NumberField(parent);
  spin->setDecimals(scaleDecimals(step));
  spin->setSingleStep(std::max(step.value(), 0.001));
  spin->setRange(0.0, kMostGrams);
  spin->setAccessibleName(tr("Grams per animal"));
  spin->setFrame(false);
  spin->setButtonSymbols(QAbstractSpinBox::NoButtons);
  spin->setAlignment(Qt::AlignRight);
  return spin;
}

void RotationCellDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  static_cast<NumberField*>(editor)->setValue(index.data(Qt::EditRole).toDouble());
}

void RotationCellDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                        const QModelIndex& index) const {
  auto* spin = static_cast<NumberField*>(editor);
  spin->interpretText();
  model->setData(index, spin->value(), Qt::EditRole);
}

}  // namespace tarebowl::ui
