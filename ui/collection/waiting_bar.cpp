// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/waiting_bar.h"

#include "ui/collection/waiting_text.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/rows_model.h"
#include "ui/shared/state_mark.h"
#include "ui/shared/wrapping_row.h"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kListHeight = 150;

}  // namespace

WaitingBar::WaitingBar(OpenCollection& collection, QWidget* parent)
    : QFrame(parent),
      collection_(collection),
      text_(new QLabel),
      list_(new QPushButton(tr("What waits…"))),
      page_(new QWidget),
      table_(new PlainTable(tr("What waits for the server"))),
      rows_(new RowsModel({tr("Bowl"), tr("What"), tr("Yours"), tr("On the server"), tr("Written by")}, {},
                          this)),
      about_(new QLabel),
      mine_(new QPushButton(tr("Yours counts"))),
      theirs_(new QPushButton(tr("Theirs counts"))) {
  build();
  connect(list_, &QPushButton::toggled, page_, &QWidget::setVisible);
  connect(mine_, &QPushButton::clicked, this, [this] { choose(store::Choice::Mine); });
  connect(theirs_, &QPushButton::clicked, this, [this] { choose(store::Choice::Theirs); });
  connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &WaitingBar::showChoice);
  connect(&collection_, &OpenCollection::opened, this, &WaitingBar::show);
  connect(&collection_, &OpenCollection::cutOffChanged, this, &WaitingBar::show);
  connect(&collection_, &OpenCollection::waitingChanged, this, &WaitingBar::show);
  show();
}

void WaitingBar::build() {
  setProperty("card", true);
  setAccessibleName(tr("The server, and what waits for it"));
  text_->setWordWrap(true);
  text_->setTextFormat(Qt::PlainText);
  text_->setAccessibleDescription(accessibleName());
  about_->setWordWrap(true);
  about_->setTextFormat(Qt::PlainText);
  about_->setAccessibleDescription(tr("The entry that is chosen"));
  list_->setCheckable(true);
  list_->setToolTip(tr("The entries that the server does not have yet"));
  mine_->setToolTip(tr("What this desk wrote down goes before what the server has; both stay"));
  theirs_->setToolTip(tr("What the server has goes on counting; what this desk wrote down is kept"));
  table_->setModel(rows_);
  table_->setWideColumn(0);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setMaximumHeight(kListHeight);
  auto* line = new QHBoxLayout;
  line->addWidget(new MarkWidget(Mark::AtLimit), 0, Qt::AlignTop);
  line->addWidget(text_, 1);
  line->addWidget(list_, 0, Qt::AlignTop);
  auto* choice = new WrappingRow;
  choice->addWidget(mine_);
  choice->addWidget(theirs_);
  auto* page = new QVBoxLayout(page_);
  page->setContentsMargins(0, 0, 0, 0);
  page->addWidget(table_);
  page->addWidget(about_);
  page->addLayout(choice);
  page_->hide();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(14, 6, 14, 6);
  layout->addLayout(line);
  layout->addWidget(page_);
}

QString WaitingBar::text() const {
  return text_->text();
}

void WaitingBar::show() {
  const QString said = waitingText(collection_);
  text_->setText(said);
  setVisible(!said.isEmpty());
  showEntries();
}

void WaitingBar::showEntries() {
  const KitchenStation* const station = collection_.station();
  const int current = table_->currentIndex().row();
  std::vector<RowsModel::Row> rows;
  if (station != nullptr)
    for (const store::WaitingEntry& entry : station->entries())
      rows.push_back({{bowlText(entry), notedText(entry),
                       entry.entry ? valueText(entry.entry->value) : QStringLiteral("?"), theirsText(entry),
                       entry.entry ? QString::fromStdString(entry.entry->author.who) : QString()},
                      aboutText(entry),
                      {}});
  const bool isEmpty = rows.empty();
  const int last = static_cast<int>(rows.size()) - 1;
  rows_->show(std::move(rows));
  list_->setVisible(!isEmpty);
  if (isEmpty) list_->setChecked(false);
  if (!isEmpty) table_->selectRow(std::clamp(current, 0, last));
  showChoice();
}

const store::WaitingEntry* WaitingBar::chosen() const {
  const KitchenStation* const station = collection_.station();
  const int row = table_->currentIndex().row();
  if (station == nullptr || row < 0 || row >= static_cast<int>(station->entries().size())) return nullptr;
  return &station->entries()[static_cast<std::size_t>(row)];
}

void WaitingBar::showChoice() {
  const store::WaitingEntry* const entry = chosen();
  const bool isConflict = entry != nullptr && entry->state == store::EntryState::Conflict;
  about_->setText(entry != nullptr ? aboutText(*entry) : QString());
  for (QPushButton* button : {mine_, theirs_}) button->setEnabled(isConflict && !collection_.isCutOff());
}

void WaitingBar::choose(store::Choice choice) {
  const store::WaitingEntry* const entry = chosen();
  if (entry == nullptr) return;
  for (QPushButton* button : {mine_, theirs_}) button->setEnabled(false);  // until it is answered
  collection_.station()->settle(
      entry->number, choice, tr("weighed while this desk was cut off from the server"), collection_.author());
}

}  // namespace tarebowl::ui
