// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diets_room.h"

#include "ui/diets/balance_pane.h"
#include "ui/diets/desk_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/food_label.h"
#include "ui/diets/ingredient_table.h"
#include "ui/diets/problem_document.h"
#include "ui/diets/problem_list.h"
#include "ui/diets/solving_text.h"
#include "ui/shared/banner.h"
#include "ui/shared/room_actions.h"

#include <QAction>
#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

/// What the finder's numbers from here on mean: a food of the diet; below, a row of the list.
constexpr qint64 kFirstFood = 1'000'000;

}  // namespace

DietsRoom::DietsRoom(LiveSolver::Function solve, Dialogs dialogs, QWidget* parent)
    : Room(parent),
      desk_(new DietDesk(std::move(solve), this)),
      document_(new ProblemDocument(*desk_, std::move(dialogs), this)),
      list_(new ProblemList),
      deskPane_(new DeskPane(*desk_)),
      balancePane_(new BalancePane(*desk_)),
      banner_(makeBanner()) {
  build();
  wire();
  addActions();
}

void DietsRoom::build() {
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
  setFocusProxy(&deskPane_->table());
}

void DietsRoom::wire() {
  connect(list_, &ProblemList::chosen, this, &DietsRoom::openListed);
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
  connect(desk_, &DietDesk::solvingChanged, this, &Room::stateChanged);
  connect(document_, &ProblemDocument::savedChanged, this, &Room::stateChanged);
  connect(document_, &ProblemDocument::fileChanged, this, &Room::stateChanged);
}

void DietsRoom::openListed(const QString& file) {
  document_->open(toPath(file));
  list_->setCurrent(document_->file());
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

void DietsRoom::addActions() {
  auto* actions = new RoomActions(*this);
  const RoomActions::UndoRedo edits = actions->addUndoRedo(desk_->undoStack());
  QAction* open = actions->add(tr("Open"), QKeySequence::Open, QStringLiteral("open"));
  QAction* save = actions->add(tr("Save"), QKeySequence::Save, QStringLiteral("save"));
  QAction* saveAs = actions->add(tr("Save as"), QKeySequence(tr("Ctrl+Shift+S")));
  connect(open, &QAction::triggered, document_, &ProblemDocument::openByDialog);
  connect(save, &QAction::triggered, document_, &ProblemDocument::save);
  connect(saveAs, &QAction::triggered, document_, &ProblemDocument::saveAs);
  for (QAction* action : {edits.undo, edits.redo, open, save}) deskPane_->addAction(action);
}

RoomState DietsRoom::state() const {
  const diet::BalanceProblem& problem = desk_->problem();
  RoomState state;
  state.title = document_->title();
  state.file = toText(document_->file().filename());
  state.saved = document_->isSaved();
  state.savedText = state.saved ? tr("saved") : tr("not saved (Ctrl+S)");
  state.units = tr("grams as fed · energy in kcal ME, %1").arg(energyMethodText(problem.energyMethod));
  if (problem.invented) state.sampleText = tr("Brackenmere (invented sample)");
  state.note = solvingText(*desk_);
  return state;
}

std::vector<FinderHit> DietsRoom::find(const QString& partOfName, int most) const {
  std::vector<FinderHit> hits;
  if (partOfName.isEmpty()) return hits;
  const auto add = [&](const QString& name, const QString& remark, qint64 id) {
    if (static_cast<int>(hits.size()) < most && name.contains(partOfName, Qt::CaseInsensitive))
      hits.push_back({name, remark, id});
  };
  for (int row = 0; row < list_->model().rowCount(); ++row)
    add(list_->model().index(row).data().toString(), tr("diet"), row);
  const diet::BalanceProblem& problem = desk_->problem();
  for (std::size_t i = 0; i < problem.foods.size(); ++i) {
    const FoodLabel label = foodLabel(problem.foods[i]);
    add(label.name, tr("in this diet"), kFirstFood + static_cast<qint64>(i));
  }
  return hits;
}

void DietsRoom::goTo(qint64 id) {
  if (id >= kFirstFood) return deskPane_->table().goToFood(static_cast<int>(id - kFirstFood));
  const QModelIndex index = list_->model().index(static_cast<int>(id));
  if (index.isValid()) openListed(index.data(ProblemListModel::FileRole).toString());
}

bool DietsRoom::mayLeave() {
  return document_->mayLeave();
}

void DietsRoom::complain(const QString& what) {
  banner_->setText(what);
  banner_->show();
}

}  // namespace tarebowl::ui
