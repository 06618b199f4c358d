// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/foods_room.h"

#include "ui/collection/collection_files.h"
#include "ui/collection/collection_state.h"
#include "ui/collection/conflict_text.h"
#include "ui/foods/collection_doubts.h"
#include "ui/foods/comparison_pane.h"
#include "ui/foods/doubt_list.h"
#include "ui/foods/food_form.h"
#include "ui/foods/food_list.h"
#include "ui/foods/food_pane.h"
#include "ui/foods/food_text.h"
#include "ui/foods/import_desk.h"
#include "ui/foods/import_page.h"
#include "ui/foods/sample_form.h"
#include "ui/shared/banner.h"
#include "ui/shared/days.h"
#include "ui/shared/folding_panes.h"
#include "ui/shared/format.h"
#include "ui/shared/reason_bar.h"
#include "ui/shared/room_actions.h"
#include "ui/shared/room_hint.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
FoodsRoom::FoodsRoom(OpenCollection& collection, CollectionFiles& files, Dialogs dialogs, QWidget* parent)
    : Room(parent),
      collection_(collection),
      files_(files),
      dialogs_(std::move(dialogs)),
      desk_(new FoodDesk(collection, this)),
      doubts_(new CollectionDoubts(collection, *desk_, this)),
      importDesk_(new ImportDesk(collection, *desk_, this)),
      list_(new FoodList(*desk_)),
      doubtList_(new DoubtList(*doubts_, *desk_)),
      pane_(new FoodPane(*desk_, *doubts_)),
      comparison_(new ComparisonPane(*desk_)),
      foodForm_(new FoodForm(*desk_)),
      sampleForm_(new SampleForm(*desk_)),
      reason_(new ReasonBar),
      start_(makeHint()),
      importPage_(new ImportPage(*importDesk_, dialogs_)),
      whole_(new QStackedWidget),
      left_(new QStackedWidget),
      right_(new QStackedWidget),
      banner_(makeBanner()) {
  build();
  wire();
  wireEditing();
  wireImport();
  wireDoubts();
  addActions();
  showRight();
}

void FoodsRoom::build() {
  for (QWidget* page : std::initializer_list<QWidget*>{start_, pane_, comparison_, foodForm_, sampleForm_})
    right_->addWidget(page);
  auto* rightSide = new QWidget;
  auto* rightLayout = new QVBoxLayout(rightSide);
  rightLayout->setContentsMargins(0, 0, 0, 0);
  rightLayout->setSpacing(0);
  auto* bannerRow = new QHBoxLayout;
  bannerRow->setContentsMargins(16, 0, 16, 0);
  banner_->setProperty("topmost", true);  // margins of a row stay where the banner is hidden
  bannerRow->addWidget(banner_);
  rightLayout->addLayout(bannerRow);
  rightLayout->addWidget(right_, 1);
  auto* reasonRow = new QHBoxLayout;
  reasonRow->setContentsMargins(16, 0, 16, 0);
  reasonRow->addWidget(reason_);
  rightLayout->addLayout(reasonRow);
  auto* panes = new FoldingPanes;
  left_->addWidget(list_);
  left_->addWidget(doubtList_);
  panes->addWidget(left_);
  panes->addWidget(rightSide);
  left_->setMinimumWidth(440);
  rightSide->setMinimumWidth(480);
  panes->setStretchFactor(0, 4);
  panes->setStretchFactor(1, 5);
  panes->setWidths({570, 720});
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(whole_);
  whole_->addWidget(panes);
  whole_->addWidget(importPage_);
  setFocusProxy(&list_->field());
}

void FoodsRoom::wire() {
  connect(list_, &FoodList::chosen, this, [this](qint64 id) {
    desk_->show(FoodId{id});
    showPane();
  });
  connect(list_, &FoodList::compareWanted, this, [this] {
    comparison_->compare(list_->chosenFoods());
    right_->setCurrentWidget(comparison_);
  });
  connect(desk_, &FoodDesk::opened, this, [this] {
    if (collection_.file()) banner_->hide();
    showFoods();
    showRight();
  });
  connect(desk_, &FoodDesk::listChanged, this, &FoodsRoom::showRight);
  connect(desk_, &FoodDesk::pageChanged, this, &FoodsRoom::showRight);
  connect(desk_, &FoodDesk::energyChanged, this, &Room::stateChanged);
  connect(&collection_, &OpenCollection::busyChanged, this, &Room::stateChanged);
  collection_.whenReadOnly(this, [this] {
    banner_->setText(readOnlyText());
    banner_->show();
    emit stateChanged();
  });
  connect(&collection_, &OpenCollection::refused, this, &FoodsRoom::complain);
  connect(&collection_, &OpenCollection::hindered, this, &FoodsRoom::complain);
  connect(&desk_->undoStack(), &QUndoStack::indexChanged, this, [this] {
    if (desk_->undoStack().index() > 0) banner_->hide();  // an emptied way back comes with a refusal
  });
}

