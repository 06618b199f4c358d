// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diets_room.h"

#include "ui/diets/balance_pane.h"
#include "ui/diets/desk_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/ingredient_table.h"
#include "ui/diets/problem_document.h"
#include "ui/diets/problem_list.h"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {

DietsRoom::DietsRoom(LiveSolver::Function solve, Dialogs dialogs, QWidget* parent)
    : QWidget(parent),
      desk_(new DietDesk(std::move(solve), this)),
      document_(new ProblemDocument(*desk_, std::move(dialogs), this)),
      list_(new ProblemList),
      deskPane_(new DeskPane(*desk_)),
      balancePane_(new BalancePane(*desk_)),
      banner_(new QLabel) {
  build();
  wire();
}

void DietsRoom::build() {
  banner_->setProperty("banner", true);
  banner_->setWordWrap(true);
  banner_->setTextFormat(Qt::PlainText);
  banner_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  banner_->hide();
  auto* middle = new QWidget;
  auto* middleLayout = new QVBoxLayout(middle);
  middleLayout->setContentsMargins(0, 0, 0, 0);
  middleLayout->setSpacing(0);
  auto* bannerRow = new QHBoxLayout;
  bannerRow->setContentsMargins(13, 0, 13, 0);
  bannerRow->addWidget(banner_);
  middleLayout->addLayout(bannerRow);
  middleLayout->addWidget(deskPane_);
  auto* panes = new QSplitter(Qt::Horizontal);
  panes->setHandleWidth(1);
  panes->setChildrenCollapsible(false);
  panes->addWidget(list_);
  panes->addWidget(middle);
  panes->addWidget(balancePane_);
  list_->setMinimumWidth(150);
  balancePane_->setMinimumWidth(400);
  panes->setStretchFactor(0, 0);
  panes->setStretchFactor(1, 3);
  panes->setStretchFactor(2, 2);
  panes->setSizes({200, 600, 490});
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(panes);
}

void DietsRoom::wire() {
  connect(list_, &ProblemList::chosen, this, [this](const QString& file) {
    document_->open(toPath(file));
    list_->setCurrent(document_->file());
  });
  connect(list_, &ProblemList::notListed, this, [this](const QString& text) {
    if (!deskPane_->table().goTo(text))
      complain(tr("No diet in this folder and no food of this diet is called “%1”.").arg(text));
  });
  connect(list_, &ProblemList::listed, this, &DietsRoom::openFirstListed);
  connect(document_, &ProblemDocument::fileChanged, this, [this] {
    banner_->hide();
    list_->setCurrent(document_->file());
    if (document_->file().parent_path() != folder_) {
      folder_ = document_->file().parent_path();
      list_->listFolder(folder_);
    }
  });
  connect(document_, &ProblemDocument::failed, this, &DietsRoom::complain);
  connect(desk_, &DietDesk::refused, this, &DietsRoom::complain);
  connect(&desk_->undoStack(), &QUndoStack::indexChanged, banner_, &QWidget::hide);
  connect(deskPane_, &DeskPane::rungChosen, balancePane_, &BalancePane::choose);
}

void DietsRoom::openFolder(const std::filesystem::path& folder) {
  folder_ = folder;
  list_->listFolder(folder);
}

void DietsRoom::openFile(const std::filesystem::path& file) {
  if (!document_->open(file)) openFolder(file.parent_path());
}

void DietsRoom::openFirstListed() {
  if (!desk_->isEmpty()) return;
  for (int row = 0; row < list_->model().rowCount(); ++row) {
    const QModelIndex index = list_->model().index(row);
    if (!index.data(ProblemListModel::ReadableRole).toBool()) continue;
    document_->open(toPath(index.data(ProblemListModel::FileRole).toString()));
    return;
  }
}

void DietsRoom::focusFinder() {
  list_->focusFilter();
}

void DietsRoom::complain(const QString& what) {
  banner_->setText(what);
  banner_->show();
}

}  // namespace tarebowl::ui
