// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/composition_view.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/icons.h"
#include "ui/shared/table_copy.h"
#include "ui/shared/theme.h"

#include <QHeaderView>
#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr int kIndent = 18;

class CompositionDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& given, const QModelIndex& index) const override {
    const Theme& theme = currentTheme();
    QStyleOptionViewItem option = given;
    option.widget = given.widget;
    paintRowGround(*painter, option, theme);
    const bool sample = index.parent().isValid();
    const bool leftOut = index.data(CompositionModel::LeftOutRole).toBool();
    QFont face = option.font;
    QColor ink = theme.ink;
    if (sample) face = smaller(face);
    if (sample || index.column() >= CompositionModel::Scatter) ink = theme.soft;
    if (index.column() == CompositionModel::Value && !sample) face.setBold(true);
    if (index.data(CompositionModel::UnknownRole).toBool()) ink = theme.unknown;
    if (leftOut && index.column() == CompositionModel::Value) face.setStrikeOut(true);
    const QRect box = option.rect.adjusted(index.column() == 0 ? 2 : 7, 0, -7, 0);
    const auto alignment = static_cast<Qt::Alignment>(index.data(Qt::TextAlignmentRole).toInt());
    painter->setFont(face);
    painter->setPen(ink);
    painter->drawText(box, static_cast<int>(alignment),
                      QFontMetrics(face).elidedText(index.data().toString(), Qt::ElideRight, box.width()));
  }
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const QFontMetrics metrics(index.column() == CompositionModel::Value ? bold(option.font) : option.font);
    return {metrics.horizontalAdvance(index.data().toString()) + 18, option.fontMetrics.height() + 9};
  }

 private:
  static QFont bold(QFont font) {
    font.setBold(true);
    return font;
  }
};

}  // namespace

CompositionView::CompositionView(CompositionModel& model, QWidget* parent)
    : QTreeView(parent), composition_(model) {
  setModel(&model);
  setItemDelegate(new CompositionDelegate(this));
  setAccessibleName(tr("What the food is made of"));
  setIndentation(kIndent);
  setUniformRowHeights(true);
  setAllColumnsShowFocus(true);
  setEditTriggers(NoEditTriggers);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(ScrollPerPixel);
  header()->setSectionsMovable(false);
  header()->setSectionsClickable(false);
  header()->setStretchLastSection(true);
  addCopyAction(*this);
  connect(&model, &QAbstractItemModel::modelAboutToBeReset, this, &CompositionView::remember);
  connect(&model, &QAbstractItemModel::modelReset, this, &CompositionView::restore);
  connect(&model, &QAbstractItemModel::headerDataChanged, this, &CompositionView::fitColumns);
  connect(this, &QTreeView::activated, this, [this](const QModelIndex& index) {
    const QModelIndex top = index.siblingAtColumn(0);
    if (composition_.rowCount(top) > 0) setExpanded(top, !isExpanded(top));
  });
}

void CompositionView::remember() {
  open_.clear();
  for (int row = 0; row < composition_.rowCount(); ++row)
    if (isExpanded(composition_.index(row, 0)))
      open_.push_back(composition_.nutrientAt(composition_.index(row, 0)).value());
  if (const auto nutrient = composition_.nutrientAt(currentIndex())) current_ = nutrient;
  currentSample_ = composition_.sampleAt(currentIndex());
  position_ = verticalScrollBar()->value();
}

void CompositionView::restore() {
  for (const food::NutrientId nutrient : open_)
    if (const QModelIndex index = composition_.indexOf(nutrient); index.isValid()) setExpanded(index, true);
  QModelIndex current =
      current_ ? composition_.indexOf(*current_) : composition_.indexOf(food::nutrients::calcium());
  for (int row = 0; currentSample_ && row < composition_.rowCount(current); ++row)
    if (composition_.sampleAt(composition_.index(row, 0, current)) == currentSample_) {
      current = composition_.index(row, 0, current);
      break;
    }
  setAutoScroll(false);
  if (current.isValid()) setCurrentIndex(current);
  setAutoScroll(true);
  // Another food is read from its top, an edited one from where it was.
  const auto food = composition_.shownFood();
  verticalScrollBar()->setValue(food == food_ ? position_ : 0);
  food_ = food;
  fitColumns();
}

void CompositionView::fitColumns() {
  const int width = viewport()->width();
  const auto wanted = [this](int column) {
    return std::max(sizeHintForColumn(column), header()->sectionSizeHint(column));
  };
  header()->resizeSection(CompositionModel::Value, std::min(wanted(CompositionModel::Value), width / 4));
  header()->resizeSection(CompositionModel::Scatter, std::min(wanted(CompositionModel::Scatter), width / 5));
  header()->resizeSection(CompositionModel::Nutrient, width * 28 / 100);
}

void CompositionView::resizeEvent(QResizeEvent* event) {
  QTreeView::resizeEvent(event);
  fitColumns();
}

void CompositionView::drawBranches(QPainter* painter, const QRect& rect, const QModelIndex& index) const {
  const Theme& theme = currentTheme();
  if (selectionModel()->isSelected(index)) painter->fillRect(rect, theme.selected);
  painter->fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1), theme.line);
  if (composition_.rowCount(index) == 0) return;
  const QPointF middle(rect.right() - kIndent / 2.0, rect.center().y() + 0.5);
  QPolygonF shape;
  if (isExpanded(index))
    shape << middle + QPointF(-4, -2) << middle + QPointF(4, -2) << middle + QPointF(0, 3);
  else
    shape << middle + QPointF(-2, -4) << middle + QPointF(3, 0) << middle + QPointF(-2, 4);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setPen(Qt::NoPen);
  painter->setBrush(theme.soft);
  painter->drawPolygon(shape);
  painter->restore();
}

}  // namespace tarebowl::ui
