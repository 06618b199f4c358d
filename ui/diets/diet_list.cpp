// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_list.h"

#include "ui/diets/diet_list_delegate.h"
#include "ui/diets/diet_list_model.h"

#include <QLineEdit>
#include <QListView>
#include <QSortFilterProxyModel>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {

DietList::DietList(QWidget* parent)
    : QWidget(parent),
      model_(new DietListModel(this)),
      filter_(new QSortFilterProxyModel(this)),
      field_(new QLineEdit),
      view_(new QListView) {
  setObjectName(QStringLiteral("listPane"));
  setAttribute(Qt::WA_StyledBackground);
  filter_->setSourceModel(model_);
  filter_->setFilterCaseSensitivity(Qt::CaseInsensitive);
  field_->setPlaceholderText(tr("Find a diet or food…"));
  field_->setAccessibleName(tr("Find a diet, or a food of the diet, by part of its name"));
  field_->setClearButtonEnabled(true);
  view_->setObjectName(QStringLiteral("dietList"));
  view_->setAccessibleName(tr("Diets"));
  view_->setModel(filter_);
  view_->setItemDelegate(new DietListDelegate(view_));
  view_->setMouseTracking(true);
  view_->setResizeMode(QListView::Adjust);
  view_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  view_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 12, 1, 0);
  layout->setSpacing(10);
  auto* fieldRow = new QHBoxLayout;
  fieldRow->setContentsMargins(12, 0, 12, 0);
  fieldRow->addWidget(field_);
  layout->addLayout(fieldRow);
  layout->addWidget(view_);
  connect(field_, &QLineEdit::textChanged, filter_, &QSortFilterProxyModel::setFilterFixedString);
  connect(field_, &QLineEdit::textChanged, this, &DietList::selectCurrent);
  connect(field_, &QLineEdit::returnPressed, this, &DietList::find);
  connect(view_, &QListView::clicked, this, &DietList::choose);
  connect(view_, &QListView::activated, this, &DietList::choose);
}

void DietList::listFolder(const std::filesystem::path& folder) {
  reader_ = std::jthread([this, folder](const std::stop_token& stop) {
    std::vector<ProblemEntry> entries = problemsIn(folder);
    if (stop.stop_requested()) return;
    QMetaObject::invokeMethod(
        this, [this, entries = std::move(entries)] { take(entries); }, Qt::QueuedConnection);
  });
}

void DietList::show(const DietShelf& shelf) {
  model_->setShelf(shelf);
  selectCurrent();
}

void DietList::take(const std::vector<ProblemEntry>& entries) {
  model_->setFiles(entries);
  selectCurrent();
  emit listed();
}

void DietList::setCurrent(DietListEntry::Kind kind, const QString& key) {
  currentKind_ = kind;
  current_ = key;
  selectCurrent();
}

void DietList::selectCurrent() {
  const int row = current_.isEmpty() ? -1 : model_->rowOf(currentKind_, current_);
  const QModelIndex index = row < 0 ? QModelIndex() : filter_->mapFromSource(model_->index(row));
  view_->setCurrentIndex(index);
  if (!index.isValid()) view_->clearSelection();
}

void DietList::focusFilter() {
  field_->setFocus(Qt::ShortcutFocusReason);
  field_->selectAll();
}

void DietList::find() {
  if (field_->text().isEmpty()) return;
  if (filter_->rowCount() > 0) return choose(filter_->index(0, 0));
  const QString text = field_->text();
  field_->clear();
  emit notListed(text);
}

void DietList::choose(const QModelIndex& index) {
  if (!index.isValid()) return;
  const auto kind = static_cast<DietListEntry::Kind>(index.data(DietListModel::KindRole).toInt());
  const QString key = index.data(DietListModel::KeyRole).toString();
  if (kind == DietListEntry::Kind::Heading || (kind == currentKind_ && key == current_)) return;
  emit chosen(kind, key);
}

}  // namespace tarebowl::ui
