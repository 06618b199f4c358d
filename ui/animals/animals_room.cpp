// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/animals_room.h"

#include "core/animal/starter_profiles.h"
#include "ui/animals/animal_finder.h"
#include "ui/animals/animal_list.h"
#include "ui/animals/animal_text.h"
#include "ui/animals/group_pane.h"
#include "ui/animals/individual_pane.h"
#include "ui/animals/new_species_page.h"
#include "ui/animals/page_header.h"
#include "ui/animals/species_pane.h"
#include "ui/collection/collection_state.h"
#include "ui/collection/conflict_text.h"
#include "ui/shared/banner.h"
#include "ui/shared/reason_bar.h"
#include "ui/shared/room_actions.h"
#include "ui/shared/room_hint.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTreeView>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

Starters shippedStarters() {
  Starters starters{.lookup = animal::shippedProfiles()};
  for (const animal::StarterProfile& starter : animal::starterProfiles())
    starters.profiles.push_back(starter.profile);
  return starters;
}

}  // namespace

AnimalsRoom::AnimalsRoom(OpenCollection& collection, AnimalDesk::Clock today, QWidget* parent)
    : Room(parent),
      collection_(collection),
      desk_(new AnimalDesk(collection, std::move(today), this)),
      list_(new AnimalList(*desk_)),
      header_(new PageHeader(*desk_)),
      reason_(new ReasonBar),
      group_(new GroupPane(*desk_, *reason_, shippedStarters())),
      individual_(new IndividualPane(*desk_, *reason_)),
      species_(new SpeciesPane(*desk_)),
      newSpecies_(new NewSpeciesPage(*desk_, *reason_, shippedStarters())),
      reading_(new QLabel(tr("Reading the animals…"))),
      panes_(new QStackedWidget),
      banner_(makeBanner()) {
  build();
  wire();
  addActions();
  showRight();
}

void AnimalsRoom::build() {
  start_ = makeStart();
  reading_->setAlignment(Qt::AlignCenter);
  auto* panes = new QSplitter(Qt::Horizontal);
  auto* right = makeRight();
  panes->setHandleWidth(1);
  panes->setChildrenCollapsible(false);
  panes->addWidget(list_);
  panes->addWidget(right);
  list_->setMinimumWidth(260);
  right->setMinimumWidth(560);
  panes->setStretchFactor(0, 1);
  panes->setStretchFactor(1, 4);
  panes->setSizes({320, 970});
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(panes);
  setFocusProxy(&list_->field());
}

QWidget* AnimalsRoom::makeRight() {
  for (QWidget* page :
       std::initializer_list<QWidget*>{reading_, start_, group_, individual_, species_, newSpecies_})
    panes_->addWidget(page);
  auto* right = new QWidget;
  auto* layout = new QVBoxLayout(right);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  const auto addRow = [&](QWidget* widget, const QMargins& margins) {
    auto* row = new QHBoxLayout;
    row->setContentsMargins(margins);
    row->addWidget(widget);
    layout->addLayout(row);
  };
  addRow(header_, {16, 10, 16, 0});
  addRow(banner_, {16, 4, 16, 0});
  layout->addWidget(panes_, 1);
  addRow(reason_, {16, 0, 16, 0});
  return right;
}

QWidget* AnimalsRoom::makeStart() {
  auto* hint = new RoomHint(tr("There is no animal in this collection yet."));
  hint->addText(
      tr("Animals stand by species and group, with their masses, energy need and the targets that diets are "
         "judged by."));
  connect(&hint->addWay(tr("Add a species"), tr("With its first group, energy need and targets, from a model "
                                                "species where nothing is published of its own.")),
          &QPushButton::clicked, this, &AnimalsRoom::startSpecies);
  return hint;
}

