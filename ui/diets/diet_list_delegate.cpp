// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_list_delegate.h"

#include "ui/diets/diet_list_model.h"
#include "ui/shared/cell_painting.h"
#include "ui/shared/state_mark.h"

#include <QAbstractItemView>
#include <QPainter>

namespace tarebowl::ui {
namespace {

constexpr QMargins kMargins(14, 5, 10, 6);
constexpr int kMarkRoom = 16;

int roomFor(const QStyleOptionViewItem& option, bool readable) {
  const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
  // Room for the scroll bar is always left: heights must not depend on whether it is there.
  constexpr int kScrollBar = 10;
  const int width = view != nullptr ? view->width() - kScrollBar : option.rect.width();
  return width - kMargins.left() - kMargins.right() - (readable ? 0 : kMarkRoom);
}

bool isHeading(const QModelIndex& index) {
  return index.data(DietListModel::KindRole).toInt() == static_cast<int>(DietListEntry::Kind::Heading);
}

int heightOf(const QString& text, const QFont& face, int width) {
  return QFontMetrics(face).boundingRect(QRect(0, 0, width, 1000), Qt::TextWordWrap, text).height();
}

}  // namespace

void DietListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
  const Theme& theme = currentTheme();
  const bool selected = option.state.testFlag(QStyle::State_Selected);
  const bool readable = index.data(DietListModel::ReadableRole).toBool();
  if (selected || option.state.testFlag(QStyle::State_MouseOver))
    painter->fillRect(option.rect, theme.selected);
  if (selected) painter->fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())), theme.accent);
  const QString title = index.data().toString();
  if (isHeading(index)) {
    painter->setFont(smaller(option.font));
    painter->setPen(theme.soft);
    painter->drawText(option.rect.marginsRemoved(kMargins), Qt::AlignBottom | Qt::AlignLeft, title);
    return;
  }
  const QRect box = option.rect.marginsRemoved(kMargins);
  if (!readable) paintMark(*painter, QRectF(box.left(), box.top() + 4, 10, 10), Mark::Lacking, theme);
  QRect titleBox = box.adjusted(readable ? 0 : kMarkRoom, 0, 0, 0);
  titleBox.setWidth(roomFor(option, readable));
  titleBox.setHeight(heightOf(title, option.font, titleBox.width()));
  painter->setFont(option.font);
  painter->setPen(readable ? theme.ink : theme.lacking);
  painter->drawText(titleBox, Qt::AlignTop | Qt::AlignLeft | Qt::TextWordWrap, title);
  const QFont small = smaller(option.font);
  QRect restBox = box.adjusted(0, titleBox.height() + 1, 0, 0);
  restBox.setWidth(roomFor(option, true));
  painter->setFont(small);
  painter->setPen(theme.soft);
  painter->drawText(restBox, Qt::AlignTop | Qt::AlignLeft | Qt::TextWordWrap,
                    index.data(DietListModel::SubtitleRole).toString());
}

QSize DietListDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  if (isHeading(index)) return {120, QFontMetrics(smaller(option.font)).height() + 18};
  const bool readable = index.data(DietListModel::ReadableRole).toBool();
  const int title = heightOf(index.data().toString(), option.font, roomFor(option, readable));
  const int rest = heightOf(index.data(DietListModel::SubtitleRole).toString(), smaller(option.font),
                            roomFor(option, true));
  return {120, title + rest + 1 + kMargins.top() + kMargins.bottom()};
}

}  // namespace tarebowl::ui
