// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_calendar.h"

#include "ui/diets/rotation_cell_delegate.h"
#include "ui/shared/cell_painting.h"
#include "ui/shared/table_copy.h"

#include <QHeaderView>
#include <QKeyEvent>

#include <algorithm>

namespace tarebowl::ui {

RotationCalendar::RotationCalendar(RotationCalendarModel& model, QWidget* parent)
    : QTableView(parent), model_(model) {
  setModel(&model);
  setItemDelegate(new RotationCellDelegate(this));
  setAccessibleName(tr("Calendar of the rotation"));
  setAccessibleDescription(tr("A row for each food, a column for each day, grams per animal"));
  setShowGrid(false);
  setSelectionMode(SingleSelection);
  setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
  setTabKeyNavigation(false);
  setDragDropMode(DragDrop);
  setDefaultDropAction(Qt::CopyAction);
  setDragDropOverwriteMode(true);
  setHorizontalScrollMode(ScrollPerPixel);
  setVerticalScrollMode(ScrollPerPixel);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setSectionsClickable(false);
  verticalHeader()->setHighlightSections(false);
  verticalHeader()->setSectionsClickable(false);
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 10);
  setCornerWidget(new QWidget);  // plain, where the scroll bars meet
  addCopyAction(*this);
  connect(&model_, &RotationCalendarModel::modelReset, this, &RotationCalendar::fitColumns);
  connect(&model_, &RotationCalendarModel::moveWanted, this, &RotationCalendar::moveWanted);
  connect(&model_, &RotationCalendarModel::gramsWanted, this, &RotationCalendar::gramsWanted);
}

std::optional<CalendarCell> RotationCalendar::cell() const {
  return model_.cellAt(currentIndex());
}

std::optional<int> RotationCalendar::day() const {
  return currentIndex().isValid() ? model_.dayAt(currentIndex().column()) : std::nullopt;
}

void RotationCalendar::goTo(const CalendarCell& cell) {
  const QModelIndex index = model_.indexOf(cell);
  if (index.isValid()) setCurrentIndex(index);
}

/// Days share what room there is, and scroll where they would be too narrow for their grams.
void RotationCalendar::fitColumns() {
  const int columns = model_.columnCount();
  if (columns == 0) return;
  // Room for a state: its mark and its word.
  const int least = QFontMetrics(smaller(font())).horizontalAdvance(tr("%1 missed").arg(10)) + 34;
  horizontalHeader()->setMinimumSectionSize(least);
  horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  constexpr int kMostInSight = 9;
  if (columns > kMostInSight) {
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    for (int column = 0; column < columns; ++column) setColumnWidth(column, least);
  }
  updateGeometry();
}

QSize RotationCalendar::sizeHint() const {
  constexpr int kFrame = 4;
  const int rows = model_.rowCount() * verticalHeader()->defaultSectionSize();
  return {QTableView::sizeHint().width(), rows + horizontalHeader()->sizeHint().height() + kFrame};
}

void RotationCalendar::moveFood(int days) {
  const auto at = cell();
  if (!at) return;
  const int to = at->day + days;
  if (!model_.dayAt(to)) return;
  if (!model_.flags(currentIndex()).testFlag(Qt::ItemIsDragEnabled)) return;
  if (!model_.flags(model_.index(currentIndex().row(), to)).testFlag(Qt::ItemIsDropEnabled)) return;
  emit moveWanted(static_cast<qint64>(at->food), at->day, to);
  goTo({at->food, to});
}

void RotationCalendar::turnLock() {
  if (const auto at = cell()) emit lockWanted(static_cast<qint64>(at->food), at->day);
}

void RotationCalendar::leaveOut() {
  const auto at = cell();
  if (at && model_.flags(currentIndex()).testFlag(Qt::ItemIsEditable))
    emit gramsWanted(static_cast<qint64>(at->food), at->day, 0.0);
}

void RotationCalendar::keyPressEvent(QKeyEvent* event) {
  const bool isAlt = event->modifiers() == Qt::AltModifier;
  const bool isPlain = event->modifiers() == Qt::NoModifier;
  if (isAlt && (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right))
    return moveFood(event->key() == Qt::Key_Left ? -1 : 1);
  if (isPlain && event->key() == Qt::Key_L) return turnLock();
  if (isPlain && event->key() == Qt::Key_Delete) return leaveOut();
  QTableView::keyPressEvent(event);
}

void RotationCalendar::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QTableView::currentChanged(current, previous);
  emit handMoved();
}

}  // namespace tarebowl::ui
