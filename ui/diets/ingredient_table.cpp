// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/ingredient_table.h"

#include "ui/diets/diet_desk.h"
#include "ui/diets/ingredient_delegate.h"
#include "ui/diets/ingredient_model.h"
#include "ui/shared/table_copy.h"

#include <QAction>
#include <QHeaderView>

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr int kFewestRowsInSight = 5;

}  // namespace

IngredientTable::IngredientTable(IngredientModel& model, DietDesk& desk, QWidget* parent)
    : QTableView(parent), ingredients_(model) {
  auto* delegate = new IngredientDelegate(this);
  setItemDelegate(delegate);
  connect(delegate, &IngredientDelegate::escaped, &desk, &DietDesk::cancelGesture);
  setModel(&model);
  setAccessibleName(tr("Foods of the diet"));
  setShowGrid(false);
  setSelectionBehavior(SelectItems);
  setSelectionMode(SingleSelection);
  setEditTriggers(DoubleClicked | SelectedClicked | EditKeyPressed | AnyKeyPressed);
  setTabKeyNavigation(false);
  setMouseTracking(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(ScrollPerPixel);
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 9);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setSectionsClickable(false);
  horizontalHeader()->setMinimumSectionSize(24);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  addCopyAction(*this);
  connect(this, &QTableView::activated, this, [this](const QModelIndex& index) {
    if (index.flags().testFlag(Qt::ItemIsEditable) && state() != EditingState) edit(index);
  });
  auto* remove = new QAction(tr("Remove from the diet"), this);
  remove->setShortcut(QKeySequence::Delete);
  remove->setShortcutContext(Qt::WidgetShortcut);
  addAction(remove);
  setContextMenuPolicy(Qt::ActionsContextMenu);
  connect(remove, &QAction::triggered, &desk, [this, &desk] {
    if (currentIndex().isValid()) desk.removeFood(static_cast<std::size_t>(currentIndex().row()));
  });
  connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this](const QModelIndex& current) { emit handOn(current.isValid() ? current.row() : -1); });
  connect(&model, &QAbstractItemModel::modelReset, this, &IngredientTable::fitColumns);
  connect(&model, &QAbstractItemModel::modelReset, this, [this] { emit handOn(-1); });
  connect(&model, &QAbstractItemModel::headerDataChanged, this, &IngredientTable::fitColumns);
  fitColumns();
}

void IngredientTable::fitColumns() {
  QHeaderView* header = horizontalHeader();
  header->setSectionResizeMode(QHeaderView::Fixed);
  header->setSectionResizeMode(IngredientModel::Food, QHeaderView::Stretch);
  setColumnHidden(IngredientModel::Cost, !ingredients_.hasCosts());
  const int unit = fontMetrics().averageCharWidth();
  const auto fit = [&](int column, int least) {
    header->resizeSection(column,
                          std::max({sizeHintForColumn(column), header->sectionSizeHint(column), least}));
  };
  fit(IngredientModel::GramsADay, 10 * unit);
  fit(IngredientModel::Lock, 3 * unit);
  fit(IngredientModel::Min, 7 * unit);
  fit(IngredientModel::Max, 7 * unit);
  fit(IngredientModel::ShareBar, 11 * unit);
  fit(IngredientModel::Share, 7 * unit);
  if (ingredients_.hasCosts()) fit(IngredientModel::Cost, 7 * unit);
  updateGeometry();
}

QSize IngredientTable::sizeHint() const {
  const int rows = ingredients_.rowCount();
  return {520, horizontalHeader()->sizeHint().height() + rows * verticalHeader()->defaultSectionSize() + 2};
}

QSize IngredientTable::minimumSizeHint() const {
  const int rows = std::min(kFewestRowsInSight, std::max(1, ingredients_.rowCount()));
  return {360, horizontalHeader()->sizeHint().height() + rows * verticalHeader()->defaultSectionSize() + 2};
}

bool IngredientTable::goTo(const QString& partOfName) {
  for (int row = 0; row < ingredients_.rowCount(); ++row) {
    if (!ingredients_.index(row, IngredientModel::Food)
             .data()
             .toString()
             .contains(partOfName, Qt::CaseInsensitive))
      continue;
    goToFood(row);
    return true;
  }
  return false;
}

void IngredientTable::goToFood(int row) {
  setCurrentIndex(ingredients_.index(row, IngredientModel::GramsADay));
  setFocus();
}

}  // namespace tarebowl::ui
