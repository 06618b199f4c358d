// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/plain_table.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/table_copy.h"
#include "ui/shared/theme.h"

#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>
#include <map>

namespace tarebowl::ui {
namespace {

constexpr int kPadding = 7;
constexpr int kLeastText = 70;       // a text may be cut with an ellipsis, a number never
constexpr int kMostAskedWide = 190;  // what the wide column may take from the others for its own text

class PlainDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Theme& theme = currentTheme();
    paintRowGround(*painter, option, theme);
    const QVariant ink = index.data(Qt::ForegroundRole);
    const QVariant face = index.data(Qt::FontRole);
    const QFont font = face.isValid() ? face.value<QFont>() : option.font;
    const QRect box = option.rect.adjusted(kPadding, 0, -kPadding, 0);
    const QString text = QFontMetrics(font).elidedText(index.data().toString(), Qt::ElideRight, box.width());
    const auto alignment = index.data(Qt::TextAlignmentRole);
    const int flags =
        alignment.isValid() ? alignment.toInt() : static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
    painter->setFont(font);
    painter->setPen(ink.isValid() ? ink.value<QColor>() : theme.ink);
    QRect written;
    painter->drawText(box, flags, text, &written);
    if (!index.flags().testFlag(Qt::ItemIsEditable) || index.flags().testFlag(Qt::ItemIsUserCheckable))
      return;
    painter->setPen(QPen(theme.accent, 1.0, Qt::DotLine));
    const int bottom = option.rect.center().y() + option.fontMetrics.height() / 2;
    if (written.width() < 12) written = QRect(box.right() - 22, box.top(), 22, box.height());
    painter->drawLine(written.left(), bottom, written.right(), bottom);
  }
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const QVariant face = index.data(Qt::FontRole);
    const QFontMetrics metrics(face.isValid() ? face.value<QFont>() : option.font);
    return {metrics.horizontalAdvance(index.data().toString()) + 2 * kPadding + 2,
            option.fontMetrics.height() + 9};
  }
};

struct ColumnWidth {
  int width = 0;
  int least = 0;
};

/// Takes up to so many pixels from the columns that have most to give, evenly. What was taken.
int narrowed(std::map<int, ColumnWidth>& columns, int excess) {
  int taken = 0;
  for (; taken < excess; ++taken) {
    ColumnWidth* widest = nullptr;
    for (auto& [number, column] : columns)
      if (column.width > column.least && (widest == nullptr || column.width > widest->width))
        widest = &column;
    if (widest == nullptr) break;
    --widest->width;
  }
  return taken;
}

}  // namespace

PlainTable::PlainTable(const QString& accessibleName, QWidget* parent) : QTableView(parent) {
  setAccessibleName(accessibleName);
  setItemDelegate(new PlainDelegate(this));
  setShowGrid(false);
  setSelectionBehavior(SelectRows);
  setSelectionMode(SingleSelection);
  setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
  setTabKeyNavigation(false);
  setWordWrap(false);
  setMouseTracking(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(ScrollPerPixel);
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 10);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setTextElideMode(Qt::ElideRight);
  horizontalHeader()->setSectionsClickable(false);
  horizontalHeader()->setMinimumSectionSize(24);
  addCopyAction(*this);
}

void PlainTable::setModel(QAbstractItemModel* model) {
  QTableView::setModel(model);
  if (model == nullptr) return;
  connect(model, &QAbstractItemModel::modelReset, this, &PlainTable::fitColumns);
  connect(model, &QAbstractItemModel::dataChanged, this, &PlainTable::fitColumns);
  fitColumns();
}

void PlainTable::setWideColumn(int column) {
  wide_ = column;
  fitColumns();
}

void PlainTable::fitColumns() {
  if (model() == nullptr) return;
  std::map<int, ColumnWidth> columns;
  int taken = 0;
  for (int column = 0; column < model()->columnCount(); ++column) {
    if (column == wide_ || isColumnHidden(column)) continue;
    const int content = sizeHintForColumn(column) + 4;
    const int width = std::max(content, horizontalHeader()->sectionSizeHint(column) + 4);
    columns[column] = {width, holdsNumbers(column) ? content : std::min(width, kLeastText)};
    taken += width;
  }
  const int needed = std::max(sizeHintForColumn(wide_), horizontalHeader()->sectionSizeHint(wide_)) + 4;
  const int asked = std::min(needed, kMostAskedWide);
  taken -= narrowed(columns, taken + asked - viewport()->width());
  for (const auto& [number, column] : columns) setColumnWidth(number, column.width);
  setColumnWidth(wide_, std::max(asked, viewport()->width() - taken));
  updateGeometry();
}

bool PlainTable::holdsNumbers(int column) const {
  const QVariant alignment = model()->index(0, column).data(Qt::TextAlignmentRole);
  return alignment.isValid() && (alignment.toInt() & Qt::AlignRight) != 0;
}

QSize PlainTable::sizeHint() const {
  const int rows = model() == nullptr ? 0 : model()->rowCount();
  return {QTableView::sizeHint().width(),
          rows * verticalHeader()->defaultSectionSize() + horizontalHeader()->sizeHint().height() + 4};
}

void PlainTable::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  fitColumns();
}

}  // namespace tarebowl::ui
