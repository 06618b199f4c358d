// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_list_delegate.h"

#include "ui/foods/food_list_model.h"
#include "ui/shared/cell_painting.h"

#include <QPainter>

namespace tarebowl::ui {

void FoodListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
  const Theme& theme = currentTheme();
  paintRowGround(*painter, option, theme);
  const QString text = index.data().toString();
  if (index.column() == FoodListModel::Name) {
    QString remark = index.data(FoodListModel::RemarkRole).toString();
    if (!index.data(FoodListModel::InStockRole).toBool())
      remark = FoodListModel::tr("%1, none in stock").arg(remark);
    paintText(*painter, option, text, remark, theme);
    return;
  }
  const bool left = index.column() == FoodListModel::Group;
  const bool unknown = text == QLatin1String("?");
  const QRect box = option.rect.adjusted(7, 0, -7, 0);
  painter->setFont(option.font);
  painter->setPen(left ? theme.soft : unknown ? theme.unknown : theme.ink);
  painter->drawText(box, static_cast<int>(Qt::AlignVCenter | (left ? Qt::AlignLeft : Qt::AlignRight)),
                    option.fontMetrics.elidedText(text, Qt::ElideRight, box.width()));
}

}  // namespace tarebowl::ui
