// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/balance_ladder.h"

#include "ui/shared/balance_ladder_delegate.h"
#include "ui/shared/table_copy.h"

#include <QHeaderView>

#include <algorithm>

namespace tarebowl::ui {

BalanceLadder::BalanceLadder(QWidget* parent) : QTableView(parent) {
  setItemDelegate(new BalanceLadderDelegate(this));
  setAccessibleName(tr("Balance ladder"));
  setAccessibleDescription(tr("One row per target, those in trouble first"));
  setShowGrid(false);
  setSelectionBehavior(SelectRows);
  setSelectionMode(SingleSelection);
  setEditTriggers(NoEditTriggers);
  setTabKeyNavigation(false);
  setMouseTracking(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(ScrollPerPixel);
  horizontalHeader()->hide();
  horizontalHeader()->setMinimumSectionSize(20);
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 9);
  addCopyAction(*this);
}

void BalanceLadder::setModel(QAbstractItemModel* model) {
  QTableView::setModel(model);
  if (model == nullptr) return;
  connect(model, &QAbstractItemModel::modelReset, this, &BalanceLadder::fitColumns);
  horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  horizontalHeader()->setSectionResizeMode(RungTrack, QHeaderView::Stretch);
  fitColumns();
}

/// Widths follow the content once per diet and then stand still: tracks must not jump while a hand moves.
void BalanceLadder::fitColumns() {
  const int unit = fontMetrics().averageCharWidth();
  setColumnWidth(RungName, std::clamp(sizeHintForColumn(RungName), 12 * unit, 22 * unit));
  setColumnWidth(RungValue, std::clamp(sizeHintForColumn(RungValue), 12 * unit, 24 * unit));
  setColumnWidth(RungState, sizeHintForColumn(RungState));
  setMaximumHeight(sizeHint().height());
  updateGeometry();
}

QSize BalanceLadder::sizeHint() const {
  const int rows = model() == nullptr ? 0 : model()->rowCount();
  return {QTableView::sizeHint().width(), rows * verticalHeader()->defaultSectionSize() + 2};
}

}  // namespace tarebowl::ui
