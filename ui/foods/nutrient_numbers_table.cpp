// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/nutrient_numbers_table.h"

#include "ui/foods/nutrient_numbers_model.h"
#include "ui/foods/sample_values_delegate.h"
#include "ui/shared/entry_table.h"

#include <QHeaderView>
#include <QTableView>

namespace tarebowl::ui {

QTableView* makeNutrientNumbersTable(NutrientNumbersModel& model, const QString& name) {
  constexpr int kLeastLines = 3;
  auto* table = new EntryTable;
  table->setModel(&model);
  table->setItemDelegate(new SampleValuesDelegate(table));
  table->setAccessibleName(name);
  table->setShowGrid(false);
  table->setEditTriggers(QAbstractItemView::AllEditTriggers);
  table->setTabKeyNavigation(false);
  table->verticalHeader()->hide();
  const int line = table->fontMetrics().height() + 10;
  table->verticalHeader()->setDefaultSectionSize(line);
  table->horizontalHeader()->setHighlightSections(false);
  table->horizontalHeader()->setSectionResizeMode(NutrientNumbersModel::Nutrient, QHeaderView::Stretch);
  table->horizontalHeader()->resizeSection(NutrientNumbersModel::Number,
                                           table->fontMetrics().averageCharWidth() * 21);
  table->setMinimumHeight((kLeastLines + 1) * line);
  return table;
}

}  // namespace tarebowl::ui
