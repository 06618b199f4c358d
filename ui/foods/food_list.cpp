// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_list.h"

#include "ui/foods/food_list_delegate.h"
#include "ui/shared/cell_painting.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/state_mark.h"
#include "ui/shared/table_copy.h"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace tarebowl::ui {

FoodList::FoodList(FoodDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      model_(new FoodListModel(desk, this)),
      field_(new QLineEdit),
      table_(new QTableView),
      count_(new QLabel),
      import_(new QPushButton(tr("Import…"))),
      checks_(new QPushButton(tr("Checks"))),
      add_(new QPushButton(tr("Add"))),
      compare_(new QPushButton(tr("Compare"))) {
  setObjectName(QStringLiteral("listPane"));
  setAttribute(Qt::WA_StyledBackground);
  build();
  wire();
  showDoubts(std::nullopt);
  showCount();
}

void FoodList::build() {
  field_->setAccessibleName(tr("Find a food by part of its name, form or group"));
  field_->setClearButtonEnabled(true);
  import_->setToolTip(tr("Import a table of foods (CSV, XLSX); a file can also be dropped on the window"));
  add_->setToolTip(tr("Add a food to the collection"));
  compare_->setToolTip(tr("Compare the selected foods side by side (hold Ctrl to select several)"));
  table_->setModel(model_);
  table_->setItemDelegate(new FoodListDelegate(table_));
  table_->setAccessibleName(tr("Foods"));
  table_->setShowGrid(false);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setTabKeyNavigation(false);
  table_->setWordWrap(false);
  table_->setMouseTracking(true);
  table_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 10);
  table_->horizontalHeader()->setHighlightSections(false);
  table_->horizontalHeader()->setSortIndicator(FoodListModel::Name, Qt::AscendingOrder);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignVCenter);
  table_->horizontalHeader()->setMinimumSectionSize(30);
  table_->setSortingEnabled(true);
  addCopyAction(*table_);
  count_->setProperty("soft", true);
  count_->setFont(smaller(font()));
  auto* top = new QHBoxLayout;
  top->setSpacing(7);
  top->addWidget(field_, 1);
  top->addWidget(import_);
  top->addWidget(checks_);
  auto* bottom = new QHBoxLayout;
  bottom->setSpacing(7);
  bottom->addWidget(count_, 1);
  for (QPushButton* button : {add_, compare_}) bottom->addWidget(button);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(14, 12, 14, 6);
  layout->setSpacing(8);
  layout->addLayout(top);
  layout->addWidget(table_, 1);
  layout->addLayout(bottom);
}

void FoodList::wire() {
  connect(field_, &QLineEdit::textChanged, model_, &FoodListModel::look);
  connect(field_, &QLineEdit::returnPressed, this, [this] {
    if (model_->rowCount() == 0) return;
    table_->setFocus();
    table_->setCurrentIndex(model_->index(0, 0));
  });
  connect(model_, &QAbstractItemModel::modelReset, this, &FoodList::follow);
  connect(model_, &QAbstractItemModel::modelReset, this, &FoodList::showCount);
  connect(&desk_, &FoodDesk::pageChanged, this, &FoodList::follow);
  connect(&desk_, &FoodDesk::listChanged, this, &FoodList::fitColumns);
  connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this, &FoodList::takeSelection);
  connect(add_, &QPushButton::clicked, this, &FoodList::addWanted);
  connect(checks_, &QPushButton::clicked, this, &FoodList::checksWanted);
  connect(import_, &QPushButton::clicked, this, &FoodList::importWanted);
  connect(compare_, &QPushButton::clicked, this, &FoodList::compareWanted);
  compare_->setEnabled(false);
}

void FoodList::showDoubts(std::optional<std::size_t> doubts) {
  doubts_ = doubts;
  checks_->setText(doubts ? tr("Checks %1").arg(countText(static_cast<std::int64_t>(*doubts)))
                          : tr("Checks"));
  checks_->setToolTip(tr("What a careful analyst would doubt in this collection"));
  inkMark();
}

void FoodList::inkMark() {
  constexpr int kSide = 12;
  QPixmap drawn(kSide * 2, kSide * 2);
  drawn.setDevicePixelRatio(2.0);
  drawn.fill(Qt::transparent);
  QPainter painter(&drawn);
  const Mark mark = !doubts_ ? Mark::Unknown : *doubts_ > 0 ? Mark::AtLimit : Mark::Met;
  paintMark(painter, QRectF(1, 1, kSide - 2, kSide - 2), mark, currentTheme());
  painter.end();
  checks_->setIcon(QIcon(drawn));
}

void FoodList::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) inkMark();
}

void FoodList::focusField() {
  field_->setFocus(Qt::ShortcutFocusReason);
  field_->selectAll();
}

void FoodList::choose(FoodId id) {
  if (model_->rowOf(id) < 0) field_->clear();
  const int row = model_->rowOf(id);
  if (row >= 0) table_->setCurrentIndex(model_->index(row, 0));
}

std::vector<FoodId> FoodList::chosenFoods() const {
  std::vector<FoodId> ids;
  QModelIndexList rows = table_->selectionModel()->selectedRows();
  std::sort(rows.begin(), rows.end());
  for (const QModelIndex& row : rows) ids.push_back(model_->idAt(row.row()));
  return ids;
}

void FoodList::takeSelection() {
  const auto ids = chosenFoods();
  compare_->setEnabled(ids.size() > 1);
  if (following_) return;
  if (ids.size() == 1) emit chosen(static_cast<qint64>(ids.front()));
}

void FoodList::follow() {
  const auto shown = desk_.shownId();
  if (!shown || chosenFoods().size() > 1) return;
  const int row = model_->rowOf(*shown);
  if (row < 0 || table_->currentIndex().row() == row) return;
  following_ = true;
  table_->setCurrentIndex(model_->index(row, 0));
  following_ = false;
}

void FoodList::showCount() {
  const int all = static_cast<int>(desk_.foods().size());
  const int found = model_->rowCount();
  const QLocale locale;
  field_->setPlaceholderText(tr("Find in %1 foods…").arg(locale.toString(all)));
  if (found == 0 && all > 0)
    count_->setText(tr("No food is called so. Clear the field, or add the food."));
  else if (found == all)
    count_->setText(desk_.isReading() ? tr("reading…") : tr("%1 foods").arg(locale.toString(all)));
  else
    count_->setText(tr("%1 of %2 foods").arg(locale.toString(found), locale.toString(all)));
}

void FoodList::fitColumns() {
  QHeaderView* header = table_->horizontalHeader();
  const int unit = fontMetrics().averageCharWidth();
  header->setSectionResizeMode(QHeaderView::Fixed);
  header->setSectionResizeMode(FoodListModel::Name, QHeaderView::Stretch);
  const int width = table_->viewport()->width();
  header->resizeSection(FoodListModel::Group, std::clamp(width / 5, 13 * unit, 22 * unit));
  for (const int column : {FoodListModel::Water, FoodListModel::Protein})
    header->resizeSection(column, 10 * unit);
  header->resizeSection(FoodListModel::Calcium, 11 * unit);
  header->resizeSection(FoodListModel::CalciumToPhosphorus, 9 * unit);
}

void FoodList::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitColumns();
}

}  // namespace tarebowl::ui
