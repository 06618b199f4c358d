// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/foods_room.h"

#include "ui/foods/food_list.h"
#include "ui/foods/food_pane.h"
#include "ui/foods/food_text.h"
#include "ui/foods/memory_larder.h"
#include "ui/foods/sample_foods.h"
#include "ui/foods/start_page.h"
#include "ui/shared/paths.h"
#include "ui/shared/room_actions.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {

FoodsRoom::FoodsRoom(Dialogs dialogs, QWidget* parent)
    : Room(parent),
      desk_(new FoodDesk(this)),
      dialogs_(std::move(dialogs)),
      list_(new FoodList(*desk_)),
      pane_(new FoodPane(*desk_)),
      start_(new StartPage),
      right_(new QStackedWidget),
      banner_(new QLabel) {
  build();
  wire();
  addActions();
  showRight();
}

void FoodsRoom::build() {
  banner_->setProperty("banner", true);
  banner_->setWordWrap(true);
  banner_->setTextFormat(Qt::PlainText);
  banner_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  banner_->hide();
  right_->addWidget(start_);
  right_->addWidget(pane_);
  auto* rightSide = new QWidget;
  auto* rightLayout = new QVBoxLayout(rightSide);
  rightLayout->setContentsMargins(0, 0, 0, 0);
  rightLayout->setSpacing(0);
  auto* bannerRow = new QHBoxLayout;
  bannerRow->setContentsMargins(16, 0, 16, 0);
  bannerRow->addWidget(banner_);
  rightLayout->addLayout(bannerRow);
  rightLayout->addWidget(right_, 1);
  auto* panes = new QSplitter(Qt::Horizontal);
  panes->setHandleWidth(1);
  panes->setChildrenCollapsible(false);
  panes->addWidget(list_);
  panes->addWidget(rightSide);
  list_->setMinimumWidth(420);
  rightSide->setMinimumWidth(480);
  panes->setStretchFactor(0, 4);
  panes->setStretchFactor(1, 5);
  panes->setSizes({570, 720});
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(panes);
  setFocusProxy(&list_->field());
}

void FoodsRoom::wire() {
  connect(list_, &FoodList::chosen, desk_, &FoodDesk::show);
  connect(desk_, &FoodDesk::opened, this, &FoodsRoom::showRight);
  connect(desk_, &FoodDesk::listChanged, this, &FoodsRoom::showRight);
  connect(desk_, &FoodDesk::pageChanged, this, &FoodsRoom::showRight);
  connect(desk_, &FoodDesk::busyChanged, this, &Room::stateChanged);
  connect(desk_, &FoodDesk::refused, this, [this](const Refusal& refusal) { complain(refusal.why()); });
  connect(&desk_->undoStack(), &QUndoStack::indexChanged, banner_, &QWidget::hide);
  connect(start_, &StartPage::sampleWanted, this, &FoodsRoom::openSample);
}

void FoodsRoom::addActions() {
  auto* actions = new RoomActions(*this);
  const RoomActions::UndoRedo edits = actions->addUndoRedo(desk_->undoStack());
  QAction* find = actions->add(tr("Find a food"), QKeySequence::Find);
  connect(find, &QAction::triggered, list_, &FoodList::focusField);
  for (QAction* action : {edits.undo, edits.redo}) pane_->addAction(action);
}

void FoodsRoom::openSample() {
  const auto shelf = std::make_shared<std::shared_ptr<MemoryShelf>>();
  desk_->open({.name = tr("Brackenmere foods"), .file = {}, .invented = true},
              [shelf, folder = sampleFolder()]() -> std::unique_ptr<Larder> {
                if (!*shelf) *shelf = std::make_shared<MemoryShelf>(sampleFoods(folder));
                return std::make_unique<MemoryLarder>(*shelf);
              });
}

void FoodsRoom::showRight() {
  const bool empty = !desk_->collection() || (desk_->foods().empty() && !desk_->isReading());
  list_->setVisible(!empty);
  right_->setCurrentWidget(empty ? static_cast<QWidget*>(start_) : pane_);
  emit stateChanged();
}

RoomState FoodsRoom::state() const {
  RoomState state;
  state.units = tr("values as fed unless said · energy in kcal ME");
  if (!desk_->collection()) {
    state.savedText = tr("nothing open");
    return state;
  }
  const OpenCollection& collection = *desk_->collection();
  state.title = collection.name;
  state.file = collection.file.isEmpty() ? tr("not in a file") : collection.file;
  state.saved = !desk_->isBusy();
  state.savedText = desk_->isBusy() ? tr("working…") : tr("all saved");
  if (collection.file.isEmpty()) state.savedText = tr("kept until the window closes");
  if (collection.invented) state.sampleText = tr("Brackenmere (invented sample)");
  if (desk_->isReading()) state.note = tr("reading the foods…");
  return state;
}

std::vector<FinderHit> FoodsRoom::find(const QString& partOfName, int most) const {
  std::vector<FinderHit> hits;
  if (partOfName.isEmpty()) return hits;
  for (const int place : desk_->search().find(partOfName)) {
    if (static_cast<int>(hits.size()) >= most) break;
    const FoodListing& listing = desk_->foods()[static_cast<std::size_t>(place)];
    const QString group = QString::fromStdString(listing.food.group);
    const QString remark = remarkOf(listing.food);
    hits.push_back({nameOf(listing.food), remark.isEmpty() ? group : remark + QStringLiteral(" · ") + group,
                    static_cast<qint64>(listing.key)});
  }
  return hits;
}

void FoodsRoom::goTo(qint64 id) {
  list_->choose(FoodKey{id});
  list_->table().setFocus();
}

void FoodsRoom::complain(const QString& what) {
  banner_->setText(what);
  banner_->show();
}

}  // namespace tarebowl::ui
