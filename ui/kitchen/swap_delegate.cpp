// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/swap_delegate.h"

#include "ui/kitchen/swap_model.h"
#include "ui/shared/cell_painting.h"
#include "ui/shared/state_mark.h"
#include "ui/shared/theme.h"

#include <QPainter>

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr int kPadding = 12;
constexpr int kNumberWidth = 40;
constexpr int kGramsWidth = 190;
constexpr int kMarkSide = 16;

QFont sized(const QStyleOptionViewItem& option, int points, bool bold = false) {
  QFont font = option.font;
  font.setPointSize(points);
  font.setBold(bold);
  return font;
}

struct Fonts {
  explicit Fonts(const QStyleOptionViewItem& option)
      : grams(sized(option, 28, true)),
        food(sized(option, 20, true)),
        words(sized(option, 14)),
        number(sized(option, 16)) {}
  QFont grams;
  QFont food;
  QFont words;
  QFont number;
};

int heightOf(const QFont& font) {
  return QFontMetrics(font).height();
}

int wordsWidth(int rowWidth) {
  return std::max(200, rowWidth - kNumberWidth - kGramsWidth - 3 * kPadding);
}

QRect wrapped(const QFont& font, int width, const QString& text) {
  return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10'000), Qt::TextWordWrap, text);
}

/// Draws wrapped text and moves the box below it.
void drawDown(QPainter& painter, QRect& box, const QFont& font, const QColor& ink, const QString& text) {
  painter.setFont(font);
  painter.setPen(ink);
  QRect used;
  painter.drawText(box, Qt::TextWordWrap, text, &used);
  box.setTop(used.bottom() + 3);
}

QColor inkOf(const QModelIndex& index, const Theme& theme) {
  return colorOf(static_cast<Mark>(index.data(SwapModel::MarkRole).toInt()), theme);
}

void paintAmount(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index,
                 const Fonts& fonts, const Theme& theme) {
  QRect box = option.rect.adjusted(kPadding, kPadding, 0, 0);
  painter.setFont(fonts.number);
  painter.setPen(theme.soft);
  if (index.row() < 9)
    painter.drawText(QRect(box.left(), box.top(), kNumberWidth, heightOf(fonts.grams)), Qt::AlignVCenter,
                     QString::number(index.row() + 1));
  box.setLeft(box.left() + kNumberWidth);
  box.setWidth(kGramsWidth);
  QFont large = fonts.grams;
  const QString grams = index.data(SwapModel::GramsRole).toString();
  while (large.pointSize() > 14 && QFontMetrics(large).horizontalAdvance(grams) > kGramsWidth)
    large.setPointSize(large.pointSize() - 1);
  painter.setFont(large);
  painter.setPen(theme.ink);
  painter.drawText(QRect(box.left(), box.top(), kGramsWidth, heightOf(fonts.grams)), Qt::AlignVCenter, grams);
  box.setTop(box.top() + heightOf(fonts.grams));
  painter.setFont(fonts.words);
  painter.setPen(theme.soft);
  painter.drawText(box, Qt::AlignTop, index.data(SwapModel::EachRole).toString());
}

void paintWords(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index,
                const Fonts& fonts, const Theme& theme) {
  QRect box = option.rect.adjusted(2 * kPadding + kNumberWidth + kGramsWidth, kPadding, -kPadding, 0);
  drawDown(painter, box, fonts.food, theme.ink, index.data(SwapModel::FoodsRole).toString());
  drawDown(painter, box, fonts.words, theme.ink, index.data(SwapModel::EffectRole).toString());
  const QString caution = index.data(SwapModel::CautionRole).toString();
  if (!caution.isEmpty()) drawDown(painter, box, fonts.words, theme.lacking, QStringLiteral("! ") + caution);
  const auto mark = static_cast<Mark>(index.data(SwapModel::MarkRole).toInt());
  const int top = box.top() + (heightOf(fonts.words) - kMarkSide) / 2;
  paintMark(painter, QRectF(box.left(), top, kMarkSide, kMarkSide), mark, theme);
  box.setLeft(box.left() + kMarkSide + 7);
  drawDown(painter, box, fonts.words, inkOf(index, theme), index.data(SwapModel::AskRole).toString());
}

}  // namespace

void SwapDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
  const Theme& theme = currentTheme();
  const Fonts fonts(option);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  paintRowGround(*painter, option, theme);
  paintAmount(*painter, option, index, fonts, theme);
  paintWords(*painter, option, index, fonts, theme);
  painter->restore();
}

QSize SwapDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const Fonts fonts(option);
  const int rowWidth = option.widget != nullptr ? option.widget->width() : option.rect.width();
  const int width = wordsWidth(rowWidth) - 20;  // the scroll bar may come
  int height = 2 * kPadding;
  const auto add = [&](const QFont& font, int role, int indent = 0) {
    const QString text = index.data(role).toString();
    if (!text.isEmpty()) height += wrapped(font, width - indent, text).height() + 3;
  };
  add(fonts.food, SwapModel::FoodsRole);
  add(fonts.words, SwapModel::EffectRole);
  add(fonts.words, SwapModel::CautionRole, 20);
  add(fonts.words, SwapModel::AskRole, kMarkSide + 7);
  return {rowWidth, std::max(height, 2 * kPadding + heightOf(fonts.grams) + heightOf(fonts.words))};
}

}  // namespace tarebowl::ui