void AnimalsRoom::wire() {
  connect(list_, &AnimalList::chosen, this, &AnimalsRoom::showPlace);
  connect(group_, &GroupPane::shownWanted, this, &AnimalsRoom::showPlace);
  connect(list_, &AnimalList::speciesWanted, this, &AnimalsRoom::startSpecies);
  connect(group_, &GroupPane::dietWanted, this, &AnimalsRoom::dietWanted);
  connect(newSpecies_, &NewSpeciesPage::dietWanted, this, &AnimalsRoom::dietWanted);
  connect(newSpecies_, &NewSpeciesPage::done, this, &AnimalsRoom::leaveSpecies);
  connect(newSpecies_, &NewSpeciesPage::cancelled, this, &AnimalsRoom::leaveSpecies);
  connect(list_, &AnimalList::groupWanted, this, &AnimalsRoom::addGroup);
  connect(list_, &AnimalList::individualWanted, this, &AnimalsRoom::addIndividual);
  connect(desk_, &AnimalDesk::opened, this, [this] {
    if (collection_.file()) banner_->hide();
    showRight();
  });
  connect(desk_, &AnimalDesk::listChanged, this, &AnimalsRoom::showRight);
  connect(desk_, &AnimalDesk::pageChanged, this, &AnimalsRoom::showRight);
  connect(&collection_, &OpenCollection::busyChanged, this, &Room::stateChanged);
  collection_.whenReadOnly(this, [this] {
    banner_->setText(readOnlyText());
    banner_->show();
    emit stateChanged();
  });
  connect(&collection_, &OpenCollection::refused, this, &AnimalsRoom::complain);
  connect(&collection_, &OpenCollection::hindered, this, &AnimalsRoom::complain);
  connect(&desk_->undoStack(), &QUndoStack::indexChanged, this, [this] {
    if (desk_->undoStack().index() > 0) banner_->hide();  // an emptied way back comes with a refusal
  });
}

void AnimalsRoom::addActions() {
  auto* actions = new RoomActions(*this);
  const RoomActions::UndoRedo edits = actions->addUndoRedo(desk_->undoStack());
  QAction* find = actions->add(tr("Find an animal"), QKeySequence::Find);
  connect(find, &QAction::triggered, list_, &AnimalList::focusField);
  for (QAction* action : {edits.undo, edits.redo}) header_->addAction(action);
}

void AnimalsRoom::showPlace(const AnimalPlace& place) {
  reason_->dismiss();
  desk_->show(place);
  leaveSpecies();
}

void AnimalsRoom::startSpecies() {
  reason_->dismiss();
  header_->hide();
  newSpecies_->startAnew();
  panes_->setCurrentWidget(newSpecies_);
}

void AnimalsRoom::leaveSpecies() {
  if (panes_->currentWidget() == newSpecies_) panes_->setCurrentWidget(start_);
  showRight();
}

void AnimalsRoom::showRight() {
  const bool closed = !collection_.file();
  list_->setVisible(!closed);
  if (panes_->currentWidget() == newSpecies_ && !closed) return emit stateChanged();  // it is being told
  header_->setVisible(desk_->page().has_value());
  if (!desk_->page())
    panes_->setCurrentWidget(desk_->isReading() ? reading_ : start_);
  else if (desk_->page()->group)
    panes_->setCurrentWidget(group_);
  else if (desk_->page()->individual)
    panes_->setCurrentWidget(individual_);
  else
    panes_->setCurrentWidget(species_);
  emit stateChanged();
}

void AnimalsRoom::addGroup() {
  if (!desk_->page()) return;
  const animal::Species& species = desk_->page()->species.record;
  std::vector<std::string> taken;
  for (const store::StoredGroup& group : desk_->herd().groups) taken.push_back(group.record.code);
  desk_->addGroup({.code = codeFrom(QString::fromStdString(species.name), taken),
                   .name = tr("%1, new group").arg(QString::fromStdString(species.name)).toStdString(),
                   .species = species.code});
}

void AnimalsRoom::addIndividual() {
  if (!desk_->page()) return;
  const animal::Species& species = desk_->page()->species.record;
  std::vector<std::string> taken;
  for (const store::StoredIndividual& one : desk_->herd().individuals) taken.push_back(one.record.code);
  desk_->addIndividual({.code = codeFrom(QString::fromStdString(species.name), taken),
                        .species = species.code,
                        .arrived = desk_->today()},
                       {});
}

RoomState AnimalsRoom::state() const {
  RoomState state = stateOf(collection_);
  state.units = tr("body mass in g or kg · energy in kcal ME a day");
  if (desk_->isReading()) state.note = tr("reading the animals…");
  return state;
}

std::vector<FinderHit> AnimalsRoom::find(const QString& partOfName, int most) const {
  return findAnimals(desk_->herd(), partOfName, most);
}

void AnimalsRoom::goTo(qint64 id) {
  const AnimalPlace place = placeOfHit(id);
  showPlace(place);
  list_->choose(place);
  list_->tree().setFocus();
}

void AnimalsRoom::complain(const Refusal& refusal) {
  QString text = refusalText(refusal);
  if (collection_.isReadOnly()) text += QLatin1Char('\n') + readOnlyText();
  banner_->setText(text);
  banner_->show();
}

}  // namespace tarebowl::ui