QWidget* FoodsRoom::makeHint() {
  auto* hint = new RoomHint(tr("No food is in this collection yet."));
  hint->addText(
      tr("Foods are what diets are made of: each with its composition, the laboratory samples or "
         "publications that say so, and what is unknown of it."));
  connect(&hint->addWay(
              tr("Import a table…"),
              tr("A laboratory's or publisher's table (CSV, XLSX): it shows line by line what will happen "
                 "before anything is written.")),
          &QPushButton::clicked, this, &FoodsRoom::importByDialog);
  connect(&hint->addWay(tr("Add a food"), tr("By hand: a name, then its values or a laboratory's sample.")),
          &QPushButton::clicked, this, &FoodsRoom::addFood);
  return hint;
}

void FoodsRoom::wireEditing() {
  connect(list_, &FoodList::addWanted, this, &FoodsRoom::addFood);
  connect(pane_, &FoodPane::foodEditWanted, this, [this] {
    right_->setCurrentWidget(foodForm_);
    foodForm_->focusName();
  });
  connect(pane_, &FoodPane::foodRemoveWanted, desk_, &FoodDesk::removeFood);
  connect(pane_, &FoodPane::sampleAddWanted, this, [this] {
    right_->setCurrentWidget(sampleForm_);
    sampleForm_->startNew(today());
  });
  connect(pane_, &FoodPane::sampleEditWanted, this, [this](qint64 id) { editSample(SampleId{id}); });
  connect(pane_, &FoodPane::setAsideWanted, this, [this](qint64 id) { askWhySetAside(SampleId{id}); });
  connect(pane_, &FoodPane::setByHandWanted, this, &FoodsRoom::askForValue);
  connect(foodForm_, &FoodForm::done, this, &FoodsRoom::showPane);
  connect(sampleForm_, &SampleForm::done, this, &FoodsRoom::showPane);
  connect(comparison_, &ComparisonPane::done, this, &FoodsRoom::showPane);
}

void FoodsRoom::wireImport() {
  connect(list_, &FoodList::importWanted, this, &FoodsRoom::importByDialog);
  connect(importPage_, &ImportPage::otherTableWanted, this, &FoodsRoom::importByDialog);
  connect(importPage_, &ImportPage::done, this, &FoodsRoom::showFoods);
  connect(importDesk_, &ImportDesk::stageChanged, this, &Room::stateChanged);
}

void FoodsRoom::wireDoubts() {
  connect(list_, &FoodList::checksWanted, this, [this] {
    left_->setCurrentWidget(doubtList_);
    doubtList_->list().setFocus();
  });
  connect(doubtList_, &DoubtList::done, this, [this] { left_->setCurrentWidget(list_); });
  connect(doubtList_, &DoubtList::chosen, this, [this](qint64 id) {
    desk_->show(FoodId{id});
    showPane();
  });
  connect(doubts_, &CollectionDoubts::changed, this, [this] {
    list_->showDoubts(doubts_->doubts() ? std::optional(doubts_->doubts()->size()) : std::nullopt);
  });
}

void FoodsRoom::importByDialog() {
  if (!dialogs_.tableToOpen) return;
  if (const auto table = dialogs_.tableToOpen(this, {})) importTable(*table);
}

void FoodsRoom::importTable(const std::filesystem::path& table) {
  if (importDesk_->stage() == ImportDesk::Stage::Importing) return;
  if (!collection_.file()) files_.createByDialog();
  if (!collection_.file()) return;
  whole_->setCurrentWidget(importPage_);
  importDesk_->openTable(table);
}

void FoodsRoom::showFoods() {
  if (importDesk_->stage() != ImportDesk::Stage::Importing) importDesk_->close();
  whole_->setCurrentIndex(0);
}

void FoodsRoom::showPane() {
  reason_->dismiss();
  right_->setCurrentWidget(pane_);
}

void FoodsRoom::addFood() {
  int number = 1;
  const auto taken = [&](const std::string& code) {
    return std::any_of(desk_->foods().begin(), desk_->foods().end(),
                       [&](const food::FoodLine& line) { return line.code == code; });
  };
  while (taken("food-" + std::to_string(number))) ++number;
  desk_->addFood({.code = "food-" + std::to_string(number), .name = tr("New food").toStdString()});
  right_->setCurrentWidget(foodForm_);
  foodForm_->focusName();
}

void FoodsRoom::editSample(SampleId id) {
  const store::StoredSample* stored = desk_->sample(id);
  if (stored == nullptr) return;
  right_->setCurrentWidget(sampleForm_);
  sampleForm_->startEdit(*stored);
}

void FoodsRoom::askWhySetAside(SampleId id) {
  const store::StoredSample* stored = desk_->sample(id);
  if (stored == nullptr) return;
  reason_->ask(tr("Leave the whole sample “%1” out of the composition?").arg(sampleText(stored->sample)), {},
               tr("Set aside"),
               [this, id](const ReasonBar::Answer& answer) { desk_->setAside(id, answer.reason); });
}

void FoodsRoom::askForValue(food::NutrientId nutrient) {
  const QString unit = unitText(food::describe(nutrient).unit) + tr(" per 100 g as fed");
  reason_->ask(tr("A value of %1 that goes before every sample:").arg(nutrientWithin(nutrient)), unit,
               tr("Set"), [this, nutrient](const ReasonBar::Answer& answer) {
                 food::Override value{.nutrient = nutrient,
                                      .amount = quantity::AsFedContent(answer.amount.value()),
                                      .reason = answer.reason.toStdString()};
                 if (answer.sd) value.sd = quantity::AsFedContent(*answer.sd);
                 desk_->setByHand(value);
               });
  const auto& hands = desk_->page()->food.record.overrides;
  if (std::any_of(hands.begin(), hands.end(),
                  [&](const food::Override& hand) { return hand.nutrient == nutrient; }))
    reason_->offer(tr("Leave it to the samples"), [this, nutrient] { desk_->takeHandAway(nutrient); });
}

void FoodsRoom::addActions() {
  auto* actions = new RoomActions(*this);
  const RoomActions::UndoRedo edits = actions->addUndoRedo(desk_->undoStack());
  QAction* find = actions->add(tr("Find a food"), QKeySequence::Find);
  connect(find, &QAction::triggered, list_, &FoodList::focusField);
  for (QAction* action : {edits.undo, edits.redo}) pane_->addAction(action);
}

void FoodsRoom::showRight() {
  const bool closed = !collection_.file();
  const bool empty = closed || (desk_->foods().empty() && !desk_->isReading());
  left_->setVisible(!closed);
  const QWidget* now = right_->currentWidget();
  if (empty && now == pane_) right_->setCurrentWidget(start_);
  if (!empty && now == start_) right_->setCurrentWidget(pane_);
  emit stateChanged();
}

RoomState FoodsRoom::state() const {
  RoomState state = stateOf(collection_);
  state.units = tr("values as fed unless said · energy as ME in");
  state.energy = desk_->energy();
  if (desk_->isReading()) state.note = tr("reading the foods…");
  if (importDesk_->stage() == ImportDesk::Stage::Importing) {
    state.saved = false;
    state.savedText = tr("importing…");
  }
  return state;
}

std::vector<FinderHit> FoodsRoom::find(const QString& partOfName, int most) const {
  std::vector<FinderHit> hits;
  if (partOfName.isEmpty()) return hits;
  for (const int place : desk_->find(partOfName, static_cast<std::size_t>(most))) {
    const food::FoodLine& line = desk_->foods()[static_cast<std::size_t>(place)];
    QStringList remark{QString::fromStdString(line.form), QString::fromStdString(line.group)};
    remark.removeAll(QString());
    hits.push_back({nameOf(line), remark.join(QStringLiteral(" · ")), static_cast<qint64>(line.id)});
  }
  return hits;
}

void FoodsRoom::goTo(qint64 id) {
  showFoods();
  left_->setCurrentWidget(list_);
  list_->choose(FoodId{id});
  list_->table().setFocus();
}

void FoodsRoom::complain(const Refusal& refusal) {
  QString text = refusalText(refusal);
  if (collection_.isReadOnly()) text += QLatin1Char('\n') + readOnlyText();
  banner_->setText(text);
  banner_->show();
}

}  // namespace tarebowl::ui
